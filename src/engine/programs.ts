// The programs of all installed packs: one per family, compiled when first needed, found again for the day a check began on.
import type { FamilyId, QuestionId } from './answers.ts'
import { type Compiling, compile, compiling, type PackRef, type Program } from './compile.ts'
import { type Bench, openBench } from './outlook/bench.ts'
import type { Family, Pack } from './pack/pack.ts'

export type Programs = {
  readonly packs: readonly PackRef[]
  /** The installed packs that hold for every cell. */
  readonly general: readonly Pack[]
  /** Days between two last days of figures are one period, and share programs. */
  periodOf(day: string): number
  readonly families: readonly Family[]
  /** Compiles for a family (null: none known) as of a day, YYYY-MM-DD; the result is kept. */
  compileFor(family: FamilyId | null, day: string): Compiling
  /** The same in slices: after the first the program is there, and what it has not worked out yet it works out when it is asked. */
  compilingFor(family: FamilyId | null, day: string): Generator<Compiling, Compiling, void>
  /** Compiles a pack of one family that is not installed, beside what holds for every cell; the result is not kept. */
  compileBeside(pack: Pack, day: string): Compiling
  /** The program; undefined for a family that is not installed or whose packs do not compile. */
  programFor(family: FamilyId | null, day: string): Program | undefined
}

/** `also`: questions that are known to every program, whether or not a rule reads them. Programs on one bench share what they can. */
export function openPrograms(
  packs: readonly Pack[],
  also: readonly QuestionId[] = [],
  shared: Bench = openBench(),
): Programs {
  let bench = shared
  const compiled = new Map<string, Compiling>()
  const general = packs.filter(pack => pack.families.length === 0)
  const lastDays = [...new Set(packs.flatMap(pack => pack.rules.flatMap(rule => rule.validUntil ?? [])))].sort()
  const periodOf = (day: string): number => lastDays.filter(last => last < day).length

  function compileFor(family: FamilyId | null, day: string): Compiling {
    const key = `${periodOf(day)} ${family ?? ''}`
    const known = compiled.get(key)
    if (known) return known
    const result = compile(packs, day, family ?? undefined, also, benchWithRoom())
    compiled.set(key, result)
    return result
  }

  function* compilingFor(family: FamilyId | null, day: string): Generator<Compiling, Compiling, void> {
    const key = `${periodOf(day)} ${family ?? ''}`
    const known = compiled.get(key)
    if (known) return known
    const slices = compiling(packs, day, family ?? undefined, also, benchWithRoom())
    for (;;) {
      const slice = slices.next()
      compiled.set(key, slice.value)
      if (slice.done) return slice.value
      yield slice.value
    }
  }

  function benchWithRoom(): Bench {
    if (bench.full) bench = openBench()
    return bench
  }

  return {
    packs: packs.map(({ id, version, digest }) => ({ id, version, digest })),
    general,
    periodOf,
    families: packs.flatMap(pack => pack.families),
    compileFor,
    compilingFor,
    compileBeside: (pack, day) => compile([...general, pack], day, pack.id, also, benchWithRoom()),
    programFor(family, day) {
      const result = compileFor(family, day)
      return result.ok ? result.program : undefined
    },
  }
}

/** An installed family by its id; undefined for none. */
export function findFamily(programs: Programs, id: FamilyId | null): Family | undefined {
  return programs.families.find(family => family.id === id)
}
