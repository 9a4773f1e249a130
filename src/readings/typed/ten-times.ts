// Whether a figure looks as if a digit too many or too few was typed: then the other figure is asked about beside it.
import { capacityLines, currentLines, masses } from '../../ground/ceilings.ts'
import { type FormatName, nominalSize } from '../../ground/formats.ts'
import type { Quantity } from '../../ground/quantities.ts'

/**
 * What a value would be with the decimal mark one place on, where it is out of the ordinary for the format and the other is usual:
 * 2,600 for 26,000 mAh in an 18650; null otherwise, as for 9,900: next to no 18650 has 990. Both in the canonical unit. It asks, and
 * never corrects.
 */
export function tenTimesOff(quantity: Quantity, value: number, format: FormatName): number | null {
  const ordinary = ordinaryOf(quantity, format)
  if (!ordinary || isWithin(ordinary, value)) return null
  const others = [value / 10, value * 10].map(other => Number(other.toPrecision(12)))
  const usual = usualOf(quantity, format) ?? ordinary
  return others.find(other => isWithin(usual, other)) ?? null
}

type Reach = readonly [number, number]
const isWithin = ([least, most]: Reach, value: number): boolean => value >= least && value <= most

/** What most cells of a format are sold as, where that is narrower than the ordinary; common practice, no source for the margin. */
function usualOf(quantity: Quantity, format: FormatName): Reach | null {
  if (quantity !== 'claimed-capacity') return null
  const { best, credible } = capacityLines(format)
  return [0.3 * best, credible]
}

/** What cells of a format, true or false ones, are usually claimed to have or found to be; common practice, no source for the margins. */
function ordinaryOf(quantity: Quantity, format: FormatName): Reach | null {
  const { diameter_mm, length_mm } = nominalSize(format)
  switch (quantity) {
    case 'capacity':
    case 'claimed-capacity': {
      const { best, credible } = capacityLines(format)
      return [0.1 * best, credible]
    }
    case 'current':
    case 'claimed-current': {
      const lines = currentLines[format]
      return lines ? [0.5, lines.toTemperature.credible] : null
    }
    case 'mass': {
      const window = masses['nickel-or-cobalt']?.[format]
      return window ? [0.5 * window.lightest, 1.3 * window.heaviest] : null
    }
    case 'diameter':
      return [0.8 * diameter_mm, 1.2 * diameter_mm]
    case 'length':
      return [0.8 * length_mm, 1.3 * length_mm]
    default:
      return null
  }
}
