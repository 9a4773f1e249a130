// What a trial showed, what a second moderator is asked, and what going back would change.
import { ButtonStyle } from 'discord.js'
import type { Pack } from '../../../engine/pack/pack.ts'
import type { Difference } from '../../../families/diff.ts'
import type { Version } from '../../../families/family.ts'
import type { ReviewRefusal } from '../../../families/review.ts'
import { type Marked, sayFacts } from '../../../words/family-facts-words.ts'
import { sayDifference, sayFactProblem, sayTitle } from '../../../words/family-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { cut, gallery, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import type { Trial } from '../try-family.ts'
import type { WorkingOn } from '../working-on.ts'
import { agreeButton, checkButton, type Standing, sendBackButton } from './family-buttons.ts'
import { idFor } from './menus.ts'
import { cutLines, type PageExtras } from './show-page.ts'

/** A feature of which only is said that something tells nothing needs no line of its own. */
const isPlain = (one: Difference): boolean => one.is === 'feature-new' && one.made.length === 0

const differences = (say: Say, base: Pack, all: readonly Difference[]): string => {
  const found = all.filter(one => !isPlain(one))
  return cut(
    found.length === 0
      ? say('families.try.same')
      : [
          say('families.try.diff'),
          ...found.slice(0, 20).map(one => `- ${sayDifference(say, base, one)}`),
          ...(found.length > 20 ? ['- …'] : []),
        ].join('\n'),
    2500,
  )
}

const sayBackTest = (say: Say, backTest: Trial['backTest']): string =>
  backTest === 'first'
    ? say('families.try.first')
    : say(`families.back-test.${backTest.ok ? backTest.change : backTest.why}`)

/** `agree`: whether whoever looks may agree to what waits. */
export function showTrial(say: Say, base: Pack, work: WorkingOn, trial: Trial, agree: boolean): ShownMessage {
  const { family, facts, proposed } = work
  const id = idFor(family.id, family.revision)
  const { proof, backTest } = trial
  const fine = proposed.problems.length === 0 && proof !== undefined && proof.problems.length === 0
  const lines = [
    ...proposed.problems.map(problem => say('families.problem', { problem: sayFactProblem(say, base, problem) })),
    ...(proof && proof.problems.length > 0
      ? [say('families.problem.other', { feature: plain(proof.problems[0]?.at ?? '') })]
      : []),
    ...(proof ? [say(`families.try.${proof.canFindNothing ? 'nothing-found' : 'open-ended'}`)] : []),
    sayBackTest(say, backTest),
  ]
  const aside = proof?.problems.length === 0 ? [say('families.try.cases', { count: proof.cases })] : []
  const waits = family.review?.digest === proposed.digest
  return message([
    text(say('families.try.title', { name: plain(facts.identity.name), number: family.head + 1 })),
    text(lines.join('\n')),
    ...(aside.length > 0 ? [small(aside.join('\n'))] : []),
    // Before the first version everything is new, and stands on the page this was pressed on.
    ...(work.inForce ? [text(differences(say, base, trial.differences))] : []),
    ...rows([
      ...(fine && family.draft && !waits
        ? [pressButton(id({ is: 'ask' }), say('families.button.ask'), ButtonStyle.Primary)]
        : []),
      ...(fine && waits && agree ? [agreeButton(say, work)] : []),
      pressButton(id({ is: 'page' }), say('families.button.page')),
    ]),
    small(say('caution.line')),
  ])
}

/** What stands before moderators: who asks, why, what it looks like, and what changes; of a first version, all that it says. `agree`: whether whoever looks may agree. */
export function showAsked(
  say: Say,
  base: Pack,
  work: WorkingOn,
  changes: readonly Difference[],
  { note, agree, own, marked, pictures = [] }: PageExtras & Standing & { readonly marked: Marked },
): ShownMessage {
  const { family, facts, proposed } = work
  const id = idFor(family.id, family.revision)
  const { review } = family
  const number = family.head + 1
  // Whoever has just asked, and may not agree, has read all of it.
  const mine = note !== undefined && !agree
  const who = review ? `<@${review.by}>` : ''
  const why = plain(review?.why ?? '')
  const asked = { title: sayTitle(say, facts.identity), number, who, why, reason: why === '' ? 'none' : 'said' }
  const shown = mine ? [] : pictures
  return message(
    [
      ...(note ? [text(note)] : []),
      text(
        mine ? say('families.waits.mine', { name: plain(facts.identity.name), number }) : say('families.waits', asked),
      ),
      ...gallery(shown),
      ...(mine
        ? []
        : [
            text(
              work.inForce ? differences(say, base, changes) : cutLines(sayFacts(say, base, proposed.facts, marked)),
            ),
          ]),
      ...rows([
        ...(agree ? [agreeButton(say, work)] : []),
        sendBackButton(say, work, own),
        // Who reads it here is led to what they can do there.
        pressButton(id({ is: 'page' }), say(mine ? 'families.button.look' : 'families.button.change')),
      ]),
      small(say('caution.line')),
    ],
    shown,
  )
}

/** Once it is in force: what can be done next; the whole of it is a press away. */
export function showAgreed(say: Say, { family }: WorkingOn, note: string): ShownMessage {
  const id = idFor(family.id, family.revision)
  return message([
    text(note),
    ...rows([checkButton(say, family), pressButton(id({ is: 'page' }), say('families.button.look'))]),
    small(say('caution.line')),
  ])
}

export function showGoingBack(
  say: Say,
  base: Pack,
  { family, facts }: WorkingOn,
  to: Version,
  changes: readonly Difference[],
): ShownMessage {
  const id = idFor(family.id, family.revision)
  return message([
    text(say('families.try.title', { name: plain(facts.identity.name), number: to.number })),
    text(differences(say, base, changes)),
    ...rows([
      pressButton(
        id({ is: 'back', number: to.number }),
        say('families.button.back-to', { number: to.number }),
        ButtonStyle.Danger,
      ),
      pressButton(id({ is: 'page' }), say('families.button.page')),
    ]),
    small(say('caution.line')),
  ])
}

/** Why it does not come into force, said to whoever pressed. */
export function sayReviewRefusal(say: Say, base: Pack, refusal: ReviewRefusal): string {
  switch (refusal.code) {
    case 'cannot-be-used':
      return refusal.problems
        .map(problem => say('families.problem', { problem: sayFactProblem(say, base, problem) }))
        .join('\n')
    case 'must-waits':
      return say('families.refused.must-waits', { until: `<t:${Math.ceil(refusal.until / 1000)}:R>` })
    default:
      return say(`families.refused.${refusal.code}`)
  }
}
