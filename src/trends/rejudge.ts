// Judging an outcome again: a newer pack reads the stored answers, and only what the pack says may change.
import type { Answers, RuleId } from '../engine/answers.ts'
import type { Verdict } from '../ground/verdicts.ts'
import { readingOf } from './bands.ts'
import type { Outcome, PackStamp } from './outcome.ts'

/**
 * The answers of an outcome as the engine takes them. A banded reading comes back as the middle of its band with the uncertainty of
 * a value anywhere in it, so a limit inside the band stays undecided.
 */
export function answersOf(outcome: Outcome): Answers {
  return Object.fromEntries([
    ...Object.entries(outcome.options).map(([question, option]) => [question, { kind: 'option', option }] as const),
    ...[...outcome.readings, ...outcome.claims].map(
      band => [band.question, { kind: 'reading', ...readingOf(band) }] as const,
    ),
    ...outcome.cantTell.map(question => [question, { kind: 'cant-tell' }] as const),
  ])
}

/**
 * The outcome as a newer pack judges it. Releases already frozen stay as they are; weeks not yet closed, and cells not yet shown,
 * follow the new verdict.
 */
export function rejudged(
  outcome: Outcome,
  judged: { readonly verdict: Verdict; readonly fired: readonly RuleId[]; readonly packs: readonly PackStamp[] },
): Outcome {
  return { ...outcome, verdict: judged.verdict, fired: [...new Set(judged.fired)].sort(), packs: judged.packs }
}
