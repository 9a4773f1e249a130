// Families as handlers ask for them: which program a check is judged by, what a server describes, and what a cell is held against.
//
// No news goes between processes: a start reads the head of its family, and a check is found by the digest it began with.
import { LRUCache } from 'lru-cache'
import type { PackRef, Program } from '../engine/compile.ts'
import type { Family, Pack } from '../engine/pack/pack.ts'
import { findFamily, type Programs } from '../engine/programs.ts'
import { asFamily, constructionFamily, isConstructionFamily } from '../families/construction.ts'
import { factsDigest, type Sha256 } from '../families/derive/facts-digest.ts'
import type { Construction } from '../families/facts/facts-schema.ts'
import { toldIn } from '../families/facts/settle-facts.ts'
import type { Version } from '../families/family.ts'
import type { Described, FamilyPrograms } from '../families/family-programs.ts'
import type { FamilyHead, FamilyStore, PhotoHead } from '../families/family-store.ts'
import { lookedAtAnyway } from '../families/features.ts'
import { type Candidate, groupsOf, nextLook } from '../families/weigh/held-against.ts'

/** Names in completion, and what a cell is held against beside its verdict, may be so old, in ms. */
const mayBeOld = 5000
/** So many sets of families are remembered with what parts them. */
const mostLooking = 64

type Asked = {
  readonly server: string | null
  readonly family: string | null
  readonly day: string
  readonly packs: readonly PackRef[]
}

export type FamilyDesk = {
  readonly store: FamilyStore
  readonly base: Pack
  readonly constructions: readonly Construction[]
  readonly sha256: Sha256
  readonly programs: FamilyPrograms
  /** The program a check began with, whatever was put in force since; undefined where it is gone. */
  programOf(check: Asked): Promise<Program | undefined>
  /** The program of what a check is started as, read anew; undefined for what this server does not have, or has retired. */
  programToStart(server: string | null, family: string | null, day: string): Promise<Program | undefined>
  /** The installed programs with those of a server's families beside them, as of some seconds ago. */
  programsFor(server: string | null): Promise<Programs>
  /** What a check's family is called; undefined for none. */
  familyOf(server: string | null, family: string | null): Promise<Family | undefined>
  /** A server's families as of some seconds ago. */
  heads(server: string): Promise<readonly FamilyHead[]>
  /** The families in force, to be held against; as of some seconds ago. */
  candidates(server: string | null): Promise<readonly Candidate[]>
  /** The constructions, to be held against where a server describes none. */
  built(): readonly Candidate[]
  /** The number of the version in force, if it is another one than the check began with. */
  newer(check: Asked): Promise<number | undefined>
  /** The photographs of a family, without their pixels; as of some seconds ago. */
  photos(server: string, family: string): Promise<readonly PhotoHead[]>
  /** What this process remembers of a server's families is read anew. */
  renew(server: string): void
}

/** What was read, and when. */
type Remembered<T> = { readonly at: number; readonly read: Promise<T> }

export const isServerFamily = (family: string | null): family is string => family?.startsWith('f-') ?? false

