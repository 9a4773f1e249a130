// Turns a condition as written in a pack into one the engine weighs, or says which name in it is wrong.
import type { Condition } from '../conditions.ts'
import type { Question } from './pack.ts'
import type { PackProblem } from './problems.ts'
import type { RawCondition } from './schema.ts'

type Written = RawCondition[string]

/** Reads one condition; problems are added to `problems` under the path `at`. */
export function readCondition(
  raw: RawCondition,
  questions: ReadonlyMap<string, Question>,
  at: string,
  problems: PackProblem[],
): Condition {
  const parts = Object.entries(raw).map(([key, value]): Condition => {
    const path = `${at}.${key}`
    if (key === 'all' || key === 'any') {
      const of = (value as RawCondition[]).map((part, i) => readCondition(part, questions, `${path}[${i}]`, problems))
      return { op: key, of }
    }
    if (key === 'not') return { op: 'not', of: readCondition(value as RawCondition, questions, path, problems) }
    return readAtom(key, value, questions, path, problems)
  })
  return parts.length === 1 && parts[0] ? parts[0] : { op: 'all', of: parts }
}

function readAtom(
  name: string,
  value: Written,
  questions: ReadonlyMap<string, Question>,
  at: string,
  problems: PackProblem[],
): Condition {
  const question = questions.get(name)
  const unless = typeof value === 'object' && !Array.isArray(value) && 'unless' in value ? value.unless : undefined
  const named = (unless ?? value) as Written
  if (typeof named === 'string' || Array.isArray(named)) {
    const options = (typeof named === 'string' ? [named] : named) as string[]
    if (!question) problems.push({ code: 'unknown-name', at, what: 'question', name, known: [...questions.keys()] })
    else if (question.answer.kind !== 'options') problems.push({ code: 'not-an-option-question', at, name })
    else {
      const known = question.answer.options.map(option => option.id)
      for (const option of options)
        if (!known.includes(option)) problems.push({ code: 'unknown-name', at, what: 'option', name: option, known })
    }
    return { op: unless === undefined ? 'is' : 'unless', question: name, options }
  }
  const [op, limit] = Object.entries(value as object)[0] as ['below' | 'above', number]
  if (!question) problems.push({ code: 'unknown-name', at, what: 'question', name, known: [...questions.keys()] })
  else if (question.answer.kind !== 'reading') problems.push({ code: 'not-a-reading-question', at, name })
  else if (!(limit > question.answer.least && limit < question.answer.most)) {
    const { least, most } = question.answer
    problems.push({ code: 'limit-out-of-range', at, name, limit, least, most })
  }
  return { op, question: name, limit }
}
