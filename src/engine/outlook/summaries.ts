// The little algebra behind exact verdicts: what a group of rules contributes, in eleven values that combine.
//
// Rules in different groups share no question, so a verdict depends on each group only through its summary: a hazard holds
// (danger); else a must is contradicted (ruled out); else the signs reach the line (doubtful); else the sum of the signs
// (0..3) and whether all of the family's "enough" rules of the group are met. Combining is commutative and associative, with
// `nothing` as its neutral element, and a chance distribution over summaries combines by convolution.
import { doubtfulFrom, type Verdict, verdicts } from '../../ground/verdicts.ts'

/** An index 0..10 into `summaryCount` values; see `summaryOf`. */
export type Summary = number
/** Chances of the eleven summaries. Plain arrays: many live for a moment only, and typed arrays are dear to make. */
export type SummaryChances = readonly number[]

/** So many zeros. */
export function zeros(count: number): number[] {
  const out: number[] = []
  for (let i = 0; i < count; i++) out.push(0)
  return out
}

export const summaryCount = 3 + 2 * doubtfulFrom
export const danger: Summary = 0
export const ruledOut: Summary = 1
export const doubtful: Summary = 2

/** The summary of a group in which no hazard and no must holds. */
export function summaryOf(score: number, enoughMet: boolean): Summary {
  return score >= doubtfulFrom ? doubtful : 3 + 2 * score + (enoughMet ? 1 : 0)
}
export const nothing: Summary = summaryOf(0, true)

const scoreOf = (summary: Summary): number => (summary - 3) >> 1
const enoughOf = (summary: Summary): boolean => ((summary - 3) & 1) === 1

function combineTwo(a: Summary, b: Summary): Summary {
  if (a < 3 || b < 3) return Math.min(a, b)
  return summaryOf(scoreOf(a) + scoreOf(b), enoughOf(a) && enoughOf(b))
}

const table = Uint8Array.from({ length: summaryCount * summaryCount }, (_, i) =>
  combineTwo(Math.floor(i / summaryCount), i % summaryCount),
)

/** What two groups contribute together. */
export const combine = (a: Summary, b: Summary): Summary => table[a * summaryCount + b] as Summary

/** All the chance on one summary. */
export function certainly(summary: Summary): SummaryChances {
  const chances = zeros(summaryCount)
  chances[summary] = 1
  return chances
}

/** The chances of what two independent groups contribute together. */
export function convolve(a: SummaryChances, b: SummaryChances): SummaryChances {
  const out = zeros(summaryCount)
  convolveInto(out, a, b, 1)
  return out
}

/** Adds `weight` times the convolution of `a` and `b` to `sum`. */
export function convolveInto(sum: number[], a: SummaryChances, b: SummaryChances, weight: number): void {
  for (let i = 0; i < summaryCount; i++) {
    const chance = weight * (a[i] as number)
    if (chance === 0) continue
    for (let j = 0; j < summaryCount; j++) {
      const other = b[j] as number
      if (other === 0) continue
      const to = table[i * summaryCount + j] as number
      sum[to] = (sum[to] as number) + chance * other
    }
  }
}

/** The verdict a summary of all rules amounts to. */
export function verdictOf(summary: Summary, familyKnown: boolean): Verdict {
  if (summary === danger) return 'danger'
  if (summary === ruledOut) return 'ruled-out'
  if (summary === doubtful) return 'doubtful'
  return familyKnown && enoughOf(summary) ? 'nothing-found' : 'open'
}

/**
 * For each summary of one group: the chances of the five verdicts once `rest` (the other groups) joins it. Rows of
 * `verdicts.length`, in the order of `verdicts`.
 */
export function verdictRows(rest: SummaryChances, familyKnown: boolean): number[] {
  const width = verdicts.length
  const column = columns[familyKnown ? 1 : 0] as Uint8Array
  const rows = zeros(summaryCount * width)
  for (let i = 0; i < summaryCount; i++)
    for (let j = 0; j < summaryCount; j++) {
      const chance = rest[j] as number
      if (chance === 0) continue
      const at = i * width + (column[table[i * summaryCount + j] as number] as number)
      rows[at] = (rows[at] as number) + chance
    }
  return rows
}

const columns = [false, true].map(known =>
  Uint8Array.from({ length: summaryCount }, (_, summary) => verdicts.indexOf(verdictOf(summary, known))),
)
