// What an attack came to, and the table of several.

export type Result = {
  readonly what: string
  readonly done: number
  /** The first few of what went wrong, and how often something did. */
  readonly wrong: readonly string[]
  readonly slowestMs?: number
  readonly took: number
}

/** Collects what goes wrong; keeps the first few in words. */
export function openWrongs() {
  const wrong: string[] = []
  return { wrong, tell: (sentence: string) => void wrong.push(sentence.slice(0, 200)) }
}

/** Prints the results; says whether nothing went wrong. */
export function printResults(results: readonly Result[]): boolean {
  for (const { what, done, wrong, slowestMs, took } of results) {
    const slow = slowestMs === undefined ? '' : `, the slowest answer after ${slowestMs.toFixed(0)} ms`
    console.log(
      `  ${done.toLocaleString('en')} ${what}: ${wrong.length} went wrong${slow}; ${(took / 1000).toFixed(0)} s`,
    )
    for (const sentence of wrong.slice(0, 5)) console.log(`    - ${sentence}`)
  }
  return results.every(one => one.wrong.length === 0)
}
