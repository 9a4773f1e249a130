// Cylindrical formats by their trade code: two digits of diameter in mm, three of length in 0.1 mm.
import type { Designation } from './facts.ts'

export const formatNames = [
  '10440',
  '14430',
  '14500',
  '16340',
  '16650',
  '17500',
  '17670',
  '18350',
  '18500',
  '18650',
  '20700',
  '21700',
  '22430',
  '25500',
  '26350',
  '26500',
  '26650',
  '26700',
  '32650',
  '32700',
  '33140',
  '38120',
  '40152',
  '46800',
] as const

export type FormatName = (typeof formatNames)[number]

export type Size = {
  readonly diameter_mm: number
  readonly length_mm: number
}

/** Nominal size by the trade code. The longest formats give their length in whole mm, as 33140 does. */
export function nominalSize(format: FormatName): Size {
  const length = Number(format.slice(2))
  return { diameter_mm: Number(format.slice(0, 2)), length_mm: length >= 100 && length <= 160 ? length : length / 10 }
}

/**
 * The trade format behind an IEC 61960-3 designation, or null.
 *
 * The designation rounds the largest size up, the trade code names the bare nominal one, so 19/66 and 19/65 are both the
 * 18650, as is 18/65 where a maker's largest is not over.
 */
export function formatOf({ diameter_mm, height_mm }: Designation): FormatName | null {
  // How it was rounded, likeliest first: both up, neither, only the diameter, only the height.
  const roundings = ['11', '00', '10', '01']
  const rank = (format: FormatName) => {
    const size = nominalSize(format)
    const up = (designated: number, nominal: number) => designated - Math.floor(nominal)
    return roundings.indexOf(`${up(diameter_mm, size.diameter_mm)}${up(height_mm, size.length_mm)}`)
  }
  const fitting = formatNames.filter(format => rank(format) >= 0)
  return fitting.sort((a, b) => rank(a) - rank(b))[0] ?? null
}
