// One shape for every line of a benchmark: what was measured, against what, the ratio with its spread, and the limit it is held to.

export type Line = {
  readonly what: string
  readonly ours: string
  readonly baseline: string
  /** Ours over baseline, or baseline over ours where more is better. */
  readonly ratio: number
  /** The least and the largest ratio of the parts that a run falls into; none where it has no parts. */
  readonly spread?: readonly [number, number]
  /** `atMost`: the ratio must not exceed it; `atLeast`: it must reach it; none: printed only. */
  readonly atMost?: number
  readonly atLeast?: number
}

export type Held = 'holds' | 'MISSED' | 'undecided' | ''

/** A limit within the spread of a ratio that misses it is undecided: another run may hold it. */
export function held({ ratio, spread = [ratio, ratio], atMost = Infinity, atLeast = 0 }: Line): Held {
  if (atMost === Infinity && atLeast === 0) return ''
  if (ratio <= atMost && ratio >= atLeast) return 'holds'
  const [least, most] = spread
  return least <= atMost && most >= atLeast ? 'undecided' : 'MISSED'
}

const limitOf = ({ atMost, atLeast }: Line): string =>
  atMost !== undefined ? `at most ${atMost}` : atLeast !== undefined ? `at least ${atLeast}` : ''
export const spreadOf = ({ spread }: Line): string =>
  spread ? ` (${spread.map(one => one.toFixed(2)).join('–')})` : ''

/** Prints the lines and says whether none of them is missed. */
export function printTable(title: string, lines: readonly Line[]): boolean {
  console.log(`\n${title}`)
  for (const line of lines)
    console.log(
      `  ${line.what}: ${line.ours} against ${line.baseline}, ratio ${line.ratio.toFixed(2)}${spreadOf(line)} ${limitOf(line)} ${held(line)}`.trimEnd(),
    )
  return lines.every(line => held(line) !== 'MISSED')
}

export function quantile(values: readonly number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN
}

const parts = 5
/** The ratio of the two quantiles, and its spread over five parts of the run, each in the order of time. */
export function compared(
  ours: readonly number[],
  theirs: readonly number[],
  q = 0.5,
): { ratio: number; spread: [number, number] } {
  const part = (values: readonly number[], i: number) =>
    values.slice(Math.floor((i * values.length) / parts), Math.floor(((i + 1) * values.length) / parts))
  const whole = quantile(ours, q) / quantile(theirs, q)
  const each = Array.from({ length: parts }, (_, i) => quantile(part(ours, i), q) / quantile(part(theirs, i), q))
  const known = each.filter(Number.isFinite)
  return { ratio: whole, spread: [Math.min(whole, ...known), Math.max(whole, ...known)] }
}

export const ms = (value: number): string => `${value.toFixed(value < 1 ? 4 : 2)} ms`
