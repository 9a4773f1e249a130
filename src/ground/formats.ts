// Cylindrical formats by their trade code: two digits of diameter in mm, three of length in 0.1 mm.

export const formatNames = [
  '10280',
  '10440',
  '14250',
  '14430',
  '14500',
  '14650',
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
  '26800',
  '32650',
  '32700',
  '33140',
  '38120',
  '40152',
  '46800',
  '46950',
] as const

export type FormatName = (typeof formatNames)[number]

export const isFormat = (name: string): name is FormatName => (formatNames as readonly string[]).includes(name)

export type Size = {
  readonly diameter_mm: number
  readonly length_mm: number
}

/** Nominal size of a bare cell by its trade code. The longest formats give their length in whole mm, as 33140 does. */
export function nominalSize(format: FormatName): Size {
  const length = Number(format.slice(2))
  return { diameter_mm: Number(format.slice(0, 2)), length_mm: length >= 100 && length <= 160 ? length : length / 10 }
}

/** Volume in litres of the cylinder that the nominal size describes. */
export function nominalVolume(format: FormatName): number {
  const { diameter_mm, length_mm } = nominalSize(format)
  return (Math.PI / 4) * diameter_mm ** 2 * length_mm * 1e-6
}
