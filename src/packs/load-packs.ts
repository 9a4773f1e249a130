// Reads a folder of rule packs from disk: YAML in, checked packs and their cases out, every problem named with its file.
//
// A pack is a folder: pack.yaml, parts/*.yaml with more sources, questions, rules and families, cases/*.yaml, words/ and letters/.
import { createHash } from 'node:crypto'
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Pack } from '../engine/pack/pack.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { readPack, shapeProblems } from '../engine/pack/read-pack.ts'
import { casesSchema, partSchema, type RawCase } from '../engine/pack/schema.ts'
import { loadLetters, loadWords } from './load-by-language.ts'
import { readYaml, type YamlFile } from './read-yaml.ts'
import { yamlFiles } from './yaml-files.ts'

export type FileProblem = { readonly file: string; readonly problem: PackProblem }
export type WrittenCase = { readonly file: string; readonly index: number; readonly case: RawCase }
export type LoadedPack = { readonly pack: Pack; readonly folder: string; readonly cases: readonly WrittenCase[] }
export type Loading = { readonly packs: readonly LoadedPack[]; readonly problems: readonly FileProblem[] }

export type LoadOptions = {
  /** Packs that the loaded ones may use without lying in the same folder. */
  readonly base?: readonly Pack[]
  /** A running bot needs no cases. */
  readonly cases?: boolean
}

/**
 * Loads every pack below `folder` (or `folder` itself, if it is a pack), bases before those that use them. Packs with
 * problems are left out. Throws only if the folder cannot be read.
 */
export async function loadPacks(folder: string, { base = [], cases = true }: LoadOptions = {}): Promise<Loading> {
  const problems: FileProblem[] = []
  const packs: LoadedPack[] = []
  const folders = await packFolders(folder)
  const written = await Promise.all(folders.map(async one => ({ folder: one, files: await readFiles(one) })))
  for (const { folder: home, files } of inOrder(written)) {
    const found = files.flatMap(({ file, problems: mine }) => mine.map(problem => ({ file, problem })))
    problems.push(...found)
    if (found.length > 0) continue
    const result = readPack(merged(files), [...base, ...packs.map(loaded => loaded.pack)], digestOf(files))
    if (!result.ok) {
      problems.push(...located(files, result.problems))
      continue
    }
    const loaded = cases ? await loadCases(join(home, 'cases')) : { cases: [], problems: [] }
    const told = await loadWords(join(home, 'words'), result.pack)
    const letters = await loadLetters(join(home, 'letters'), result.pack)
    problems.push(...loaded.problems, ...told.problems, ...letters.problems)
    const pack = { ...result.pack, words: told.by, letters: letters.by }
    packs.push({ pack, folder: home, cases: loaded.cases })
  }
  return { packs, problems }
}

async function packFolders(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true })
  if (entries.some(entry => entry.name === 'pack.yaml')) return [folder]
  const inner = entries.filter(entry => entry.isDirectory()).map(entry => join(folder, entry.name))
  const found = await Promise.all(
    inner.sort().map(async one => ((await readdir(one)).includes('pack.yaml') ? [one] : [])),
  )
  return found.flat()
}

async function readFiles(folder: string): Promise<YamlFile[]> {
  const parts = await yamlFiles(join(folder, 'parts'))
  return Promise.all([join(folder, 'pack.yaml'), ...parts].map(readYaml))
}

type Part = { sources?: object; questions?: unknown[]; rules?: unknown[]; families?: unknown[] }

/** One pack out of its files: lists follow each other, sources stand together. */
function merged(files: readonly YamlFile[]): unknown {
  const [head, ...parts] = files.map(file => file.data as Part | null | undefined)
  if (typeof head !== 'object' || head === null || parts.length === 0) return head
  const all = [head, ...parts.filter(part => typeof part === 'object' && part !== null)] as Part[]
  const list = (key: 'questions' | 'rules' | 'families') =>
    all.flatMap(part => (Array.isArray(part[key]) ? part[key] : []))
  return {
    ...head,
    sources: Object.assign({}, ...all.map(part => part.sources ?? {})),
    questions: list('questions'),
    rules: list('rules'),
    families: list('families'),
  }
}

/** Problems of shape are named with the part they are in; what is said of names holds for the pack as a whole. */
function located(files: readonly YamlFile[], problems: readonly PackProblem[]): FileProblem[] {
  const [head, ...parts] = files
  const inParts = parts.flatMap(({ file, data }) => {
    const read = partSchema.safeParse(data)
    return read.success ? [] : shapeProblems(read.error).map(problem => ({ file, problem }))
  })
  return inParts.length > 0 ? inParts : problems.map(problem => ({ file: head?.file ?? '', problem }))
}

function digestOf(files: readonly YamlFile[]): string {
  const [only] = files
  if (files.length === 1 && only) return `sha256:${only.digest}`
  const all = createHash('sha256')
  for (const { digest } of files) all.update(digest)
  return `sha256:${all.digest('hex')}`
}

async function loadCases(folder: string): Promise<{ cases: WrittenCase[]; problems: FileProblem[] }> {
  const cases: WrittenCase[] = []
  const problems: FileProblem[] = []
  for (const file of await yamlFiles(folder)) {
    const { data, problems: found } = await readYaml(file)
    problems.push(...found.map(problem => ({ file, problem })))
    if (found.length > 0) continue
    const read = casesSchema.safeParse(data)
    if (read.success) cases.push(...read.data.map((one, index) => ({ file, index, case: one })))
    else problems.push(...shapeProblems(read.error).map(problem => ({ file, problem })))
  }
  return { cases, problems }
}

type Written = { readonly folder: string; readonly files: readonly YamlFile[] }

/** Bases before those that use them. */
function inOrder(packs: readonly Written[]): Written[] {
  const headOf = ({ files }: Written) => (files[0]?.data ?? {}) as { pack?: string; uses?: string[] }
  const out: Written[] = []
  const visit = (one: Written, path: readonly Written[]) => {
    if (out.includes(one) || path.includes(one)) return
    const used = headOf(one).uses ?? []
    for (const other of packs)
      if (Array.isArray(used) && used.includes(headOf(other).pack ?? '')) visit(other, [...path, one])
    out.push(one)
  }
  for (const one of packs) visit(one, [])
  return out
}
