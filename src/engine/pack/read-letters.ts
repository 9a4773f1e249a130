// Reads what letters say of a pack in one language and holds it against the pack: ids it does not know are problems.
import type { LetterQuestion, Letters, Pack } from './pack.ts'
import type { PackProblem } from './problems.ts'
import { findUnknown, shapeProblems } from './read-pack.ts'
import { lettersSchema, type RawLetters } from './schema.ts'

export type LettersReading =
  | { readonly ok: true; readonly letters: Letters }
  | { readonly ok: false; readonly problems: readonly PackProblem[] }

/** Checks and reads one language's letters for `pack`. Nothing of them is kept if one has a problem. */
export function readLetters(raw: unknown, pack: Pack): LettersReading {
  const shape = lettersSchema.safeParse(raw ?? {})
  if (!shape.success) return { ok: false, problems: shapeProblems(shape.error) }
  const { questions, rules } = shape.data
  const problems: PackProblem[] = []
  const known = (list: readonly { readonly id: string }[]) => list.map(one => one.id)
  findUnknown('questions', 'question', Object.keys(questions), known(pack.questions), problems)
  findUnknown('rules', 'rule', Object.keys(rules), known(pack.rules), problems)
  const read = Object.entries(questions).map(([id, told]) => [id, readQuestion(told)] as const)
  for (const [id, told] of read) {
    const answer = pack.questions.find(question => question.id === id)?.answer
    const options = told === false ? [] : Object.keys(told.options)
    if (answer?.kind === 'options')
      findUnknown(`questions.${id}.options`, 'option', options, known(answer.options), problems)
    else if (answer && options.length > 0)
      problems.push({ code: 'not-an-option-question', at: `questions.${id}.options`, name: id })
  }
  if (problems.length > 0) return { ok: false, problems }
  return { ok: true, letters: { questions: Object.fromEntries(read), rules } }
}

function readQuestion(raw: RawLetters['questions'][string]): LetterQuestion | false {
  if (raw === false) return false
  if (typeof raw === 'string') return { is: raw, options: {} }
  return { ...(raw.is !== undefined && { is: raw.is }), options: raw.options }
}
