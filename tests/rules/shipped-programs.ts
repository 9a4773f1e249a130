// The packs that ship, and their programs: for a cell that nobody has named, and for each family; compiled once for all tests of a process.
import { compile, type Program } from '../../src/engine/compile.ts'
import { openBench } from '../../src/engine/outlook/bench.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'

export const shippedPacks = (await loadPacks(shippedRules, { cases: false })).packs.map(({ pack }) => pack)
const bench = openBench()
const made = new Map<string | undefined, Program>()

export function shippedProgram(family?: string): Program {
  const before = made.get(family)
  if (before) return before
  const compiled = compile(shippedPacks, '2026-11-29', family, [], bench)
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  made.set(family, compiled.program)
  return compiled.program
}
/** The first is of a cell that nobody has named. */
export const shippedPrograms = (): readonly Program[] =>
  [undefined, ...shippedPacks.flatMap(pack => pack.families.map(({ id }) => id))].map(shippedProgram)
