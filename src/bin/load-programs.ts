// Loads the shipped packs and a server's own, and compiles them; what cannot be used is said in sentences.
import { sayProblem } from '../discord/words/problem-words.ts'
import { sayIn } from '../discord/words/say.ts'
import { openPrograms, type Programs } from '../engine/programs.ts'
import { loadPacks } from './load-packs.ts'
import { shippedRules } from './shipped-rules.ts'

/** A pack that cannot be used: each sentence says what to change. */
export class UnusablePacks extends Error {
  readonly sentences: readonly string[]
  constructor(sentences: readonly string[]) {
    super(sentences.join('\n'))
    this.sentences = sentences
  }
}

/** The shipped packs and those in `folder`, compiled as of `now`. */
export async function loadPrograms(folder: string | undefined, now: number): Promise<Programs> {
  const say = sayIn('en')
  const shipped = await loadPacks(shippedRules)
  const base = shipped.packs.map(loaded => loaded.pack)
  const more = folder === undefined ? { packs: [], problems: [] } : await loadPacks(folder, base)
  const problems = [...shipped.problems, ...more.problems]
  if (problems.length > 0)
    throw new UnusablePacks(problems.map(({ file, problem }) => `${file}: ${sayProblem(say, problem)}`))
  const today = new Date(now).toISOString().slice(0, 10)
  const opened = openPrograms([...base, ...more.packs.map(loaded => loaded.pack)], today)
  if (!opened.ok) throw new UnusablePacks(opened.problems.map(problem => sayProblem(say, problem)))
  return opened.programs
}
