// Does work that comes in slices: clicks that came in meanwhile go between two of them.
import { setImmediate as turn } from 'node:timers/promises'

export async function inTurns<Result>(slices: Generator<unknown, Result, void>): Promise<Result> {
  for (;;) {
    const slice = slices.next()
    if (slice.done) return slice.value
    await turn()
  }
}
