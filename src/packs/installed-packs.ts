// The shipped packs and a server's own, read and checked, or remembered from an earlier start if no file has changed since.
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { compile } from '../engine/compile.ts'
import type { Pack } from '../engine/pack/pack.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { code, type Memory, remembered, yamlReaders } from './remembered.ts'
import { shippedRules } from './shipped-rules.ts'
import { UnusablePacks } from './unusable-packs.ts'

/** The code that decides what a pack's files mean: with other code, nothing is remembered. A test holds it complete. */
export const packReaders = code([...yamlReaders, 'packs/load-packs.ts', 'packs/load-by-language.ts'])

/** The pack of invented makers: for practice, for tests and as a pattern, and never for a server's own checks. */
export const demoPack = 'paper-harbour'

export type Installed = {
  readonly packs: readonly Pack[]
  /** Why packs of one's own were left out, a sentence each; the rest works without them. */
  readonly leftOut: readonly string[]
}

/** The installed packs; broken ones of one's own are left out. Throws `UnusablePacks` if a shipped one cannot be used. */
export async function installedPacks(folder: string | undefined, memory?: Memory): Promise<Installed> {
  if (!memory) return readInstalledPacks(folder)
  return remembered(memory, [...packReaders, ...(await packFiles(folder))], () => readInstalledPacks(folder))
}

async function readInstalledPacks(folder: string | undefined): Promise<Installed> {
  // YAML, its schema and the words for its mistakes are loaded only where packs are read.
  const [{ loadPacks }, { sayProblem }, { sayIn }] = await Promise.all([
    import('./load-packs.ts'),
    import('../words/problem-words.ts'),
    import('../words/say.ts'),
  ])
  const say = sayIn('en')
  const shipped = await loadPacks(shippedRules, { cases: false })
  const base = shipped.packs.map(loaded => loaded.pack)
  if (shipped.problems.length > 0)
    throw new UnusablePacks(shipped.problems.map(({ file, problem }) => `${file}: ${sayProblem(say, problem)}`))
  const more = folder === undefined ? { packs: [], problems: [] } : await loadPacks(folder, { cases: false, base })
  const leftOut = more.problems.map(({ file, problem }) => `${file}: ${sayProblem(say, problem)}`)
  const packs = [...base]
  for (const { pack, folder: home } of more.packs) {
    // A pack that names what another has named already, or that is too tangled, would stop every check of the rest.
    const problems = unusableBeside(pack, packs)
    if (problems.length === 0) packs.push(pack)
    else leftOut.push(...problems.map(problem => `${home}: ${sayProblem(say, problem)}`))
  }
  return { packs, leftOut }
}

/** What keeps a pack from being used together with these. */
function unusableBeside(pack: Pack, others: readonly Pack[]): readonly PackProblem[] {
  const taken = new Set(others.flatMap(other => other.families.map(family => family.id)))
  const twice = pack.families.filter(family => taken.has(family.id))
  if (twice.length > 0) return twice.map(({ id }) => ({ code: 'duplicate', at: pack.id, what: 'family', name: id }))
  if (others.some(other => other.id === pack.id))
    return [{ code: 'duplicate', at: pack.id, what: 'pack', name: pack.id }]
  for (const family of pack.families.length > 0 ? pack.families : [undefined]) {
    const result = compile([...others, pack], pack.written, family?.id)
    if (!result.ok) return result.problems
  }
  return []
}

/** The packs' files, cases left out. */
async function packFiles(folder: string | undefined): Promise<string[]> {
  const folders = [shippedRules, ...(folder === undefined ? [] : [folder])]
  const listed = await Promise.all(
    folders.map(async one => (await readdir(one, { recursive: true })).map(name => join(one, name))),
  )
  return listed
    .flat()
    .filter(name => name.endsWith('.yaml') && !/[\\/]cases[\\/]/.test(name))
    .sort()
}
