// English for verdicts: the word, what it means, why, what to do, and the caution that is never left out.
import { safety } from './safety.ts'

const proves = 'A check from outside can show that a cell is wrong; it can never show that one is right.'
const unsure = 'If you are unsure about anything, do not use or charge the cell.'
const loose =
  'The US Consumer Product Safety Commission (8 January 2021) says not to buy or use loose 18650 cells at all: they are industrial parts, meant for packs with protection.'
const local =
  'The maker’s instructions, your local fire and waste rules, and licensed handlers come before anything said here.'

export const verdicts = {
  'verdict.danger': 'Danger: stop now',
  'verdict.ruled-out': 'Ruled out: not the cell it claims to be',
  'verdict.doubtful': 'Doubtful: too much counts against it',
  'verdict.open': 'Undecided: this check cannot settle it',
  'verdict.nothing-found': 'Nothing found, which proves nothing',
  'verdict.danger.means': 'What you reported makes the cell unsafe, whatever it is.',
  'verdict.ruled-out.means': 'At least one thing you reported is impossible for the cell it is sold as.',
  'verdict.doubtful.means': 'What counts against the cell is not proof, but it is enough: do not use or charge it.',
  'verdict.open.means':
    'Nothing rules the cell out, and nothing can confirm it: the answers are not enough to say more.',
  'verdict.nothing-found.means':
    'Every point listed for this model was answered, and every one fits. Good counterfeits pass all of them: nothing seen from outside can prove what a cell is.',
  'kind.counterfeit': 'a counterfeit',
  'kind.another-cell': 'another cell under the wrap',
  'kind.salvaged': 'a used cell sold as new',
  'kind.impossible-claim': 'an impossible claim',
  'verdict.which': 'This alone is enough, and points to {kinds}.',
  'part.why': 'Why',
  'part.also': 'Also seen',
  'part.no-bearing': 'Proves nothing, although many people think it does',
  'part.enough': 'What decided the result',
  'part.unchecked': 'Not checked',
  'part.changes': 'What would change it',
  'part.next': 'What to do now',
  'part.judged': 'Judged by {packs}',
  'finding.published': '{says} (published: {source})',
  'finding.derived': '{says} (calculated; figures in the bot’s rules)',
  'finding.common-practice': '{says} (common practice, no published source)',
  'finding.memory': '{says} (from memory, not verified)',
  'finding.out-of-date': '{says} (this figure is out of date and was not counted)',
  'answer.said': '{question} {answer}',
  'reason.answered': 'You answered {answers}. {reason}',
  'reason.answered-by-moderator': 'A helper answered {answers}. {reason}',
  'answer.reading': '{value, number} {unit}',
  'answer.range.under': '{to, number} {unit} or less',
  'answer.range.over': '{from, number} {unit} or more',
  'answer.range.between': 'between {from, number} and {to, number} {unit}',
  'unchecked.not-asked': '{question} (not asked)',
  'unchecked.cant-tell': '{question} (answered “Can’t tell”)',
  'unchecked.undecided': '{said} (too close to a danger limit to rule danger out)',
  'unchecked.danger': 'Everything else. Do not go back to the cell to look.',
  'change.correction': 'If the answer to “{question}” was really “{answer}”, the result would be “{verdict}”',
  'change.more': 'If the answer to “{question}” turns out to be “{answer}”, the result would be “{verdict}”',
  'change.undecided': 'If the answer to “{question}” was really {range}, this cannot be decided',
  'change.none': 'No question that is left would change it.',
  'list.rest': '…and {count, number} more',
  'next.keep':
    'Keep everything that proves the purchase: the listing, the order, your messages, photos you already have.',
  'next.seller':
    'If the cell does not match its description, tell the seller so in writing, and ask for your money back without returning the cell.',
  'next.no-post': 'Do not mail or ship the cell. Shipping a suspect cell is dangerous and may be illegal.',
  'next.hazard-unsure': `Treat the cell as unsafe until this is cleared up. {count, plural, one {# question about danger is} other {# questions about danger are}} still open: {signs}. ${safety['safety.quiet']}`,
  'next.untouched': `You said that the cell may not be touched, or were not sure. Treat it as unsafe until this is cleared up. ${safety['safety.quiet']}`,
  'next.hazard-undecided': `{count, plural, one {# measured value is} other {# measured values are}} too close to a danger limit to rule danger out. Treat the cell as unsafe. ${safety['safety.quiet']}`,
  'verdict.hazards-unasked': '**Not asked yet:** {signs}. Any of these may mean danger; “{button}” asks about them.',
  'next.until-sure': 'If you are unsure what the cell is, do not use or charge it.',
  'next.buy': 'Buy only from known, widely used sources, never just because the price is low.',
  'next.helper': '{ask} Here, press “{button}”.',
  'next.ask':
    'Ask somebody who knows cells, with photos of the wrap and both ends that you already have, or can take without touching or going near the cell.',
  'next.ask.untouched': 'Ask somebody who knows cells, and show them photos you already have.',
  'caution.full': `${proves} ${unsure} ${loose} ${local}`,
  // Where the result says already not to use the cell.
  'caution.failed': `${proves} ${local}`,
  'button.go-on': 'Answer more questions',
  'button.close': 'Close and delete the answers',
  'verdict.danger.so-far': 'This is dangerous.',
  'verdict.ruled-out.so-far': 'Already ruled out.',
  'verdict.doubtful.so-far': 'Already doubtful.',
  'verdict.would-tell': 'What would show more: {tools}.',
  'next.leave':
    'If you are holding or carrying it, put it down, with its device if it is in one. Leave it where it is, keep others away, and do not sleep in that room. Before you touch or move it, press “{button}”: the last page says whether you may, and how to keep it until you hand it in.',
  'next.handle.held':
    'As long as it stays cold and quiet, keep it on its own, away from metal and from anything that can burn.',
  'next.handle': `${safety['safety.quiet.only']} keep it on its own, away from metal and from anything that can burn. Otherwise leave it where it is, and do not touch it.`,
  'part.means': 'What the result means',
  'button.details': 'Details',
  'button.change': 'Change an answer',
  'details.page': 'page {page} of {pages}',
  'details.on': 'Next page',
  'details.back': 'Previous page',
  'details.close': 'Back to the result',
  'details.nothing': 'There is nothing to say here.',
  'part.asked-next': 'The question that would help most now',
} as const
