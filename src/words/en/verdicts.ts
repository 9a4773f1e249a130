// English for verdicts: the word, what it means, why, what to do, and the caution that is never left out.
export const verdicts = {
  'verdict.danger': 'Danger: stop now',
  'verdict.ruled-out': 'Ruled out: not the cell it claims to be',
  'verdict.doubtful': 'Doubtful: too much speaks against it',
  'verdict.open': 'Open: it could not be settled',
  'verdict.nothing-found': 'Nothing found, which proves nothing',
  'verdict.danger.means': 'What you saw is unsafe right now, whatever the cell is.',
  'verdict.ruled-out.means': 'At least one thing cannot be so on the cell it is sold as.',
  'verdict.doubtful.means': 'No single sign decides, but together they are enough to leave it alone.',
  'verdict.open.means':
    'Nothing rules the cell out, and nothing can rule it in: what was checked is not enough to say more.',
  'verdict.nothing-found.means':
    'Every check that its family lists was answered and met. Good counterfeits pass all of them; no check from outside can prove a cell.',
  'kind.counterfeit': 'counterfeit',
  'kind.another-cell': 'another cell under the wrap',
  'kind.salvaged': 'a used cell sold as new',
  'kind.impossible-claim': 'an impossible claim',
  'verdict.which': 'What it points to: {kinds}.',
  'part.why': 'Why',
  'part.also': 'Also seen',
  'part.no-bearing': 'Tells nothing, though people think it does',
  'part.enough': 'Enough for this on its own',
  'part.unchecked': 'Not checked',
  'part.changes': 'What would change it',
  'part.next': 'What to do now',
  'part.asked-next': 'The next question that would tell most',
  'part.judged': 'Judged by {packs}',
  'finding.published': '{says} (published: {source})',
  'finding.derived': '{says} (worked out; the figures are in the rule pack)',
  'finding.common-practice': '{says} (common practice, no source)',
  'finding.memory': '{says} (from memory, not verified)',
  'finding.out-of-date': '{says} (this figure is out of date and was not counted)',
  'answer.said': '{question} {answer}',
  'answer.reading': '{value, number} {unit}',
  'unchecked.not-asked': '{question} (not asked)',
  'unchecked.cant-tell': '{question} (you could not tell)',
  'unchecked.danger': 'Everything else. Do not go back to the cell to look.',
  'change.correction': 'If “{question}” was really “{answer}”: {verdict}',
  'change.more': 'If “{question}” turns out “{answer}”: {verdict}',
  'change.none': 'Nothing that is left to check.',
  'list.rest': '…and {count, number} more',
  'next.danger.get-away':
    'Move away from it. Only if it is safe to do so, get it away from anything that burns. With smoke, hiss or heat call your emergency number at once.',
  'next.danger.others': 'Keep others away. Otherwise do not touch it, tape it, photograph it or carry it anywhere.',
  'next.danger.after':
    'Afterwards ask the fire service, or a recycler that takes damaged lithium cells, how to have it taken away.',
  'next.danger.isolate':
    'Do not use, charge or test it, and do not carry it about. Tape over both ends and keep it alone in a container that cannot burn, best outside, away from where people sleep.',
  'next.keep':
    'Keep what proves the purchase: the listing, the order, your messages, photos of the wrap, both ends and the codes.',
  'next.seller':
    'Write to the seller that the cell does not match its description. Ask for your money back without sending it back.',
  'next.no-post': 'Do not post it: shipping a suspect cell may be unlawful and is dangerous.',
  'next.dispose': 'Hand it to a battery recycler that takes lithium cells, ends taped. Never into household waste.',
  'next.not-use': 'Do not use it.',
  'next.hazard-unsure':
    'You could not tell about {count, plural, one {# danger sign} other {# danger signs}}. Until you can, treat the cell as unsafe: do not use, charge or carry it.',
  'next.hazard-unseen':
    '{count, plural, one {# danger sign was} other {# danger signs were}} not looked for. Until it has been, treat the cell as unsafe: do not use, charge or carry it.',
  'next.until-sure': 'Do not use it until you are sure what it is.',
  'next.buy': 'Buy only from known, widely used sources, and never for a low price alone.',
  'next.ask': 'Ask somebody who knows cells, with photos of the wrap and both ends.',
  'caution.full':
    'A check from outside can show that a cell is wrong; it can never show that one is right. If you are unsure about anything, do not use the cell. The US Consumer Product Safety Commission (8 January 2021) says not to buy or use loose 18650 cells at all: they are industrial parts, meant for packs with protection. The maker’s instructions, your local fire and waste rules, and licensed handlers come before anything said here.',
  'button.go-on': 'Go on checking',
  'button.correct': 'Correct the last answer',
  'button.close': 'Close this check',
} as const
