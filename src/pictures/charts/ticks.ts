// Round numbers for an axis.

/** About `count` ticks from at or above `least` to at or below `most`, in steps of 1, 2 or 5 times a power of ten. */
export function ticks(least: number, most: number, count: number): number[] {
  const span = most - least
  if (!(span > 0) || !Number.isFinite(span)) return [least]
  const rough = span / Math.max(1, count)
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = power * ([1, 2, 5, 10].find(one => one * power >= rough * 0.999) ?? 10)
  const first = Math.ceil(least / step - 1e-9)
  const last = Math.floor(most / step + 1e-9)
  // Whole multiples of the step: adding steps up would let rounding errors grow.
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)))
}

/** Decimals that tell neighbouring ticks apart. */
export function tickDigits(list: readonly number[]): number {
  const step = list.length > 1 ? Math.abs((list[1] as number) - (list[0] as number)) : 1
  return Math.max(0, Math.ceil(-Math.log10(step) - 1e-9))
}
