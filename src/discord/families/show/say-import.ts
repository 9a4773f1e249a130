// Why a file cannot be taken in, in one sentence that says what to change.
import type { Pack } from '../../../engine/pack/pack.ts'
import type { ReadFile } from '../../../services/family-files.ts'
import { sayFactProblem } from '../../../words/family-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'

export function sayImportProblem(say: Say, base: Pack, read: Extract<ReadFile, { ok: false }>): string {
  if ('tooLarge' in read) return say('families.import.too-large', { most: read.tooLarge })
  if ('yaml' in read) return say('families.import.yaml', { says: plain(read.yaml).slice(0, 150) })
  const [problem] = read.problems
  if (!problem) return say('families.import.not-a-family')
  switch (problem.code) {
    case 'not-a-family':
    case 'newer-format':
      return say(`families.import.${problem.code}`)
    case 'shape':
      return say('families.import.shape', {
        at: plain(problem.at).slice(0, 80),
        says: plain(problem.says).slice(0, 150),
      })
    case 'too-deep':
    case 'too-many-entries':
    case 'too-many-features':
      return say('families.import.too-much', { code: problem.code })
    case 'words-with-link':
      return say('families.problem.name-reads-like-link')
    default:
      return sayFactProblem(say, base, problem)
  }
}
