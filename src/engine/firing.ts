// Which rules of a program fire as its answers stand: weighed are those alone that read an answer which tells something.
import type { Program } from './compile.ts'
import type { Places } from './outlook/places.ts'
import type { Rule } from './pack/pack.ts'

type Index = {
  /** The rules that read each question of the space, by where they stand. */
  readonly readers: readonly (readonly number[])[]
  /** Whether each rule fires where nothing can be told. */
  readonly atRest: readonly boolean[]
}

const indexes = new WeakMap<Program['weighers'], Index>()

/** The rules that fire, in the program's order; `places` as it stands, with nothing open. */
export function firing(program: Program, places: Places): readonly Rule[] {
  const { readers, atRest } = indexOf(program)
  const { questions } = program.space
  const told = new Uint8Array(atRest.length)
  for (let i = 0; i < questions.length; i++)
    if (places[i] !== questions[i]?.variable.unsure) for (const rule of readers[i] ?? []) told[rule] = 1
  return program.rules.filter((_, i) => (told[i] ? program.weighers[i]?.(places) === 2 : atRest[i]))
}

function indexOf({ weighers, rules, reads, space }: Program): Index {
  const known = indexes.get(weighers)
  if (known) return known
  const rest = space.questions.map(one => one.variable.unsure)
  const readers: number[][] = space.questions.map(() => [])
  for (const [i, { id }] of rules.entries())
    for (const question of reads.get(id) ?? []) readers[space.indexOf.get(question) ?? -1]?.push(i)
  const index = { readers, atRest: weighers.map(weigher => weigher(rest) === 2) }
  indexes.set(weighers, index)
  return index
}
