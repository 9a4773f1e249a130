// What letters say of a program's questions and rules in one language: its packs' own forms, the question itself where they have none.
import type { Answer } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import type { LetterQuestion, Letters, Question, Rule } from '../../engine/pack/pack.ts'
import { sayAnswer } from '../describe.ts'
import { bare } from '../plain.ts'
import type { Say } from '../say.ts'

export type LetterWords = {
  /** A thing and what it was found to be; undefined where it tells of the writer alone, or nothing. */
  fact(question: Question, answer: Answer): string | undefined
  /** What a thing is called, for what could not be told; undefined where it has no name of its own. */
  name(question: Question): string | undefined
  /** Why it cannot be so. */
  reason(rule: Rule): string | undefined
  /** Whether the answer follows the name of the thing, so that another answer can stand beside it. */
  isNamed(question: Question, answer: Answer): boolean
}

export function letterWords(say: Say, program: Program): LetterWords {
  const { questions, rules } = lettersOf(program, say.locale.split('-')[0] ?? say.locale)
  const said = (question: Question, answer: Answer) => {
    const known = questions[question.id]
    return known && answer.kind === 'option' ? known.options[answer.option] : undefined
  }
  const name = (question: Question) => {
    const known = questions[question.id]
    return known === undefined ? oneLine(question.ask, 300) : known === false ? undefined : known.is
  }
  return {
    name,
    reason: rule => rules[rule.id],
    isNamed: (question, answer) => said(question, answer) === undefined && questions[question.id] !== undefined,
    fact(question, answer) {
      const known = questions[question.id]
      if (known === false || answer.kind === 'cant-tell') return undefined
      const statement = said(question, answer)
      if (statement !== undefined) return statement === false ? undefined : oneLine(statement, 160)
      const value = oneLine(sayAnswer(say, question, answer), 100)
      if (known?.is === undefined) return say('answer.said', { question: oneLine(question.ask, 300), answer: value })
      return say('letter.fact', { thing: oneLine(known.is, 80), value })
    },
  }
}

function lettersOf(program: Program, language: string): Letters {
  const told = program.scope.flatMap(({ letters = {}, language: own }) =>
    [letters[own], letters[language]].flatMap(one => one ?? []),
  )
  const questions: Record<string, LetterQuestion | false> = {}
  for (const one of told)
    for (const [id, words] of Object.entries(one.questions)) if (questions[id] !== false) questions[id] = words
  return { questions, rules: Object.assign({}, ...told.map(one => one.rules)) }
}

/** Text of a pack as one line of a letter: no line of its own making, nothing unseen in it, cut at whole characters. */
export function oneLine(text: string, most: number): string {
  const letters = [...bare(text).replace(/\p{Cf}/gu, '')]
  return letters.length <= most ? letters.join('') : `${letters.slice(0, most - 1).join('')}…`
}
