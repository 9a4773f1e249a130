// Reads YAML from a file or a text; what is wrong becomes a problem with its line.
import { createHash } from 'node:crypto'
import { readFile, stat } from 'node:fs/promises'
import { type Document, isNode, isScalar, LineCounter, parseDocument, visit } from 'yaml'
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

/**
 * Parses YAML text; duplicate keys, alias bombs and plain mistakes become problems with their line. The library's own ways to show
 * a mistake and to look for keys that stand twice take the square of a long line and of many keys.
 */
export function parseYaml(text: string): { data: unknown; problems: PackProblem[] } {
  const lineCounter = new LineCounter()
  const document = parseDocument(text, { prettyErrors: false, uniqueKeys: false, lineCounter })
  const lineOf = (at: number) => `line ${lineCounter.linePos(at).line}`
  const problems = [...document.errors, ...document.warnings].map(
    (error): PackProblem => ({ code: 'yaml', at: lineOf(error.pos[0]), says: error.message.split('\n')[0] ?? '' }),
  )
  if (problems.length === 0)
    problems.push(...keyProblems(document).map(({ at, says }) => ({ code: 'yaml' as const, at: lineOf(at), says })))
  if (problems.length > 0) return { data: undefined, problems }
  try {
    return { data: document.toJS({ maxAliasCount: 100 }), problems: [] }
  } catch (error) {
    return { data: undefined, problems: [{ code: 'yaml', at: '(file)', says: (error as Error).message }] }
  }
}

/** Keys that stand twice in one map, and those that are no plain words: to write such a one down takes the library ever longer the deeper it goes. */
export function keyProblems(document: Document): { readonly at: number; readonly says: string }[] {
  const found: { at: number; says: string }[] = []
  visit(document, {
    Map(_, map) {
      const seen = new Set<unknown>()
      for (const { key } of map.items) {
        if (key !== null && !isScalar(key)) {
          found.push({ at: isNode(key) ? (key.range?.[0] ?? 0) : 0, says: 'A key has to be a plain word' })
          return visit.BREAK
        }
        if (!isScalar(key)) continue
        if (seen.has(key.value))
          found.push({ at: key.range?.[0] ?? 0, says: `Map keys must be unique: ${String(key.value)}` })
        seen.add(key.value)
      }
      return undefined
    },
  })
  return found
}
