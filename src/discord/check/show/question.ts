// Shows a question: where one is in the check, what to look at, its picture, an answer for each finger, and the ways out.
import { type APIButtonComponent, type APIMessageTopLevelComponent, ButtonStyle } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import { mustKeepOff } from '../../../check/next.ts'
import type { Screen } from '../../../check/screen.ts'
import { type Stage, stages } from '../../../check/stage.ts'
import { sameAnswer } from '../../../engine/answers.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Question } from '../../../engine/pack/pack.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import { sayAnswer, sayWhat } from '../../../words/describe.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { sayPerson } from '../../../words/say-custody.ts'
import { sayMissing } from '../../../words/say-missing.ts'
import { nothingPictured, type Pictured } from '../../families/family-photos.ts'
import { gallery, message, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { handButton, sentBack } from '../hand-over/show/holder-menu.ts'
import { askOfSlip } from './ask-of-slip.ts'
import { button, menu } from './check-buttons.ts'

type QuestionScreen = Extract<Screen, { kind: 'question' }>

/** Up to this many options are buttons; more become a menu. */
const mostButtons = 6
/** More questions than these are counted stage by stage: one great number would only frighten. */
const mostCounted = 20
/** Discord's most in one row. */
const mostInRow = 5
/** Labels up to this length share a row; longer ones get a row each, so that a phone does not squeeze them. */
const shortLabel = 16

export function showQuestion(
  say: Say,
  program: Program,
  screen: QuestionScreen,
  picture: ShownPicture | undefined,
  note?: string,
  photos: Pictured = nothingPictured,
): ShownMessage {
  const { check, question, again } = screen
  const look = question.look ? [question.look] : []
  const ask = again
    ? [text(`### ${say('again.title', { question: question.ask })}`)]
    : [text([`### ${question.ask}`, ...look].join('\n'))]
  // What to do again stands directly above the buttons, below the picture; where to find what is printed was said a moment ago.
  const how = isPrinted(question) ? [] : look
  const why = again ? [text([sayWhyAgain(say, program, screen), ...askOfSlip(say, screen), ...how].join('\n'))] : []
  // Said once, where a check begins.
  const missing = check.trail.length === 0 ? sayMissing(say) : undefined
  const last = [
    `${say(`care.${question.care}`)} ${screen.helping ? `${say('help-request.care')} ` : ''}**${say('caution.line')}**`,
    ...(missing ? [missing] : []),
  ]
  return message(
    [
      ...(note ? [text(note)] : []),
      ...others(say, program, screen).map(text),
      small(sayWhere(say, program, screen)),
      ...ask,
      ...gallery(picture ? [picture] : []),
      ...photos.parts,
      ...why,
      ...answers(say, program, screen),
      small(last.join('\n')),
      ...(screen.helping ? helperControls(say, screen) : controls(say, screen)),
    ],
    [...(picture ? [picture] : []), ...photos.pictures],
  )
}

/** The stages with the one the check is at, and how many questions can still matter; once something is decided, what that is. */
function sayWhere(
  say: Say,
  program: Program,
  { check, stage, left, answered, decided, helping, again }: QuestionScreen,
): string {
  if (helping) return say('helping.title', { holder: sayPerson(check.holder) })
  const of = program.family ? `${sayWhat(say, program.family)} · ` : ''
  const verdict = decided && !again && say(`verdict.${decided}.so-far`)
  const isLong = left.of !== undefined && left.all >= mostCounted && !again
  if (verdict)
    return of + (isLong ? say('where.decided-long', { verdict }) : say('where.decided', { verdict, left: left.all }))
  const named = (one: Stage) => {
    const count = isLong ? left.of?.[one] : undefined
    const name = say(`stage.${one}`)
    return count === undefined ? name : say('where.stage', { name, count })
  }
  const way = stages.map(one => (one === stage ? `**${named(one)}**` : named(one))).join(' · ')
  // A second look comes on top of the questions: what is left is no fewer after it.
  if (again) return of + say('where.again', { way, answered })
  return of + (isLong ? say('where.long', { way, answered }) : say('where.left', { way, left: left.all, answered }))
}

function sayWhyAgain(
  say: Say,
  program: Program,
  { check, question, again, togetherWith, beside, helping }: QuestionScreen,
): string {
  if (helping) return say('helping.again')
  if (!again) return ''
  if (beside) {
    const list = new Intl.ListFormat(say.locale, { type: 'conjunction' })
    const said = [sayAnswer(say, question, again), ...sayGiven(say, program, check, beside)]
    return say('again.why-all', { answers: list.format(said.map(one => say('quoted', { text: one }))) })
  }
  const answer = sayAnswer(say, question, again)
  const other = togetherWith === undefined ? undefined : program.questions.get(togetherWith)
  const figure = other && (check.answers[other.id] ?? check.pending?.[other.id])
  return figure
    ? say('again.why-with', { answer, figure: sayAnswer(say, other, figure) })
    : say('again.why', { answer })
}

/** What was answered to these, whether it counts yet or is still asked about. */
const sayGiven = (say: Say, program: Program, check: Check, ids: readonly string[]): string[] =>
  ids.flatMap(id => {
    const [question, given] = [program.questions.get(id), check.answers[id] ?? check.pending?.[id]]
    return question && given ? [sayAnswer(say, question, given)] : []
  })

/** What is printed or listed is read, not measured. */
const isPrinted = ({ answer, care }: Question): boolean => answer.kind === 'reading' && care === 'look'

function answers(
  say: Say,
  program: Program,
  { check, question, again, beside = [], changing, closed = [] }: QuestionScreen,
): APIMessageTopLevelComponent[] {
  if (question.answer.kind === 'reading') {
    if (!again) return rows([button(check, { is: 'measure' }, say('check.measure'), ButtonStyle.Primary)])
    const same = say('again.still', { label: sayAnswer(say, question, again) })
    const another = say(isPrinted(question) ? 'again.read' : 'again.measure')
    const still = beside.length > 0 ? ({ is: 'all-still' } as const) : ({ is: 'still' } as const)
    const others = beside.map(id => {
      const answer = sayGiven(say, program, check, [id]).join('')
      return button(check, { is: 'rather', question: id }, say('again.not', { answer }), ButtonStyle.Primary)
    })
    return rows(
      [
        button(check, still, beside.length > 0 ? say('again.all-still') : same, ButtonStyle.Primary),
        button(check, { is: 'measure' }, another, ButtonStyle.Primary),
        ...others,
      ],
      1,
    )
  }
  const given = changing ? check.answers[question.id] : undefined
  const options = question.answer.options.map((option, i) => {
    const label = say('check.letter', { letter: String.fromCharCode(65 + i), label: option.label })
    const same = (answer: typeof again) => sameAnswer(answer, { kind: 'option', option: option.id })
    const words = again ? say(same(again) ? 'again.still' : 'again.rather', { label }) : label
    return {
      id: option.id,
      label: given && same(given) ? say('change.kept', { label }) : words,
      ...(option.hint === undefined ? {} : { hint: option.hint }),
    }
  })
  const hints = options.filter(option => option.hint).map(option => `${option.label}: ${option.hint}`)
  if (options.length > mostButtons) return rows([menu(check, { is: 'choose' }, say('check.choose'), options)], 1)
  const wide = options.every(option => option.label.length <= shortLabel) ? mostInRow : 1
  const buttons = options.map(option => ({
    ...button(check, { is: 'pick', option: option.id }, option.label, ButtonStyle.Primary),
    ...(closed.includes(option.id) && { disabled: true }),
  }))
  return [...(hints.length > 0 ? [small(hints.join('\n'))] : []), ...rows(buttons, wide)]
}

function controls(
  say: Say,
  { check, question, again, changing, stuck, decided }: QuestionScreen,
): APIMessageTopLevelComponent[] {
  const hands = check.server === null ? [] : [handButton(check, 'hands', say('button.hands'))]
  const finish = again ? [] : [button(check, { is: 'finish' }, say(decided ? 'check.end-now' : 'check.finish'))]
  const first: APIButtonComponent[] = [
    button(check, { is: 'unsure' }, say(isPrinted(question) ? 'check.unsure-printed' : 'check.unsure')),
    ...(check.trail.length > 0 || again || changing ? [button(check, { is: 'back' }, say('check.back'))] : []),
    ...(check.trail.length > 0 && !changing ? [button(check, { is: 'answers' }, say('button.change'))] : []),
  ]
  const pause = button(check, { is: 'pause' }, say('check.pause'))
  // Where somebody is stuck, the ways out are offered in words, and come first.
  return stuck && !again
    ? [...rows(first), text(say('check.stuck')), ...rows([...hands, ...finish, pause])]
    : [...rows(first), ...rows([...finish, ...hands, pause])]
}

const helperControls = (say: Say, { check }: QuestionScreen): APIMessageTopLevelComponent[] =>
  rows([
    button(check, { is: 'unsure' }, say('helping.unsure')),
    handButton(check, 'send-back', say('help-request.send-back')),
    custodyOf(check).helpRequest?.claimed
      ? handButton(check, 'let-go', say('help-request.let-go'))
      : handButton(check, 'claim', say('help-request.claim')),
    handButton(check, 'pass-on', say('help-request.pass-on')),
  ])

/** What stands above the question: whose cell it is, a danger that could not be told, what a moderator is asked or wrote. */
function others(say: Say, program: Program, { check, question, helping, second }: QuestionScreen): string[] {
  const { helpRequest, starter, closing } = custodyOf(check)
  if (helping)
    return [
      ...(helpRequest?.words ? [say('help-request.words', { words: plain(helpRequest.words) })] : []),
      ...(second ? [say('helping.second')] : []),
      // Why there is no answer that says that all is well.
      ...(program.hazards.get(question.id) === 'get-away' ? [say('refusal.only-beside-it')] : []),
    ]
  const wrote =
    helpRequest === undefined || helpRequest.question === question.id ? sentBack(say, check, question.id) : undefined
  return [
    ...(check.trail.length === 0 && check.cells > 1 ? [say('check.batch', { cells: check.cells })] : []),
    ...(starter === check.holder ? [] : [say('hands.began', { starter: sayPerson(starter) })]),
    ...sayKeepOff(say, program, check),
    ...(helpRequest?.question === question.id ? [`${say('hands.asked')} ${say('hands.hot')}`] : []),
    ...(wrote === undefined ? [] : [wrote]),
    ...(closing ? [say('hands.closing', { who: sayPerson(closing.by) })] : []),
  ]
}

/** Said right after a danger to get away from could not be told, from when on nothing is asked that needs hands; in short from the second on. */
function sayKeepOff(say: Say, program: Program, check: Check): string[] {
  const untold = check.trail.filter(id => program.hazards.has(id) && check.answers[id]?.kind === 'cant-tell')
  if (!mustKeepOff(program, check) || untold.length === 0 || untold.at(-1) !== check.trail.at(-1)) return []
  const first = untold.findIndex(id => program.hazards.get(id) === 'get-away')
  return [say(untold.length - 1 > first ? 'check.hazard-unsure-too' : 'check.hazard-unsure')]
}
