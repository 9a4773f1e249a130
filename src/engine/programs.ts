// The programs of all installed packs: one per family, compiled once, and found again for the day a check began on.
import type { FamilyId } from './answers.ts'
import { compile, type PackRef, type Program } from './compile.ts'
import type { Family, Pack } from './pack/pack.ts'
import type { PackProblem } from './pack/problems.ts'

export type Programs = {
  readonly packs: readonly PackRef[]
  readonly families: readonly Family[]
  /** The program for a family (null: none known) as of a day, YYYY-MM-DD. A family no longer installed gives undefined. */
  programFor(family: FamilyId | null, day: string): Program | undefined
}

/** Compiles every program once, as of `today`; `{ ok: false }` names what is wrong with the packs. */
export function openPrograms(
  packs: readonly Pack[],
  today: string,
):
  | { readonly ok: true; readonly programs: Programs }
  | { readonly ok: false; readonly problems: readonly PackProblem[] } {
  const compiled = new Map<string, Program>()
  const lastDays = [...new Set(packs.flatMap(pack => pack.rules.flatMap(rule => rule.validUntil ?? [])))].sort()
  /** Days between two last days of figures share a program. */
  const periodOf = (day: string): number => lastDays.filter(last => last < day).length
  const families = packs.flatMap(pack => pack.families)

  function programFor(family: FamilyId | null, day: string): Program | undefined {
    if (family !== null && !families.some(one => one.id === family)) return undefined
    const key = `${periodOf(day)} ${family ?? ''}`
    const known = compiled.get(key)
    if (known) return known
    const result = compile(packs, day, family ?? undefined)
    // openPrograms compiled every family before; only a figure's last day lies between, and dropping rules untangles.
    if (!result.ok) throw new RangeError(`the program for ${family} no longer compiles`)
    compiled.set(key, result.program)
    return result.program
  }

  for (const family of [undefined, ...families.map(one => one.id)]) {
    const result = compile(packs, today, family)
    if (!result.ok) return { ok: false, problems: result.problems }
    compiled.set(`${periodOf(today)} ${family ?? ''}`, result.program)
  }
  const refs = packs.map(({ id, version, digest }) => ({ id, version, digest }))
  return { ok: true, programs: { packs: refs, families, programFor } }
}

/** An installed family by its id; undefined for none. */
export function findFamily(programs: Programs, id: FamilyId | null): Family | undefined {
  return programs.families.find(family => family.id === id)
}
