// Says why a file of settings cannot be read, and what of one is left out and why.
import type { FileProblem } from '../server/exchange.ts'
import type { Field } from '../server/history.ts'
import { partOfField } from '../server/setup-part.ts'
import type { Problem } from '../server/setup-problem.ts'
import type { LeftOut } from '../server/take-in.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'
import { sayProblem } from './setup-words.ts'

export function sayFileProblem(say: Say, problem: FileProblem): string {
  if (problem.code === 'shape') return say('setup.file.shape', { at: plain(problem.at.slice(0, 60)) })
  const { code, ...values } = problem
  return say(`setup.file.${code}`, values)
}

/** What is of another server, or does not fit here. */
export function sayAway(say: Say, { field, problem }: { readonly field: Field; readonly problem: Problem }): string {
  const elsewhere = problem.code === 'role-gone' || (problem.code === 'place' && problem.state.is === 'gone')
  const why = elsewhere ? say('setup.file.not-here') : sayProblem(say, problem)
  return say('setup.file.left-out.part', { part: say(`setup.part.${partOfField[field]}`), why })
}

export function sayLeftOut(say: Say, left: LeftOut): string {
  if (left.is === 'field')
    return say('setup.file.left-out.part', {
      part: say(`setup.part.${partOfField[left.field]}`),
      why: sayProblem(say, left.refusal),
    })
  const { code, ...context } = left.refusal
  const values = Object.entries(context).map(([key, value]) => [key, typeof value === 'string' ? plain(value) : value])
  const why = say(`refusal.${code}`, Object.fromEntries(values))
  return say('setup.file.left-out.link', { title: plain(left.title.slice(0, 60)), why })
}
