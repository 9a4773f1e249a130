// Shows a question: what to look at, its picture, an answer for each finger, and the way out.
import { type APIMessageTopLevelComponent, ButtonStyle } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import type { Screen } from '../../../check/screen.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Question } from '../../../engine/pack/pack.ts'
import { isFormat } from '../../../ground/formats.ts'
import { unitOf } from '../../../ground/quantities.ts'
import { tenTimesOff } from '../../../readings/typed/ten-times.ts'
import { sayAnswer, sayWhat } from '../../../words/describe.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { sayPerson } from '../../../words/say-custody.ts'
import { sayMissing } from '../../../words/say-missing.ts'
import { gallery, message, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import type { ShownPicture } from '../../message/shown-picture.ts'
import { handButton, sentBack } from '../hand-over/show/holder-menu.ts'
import { button, menu } from './check-buttons.ts'

type QuestionScreen = Extract<Screen, { kind: 'question' }>

/** Up to this many options are buttons; more become a menu. */
const mostButtons = 5
/** Labels up to this length share a row; longer ones get a row each, so that a phone does not squeeze them. */
const shortLabel = 16

export function showQuestion(
  say: Say,
  program: Program,
  screen: QuestionScreen,
  picture: ShownPicture | undefined,
  note?: string,
): ShownMessage {
  const { check, question, again } = screen
  const head = [
    `### ${screen.helping ? say('helping.title', { holder: sayPerson(check.holder) }) : again ? say('check.again') : say('check.title', { what: sayWhat(say, program.family) })}`,
  ]
  if (again && screen.helping) head.push(say('helping.again'))
  else if (again)
    head.push(say('check.again.why', { answer: sayAnswer(say, question, again) }), ...askOfSlip(say, screen))
  else if (check.cells > 1 && check.trail.length === 0) head.push(say('check.batch', { cells: check.cells }))
  const ask = [`**${question.ask}**`, ...(question.look ? [question.look] : []), `-# ${say(`care.${question.care}`)}`]
  const progress = say('check.progress', { answered: screen.answered, left: screen.left })
  // Said once, where a check begins.
  const missing = check.trail.length === 0 ? sayMissing(say) : undefined
  return message(
    [
      ...(note ? [text(note)] : []),
      ...others(say, program, screen).map(text),
      text(head.join('\n')),
      text(ask.join('\n')),
      ...gallery(picture ? [picture] : []),
      ...answers(say, screen),
      ...(screen.helping ? helperControls(say, screen) : controls(say, screen)),
      small(`${screen.helping ? say('plea.care') : progress} ${say('caution.line')}${missing ? `\n${missing}` : ''}`),
    ],
    picture ? [picture] : [],
  )
}

function answers(say: Say, { check, question, closed = [] }: QuestionScreen): APIMessageTopLevelComponent[] {
  if (question.answer.kind === 'reading')
    return rows([button(check, { is: 'measure' }, say('check.measure'), ButtonStyle.Primary)])
  const options = question.answer.options.map((option, i) => ({
    id: option.id,
    label: say('check.letter', { letter: String.fromCharCode(65 + i), label: option.label }),
    ...(option.hint === undefined ? {} : { hint: option.hint }),
  }))
  const hints = options.filter(option => option.hint).map(option => `${option.label}: ${option.hint}`)
  if (options.length > mostButtons) return rows([menu(check, say('check.choose'), options)], 1)
  const wide = options.every(option => option.label.length <= shortLabel) ? mostButtons : 1
  const buttons = options.map(option => ({
    ...button(check, { is: 'pick', option: option.id }, option.label, ButtonStyle.Primary),
    ...(closed.includes(option.id) && { disabled: true }),
  }))
  return [...(hints.length > 0 ? [small(hints.join('\n'))] : []), ...rows(buttons, wide)]
}

function controls(say: Say, { check, again }: QuestionScreen): APIMessageTopLevelComponent[] {
  return rows([
    button(check, { is: 'unsure' }, say('check.unsure')),
    ...(check.trail.length > 0 || again
      ? [button(check, { is: 'back' }, again ? say('check.not-so') : say('check.back'))]
      : []),
    button(check, { is: 'pause' }, say('check.pause')),
    ...(again ? [] : [button(check, { is: 'finish' }, say('check.finish'))]),
    ...(check.server === null ? [] : [handButton(check, 'hands', say('button.hands'))]),
  ])
}

const helperControls = (say: Say, { check }: QuestionScreen): APIMessageTopLevelComponent[] =>
  rows([button(check, { is: 'unsure' }, say('helping.unsure')), handButton(check, 'send-back', say('plea.send-back'))])

/** What stands above the question: whose cell it is, a danger that could not be told, what a moderator is asked or wrote. */
function others(say: Say, program: Program, { check, question, helping }: QuestionScreen): string[] {
  const { plea, starter } = custodyOf(check)
  if (helping) return plea?.words ? [say('plea.words', { words: plain(plea.words) })] : []
  const wrote = sentBack(say, check)
  return [
    ...(starter === check.holder ? [] : [say('hands.began', { starter: sayPerson(starter) })]),
    ...(mustKeepOff(program, check, question) ? [say('check.hazard-unsure')] : []),
    ...(plea?.question === question.id ? [`${say('hands.asked')} ${say('hands.hot')}`] : []),
    ...(wrote === undefined ? [] : [wrote]),
  ]
}

/** Asks about the figure that would be ten times more or less, where that one is an ordinary one for the format and this one is not. */
function askOfSlip(say: Say, { check, question, again }: QuestionScreen): string[] {
  const format = check.answers['format']
  if (again?.kind !== 'reading' || question.answer.kind !== 'reading') return []
  if (format?.kind !== 'option' || !isFormat(format.option)) return []
  const { quantity } = question.answer
  const other = tenTimesOff(quantity, again.value, format.option)
  if (other === null) return []
  const of = (value: number) => say('answer.reading', { value, unit: unitOf[quantity] })
  return [say('check.again.ten-times', { value: of(again.value), other: of(other) })]
}

/** Whether a danger to get away from could not be told: said at once, and again where a question asks for hands. */
function mustKeepOff(program: Program, check: Check, question: Question): boolean {
  const unsure = check.trail.filter(
    id => program.hazards.get(id) === 'get-away' && check.answers[id]?.kind === 'cant-tell',
  )
  return unsure.length > 0 && (question.care !== 'look' || unsure.includes(check.trail.at(-1) ?? ''))
}
