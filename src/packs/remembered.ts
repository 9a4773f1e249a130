// What was read from files: remembered from an earlier start if neither they nor the code that reads them have changed since.
import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'

/** Remembers values by key for as long as it likes, as Keyv does. */
export type Memory = { get(key: string): Promise<unknown>; set(key: string, value: unknown): Promise<unknown> }

/** What `read` makes of `files`, which are listed with the code that reads them; what cannot be remembered is read. */
export async function remembered<Value>(
  memory: Memory,
  files: readonly string[],
  read: () => Promise<Value>,
): Promise<Value> {
  const key = await hashOf(files)
  const known = (await memory.get(key).catch(() => undefined)) as Value | undefined
  if (known) return known
  const value = await read()
  await memory.set(key, value).catch(() => undefined)
  return value
}

async function hashOf(files: readonly string[]): Promise<string> {
  const hash = createHash('sha256')
  for (const [i, text] of (await Promise.all(files.map(file => readFile(file)))).entries())
    hash.update(`${files[i]}\0`).update(text)
  return hash.digest('hex')
}

/** Code by its place beside the rooms' folders. */
export const code = (paths: readonly string[]): string[] =>
  paths.map(path => fileURLToPath(new URL(`../${path}`, import.meta.url)))

/** The code behind every file of YAML and the problems found in it. */
export const yamlReaders = [
  ...[
    'pack.ts',
    'problems.ts',
    'read-condition.ts',
    'read-letters.ts',
    'read-pack.ts',
    'read-words.ts',
    'schema.ts',
    'shown-words.ts',
  ].map(name => `engine/pack/${name}`),
  'engine/conditions.ts',
  'engine/truth.ts',
  ...['guard-band.ts', 'quantities.ts', 'tools.ts', 'urgencies.ts', 'verdicts.ts'].map(name => `ground/${name}`),
  ...['read-yaml.ts', 'yaml-files.ts'].map(name => `packs/${name}`),
]
