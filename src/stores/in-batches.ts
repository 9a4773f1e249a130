// Long work in short pieces: between two of them whoever clicks is answered.
import { setImmediate as turn } from 'node:timers/promises'

/** Rows in a piece: some milliseconds, on SQLite during which nothing else runs. */
export const atOnce = 500

/** Does `piece`, which says how many rows it met, until it meets fewer than `atOnce`; says how many all of them met. */
export async function inBatches(piece: () => Promise<number | bigint>): Promise<number> {
  for (let all = 0; ; await turn()) {
    const met = Number(await piece())
    all += met
    if (met < atOnce) return all
  }
}

/** A list in parts of so many. */
export function* pieces<T>(all: readonly T[], of: number): Generator<T[]> {
  for (let i = 0; i < all.length; i += of) yield all.slice(i, i + of)
}
