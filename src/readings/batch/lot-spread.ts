// How much the cells of one lot differ from each other, by quantity, and from which spread on a batch is not one lot.

/** What a batch can be judged by. Resistance is left out: over two wires its scatter is that of the contacts. */
export const batchQuantities = ['mass', 'capacity'] as const
export type BatchQuantity = (typeof batchQuantities)[number]

/**
 * Standard deviation within one lot, relative to its mean.
 *
 * Mass: 133 production cells in 14 series of a national laboratory's failure databank (rev. 2, 2024) have a median of 0.17 %, pooled
 * 0.28 %, at worst 0.49 %; twice the pooled one, above the worst, is taken. Capacity: 0.17 % of 600 cells (Wildfeuer and Lienkamp,
 * eTransportation 2021, abstract), 0.21 % of nine cells on a hobby charger; 0.5 % is taken.
 */
export const lotSigma: Readonly<Record<BatchQuantity, number>> = { mass: 0.0055, capacity: 0.005 }

export const fewestInBatch = 2
export const mostInBatch = 100
/** Characters of which the figures are read: a hundred values with their units are shorter. */
export const longestBatch = 2000

export type Spread = 'one-lot-possible' | 'two-runs' | 'two-kinds' | 'not-one-lot'

/** How much a spread tells; a batch of genuine cells can be two runs or two versions of one design. */
export const tells = {
  'one-lot-possible': 'nothing',
  'two-runs': 'weak',
  'two-kinds': 'moderate',
  'not-one-lot': 'strong',
} as const satisfies Record<Spread, 'nothing' | 'weak' | 'moderate' | 'strong'>

/**
 * The spread that a range, as a share of the mean, stands for, of `count` cells.
 *
 * Derived from the same databank: the widest one-lot series has 1.7 % (24 cells), two series of mixed versions of one design have 3.8
 * and 4.6 %. Capacities scatter less within a lot, so that the lines are mild for them.
 */
export function spreadOf(share: number, count: number): Spread {
  if (share <= (count <= 4 ? 0.02 : 0.025)) return 'one-lot-possible'
  if (share <= 0.03) return 'two-runs'
  return share <= 0.05 ? 'two-kinds' : 'not-one-lot'
}
