// One shape for every line of a benchmark: what was measured, against what, the ratio, and the limit it is held to.

export type Line = {
  readonly what: string
  readonly ours: string
  readonly baseline: string
  /** Ours over baseline, or baseline over ours where more is better. */
  readonly ratio: number
  /** `atMost`: the ratio must not exceed it; `atLeast`: it must reach it; none: printed only. */
  readonly atMost?: number
  readonly atLeast?: number
}

const holds = ({ ratio, atMost = Infinity, atLeast = 0 }: Line): boolean => ratio <= atMost && ratio >= atLeast

/** Prints the lines and says whether all of them hold. */
export function printTable(title: string, lines: readonly Line[]): boolean {
  console.log(`\n${title}`)
  for (const line of lines) {
    const limit =
      line.atMost !== undefined
        ? `at most ${line.atMost}`
        : line.atLeast !== undefined
          ? `at least ${line.atLeast}`
          : ''
    const mark = limit === '' ? '' : holds(line) ? 'holds' : 'MISSED'
    console.log(
      `  ${line.what}: ${line.ours} against ${line.baseline}, ratio ${line.ratio.toFixed(2)} ${limit} ${mark}`.trimEnd(),
    )
  }
  return lines.every(holds)
}

export function quantile(values: readonly number[], q: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN
}

export const ms = (value: number): string => `${value.toFixed(value < 1 ? 4 : 2)} ms`
