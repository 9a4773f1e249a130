// Compiles every program where there is time, so that nobody waits for one later.
import { setImmediate as turn } from 'node:timers/promises'
import type { Programs } from '../engine/programs.ts'
import { sayProblem } from '../words/problem-words.ts'
import { sayIn } from '../words/say.ts'
import { UnusablePacks } from './unusable-packs.ts'

/**
 * Compiles every family's program, giving way to other work between two of them. Throws `UnusablePacks` if the packs are too
 * tangled to be judged exactly.
 */
export async function compileAll(programs: Programs, day: string): Promise<void> {
  const say = sayIn('en')
  for (const family of [null, ...programs.families.map(one => one.id)]) {
    await turn()
    const result = programs.compileFor(family, day)
    if (!result.ok) throw new UnusablePacks(result.problems.map(problem => sayProblem(say, problem)))
  }
}
