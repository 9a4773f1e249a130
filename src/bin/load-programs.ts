// Loads the shipped packs and a server's own into programs; what cannot be used is said in sentences.
import { setImmediate as turn } from 'node:timers/promises'
import { sayProblem } from '../discord/words/problem-words.ts'
import { sayIn } from '../discord/words/say.ts'
import { openPrograms, type Programs } from '../engine/programs.ts'
import { loadPacks } from './load-packs.ts'
import type { ParsedFiles } from './read-yaml.ts'
import { shippedRules } from './shipped-rules.ts'
import { UnusablePacks } from './unusable-packs.ts'

/** The programs of the shipped packs and of those in `folder`. Throws `UnusablePacks` if one of them cannot be read. */
export async function loadPrograms(folder: string | undefined, parsed?: ParsedFiles): Promise<Programs> {
  const say = sayIn('en')
  const options = { cases: false, ...(parsed && { parsed }) }
  const shipped = await loadPacks(shippedRules, options)
  const base = shipped.packs.map(loaded => loaded.pack)
  const more = folder === undefined ? { packs: [], problems: [] } : await loadPacks(folder, { ...options, base })
  const problems = [...shipped.problems, ...more.problems]
  if (problems.length > 0)
    throw new UnusablePacks(problems.map(({ file, problem }) => `${file}: ${sayProblem(say, problem)}`))
  return openPrograms([...base, ...more.packs.map(loaded => loaded.pack)])
}

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
