// Where things are on a cell, in millimetres, shared by all views: the axis is z, the rim of the can is z = 0.
import type { CellParameters, Format } from './parameters.ts'

/**
 * Nominal bare diameter and length in mm. The five-digit trade code: two digits of diameter in mm, three of length in
 * tenths (common practice, no source).
 */
export const formatSizes: Readonly<Record<Format, { diameter: number; length: number }>> = {
  '14500': { diameter: 14, length: 50 },
  '18650': { diameter: 18, length: 65 },
  '20700': { diameter: 20, length: 70 },
  '21700': { diameter: 21, length: 70 },
  '26650': { diameter: 26, length: 65 },
}

/** Radii as shares of the cell's radius. Drawn for legibility, not to scale: no maker's drawing stands behind them. */
export const radii = {
  wrapFold: 0.86,
  ringOuter: 0.9,
  ringInner: 0.61,
  dimple: 0.758,
  dimpleSize: 0.08,
  shoulderInner: 0.68,
  gasketInner: 0.62,
  flangeInner: 0.54,
  plateau: 0.25,
  button: 0.3,
  nub: 0.42,
  vent: 0.46,
  ventButton: 0.2,
} as const

/** Heights in mm over the rim of an 18 mm cell; they grow with the diameter. */
export const heights = {
  fold: -1.1,
  flange: -0.1,
  ring: 0.25,
  secondRing: 0.75,
  flatTop: 0.9,
  buttonTop: 2.1,
  groove: -3.6,
} as const

/** Extra length of a protection board and its plate at the negative end, in mm (common practice: 2.5–3 mm). */
export const boardLength = 2.8

export type Cell = { radius: number; length: number; grow: number }

/** Radius and length in mm of a format, and the factor by which its heights grow against an 18 mm cell. */
export const cellOf = (format: Format): Cell => {
  const { diameter, length } = formatSizes[format]
  return { radius: diameter / 2, length, grow: diameter / 18 }
}

/** How high the positive contact stands over the rim, in mm. */
export const contactHeight = ({ top }: Pick<CellParameters, 'top'>, { grow }: Cell): number =>
  (top === 'button' ? heights.buttonTop : heights.flatTop) * grow

/** The angle in radians of item `i` of `n` around the axis; the first one faces the viewer (down on paper). */
export const spoke = (i: number, n: number): number => Math.PI / 2 + (2 * Math.PI * i) / n
