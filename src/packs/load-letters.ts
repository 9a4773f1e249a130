// Loads what letters to a seller say of a pack: letters/en.yaml and one file for each other language.
import { basename } from 'node:path'
import type { Letters, Pack } from '../engine/pack/pack.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import { readLetters } from '../engine/pack/read-letters.ts'
import { readYaml, yamlFiles } from './read-yaml.ts'

type Found = { readonly file: string; readonly problem: PackProblem }
export type LoadedLetters = {
  readonly letters: Readonly<Record<string, Letters>>
  readonly problems: readonly Found[]
}

/** The letters of `pack` in the folder, by language; a file with a problem is left out. */
export async function loadLetters(folder: string, pack: Pack): Promise<LoadedLetters> {
  const letters: Record<string, Letters> = {}
  const problems: Found[] = []
  for (const file of await yamlFiles(folder)) {
    const { data, problems: found } = await readYaml(file)
    problems.push(...found.map(problem => ({ file, problem })))
    if (found.length > 0) continue
    const language = basename(file, '.yaml')
    const read = readLetters(data, pack)
    if (!/^[a-z]{2,3}$/.test(language))
      problems.push({ file, problem: { code: 'not-a-language', at: '(file name)', name: language } })
    else if (read.ok) letters[language] = read.letters
    else problems.push(...read.problems.map(problem => ({ file, problem })))
  }
  return { letters, problems }
}
