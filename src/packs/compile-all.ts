// Compiles every program where there is time, so that nobody waits for one later.
import { setImmediate as turn } from 'node:timers/promises'
import type { Compiling } from '../engine/compile.ts'
import type { Programs } from '../engine/programs.ts'
import { sayProblem } from '../words/problem-words.ts'
import { sayIn } from '../words/say.ts'
import { UnusablePacks } from './unusable-packs.ts'

/**
 * Makes every family's program, giving way to other work between two of them, and hands back the rest of the work in slices: until that
 * is done, a program works out what it is asked. Both throw `UnusablePacks`, the slices if the packs are too tangled to be judged exactly.
 */
export async function compileAll(programs: Programs, day: string): Promise<Generator<unknown, void, void>> {
  const begun: Generator<Compiling, Compiling, void>[] = []
  for (const family of [null, ...programs.families.map(one => one.id)]) {
    await turn()
    const slices = programs.compilingFor(family, day)
    const first = slices.next()
    usable(first.value)
    if (!first.done) begun.push(slices)
  }
  return rest(begun)
}

function* rest(begun: readonly Generator<Compiling, Compiling, void>[]): Generator<unknown, void, void> {
  for (const slices of begun) usable(yield* slices)
}

function usable(result: Compiling): void {
  if (!result.ok) throw new UnusablePacks(result.problems.map(problem => sayProblem(sayIn('en'), problem)))
}
