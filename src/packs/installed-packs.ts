// The shipped packs and a server's own, read and checked, or remembered from an earlier start if no file has changed since.
import { createHash } from 'node:crypto'
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Pack } from '../engine/pack/pack.ts'
import { shippedRules } from './shipped-rules.ts'
import { UnusablePacks } from './unusable-packs.ts'

/** Remembers values by key for as long as it likes, as Keyv does. */
export type Memory = { get(key: string): Promise<unknown>; set(key: string, value: unknown): Promise<unknown> }

/** The code that decides what a pack's files mean, as paths: with other code, nothing is remembered. A test holds it complete. */
export const readers = [
  ...['pack.ts', 'problems.ts', 'read-condition.ts', 'read-pack.ts', 'read-words.ts', 'schema.ts'].map(
    name => `../engine/pack/${name}`,
  ),
  '../engine/conditions.ts',
  '../engine/truth.ts',
  './load-packs.ts',
  './load-words.ts',
  './read-yaml.ts',
].map(path => fileURLToPath(new URL(path, import.meta.url)))

/** The installed packs. Throws `UnusablePacks` if one of them cannot be used. */
export async function installedPacks(folder: string | undefined, memory?: Memory): Promise<readonly Pack[]> {
  if (!memory) return readInstalledPacks(folder)
  const key = await hashOf(folder)
  // What cannot be remembered is read.
  const known = (await memory.get(key).catch(() => undefined)) as readonly Pack[] | undefined
  if (known) return known
  const packs = await readInstalledPacks(folder)
  await memory.set(key, packs).catch(() => undefined)
  return packs
}

async function readInstalledPacks(folder: string | undefined): Promise<readonly Pack[]> {
  // YAML, its schema and the words for its mistakes are loaded only where packs are read.
  const [{ loadPacks }, { sayProblem }, { sayIn }] = await Promise.all([
    import('./load-packs.ts'),
    import('../words/problem-words.ts'),
    import('../words/say.ts'),
  ])
  const shipped = await loadPacks(shippedRules, { cases: false })
  const base = shipped.packs.map(loaded => loaded.pack)
  const more = folder === undefined ? { packs: [], problems: [] } : await loadPacks(folder, { cases: false, base })
  const problems = [...shipped.problems, ...more.problems]
  if (problems.length > 0)
    throw new UnusablePacks(problems.map(({ file, problem }) => `${file}: ${sayProblem(sayIn('en'), problem)}`))
  return [...base, ...more.packs.map(loaded => loaded.pack)]
}

/** A hash over the packs' files, cases left out, and the code that reads them. */
async function hashOf(folder: string | undefined): Promise<string> {
  const folders = [shippedRules, ...(folder === undefined ? [] : [folder])]
  const listed = await Promise.all(
    folders.map(async one => (await readdir(one, { recursive: true })).map(name => join(one, name))),
  )
  const files = listed.flat().filter(name => name.endsWith('.yaml') && !/[\\/]cases[\\/]/.test(name))
  const all = [...readers, ...files.sort()]
  const hash = createHash('sha256')
  for (const [i, text] of (await Promise.all(all.map(file => readFile(file)))).entries())
    hash.update(`${all[i]}\0`).update(text)
  return hash.digest('hex')
}
