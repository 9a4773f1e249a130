// Says what the masses or capacities of a batch show, and what was wrong with how they were typed.
import type { BatchRefusal } from '../readings/batch/read-batch.ts'
import type { BatchFinding } from '../readings/batch/weigh-batch.ts'
import { numberIn } from './formatters.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'
import { sayTypedRefusal } from './typed-words.ts'

const units = { mass: 'g', capacity: 'mAh' } as const

/** The finding first, then its figures, then what it does not mean. `values` as they were typed, in g or mAh. */
export function sayBatch(say: Say, finding: BatchFinding, values: readonly number[]): string[] {
  const unit = units[finding.quantity]
  const number = numberIn(say.locale, { maximumFractionDigits: finding.quantity === 'mass' ? 2 : 0 })
  const of = (value: number) => number.format(value)
  const ends = (places: readonly number[]) => {
    const group = places.map(place => values[place] ?? 0)
    return `${of(Math.min(...group))}–${of(Math.max(...group))}`
  }
  const { found, clusters, tells } = finding
  const [wanted] = finding.quantity === 'mass' ? [of(0.1)] : [of(1)]
  return [
    say(`batch.${found}`, found === 'scale-too-coarse' ? { wanted, unit } : {}),
    ...(clusters ? [say('batch.clusters', { low: ends(clusters.low), high: ends(clusters.high), unit })] : []),
    say('batch.figures', {
      mean: of(finding.mean),
      least: of(Math.min(...values)),
      most: of(Math.max(...values)),
      range: of(finding.range),
      limit: of(finding.mostOfOneLot),
      share: numberIn(say.locale, { style: 'percent', maximumFractionDigits: 1 }).format(finding.share),
      unit,
    }),
    ...(tells === 'nothing' ? [] : [say('batch.not-counterfeit')]),
    ...(finding.quantity === 'capacity' && tells !== 'nothing' ? [say('batch.used')] : []),
  ]
}

/** One sentence that says what to change. */
export function sayBatchRefusal(say: Say, refusal: BatchRefusal): string {
  switch (refusal.code) {
    case 'too-few-values':
      return say('batch.problem.too-few-values', { count: refusal.count, fewest: refusal.fewest })
    case 'too-many-values':
      return say('batch.problem.too-many-values', { count: refusal.count, most: refusal.most })
    case 'commas':
      return say('batch.problem.commas', { typed: plain(refusal.typed) })
    case 'ten-times': {
      const { place, unit } = refusal
      const of = (value: number) => say('answer.reading', { value, unit })
      return say('batch.problem.ten-times', { place, value: of(refusal.value), other: of(refusal.other) })
    }
    case 'value': {
      const field = say('batch.problem.value', { place: refusal.place, typed: plain(refusal.typed) })
      return sayTypedRefusal(say, { field: { named: field }, refusal: refusal.refusal })
    }
  }
}
