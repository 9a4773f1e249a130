// What was answered so far, from which any answer can be chosen to be asked again.
import { ComponentType } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { encodeClick } from '../../../custom-ids/check-id.ts'
import type { Program } from '../../../engine/compile.ts'
import { sayAnswer } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { cut, message, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { button } from './check-buttons.ts'

/** Discord's most in one menu; the latest come first, and so the oldest of more are left out. */
const mostChoices = 25

export function showAnswers(say: Say, program: Program, check: Check): ShownMessage {
  const given = [...check.trail].reverse().flatMap(id => {
    const question = program.questions.get(id)
    const answer = check.answers[id]
    return question && answer ? [{ id, ask: question.ask, said: sayAnswer(say, question, answer) }] : []
  })
  const options = given.slice(0, mostChoices).map(({ id, ask, said }) => ({
    value: id,
    label: cut(said, 100),
    description: cut(ask, 100),
  }))
  const act = { is: 'change' } as const
  return message([
    text(`### ${say('answers.title')}\n${say('answers.text')}`),
    ...rows(
      [
        {
          type: ComponentType.StringSelect as const,
          custom_id: encodeClick({ check: check.id, revision: check.revision, act }),
          placeholder: cut(say('answers.choose'), 150),
          options,
        },
      ],
      1,
    ),
    ...rows([button(check, { is: 'show' }, say('check.back'))]),
    small(say('caution.line')),
  ])
}
