// The programs of families: packs derived and compiled when they are needed, and forgotten again by the least recently used.
import { LRUCache } from 'lru-cache'
import type { Program } from '../engine/compile.ts'
import type { Pack } from '../engine/pack/pack.ts'
import type { Programs } from '../engine/programs.ts'
import { derive } from './derive/derive.ts'
import type { Facts } from './facts/facts-schema.ts'
import type { Candidate } from './weigh/held-against.ts'

/** A program takes some megabytes, a derived pack some kilobytes. */
const mostPrograms = 64
const mostPacks = 4000

export type Described = {
  readonly facts: Facts
  /** By which a check names it. */
  readonly digest: string
  readonly number: number
  /** Held against a construction alone, "nothing found" cannot come out. */
  readonly openEnded?: boolean
}

export type FamilyPrograms = {
  /** The pack that holds the questions. */
  readonly base: Pack
  /** Undefined where nothing can be made of the facts any more. */
  candidate(described: Described): Candidate | undefined
  program(described: Described, day: string): Program | undefined
}

/** Throws a `RangeError` without a pack that holds for every cell. */
export function openFamilyPrograms(installed: Programs): FamilyPrograms {
  const base = installed.general.find(pack => pack.questions.length > 0)
  if (!base) throw new RangeError('families need a pack of questions')
  const packs = new LRUCache<string, { readonly made: Candidate | undefined }>({ max: mostPacks })
  const programs = new LRUCache<string, { readonly made: Program | undefined }>({ max: mostPrograms })

  function candidate(described: Described): Candidate | undefined {
    const { facts, digest, number, openEnded = false } = described
    const key = `${digest} ${facts.identity.id} ${number} ${openEnded}`
    const known = packs.get(key)
    if (known) return known.made
    const derived = derive(facts, base as Pack, { digest, number, openEnded })
    const made = derived.ok ? { facts, pack: derived.pack } : undefined
    packs.set(key, { made })
    return made
  }

  return {
    base,
    candidate,
    program(described, day) {
      const { facts, digest, number } = described
      const key = `${digest} ${facts.identity.id} ${number} ${installed.periodOf(day)}`
      const known = programs.get(key)
      if (known) return known.made
      const pack = candidate(described)?.pack
      const compiling = pack && installed.compileBeside(pack, day)
      const made = compiling?.ok ? compiling.program : undefined
      programs.set(key, { made })
      return made
    },
  }
}
