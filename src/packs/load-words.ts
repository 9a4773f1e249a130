// Loads a pack's words in other languages: words/de.yaml, or words/de/*.yaml where one file would be too long.
import { readdir } from 'node:fs/promises'
import { basename, join } from 'node:path'
import type { Pack, PackWords } from '../engine/pack/pack.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { joinWords, readWords } from '../engine/pack/read-words.ts'
import { readYaml, yamlFiles } from './read-yaml.ts'

type Found = { readonly file: string; readonly problem: PackProblem }
export type LoadedWords = { readonly words: Readonly<Record<string, PackWords>>; readonly problems: readonly Found[] }

/** The words of `pack` in the folder, by language; a file with a problem is left out. */
export async function loadWords(folder: string, pack: Pack): Promise<LoadedWords> {
  const words: Record<string, PackWords> = {}
  const problems: Found[] = []
  for (const { file, language } of await wordFiles(folder)) {
    const { data, problems: found } = await readYaml(file)
    problems.push(...found.map(problem => ({ file, problem })))
    if (found.length > 0) continue
    if (!/^[a-z]{2,3}$/.test(language) || language === pack.language) {
      problems.push({ file, problem: { code: 'not-a-language', at: '(file name)', name: language } })
      continue
    }
    const read = readWords(data, pack)
    const joined = read.ok ? joinWords(words[language], read.words) : read
    if (joined.ok) words[language] = joined.words
    else problems.push(...joined.problems.map(problem => ({ file, problem })))
  }
  return { words, problems }
}

async function wordFiles(folder: string): Promise<{ file: string; language: string }[]> {
  const files = await yamlFiles(folder)
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => [])
  const inner = entries.filter(entry => entry.isDirectory()).map(entry => entry.name)
  const split = await Promise.all(
    inner.sort().map(async language => (await yamlFiles(join(folder, language))).map(file => ({ file, language }))),
  )
  return [...files.map(file => ({ file, language: basename(file, '.yaml') })), ...split.flat()]
}
