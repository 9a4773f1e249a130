// What was erased, as keyed digests beside the database: a database that was put back from a back-up has it erased again.
import { createHmac } from 'node:crypto'
import { mkdir, readdir, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { KeptValues } from './cache-adapter.ts'
import { openEpochKeys } from './epoch-keys.ts'

/** A person, a server, or a pseudonym or code that outcomes stood under. */
export type Erased = { readonly is: 'person' | 'server' | 'pseudonym'; readonly word: string }

export type Erasures = {
  /** Erases by `erase`; noted in the list before, and in the database after it. */
  noting<T>(what: readonly Erased[], erase: () => Promise<T>): Promise<T>
  /** What the list has and this database has not erased since, looked for among `there` only where there is any. */
  owed(there: () => AsyncIterable<Erased>): Promise<readonly Erased[]>
  /** Notes that nothing is owed any more. */
  settled(): Promise<void>
}

/** Back-ups are deleted after two weeks; whoever keeps them for longer is covered for so long, in ms. */
export const remembered = 90 * 24 * 3600_000

type Noted = { readonly digest: string; readonly at: number }
const notedIn = (name: string): Noted | undefined => {
  const [, digest, at] = /^([0-9a-f]{64})-(\d+)$/.exec(name) ?? []
  return digest === undefined ? undefined : { digest, at: Number(at) }
}

/** `folder` is shared by all processes, and in no back-up; `kept`: values of the database itself. */
export function openErasures(folder: string, kept: KeptValues, now: () => number): Erasures {
  const key = () => openEpochKeys(join(folder, 'key')).keyOf('erasures')
  const digestsOf = async (what: readonly Erased[]) => {
    const secret = await key()
    return what.map(({ is, word }) => createHmac('sha256', secret).update(`${is}\0${word}`).digest('hex'))
  }

  /** The latest of each; what is too old goes. */
  async function list(): Promise<Noted[]> {
    const latest = new Map<string, Noted>()
    for (const name of await readdir(folder).catch(() => [])) {
      const one = notedIn(name)
      if (one && one.at < now() - remembered) await rm(join(folder, name), { force: true })
      else if (one && one.at > (latest.get(one.digest)?.at ?? 0)) latest.set(one.digest, one)
    }
    return [...latest.values()]
  }

  async function notErased(): Promise<Noted[]> {
    const found: Noted[] = []
    const all = await list()
    for (let i = 0; i < all.length; i += 500) {
      const some = all.slice(i, i + 500)
      const values = await kept.getMany<string>(some.map(one => one.digest))
      found.push(...some.filter((one, n) => Number(values[n] ?? 0) < one.at))
    }
    return found
  }

  const note = (all: readonly Noted[]) =>
    kept.setMany(all.map(({ digest, at }) => ({ key: digest, value: String(at), expires: at + remembered })))

  return {
    async noting(what, erase) {
      const before = new Map((await list()).map(one => [one.digest, one.at]))
      // Later than the last time, also where the clock has been set back.
      const noted = (await digestsOf(what)).map(digest => ({
        digest,
        at: Math.max(now(), (before.get(digest) ?? 0) + 1),
      }))
      await mkdir(folder, { recursive: true, mode: 0o700 })
      for (const { digest, at } of noted) await writeFile(join(folder, `${digest}-${at}`), '', { mode: 0o600 })
      const done = await erase()
      await note(noted)
      return done
    },

    async owed(there) {
      const missing = new Set((await notErased()).map(one => one.digest))
      if (missing.size === 0) return []
      const found = new Map<string, Erased>()
      for await (const one of there()) {
        const [digest = ''] = await digestsOf([one])
        if (missing.has(digest)) found.set(digest, one)
      }
      return [...found.values()]
    },

    settled: async () => void (await note(await notErased())),
  }
}
