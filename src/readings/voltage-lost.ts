// How much voltage a cell loses at the current it claims, in V with its uncertainty, by its resistance or by a test at another current.

type Volts = { readonly value: number; readonly u: number }

/**
 * Ohm's law: AC resistance times claimed current. The figure at 1 kHz leaves out polarisation, so a cell loses at least as much.
 *
 * u follows JCGM 100:2008 5.1.6 for a product, the claim taken as exact.
 */
export function voltageLost(cell: {
  readonly claimed_A: number
  readonly resistance_mΩ: number
  readonly uResistance_mΩ: number
}): Volts {
  const volts = (mΩ: number) => (mΩ * cell.claimed_A) / 1000
  return { value: volts(cell.resistance_mΩ), u: volts(cell.uResistance_mΩ) }
}

/**
 * By how much the voltage fell at another current, in proportion: its DC resistance times the claimed current.
 *
 * `uFall_V` is of one reading, and a fall is the difference of two. A small current lifts u as it lifts the value, so a test far
 * below the claim decides nothing by itself.
 */
export function voltageLostUnderLoad(test: {
  readonly claimed_A: number
  readonly fall_V: number
  readonly uFall_V: number
  readonly at_A: number
  readonly uAt_A: number
}): Volts {
  const { claimed_A, fall_V, at_A } = test
  const u = Math.hypot(Math.SQRT2 * test.uFall_V, (fall_V * test.uAt_A) / at_A)
  return { value: (fall_V * claimed_A) / at_A, u: (u * claimed_A) / at_A }
}
