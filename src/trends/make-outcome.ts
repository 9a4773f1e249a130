// From a finished check to its outcome: sorted, and refused if anything in it could be text or an id.
import type { FamilyId, OptionId, QuestionId, RuleId } from '../engine/answers.ts'
import type { Verdict } from '../ground/verdicts.ts'
import { type Outcome, type PackStamp, type ReadOutcome, readOutcome } from './outcome.ts'
import { weekOf } from './week.ts'

/** What a finished check hands over, as plain data. Whatever else it knows stays behind. */
export type FinishedCheck = {
  /** When it was finished, milliseconds since 1970. */
  readonly finishedAt: number
  readonly family: FamilyId | null
  readonly verdict: Verdict
  readonly fired: readonly RuleId[]
  /** How it looks, in any order. */
  readonly looks: readonly { readonly question: QuestionId; readonly option: OptionId }[]
  readonly bought: string
  readonly packs: readonly PackStamp[]
}

/** Whose outcome it is, by their pseudonyms; `pooled` is null where the server does not pool. */
export type Reporter = { readonly server: string; readonly reporter: string; readonly pooled: string | null }

/** Makes the outcome of a finished check, or says which field is not what it should be. */
export function makeOutcome(check: FinishedCheck, by: Reporter): ReadOutcome {
  const looks = check.looks.toSorted((a, b) => (a.question < b.question ? -1 : 1))
  return readOutcome({
    server: by.server,
    reporter: by.reporter,
    pooled: by.pooled,
    week: weekOf(check.finishedAt),
    family: check.family,
    verdict: check.verdict,
    fired: [...new Set(check.fired)].sort(),
    options: Object.fromEntries(looks.map(one => [one.question, one.option])),
    bought: check.bought,
    packs: check.packs.map(({ id, version, digest }) => ({ id, version, digest })),
  } satisfies Record<keyof Outcome, unknown>)
}