export function openFamilyDesk(
  store: FamilyStore,
  installed: Programs,
  programs: FamilyPrograms,
  constructions: readonly Construction[],
  sha256: Sha256,
  now: () => number,
): FamilyDesk {
  const headsOf = new Map<string, Remembered<readonly FamilyHead[]>>()
  const versions = new Map<string, Version>()
  const asVersion = ({ facts, digest, number }: Version): Described => ({ facts, digest, number })

  const described = (construction: Construction): Described => {
    const facts = asFamily(construction, toldIn(construction.title, 'en'), construction.formats[0] ?? '18650')
    return { facts, digest: factsDigest(facts, sha256), number: 1, openEnded: true }
  }
  let derived: readonly Candidate[] | undefined
  /** Derived when first asked for: a start does not wait for it. */
  const built = (): readonly Candidate[] => {
    derived ??= constructions.flatMap(one => programs.candidate(described(one)) ?? [])
    return derived
  }

  const constructionProgram = (family: string, day: string): Program | undefined => {
    const found = constructions.find(one => constructionFamily(one.construction) === family)
    return found && programs.program(described(found), day)
  }

  async function versionBy(server: string, family: string, digest: string): Promise<Version | undefined> {
    const key = `${server} ${family} ${digest}`
    const known = versions.get(key)
    if (known) return known
    const read = await store.byDigest(server, family, digest)
    if (read) versions.set(key, read)
    if (versions.size > 2000) versions.delete(versions.keys().next().value ?? '')
    return read
  }

  const heads = remembered(headsOf, 5000, store.heads)
  const photosOf = new Map<string, Remembered<readonly PhotoHead[]>>()

  /** Reads again what is older than may be; nothing is remembered of a reading that failed. */
  function remembered<T>(known: Map<string, Remembered<T>>, most: number, read: (key: string) => Promise<T>) {
    return (key: string): Promise<T> => {
      const before = known.get(key)
      if (before && now() - before.at < mayBeOld) return before.read
      const after = read(key)
      known.set(key, { at: now(), read: after })
      after.catch(() => known.delete(key))
      if (known.size > most) known.delete(known.keys().next().value ?? '')
      return after
    }
  }
  const photos = remembered(photosOf, 2000, key => {
    const [server = '', family = ''] = key.split(' ')
    return store.photos(server, family)
  })

  async function candidates(server: string | null): Promise<readonly Candidate[]> {
    if (server === null) return []
    const inForce = (await heads(server)).filter(one => one.state !== 'retired' && one.digest !== null)
    const found = await Promise.all(inForce.map(one => versionBy(server, one.id, one.digest ?? '')))
    return found.flatMap(version => (version ? (programs.candidate(asVersion(version)) ?? []) : []))
  }

  /** The same program every time for the same families: what is worked out of it is found again. */
  const looking = new WeakMap<Program, LRUCache<string, Program>>()

  /** A cell that nobody has described is looked at for what parts the families here, or the constructions. */
  async function withLooks(program: Program, server: string | null): Promise<Program> {
    const mine = await candidates(server)
    const key = mine.map(one => `${one.pack.id} ${one.pack.digest}`).join()
    const kept = looking.get(program) ?? new LRUCache<string, Program>({ max: mostLooking })
    looking.set(program, kept)
    const known = kept.get(key) ?? lookingBeside(program, groupsOf(mine.length > 0 ? mine : built()))
    kept.set(key, known)
    return known
  }

  function lookingBeside(program: Program, groups: readonly (readonly Candidate[])[]): Program {
    const beside: Program['beside'] = {
      among: lookedAtAnyway,
      next(answers) {
        const format = answers['format']
        const sized =
          format?.kind === 'option' ? groups.filter(([one]) => one?.facts.identity.format === format.option) : groups
        return nextLook(sized.length > 0 ? sized : groups, programs.base, answers, lookedAtAnyway)?.question
      },
    }
    return { ...program, beside }
  }

  return {
    ...{ store, base: programs.base, constructions, sha256, programs, heads, candidates, built },

    async programOf({ server, family, day, packs }) {
      if (family === null) {
        const program = installed.programFor(null, day)
        return program && withLooks(program, server)
      }
      if (isConstructionFamily(family)) return constructionProgram(family, day)
      if (!isServerFamily(family)) return installed.programFor(family, day)
      const digest = packs.find(pack => pack.id === family)?.digest
      const version = server !== null && digest !== undefined ? await versionBy(server, family, digest) : undefined
      return version && programs.program(asVersion(version), day)
    },

    async programToStart(server, family, day) {
      if (family === null) {
        const program = installed.programFor(null, day)
        return program && withLooks(program, server)
      }
      if (isConstructionFamily(family)) return constructionProgram(family, day)
      if (!isServerFamily(family)) return installed.programFor(family, day)
      const known = server === null ? undefined : await store.load(server, family)
      if (!known || known.head === 0 || known.state === 'retired') return undefined
      const version = await store.version(known.server, family, known.head)
      return version && programs.program(asVersion(version), day)
    },

    async programsFor(server) {
      const known = server === null ? [] : (await heads(server)).filter(one => one.digest !== null)
      const read = await Promise.all(known.map(one => versionBy(server ?? '', one.id, one.digest ?? '')))
      const mine = new Map(read.flatMap(version => (version ? [[version.family, asVersion(version)]] : [])))
      const named = [...mine.values()].flatMap(one => programs.candidate(one)?.pack.families ?? [])
      return {
        ...installed,
        families: [...installed.families, ...named, ...built().flatMap(one => one.pack.families)],
        programFor(family, day) {
          const own = family === null ? undefined : mine.get(family)
          if (own) return programs.program(own, day)
          return family !== null && isConstructionFamily(family)
            ? constructionProgram(family, day)
            : installed.programFor(family, day)
        },
      }
    },

    async familyOf(server, family) {
      if (family === null) return undefined
      const shipped = findFamily(installed, family)
      if (shipped) return shipped
      if (isConstructionFamily(family)) return built().find(one => one.pack.id === family)?.pack.families[0]
      const head = server === null ? undefined : (await heads(server)).find(one => one.id === family)
      if (!head) return undefined
      const { id, name, maker } = head
      return { id, pack: id, name, maker, given: {}, enough: [], show: {} }
    },

    async newer({ server, family, packs }) {
      if (server === null || !isServerFamily(family)) return undefined
      const head = (await heads(server)).find(one => one.id === family)
      const mine = packs.find(pack => pack.id === family)?.digest
      return head?.digest && head.digest !== mine ? head.head : undefined
    },

    photos: (server, family) => photos(`${server} ${family}`),

    renew(server) {
      headsOf.delete(server)
      for (const key of photosOf.keys()) if (key.startsWith(`${server} `)) photosOf.delete(key)
    },
  }
}
