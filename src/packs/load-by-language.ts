// Loads what stands beside a pack in several languages: de.yaml, or de/*.yaml where one file would be too long.
import { readdir } from 'node:fs/promises'
import { basename, join } from 'node:path'
import type { Letters, Pack, PackWords } from '../engine/pack/pack.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { readLetters } from '../engine/pack/read-letters.ts'
import { joinWords, readWords } from '../engine/pack/read-words.ts'
import { readYaml } from './read-yaml.ts'
import { yamlFiles } from './yaml-files.ts'

type Found = { readonly file: string; readonly problem: PackProblem }
type Loaded<T> = { readonly by: Readonly<Record<string, T>>; readonly problems: readonly Found[] }
type Read<T> =
  | { readonly ok: true; readonly read: T }
  | { readonly ok: false; readonly problems: readonly PackProblem[] }

/** A pack's words in the folder `words`, by language; its own language has none. A file with a problem is left out. */
export const loadWords = (folder: string, pack: Pack): Promise<Loaded<PackWords>> =>
  loadByLanguage(
    folder,
    language => language !== pack.language,
    (data, before) => {
      const found = readWords(data, pack)
      const joined = found.ok ? joinWords(before, found.words) : found
      return joined.ok ? { ok: true, read: joined.words } : joined
    },
  )

/** What letters to a seller say of a pack, in the folder `letters`, by language. A file with a problem is left out. */
export const loadLetters = (folder: string, pack: Pack): Promise<Loaded<Letters>> =>
  loadByLanguage(
    folder,
    () => true,
    (data, before) => {
      const found = readLetters(data, pack)
      if (!found.ok) return found
      const { questions, rules } = found.letters
      return {
        ok: true,
        read: { questions: { ...before?.questions, ...questions }, rules: { ...before?.rules, ...rules } },
      }
    },
  )

/** `before`: what an earlier file of the same language has said. */
async function loadByLanguage<T>(
  folder: string,
  mayBe: (language: string) => boolean,
  read: (data: unknown, before: T | undefined) => Read<T>,
): Promise<Loaded<T>> {
  const by: Record<string, T> = {}
  const problems: Found[] = []
  for (const { file, language } of await filesByLanguage(folder)) {
    const { data, problems: found } = await readYaml(file)
    problems.push(...found.map(problem => ({ file, problem })))
    if (found.length > 0) continue
    if (!/^[a-z]{2,3}$/.test(language) || !mayBe(language)) {
      problems.push({ file, problem: { code: 'not-a-language', at: '(file name)', name: language } })
      continue
    }
    const result = read(data, by[language])
    if (result.ok) by[language] = result.read
    else problems.push(...result.problems.map(problem => ({ file, problem })))
  }
  return { by, problems }
}

async function filesByLanguage(folder: string): Promise<{ file: string; language: string }[]> {
  const files = await yamlFiles(folder)
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => [])
  const inner = entries.filter(entry => entry.isDirectory()).map(entry => entry.name)
  const split = await Promise.all(
    inner.sort().map(async language => (await yamlFiles(join(folder, language))).map(file => ({ file, language }))),
  )
  return [...files.map(file => ({ file, language: basename(file, '.yaml') })), ...split.flat()]
}
