// What an attack came to, and the table of several.
import { cpus, loadavg } from 'node:os'

export type Result = {
  readonly what: string
  readonly done: number
  /** What went wrong, each in a sentence. */
  readonly wrong: readonly string[]
  readonly slowestMs?: number
  /** What was measured, in words. */
  readonly figures?: string
  /** In ms. */
  readonly took: number
}

/** Collects what goes wrong. */
export function openWrongs() {
  const wrong: string[] = []
  return { wrong, tell: (sentence: string) => void wrong.push(sentence.slice(0, 200)) }
}

/** Prints the results; says whether nothing went wrong. */
export function printResults(results: readonly Result[]): boolean {
  for (const { what, done, wrong, slowestMs, figures, took } of results) {
    const slow = slowestMs === undefined ? '' : `, the slowest answer after ${slowestMs.toFixed(0)} ms`
    const measured = figures === undefined ? '' : `, ${figures}`
    console.log(
      `  ${done.toLocaleString('en')} ${what}: ${wrong.length} went wrong${slow}${measured}; ${(took / 1000).toFixed(0)} s`,
    )
    for (const sentence of wrong.slice(0, 5)) console.log(`    - ${sentence}`)
  }
  return results.every(one => one.wrong.length === 0)
}

/** The same as a table for a page, under a line that says where and when. */
export function tableOf(results: readonly Result[], size: string, at: Date): string {
  const [{ model = 'unknown processor' } = {}] = cpus()
  const busy = loadavg()[2]?.toFixed(1)
  const head = `Size \`${size}\`, ${at.toISOString().slice(0, 10)}, ${cpus().length} × ${model.trim()}, Node ${process.version}, a load of ${busy} over the last quarter of an hour.`
  const rows = results.map(({ what, done, wrong, slowestMs, figures, took }) => {
    const measured = [figures, slowestMs && `slowest answer ${slowestMs.toFixed(0)} ms`].filter(Boolean).join('; ')
    return `| ${done.toLocaleString('en')} ${what} | ${wrong.length} | ${measured} | ${(took / 1000).toFixed(0)} s |`
  })
  return [head, '', '| what | went wrong | measured | took |', '| --- | --- | --- | --- |', ...rows].join('\n')
}
