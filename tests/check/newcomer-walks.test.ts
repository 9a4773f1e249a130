// How far it is to a result for the people who come: an overstated cell, a good one nobody knows, one who can tell nothing, a danger.
import { describe, expect, test } from 'vitest'
import type { Mode } from '../../src/check/check.ts'
import { mostQuick } from '../../src/check/left.ts'
import { screenOf } from '../../src/check/screen.ts'
import { type Answer, type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { judge } from '../../src/engine/judge.ts'
import { lookedAtAnyway } from '../../src/families/features.ts'
import type { Tool } from '../../src/ground/tools.ts'
import { isFailing } from '../../src/ground/verdicts.ts'
import { sayIn } from '../../src/words/say.ts'
import { shippedPacks, shippedProgram } from '../rules/shipped-programs.ts'
import { handsOn } from './hands.ts'

/** `decided`: how many different questions and taps it took until only worse could come out; all of them where nothing was decided. */
type Walk = {
  /** All of them, from the command to the result. */
  readonly taps: number
  readonly verdict: string
  readonly questions: string[]
  /** How many were said to be left at most, question by question. */
  readonly lefts: number[]
  readonly decided: { readonly questions: number; readonly taps: number }
}

/** Walks from the first screen to the result: unnamed questions are answered by `otherwise`. */
function walk(
  program: Program,
  mode: Mode,
  tools: readonly Tool[],
  answers: Answers,
  otherwise: (program: Program, id: string) => Answer = () => cantTell,
): Walk {
  const { beginUnsaid, does } = handsOn(program)
  let check = beginUnsaid()
  let taps = 1
  if (tools.length > 0) {
    check = does(check, { is: 'equip', tools })
    taps += tools.length + 1
  }
  check = does(check, { is: 'begin', mode })
  taps += 1
  const questions: string[] = []
  const lefts: number[] = []
  let decided: Walk['decided'] | undefined
  for (let i = 0; i < 200 && check.phase.is !== 'done'; i++) {
    const { phase } = check
    if (phase.is === 'consent') {
      // They may touch the cell, and do nothing risky with it.
      check = does(check, { is: 'consent', to: phase.to, given: phase.to === 'touch' })
      taps += 1
      continue
    }
    if (phase.is !== 'asking' && phase.is !== 'second-look') throw new Error(phase.is)
    const given =
      phase.is === 'second-look' ? phase.answer : (answers[phase.question] ?? otherwise(program, phase.question))
    questions.push(phase.question)
    const screen = screenOf(program, check)
    // A second look is not counted on the screen.
    if (screen.kind === 'question' && phase.is === 'asking') lefts.push(screen.left.all)
    // A figure is typed into a form that is opened and sent, and confirmed by one press; a menu is opened before something is chosen.
    const asked = program.questions.get(phase.question)?.answer
    const menu = asked?.kind === 'options' && asked.options.length > 6
    const typed = asked?.kind === 'reading' && phase.is === 'asking'
    taps += given.kind !== 'cant-tell' && (typed || menu) ? 2 : 1
    // One press says at a second look that all of it is still so.
    const together = phase.is === 'second-look' && { together: true as const }
    check = does(check, { is: 'answer', question: phase.question, answer: given, ...together })
    if (isFailing(judge(program, check.answers).verdict)) decided ??= { questions: new Set(questions).size, taps }
  }
  const { verdict } = judge(program, check.answers)
  return { verdict, taps, questions, lefts, decided: decided ?? { questions: new Set(questions).size, taps } }
}

/** The first answer of each question that fires nothing, where a person can see that all is as it should be. */
const harmless = (program: Program, id: string): Answer => {
  const question = program.questions.get(id)
  if (question?.answer.kind !== 'options') return cantTell
  const quiet = question.answer.options.find(one =>
    judge(program, { [id]: option(one.id) }).findings.every(({ rule }) => rule.kind === 'no-bearing'),
  )
  return quiet ? option(quiet.id) : cantTell
}

const languages = ['en', 'de', 'es'] as const
const depths = ['quick', 'full'] as const

describe.each(languages)('in %s', language => {
  const unlisted = inLanguage(shippedProgram(), language)

  test('an overstated cell: ruled out within six questions and nine taps, quick or thorough', () => {
    for (const depth of depths) {
      const answers = { format: option('18650'), 'claimed-capacity': reading(9900), 'hot-now': option('nothing') }
      const { verdict, questions, decided } = walk(unlisted, depth, [], answers, harmless)
      expect(verdict).toBe('ruled-out')
      if (depth === 'full') continue
      expect(decided.questions, questions.join()).toBeLessThanOrEqual(6)
      expect(decided.taps, questions.join()).toBeLessThanOrEqual(9)
      // What cannot change the verdict any more is not asked, and size and figure are looked at again together.
      expect(questions).toEqual([...new Set(questions), 'claimed-capacity'])
      expect(questions).not.toContain('chemistry')
    }
  })

  test('what a cell could hold at 1.5 V is ruled out only once its label is known to name another voltage', () => {
    const answers = { format: option('18650'), 'claimed-capacity': reading(6800), 'hot-now': option('nothing') }
    expect(walk(unlisted, 'quick', [], answers, harmless).questions).toContain('chemistry')
    const fixed = { ...answers, chemistry: option('fixed-voltage') }
    expect(walk(unlisted, 'quick', [], fixed, harmless).verdict).toBe('open')
  })

  test('an overstated cell: the result itself is there within nine taps, with anything that is left untold', () => {
    const claim = { format: option('18650'), 'claimed-capacity': reading(9900), 'hot-now': option('nothing') }
    const seen = { ...claim, swollen: option('straight'), leaking: option('clean') }
    for (const [answers, otherwise] of [
      [claim, harmless],
      [seen, () => cantTell],
      [{ ...seen, leaking: cantTell }, harmless],
    ] as const) {
      const { verdict, taps, questions } = walk(unlisted, 'quick', [], answers, otherwise)
      expect(verdict).toBe('ruled-out')
      expect(taps, questions.join()).toBeLessThanOrEqual(9)
    }
  })

  test('a cell of no known family that is too light: a scale settles it within twelve questions and twenty taps', () => {
    const answers = { format: option('18650'), 'claimed-capacity': reading(3000), mass: reading(33, 0.3) }
    const { verdict, taps, questions } = walk(unlisted, 'quick', ['scale'], answers, harmless)
    expect(verdict).toBe('doubtful')
    expect(questions.length, questions.join()).toBeLessThanOrEqual(12)
    expect(taps).toBeLessThanOrEqual(20)
  })

  test('a good cell of no known family, without tools: open after twelve questions at most', () => {
    const answers = { format: option('18650'), 'claimed-capacity': reading(2500) }
    const { verdict, questions } = walk(unlisted, 'quick', [], answers, harmless)
    expect(verdict).toBe('open')
    expect(questions.length, questions.join()).toBeLessThanOrEqual(mostQuick)
  })

  test('whoever can tell nothing is through within ten, and is asked nothing that needs hands', () => {
    const { verdict, questions } = walk(unlisted, 'quick', [], {})
    expect(verdict).toBe('open')
    expect(questions.length, questions.join()).toBeLessThanOrEqual(10)
    for (const id of questions) expect(unlisted.questions.get(id)?.care).toBe('look')
  })

  test('danger on the first question is one tap', () => {
    for (const depth of depths) {
      const { verdict, questions } = walk(unlisted, depth, [], { 'hot-now': option('happening') })
      expect(verdict).toBe('danger')
      expect(questions).toEqual(['hot-now'])
    }
  })

  test('a scale that is there is used in a quick check, one that is not there is not asked for', () => {
    const answers = { format: option('18650'), 'claimed-capacity': reading(3000), mass: reading(33, 0.3) }
    expect(walk(unlisted, 'quick', ['scale'], answers, harmless).questions).toContain('mass')
    expect(walk(unlisted, 'quick', ['lens'], answers, harmless).questions).not.toContain('mass')
  })
})

test('a good cell of a known family: open after ten questions and fourteen taps at most, quick', () => {
  const { verdict, taps, questions } = walk(shippedProgram('brindlewick-rook'), 'quick', [], {}, harmless)
  expect(verdict).toBe('open')
  expect(questions.length, questions.join()).toBeLessThanOrEqual(10)
  expect(taps).toBeLessThanOrEqual(14)
})

test('a tool that is there is used once the dangers one sees are known, in a thorough check too, and before what only adds up', () => {
  const answers = { format: option('18650'), 'claimed-capacity': reading(3000), mass: reading(46, 0.3) }
  const { questions } = walk(shippedProgram(), 'full', ['scale', 'load'], answers, harmless)
  const mass = questions.indexOf('mass')
  expect(mass, questions.join()).toBeLessThanOrEqual(21)
  for (const before of ['claimed-capacity', 'weld-marks', 'wrap-torn', 'dent', 'measured-capacity'])
    expect(questions.slice(0, mass)).toContain(before)
  for (const after of ['where-bought', 'print', 'crossed-bin', 'lettering-place'])
    expect(questions.indexOf(after)).toBeGreaterThan(mass)
})

test('what a charger has counted is asked of whoever has one, in a quick check too, and of nobody else', () => {
  expect(walk(shippedProgram(), 'quick', ['load'], {}, harmless).questions).toContain('measured-capacity')
  expect(walk(shippedProgram(), 'quick', ['scale'], {}, harmless).questions).not.toContain('measured-capacity')
})

test('a thorough check asks the same questions whichever tool is there, and those of the tool besides', () => {
  const without = walk(shippedProgram(), 'full', ['lens'], {}, harmless).questions
  for (const tools of [
    ['lens', 'scale'],
    ['lens', 'load'],
    ['lens', 'meter', 'load'],
  ] as const)
    expect(walk(shippedProgram(), 'full', tools, {}, harmless).questions).toEqual(expect.arrayContaining(without))
})

test('the minutes that a thorough check is said to take are those of its questions, at twenty seconds each', () => {
  const { questions } = walk(unnamed, 'full', ['lens'], {}, harmless)
  const minutes = (questions.length * 20) / 60
  for (const language of languages) {
    const said = Number(/\d+/.exec(sayIn(language)('beginning.full'))?.[0])
    expect(Math.abs(said - minutes), `${questions.length} questions`).toBeLessThan(5)
  }
})

test('a relabelled cell of a known family is ruled out within eight questions, quick', () => {
  const family = shippedPacks.flatMap(pack => pack.families).find(one => one.id === 'brindlewick-rook')
  if (!family) throw new Error('the family is gone')
  const program = shippedProgram(family.id)
  const contradicted = Object.fromEntries(
    program.rules.flatMap(rule =>
      rule.kind === 'must' && rule.families?.includes(family.id) && rule.when.op === 'is'
        ? [[rule.when.question, option(rule.when.options[0] ?? '')]]
        : [],
    ),
  )
  const { verdict, questions, decided } = walk(program, 'quick', [], contradicted, harmless)
  expect(verdict).toBe('ruled-out')
  expect(decided.questions, questions.join()).toBeLessThanOrEqual(8)
})

const families = shippedPacks.flatMap(pack => pack.families)
const pairs = families.flatMap(sold => families.filter(one => one.id !== sold.id).map(is => [sold.id, is.id] as const))
test.each(pairs)('sold as %s, and a good %s below the wrap: decided within eight questions, quick', (sold, is) => {
  const [soldAs, below] = [shippedProgram(sold), shippedProgram(is)]
  const looks = (_: Program, id: string) => harmless(below.questions.has(id) ? below : soldAs, id)
  const { verdict, questions, decided } = walk(soldAs, 'quick', [], {}, looks)
  expect(isFailing(verdict as never), questions.join()).toBe(true)
  expect(decided.questions, questions.join()).toBeLessThanOrEqual(8)
  expect(questions.length).toBeLessThanOrEqual(mostQuick + 2)
})

const unnamed: Program = {
  ...shippedProgram(),
  // As for every cell that nobody has named: what it is built like is looked at as well.
  beside: { among: lookedAtAnyway, next: answers => lookedAtAnyway.find(id => answers[id] === undefined) },
}

test.each(depths)('how many questions are left falls with each that is answered, %s', depth => {
  const claims = [
    {},
    { 'claimed-capacity': reading(6800) },
    { 'claimed-capacity': reading(4500), mass: reading(33, 0.3) },
  ]
  for (const tools of [[], ['scale', 'meter', 'calliper', 'ruler']] as const)
    for (const [otherwise, claim] of [harmless, () => cantTell].flatMap(how =>
      claims.map(said => [how, said] as const),
    )) {
      const answers = { format: option('18650'), ...claim }
      const { lefts } = walk(unnamed, depth, tools, Object.keys(claim).length > 0 ? answers : {}, otherwise)
      for (const [i, left] of lefts.slice(1).entries()) expect(left, lefts.join()).toBeLessThan(lefts[i] ?? 0)
      if (depth === 'quick' && tools.length === 0) expect(lefts[0]).toBeLessThanOrEqual(mostQuick)
      // Never are more asked than were said to be left.
      for (const [i, left] of lefts.entries()) expect(left, lefts.join()).toBeGreaterThanOrEqual(lefts.length - i)
    }
})

test('a quick check asks ten questions at most, looks at how the cell is built included', () => {
  for (const otherwise of [harmless, () => cantTell]) {
    const { questions } = walk(unnamed, 'quick', [], {}, otherwise)
    expect(questions.length, questions.join()).toBeLessThanOrEqual(mostQuick)
    expect(questions).toContain('lettering-place')
  }
  // What speaks a little against the cell comes before those looks, and is counted with them.
  const weak = walk(unnamed, 'quick', [], { chemistry: option('contradicts') }, harmless)
  expect(weak.verdict).toBe('open')
  expect(weak.questions.length, weak.questions.join()).toBeLessThanOrEqual(mostQuick)
})

test('once something is decided, nobody is asked how the cell is built', () => {
  const answers = { format: option('18650'), 'claimed-capacity': reading(9900) }
  const { verdict, questions } = walk(unnamed, 'quick', [], answers, harmless)
  expect(verdict).toBe('ruled-out')
  expect(questions).not.toContain('lettering-place')
})

test('nothing that was answered is asked again, but for a second look', () => {
  for (const depth of depths) {
    const { questions } = walk(shippedProgram(), depth, ['scale', 'meter', 'calliper', 'ruler'], {}, harmless)
    expect(new Set(questions).size).toBe(questions.length)
  }
})
