// Reads YAML from a file or a text; what is wrong becomes a problem with its line.
import { createHash } from 'node:crypto'
import { readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { parseDocument } from 'yaml'
import type { PackProblem } from '../engine/pack/problems.ts'

/** A file may not be larger than this many bytes, so that a careless upload cannot fill the memory. */
const largestFile = 1_000_000

export type YamlFile = {
  readonly file: string
  readonly digest: string
  readonly data: unknown
  readonly problems: readonly PackProblem[]
}

export async function readYaml(file: string): Promise<YamlFile> {
  if ((await stat(file)).size > largestFile)
    return { file, digest: '', data: undefined, problems: [{ code: 'too-large', at: '(file)', most: largestFile }] }
  const text = await readFile(file, 'utf8')
  const digest = createHash('sha256').update(text).digest('hex')
  return { file, digest, ...parseYaml(text) }
}

/** Parses YAML text; duplicate keys, alias bombs and plain mistakes become problems with their line. */
export function parseYaml(text: string): { data: unknown; problems: PackProblem[] } {
  const document = parseDocument(text, { prettyErrors: true, uniqueKeys: true })
  const problems = [...document.errors, ...document.warnings].map((error): PackProblem => {
    const at = error.linePos ? `line ${error.linePos[0].line}` : '(file)'
    return { code: 'yaml', at, says: error.message.split('\n')[0] ?? '' }
  })
  if (problems.length > 0) return { data: undefined, problems }
  try {
    return { data: document.toJS({ maxAliasCount: 100 }), problems: [] }
  } catch (error) {
    return { data: undefined, problems: [{ code: 'yaml', at: '(file)', says: (error as Error).message }] }
  }
}

/** The YAML files of a folder by name; none if there is no such folder. */
export async function yamlFiles(folder: string): Promise<string[]> {
  const names = await readdir(folder).catch(() => [])
  return names
    .filter(name => name.endsWith('.yaml'))
    .sort()
    .map(name => join(folder, name))
}
