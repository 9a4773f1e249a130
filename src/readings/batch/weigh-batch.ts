// What the masses or capacities of cells bought together say: whether they can be one lot, and never more than that.
import { type ChiSquare, type Clusters, chiSquare, meanOf, rangeQuantile, twoClusters } from './homogeneity.ts'
import { type BatchQuantity, fewestInBatch, lotSigma, type Spread, spreadOf, tells } from './lot-spread.ts'

export type Batch = {
  readonly quantity: BatchQuantity
  /** In g or mAh, one for each cell, in the order of the cells; two at least. */
  readonly values: readonly number[]
  /** Smallest step of the display, same unit. */
  readonly resolution: number
  /** Half-width of what the instrument adds anew with each cell, same unit; what it adds to all of them alike drops out. */
  readonly accuracy?: number
}

export type BatchFinding = {
  readonly quantity: BatchQuantity
  readonly count: number
  readonly mean: number
  readonly range: number
  /** Range over mean. */
  readonly share: number
  /** Standard deviation expected of one lot on this instrument, same unit as the values. */
  readonly sigma: number
  /** The range that 99.9 % of lots stay within, same unit. */
  readonly mostOfOneLot: number
  readonly chiSquare: ChiSquare
  readonly clusters: Clusters | null
  /** `scale-too-coarse`: the steps of the display are too wide to tell a range this small from none. */
  readonly found: Spread | 'scale-too-coarse'
  readonly tells: 'nothing' | 'weak' | 'moderate' | 'strong'
}

/** A display of whole grams cannot judge a range below three of its steps. */
const stepsOfDisplay = 3

/**
 * Whether a batch can be one lot, by the known spread of lots; null for fewer than two values, or one that is no positive number.
 *
 * "Not one lot" is not "counterfeit": other models among them, a protected cell, or wraps put on again do the same. The lines are those of
 * `lot-spread.ts`; a line only counts where the range is also more than lots show on this instrument: 99 % of them for a weak
 * finding, 99.9 % for more. Two clusters are two kinds, whatever the range.
 */
export function weighBatch({ quantity, values, resolution, accuracy = 0 }: Batch): BatchFinding | null {
  if (values.length < fewestInBatch || !values.every(value => Number.isFinite(value) && value > 0)) return null
  const mean = meanOf(values)
  const sigma = Math.hypot(lotSigma[quantity] * mean, resolution / Math.sqrt(12), accuracy / Math.sqrt(3))
  const range = Math.max(...values) - Math.min(...values)
  const limit = (p: number) => rangeQuantile(p, values.length) * sigma
  const [usual, mostOfOneLot] = [limit(0.99), limit(0.999)]
  const clusters = twoClusters(values, sigma)
  const byRange = spreadOf(range / mean, values.length)
  const found = settle()
  return {
    quantity,
    count: values.length,
    mean,
    range,
    share: range / mean,
    sigma,
    mostOfOneLot,
    chiSquare: chiSquare(values, sigma),
    clusters,
    found,
    tells: found === 'scale-too-coarse' ? 'nothing' : tells[found],
  }

  function settle(): Spread | 'scale-too-coarse' {
    if (byRange === 'one-lot-possible') return clusters ? 'two-kinds' : byRange
    if (range < stepsOfDisplay * resolution) return 'scale-too-coarse'
    if (range <= usual) return 'one-lot-possible'
    if (byRange === 'not-one-lot' && range > mostOfOneLot) return byRange
    return clusters || (byRange !== 'two-runs' && range > mostOfOneLot) ? 'two-kinds' : 'two-runs'
  }
}
