// Bands: how coarse a value becomes before it is kept.
import type { Quantity } from '../ground/quantities.ts'

/** From `from` (in it) to `to` (not in it), in the quantity's canonical unit. */
export type Band = { readonly from: number; readonly to: number }

/**
 * How wide a band of each quantity is, in its canonical unit. Our own figures: wide enough that a reading is no fingerprint,
 * narrow enough that a newer pack can judge by it.
 */
export const bandWidth = {
  mass: 1,
  diameter: 0.5,
  length: 0.5,
  voltage: 0.25,
  'ac-resistance': 10,
  'dc-resistance': 10,
  capacity: 250,
  current: 5,
  temperature: 5,
  'rest-time': 24,
  'energy-per-volume': 100,
  'energy-per-mass': 50,
  'claimed-capacity': 500,
  'claimed-current': 5,
} as const satisfies Record<Quantity, number>

/** The band a value falls in. */
export function bandOf(quantity: Quantity, value: number): Band {
  const width = bandWidth[quantity]
  // Rounded, since widths such as 0.25 are exact in binary but their multiples are easiest to compare when written short.
  const from = Math.floor(value / width) * width
  return { from: tidy(from), to: tidy(from + width) }
}

/**
 * A band as a reading: its middle, with the standard uncertainty of a value anywhere in it, a/√3 for the half-width a
 * (JCGM 100:2008, 4.3.7; from memory). Lets a newer pack judge stored answers without claiming to know the value.
 */
export function readingOf({ from, to }: Band): { value: number; u: number } {
  return { value: (from + to) / 2, u: (to - from) / 2 / Math.sqrt(3) }
}

export const cellCountBands = ['1', '2-4', '5-9', '10-49', '50+'] as const
export type CellCountBand = (typeof cellCountBands)[number]

/** The band of a number of cells bought together; undefined if it is no whole number of at least one. */
export function cellCountBand(cells: number): CellCountBand | undefined {
  if (!Number.isInteger(cells) || cells < 1) return undefined
  if (cells < 2) return '1'
  if (cells < 5) return '2-4'
  if (cells < 10) return '5-9'
  return cells < 50 ? '10-49' : '50+'
}

const tidy = (value: number): number => Number(value.toFixed(6))
