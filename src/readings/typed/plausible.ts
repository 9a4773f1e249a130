// How far a value of each quantity can lie for one cylindrical cell, so that a slip of the unit or the comma is noticed.
import type { MeasuredQuantity } from '../../ground/quantities.ts'

export type Plausible = {
  /** Outside this nobody measured one cylindrical cell: the value is refused. Canonical units. */
  readonly lowest: number
  readonly highest: number
  /** Inside this a number without a unit is taken to be in the canonical unit. */
  readonly usualFrom: number
  readonly usualTo: number
}

// Common practice, no source: wide enough for AAA to 46 mm formats and for dead cells, narrow enough that a wrong
// prefix (1000 times) or an imperial unit never lands inside the usual part.
export const plausible: Record<MeasuredQuantity, Plausible> = {
  mass: { lowest: 2, highest: 600, usualFrom: 10, usualTo: 200 },
  diameter: { lowest: 5, highest: 60, usualFrom: 9, usualTo: 50 },
  length: { lowest: 10, highest: 200, usualFrom: 20, usualTo: 120 },
  voltage: { lowest: 0, highest: 6, usualFrom: 0.2, usualTo: 4.6 },
  'ac-resistance': { lowest: 0.5, highest: 5000, usualFrom: 2, usualTo: 900 },
  'dc-resistance': { lowest: 0.5, highest: 5000, usualFrom: 2, usualTo: 900 },
  capacity: { lowest: 10, highest: 60_000, usualFrom: 100, usualTo: 30_000 },
  current: { lowest: 0.005, highest: 300, usualFrom: 0.05, usualTo: 100 },
  // 45 °C as °F would be 7 °C, below the usual part: the two scales never both fit.
  temperature: { lowest: -40, highest: 150, usualFrom: 10, usualTo: 45 },
  // A bare "30" after "how long did it rest?" may be minutes, so only short figures pass unasked.
  'rest-time': { lowest: 0, highest: 26_280, usualFrom: 0.05, usualTo: 4 },
  'energy-per-volume': { lowest: 10, highest: 5000, usualFrom: 50, usualTo: 5000 },
  'energy-per-mass': { lowest: 5, highest: 2000, usualFrom: 20, usualTo: 2000 },
  // Worked out at a current that may be claimed out of all reason: more than the cell has to lose.
  'voltage-lost': { lowest: 0, highest: 1000, usualFrom: 0.02, usualTo: 20 },
  'voltage-lost-under-load': { lowest: 0, highest: 1000, usualFrom: 0.02, usualTo: 20 },
}
