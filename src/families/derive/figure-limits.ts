// Where the figures of a family end: what may be printed on it, drawn from it, and how far a good one may lie off.
//
// Spread of mass within one lot: 0.55 % of the middle, twice the pooled figure of 133 production cells in 14 series and above the
// worst seen (computed from the Battery Failure Databank, revision 2, 2024); 0.4 % for another production run (the same). A cell
// beyond 5 % is further off than variants of one design that were mixed (4.6 % there). The references set the middle only.
import type { Figures } from '../facts/facts-schema.ts'

/** Two-sided 99 % of a normal distribution (from tables). */
const z99 = 2.576
const lotSpread = 0.0055
const otherRun = 0.004
const farOff = 0.05
/** How far above the typical figure a printed one may lie, as sheets round it. Common practice, no source. */
const capacityMargin = 1.04
/** Room for calliper and wrap, in mm. Common practice, no source. */
const sizeRoom = { diameter: 0.4, length: 0.8 }
/** Contact and meter differ so much that only what is above so many times the usual resistance tells something. */
const resistanceRoom = 2

export type Band = { readonly low: number; readonly high: number }

const round = (value: number): number => Math.round(value * 1000) / 1000
const around = (middle: number, width: number): Band => ({ low: round(middle - width), high: round(middle + width) })

/** The highest capacity in mAh that may be printed on one. */
export const capacityLimit = ({ typical, limit = round(typical * capacityMargin) }: NonNullable<Figures['capacity']>) =>
  limit

/** The highest continuous current in A, and the highest that needs no limit of temperature. */
export function currentLimits(currents: NonNullable<Figures['currents']>): { highest: number; uncut: number } {
  const highest = Math.max(...currents.map(one => one.amps))
  const free = currents.filter(one => typeof one.cutOff !== 'number').map(one => one.amps)
  return { highest, uncut: free.length > 0 ? Math.max(...free) : highest }
}

/** Half the width in g within which a further genuine cell lies in 99 of 100 cases, from `cells` reference cells. */
export const massHalfWidth = (middle: number, cells: number): number =>
  middle * (z99 * lotSpread * Math.sqrt(1 + 1 / cells) + otherRun)

/** Outside `near` a cell is off, outside `far` it is far off. A sheet's figure says of no cell how far it may lie off: it counts as one. */
export function massBands({ middle, cells, from }: NonNullable<Figures['mass']>): { near: Band; far: Band } {
  const near = massHalfWidth(middle, from === 'references' ? cells : 1)
  return { near: around(middle, near), far: around(middle, Math.max(middle * farOff, near)) }
}

export const sizeBands = ({ diameter, length }: NonNullable<Figures['size']>): Record<'diameter' | 'length', Band> => ({
  diameter: around(diameter, sizeRoom.diameter),
  length: around(length, sizeRoom.length),
})

export const resistanceLimit = ({ usual }: NonNullable<Figures['resistance']>): number => round(usual * resistanceRoom)
