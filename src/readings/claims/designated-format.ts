// Which trade format an IEC 61960-3 designation means: it rounds the largest size up, the trade code names the bare nominal one.
import { type FormatName, formatNames, nominalSize } from '../../ground/formats.ts'
import type { Designation } from './facts.ts'

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
