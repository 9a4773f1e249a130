// What a question says besides what it asks: where one stands, what a second look is about, what is said once only.
import { expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import type { Screen } from '../../src/check/screen.ts'
import { type Stepping, start, step } from '../../src/check/step.ts'
import { showQuestion } from '../../src/discord/check/show/question.ts'
import { type Answer, cantTell, option, reading } from '../../src/engine/answers.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'

const now = Date.UTC(2026, 10, 29)
const program = shippedProgram()

type Asked = Extract<Screen, { kind: 'question' }>
function asked(stepping: Stepping): Asked {
  if (!stepping.ok || stepping.screen.kind !== 'question') throw new Error(JSON.stringify(stepping))
  return stepping.screen
}
const begin = (mode: Check['mode']): Asked =>
  asked(start(program, { id: 'abcdefgh', holder: 'p', server: 's', mode, cells: 1, family: null }, now))
const say = ({ check, question }: Asked, answer: Answer): Asked =>
  asked(step(program, check, { is: 'answer', question: question.id, answer }, now))
/** Answers by name, "can't tell" to the rest, until this question is asked, or asked again. */
function walkTo(screen: Asked, id: string, answers: Readonly<Record<string, Answer>>, again = false): Asked {
  let at = screen
  for (let i = 0; i < 90 && !(at.question.id === id && (at.again !== undefined) === again); i++)
    at = say(at, at.again ?? answers[at.question.id] ?? cantTell)
  return at
}
const shown = (screen: Asked, locale = 'en-US'): string =>
  JSON.stringify(showQuestion(sayIn(locale), program, screen, undefined))

const well: Readonly<Record<string, Answer>> = {
  'hot-now': option('nothing'),
  swollen: option('straight'),
  leaking: option('clean'),
}
const overstated = { ...well, format: option('18650'), 'claimed-capacity': reading(9900) }

test('a printed figure is read once more, a measured one measured once more', () => {
  const figure = shown(walkTo(begin('quick'), 'claimed-capacity', overstated, true))
  expect(figure).toMatch(/Read it once more and type it in/)
  // One press says that all of it is right; the form is for another figure, and what was chosen can be put right as well.
  expect(figure).toMatch(
    /You answered “9,900 mAh” and “18650 [^”]*”\. Together that would count strongly against the cell/,
  )
  expect(figure).toMatch(/I looked again: still the same/)
  expect(figure).toMatch(/Not 18650/)
  expect(figure).not.toMatch(/questions? left/)
  const measured = { ...begin('full'), again: reading(33), question: program.questions.get('mass') }
  expect(shown(measured as Asked)).toMatch(/Measure once more and type it in/)
})

test('a size is not against the cell by itself: it counts together with the figure', () => {
  const size = walkTo(begin('quick'), 'format', overstated, true)
  expect(shown(size)).toMatch(/Not by itself, but together with 9,900 mAh/)
  expect(shown(size, 'de')).toMatch(/zusammen mit 9\.900 mAh/)
  expect(shown(size, 'es-ES')).toMatch(/junto con 9900 mAh/)
  const marks = walkTo(begin('full'), 'weld-marks', { ...well, 'weld-marks': option('spots') }, true)
  expect(shown(marks)).toMatch(/That would count strongly against the cell/)
})

test('that two were not told in a row is said at the second, once for each run of them', () => {
  const said: number[] = []
  let at = begin('full')
  for (let i = 1; i <= 12; i++) {
    at = say(at, cantTell)
    if (/twice in a row/.test(shown(at))) said.push(i)
  }
  expect(said).toEqual([2])
  const broken = say(say(walkTo(begin('full'), 'leaking', {}), option('clean')), cantTell)
  expect(shown(broken)).not.toMatch(/twice in a row/)
  expect(shown(say(broken, cantTell))).toMatch(/twice in a row/)
})

test('a danger that could not be told is explained in full once, and in short from then on', () => {
  const first = say(begin('full'), cantTell)
  expect(shown(first)).toMatch(
    /You were not sure about a danger sign\. If you are holding the cell, put it down; if it is on you, .*; otherwise leave it where it is\. Stay a few steps back\. If you would/,
  )
  const second = shown(say(first, cantTell))
  expect(second).toMatch(/unsure about the last danger sign, too\. If you are holding the cell, put it down/)
  expect(second).not.toMatch(/to answer a question/)
})

test('a long way is told in minutes and stage by stage, a short one in questions', () => {
  for (const [locale, minutes] of [
    ['en-US', /about 20 minutes in all/],
    ['de', /etwa 20 Minuten/],
    ['es-ES', /unos 20 minutos/],
  ] as const) {
    expect(shown(begin('full'), locale)).toMatch(minutes)
    expect(shown(begin('full'), locale)).not.toMatch(new RegExp(String(begin('full').left.all)))
  }
  const { all, of = {} } = begin('full').left
  expect(Object.values(of).reduce((sum, count) => sum + count, 0)).toBe(all)
  expect(shown(begin('full'))).toMatch(
    new RegExp(`\\*\\*Safety ${of.safety}\\*\\* · Label ${of.label} · Look ${of.look}`),
  )
  expect(shown(begin('quick'))).toMatch(/at most 10 questions left/)
  const decided = { ...begin('full'), decided: 'ruled-out' } as const
  expect(shown(decided)).toMatch(/The questions that are left could only make the result worse/)
  expect(shown({ ...decided, left: { all: 4 } })).toMatch(/Up to 4 questions are left/)
})

test('where a figure is printed or not, "can’t tell" says so', () => {
  expect(shown(walkTo(begin('full'), 'claimed-current', { ...well, format: option('18650') }))).toMatch(
    /Can’t tell, or none is given/,
  )
  expect(shown(begin('full'))).not.toMatch(/none is given/)
})

test.each(languages)('in %s every answer stands whole on its button, with its letter before it', language => {
  const spoken = inLanguage(program, language)
  const screen = begin('full')
  for (const question of spoken.questions.values()) {
    const { answer } = question
    if (answer.kind !== 'options') continue
    const parts = JSON.stringify(showQuestion(sayIn(language), spoken, { ...screen, question }, undefined))
    for (const { label } of answer.options) expect(parts, question.id).toContain(JSON.stringify(label).slice(1))
  }
})
