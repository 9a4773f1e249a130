// Outcomes: what stays of a finished check once everything that could tell who made it is gone.
import type { FamilyId, OptionId, QuestionId, RuleId } from '../engine/answers.ts'
import type { Quantity } from '../ground/quantities.ts'
import type { Verdict } from '../ground/verdicts.ts'
import type { Band, CellCountBand } from './bands.ts'
import type { Week } from './week.ts'

/** Stands in counts and releases for a cell whose family is not known; no family may be called so. */
export const unknownFamily = 'unknown'

export type PackStamp = { readonly id: string; readonly version: string; readonly digest: string }
export type BandedReading = { readonly question: QuestionId; readonly quantity: Quantity } & Band

/** One contribution: no id of a person or message, no name, text, file or picture, and no time finer than a week. */
export type Outcome = {
  readonly server: string
  /** The person's pseudonym on this server in the week's epoch, 64 hex digits. */
  readonly reporter: string
  /** The same person's pseudonym across pooling servers; null where the server does not pool. */
  readonly pooled: string | null
  readonly week: Week
  readonly family: FamilyId | null
  readonly format: string
  readonly verdict: Verdict
  /** Rules that fired, sorted, each once. */
  readonly fired: readonly RuleId[]
  readonly options: Readonly<Record<QuestionId, OptionId>>
  readonly readings: readonly BandedReading[]
  /** What the label claims. */
  readonly claims: readonly BandedReading[]
  readonly cantTell: readonly QuestionId[]
  /** Where it was bought: a category, never a shop. */
  readonly bought: string
  readonly cells: CellCountBand
  readonly packs: readonly PackStamp[]
}

/** An item of a pattern: a failed check, an answer, or where the cell was bought. */
export type Item = `rule:${string}` | `answer:${string}=${string}` | `bought:${string}`

/** The items a check brings into the search for patterns: its failed checks, its answers, and where the cell was bought. */
export function itemsOf({ fired, options, bought }: Pick<Outcome, 'fired' | 'options' | 'bought'>): Item[] {
  return [
    ...ruleItems(fired),
    ...Object.entries(options).map(([question, option]) => answerItem(question, option)),
    `bought:${bought}`,
  ]
}

export const isRuleItem = (item: Item): boolean => item.startsWith('rule:')
export const ruleItems = (fired: Outcome['fired']): Item[] => fired.map((rule): Item => `rule:${rule}`)
export const answerItem = (question: QuestionId, option: OptionId): Item => `answer:${question}=${option}`
