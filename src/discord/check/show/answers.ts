// What was answered so far, from which any answer can be chosen to be asked again.
import type { Check } from '../../../check/check.ts'
import type { Program } from '../../../engine/compile.ts'
import { sayAnswer } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { message, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { button, menu, mostChoices } from './check-buttons.ts'

/** The latest come first; what one menu has no room for stands in the next. */
export function showAnswers(say: Say, program: Program, check: Check): ShownMessage {
  const options = [...check.trail].reverse().flatMap(id => {
    const question = program.questions.get(id)
    const answer = check.answers[id]
    return question && answer ? [{ id, label: sayAnswer(say, question, answer), hint: question.ask }] : []
  })
  const older = Array.from({ length: Math.max(0, Math.ceil(options.length / mostChoices) - 1) }, (_, i) => i + 1)
  return message([
    text(`### ${say('answers.title')}\n${say('answers.text')}`),
    ...rows([menu(check, { is: 'change' }, say('answers.choose'), options)], 1),
    ...older.flatMap(part =>
      rows([menu(check, { is: 'change-older', part }, say('answers.older'), options.slice(part * mostChoices))], 1),
    ),
    ...rows([button(check, { is: 'show' }, say('check.back'))]),
    small(say('caution.line')),
  ])
}
