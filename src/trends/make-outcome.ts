// From a finished check to its outcome: coarsened, sorted, and refused if anything in it could be text or an id.
import type { FamilyId, OptionId, QuestionId, RuleId } from '../engine/answers.ts'
import type { Quantity } from '../ground/quantities.ts'
import type { Verdict } from '../ground/verdicts.ts'
import { bandOf, cellCountBand } from './bands.ts'
import { type PackStamp, type ReadOutcome, readOutcome } from './outcome.ts'
import { weekOf } from './week.ts'

/** What a finished check hands over, as plain data. Whatever else it knows stays behind. */
export type FinishedCheck = {
  /** When it was finished, milliseconds since 1970. */
  readonly finishedAt: number
  readonly family: FamilyId | null
  readonly format: string
  readonly verdict: Verdict
  readonly fired: readonly RuleId[]
  readonly answers: readonly FinishedAnswer[]
  readonly bought: string
  readonly cells: number
  readonly packs: readonly PackStamp[]
}

export type FinishedAnswer =
  | { readonly kind: 'option'; readonly question: QuestionId; readonly option: OptionId }
  | { readonly kind: 'reading'; readonly question: QuestionId; readonly quantity: Quantity; readonly value: number }
  | { readonly kind: 'cant-tell'; readonly question: QuestionId }

/** Whose outcome it is; `pooled` is null where the server does not pool. */
export type Reporter = { readonly server: string; readonly reporter: string; readonly pooled: string | null }

/** Makes the outcome of a finished check, or says which field is not what it should be. */
export function makeOutcome(check: FinishedCheck, by: Reporter): ReadOutcome {
  const readings = check.answers
    .flatMap(a =>
      a.kind === 'reading' ? [{ question: a.question, quantity: a.quantity, ...bandOf(a.quantity, a.value) }] : [],
    )
    .sort(byQuestion)
  const options = check.answers.flatMap(a => (a.kind === 'option' ? [a] : [])).sort(byQuestion)
  return readOutcome({
    server: by.server,
    reporter: by.reporter,
    pooled: by.pooled,
    week: weekOf(check.finishedAt),
    family: check.family,
    format: check.format,
    verdict: check.verdict,
    fired: [...new Set(check.fired)].sort(),
    options: Object.fromEntries(options.map(a => [a.question, a.option])),
    readings: readings.filter(r => !isClaim(r.quantity)),
    claims: readings.filter(r => isClaim(r.quantity)),
    cantTell: check.answers.flatMap(a => (a.kind === 'cant-tell' ? [a.question] : [])).sort(),
    bought: check.bought,
    cells: cellCountBand(check.cells),
    packs: check.packs.map(({ id, version, digest }) => ({ id, version, digest })),
  })
}

const isClaim = (quantity: Quantity): boolean => quantity.startsWith('claimed-')
const byQuestion = (a: { question: string }, b: { question: string }): number => (a.question < b.question ? -1 : 1)
