// Reads a folder of rule packs from disk: YAML in, checked packs and their cases out, every problem named with its file.
import { createHash } from 'node:crypto'
import { readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { parseDocument } from 'yaml'
import type { Pack } from '../engine/pack/pack.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { readPack, shapeProblems } from '../engine/pack/read-pack.ts'
import { casesSchema, type RawCase } from '../engine/pack/schema.ts'

export type FileProblem = { readonly file: string; readonly problem: PackProblem }
export type WrittenCase = { readonly file: string; readonly index: number; readonly case: RawCase }
export type LoadedPack = { readonly pack: Pack; readonly folder: string; readonly cases: readonly WrittenCase[] }
export type Loading = { readonly packs: readonly LoadedPack[]; readonly problems: readonly FileProblem[] }

/** A pack's file may not be larger than this many bytes, so that a careless upload cannot fill the memory. */
const largestFile = 1_000_000

/**
 * Loads every pack below `folder` (or `folder` itself, if it is a pack), bases before those that use them. `base` are packs
 * that the ones below may use without lying in the same folder. Packs with problems are left out.
 */
export async function loadPacks(folder: string, base: readonly Pack[] = []): Promise<Loading> {
  const problems: FileProblem[] = []
  const waiting = await Promise.all(
    (await packFolders(folder)).map(async one => ({ folder: one, ...(await readYaml(join(one, 'pack.yaml'))) })),
  )
  const packs: LoadedPack[] = []
  for (const one of inOrder(waiting)) {
    const file = join(one.folder, 'pack.yaml')
    problems.push(...one.problems.map(problem => ({ file, problem })))
    if (one.problems.length > 0) continue
    const digest = `sha256:${createHash('sha256').update(one.text).digest('hex')}`
    const result = readPack(one.data, [...base, ...packs.map(loaded => loaded.pack)], digest)
    if (!result.ok) problems.push(...result.problems.map(problem => ({ file, problem })))
    else {
      const cases = await loadCases(join(one.folder, 'cases'))
      problems.push(...cases.problems)
      packs.push({ pack: result.pack, folder: one.folder, cases: cases.cases })
    }
  }
  return { packs, problems }
}

async function packFolders(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true })
  if (entries.some(entry => entry.name === 'pack.yaml')) return [folder]
  const inner = entries
    .filter(entry => entry.isDirectory())
    .map(entry => join(folder, entry.name))
    .sort()
  const found = await Promise.all(inner.map(async one => ((await exists(join(one, 'pack.yaml'))) ? [one] : [])))
  return found.flat()
}

async function loadCases(folder: string): Promise<{ cases: WrittenCase[]; problems: FileProblem[] }> {
  const cases: WrittenCase[] = []
  const problems: FileProblem[] = []
  const names = (await exists(folder)) ? (await readdir(folder)).filter(name => name.endsWith('.yaml')).sort() : []
  for (const name of names) {
    const file = join(folder, name)
    const { data, problems: found } = await readYaml(file)
    problems.push(...found.map(problem => ({ file, problem })))
    if (found.length > 0) continue
    const read = casesSchema.safeParse(data)
    if (read.success) cases.push(...read.data.map((one, index) => ({ file, index, case: one })))
    else problems.push(...shapeProblems(read.error).map(problem => ({ file, problem })))
  }
  return { cases, problems }
}

async function readYaml(file: string): Promise<{ text: string; data: unknown; problems: PackProblem[] }> {
  if ((await stat(file)).size > largestFile)
    return { text: '', data: undefined, problems: [{ code: 'too-large', at: '(file)', most: largestFile }] }
  const text = await readFile(file, 'utf8')
  return { text, ...parseYaml(text) }
}

/** Parses YAML text; duplicate keys, alias bombs and plain mistakes become problems with their line. */
export function parseYaml(text: string): { data: unknown; problems: PackProblem[] } {
  const document = parseDocument(text, { prettyErrors: true, uniqueKeys: true })
  const problems = [...document.errors, ...document.warnings].map((error): PackProblem => {
    return {
      code: 'yaml',
      at: error.linePos ? `line ${error.linePos[0].line}` : '(file)',
      says: error.message.split('\n')[0] ?? '',
    }
  })
  if (problems.length > 0) return { data: undefined, problems }
  try {
    return { data: document.toJS({ maxAliasCount: 100 }), problems: [] }
  } catch (error) {
    return { data: undefined, problems: [{ code: 'yaml', at: '(file)', says: (error as Error).message }] }
  }
}

function inOrder<T extends { data: unknown }>(packs: readonly T[]): T[] {
  const usesOf = (one: T) => ((one.data as { uses?: string[] } | undefined)?.uses ?? []) as readonly string[]
  const nameOf = (one: T) => (one.data as { pack?: string } | undefined)?.pack
  const out: T[] = []
  const visit = (one: T, path: readonly T[]) => {
    if (out.includes(one) || path.includes(one)) return
    for (const used of packs.filter(other => usesOf(one).includes(nameOf(other) ?? ''))) visit(used, [...path, one])
    out.push(one)
  }
  for (const one of packs) visit(one, [])
  return out
}

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  )
}
