// Parts of one run that are done hours or days apart: each is a line of a file, and all of an attack together are one line of the table.
import { appendFile, readFile } from 'node:fs/promises'
import type { Result } from './result.ts'

export type Part = { readonly attack: string; readonly size: string; readonly result: Result }

export async function addPart(file: string, part: Part): Promise<void> {
  await appendFile(file, `${JSON.stringify(part)}\n`)
}

/** In the order in which they were done; none where there is no file yet. */
export async function readParts(file: string): Promise<readonly Part[]> {
  const text = await readFile(file, 'utf8').catch(() => '')
  return text
    .split('\n')
    .filter(Boolean)
    .map(line => JSON.parse(line) as Part)
}

/** One result an attack, in the order of `names`: what was done and went wrong together, the slowest of all, the figures of the last part. */
export function together(parts: readonly Part[], names: readonly string[]): readonly Result[] {
  const by = Map.groupBy(parts, part => part.attack)
  return names.flatMap(name => {
    const results = (by.get(name) ?? []).map(part => part.result)
    const last = results.at(-1)
    if (!last) return []
    const slowest = results.flatMap(one => one.slowestMs ?? [])
    return [
      {
        ...last,
        done: results.reduce((sum, one) => sum + one.done, 0),
        wrong: results.flatMap(one => one.wrong),
        ...(slowest.length > 0 && { slowestMs: Math.max(...slowest) }),
        took: results.reduce((sum, one) => sum + one.took, 0),
      },
    ]
  })
}
