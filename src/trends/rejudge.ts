// Judging an outcome again: only what the newer pack says of it may change.
import type { RuleId } from '../engine/answers.ts'
import type { Verdict } from '../ground/verdicts.ts'
import type { Outcome, PackStamp } from './outcome.ts'

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
