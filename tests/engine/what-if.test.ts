// What would change a verdict: each change is true when it is tried, none is left out, and the worst stand first.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Answer, type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { type Change, changesOf } from '../../src/engine/what-if.ts'
import { severity } from '../../src/ground/verdicts.ts'
import { scaleProgram } from './scale-pack.ts'

const general = scaleProgram()
const one = scaleProgram('one')
const changes = (answers: Answers, questions: readonly string[], program = general) =>
  changesOf(program, answers, judge(program, answers).verdict, questions)

describe('options', () => {
  test('each that makes another verdict is named with it, and whether it corrects an answer', () => {
    const toDanger = { is: 'option', question: 'wrap', answer: option('torn'), verdict: 'danger' }
    expect(changes({}, ['wrap'])).toEqual([{ ...toDanger, correction: false }])
    expect(changes({ wrap: cantTell }, ['wrap'])).toEqual([{ ...toDanger, correction: false }])
    expect(changes({ wrap: option('whole') }, ['wrap'])).toEqual([{ ...toDanger, correction: true }])
    expect(changes({ wrap: option('torn') }, ['wrap'])).toEqual([
      { is: 'option', question: 'wrap', answer: option('whole'), verdict: 'open', correction: true },
    ])
  })
  test('one that alone changes nothing, and a question nobody knows, are not named', () => {
    expect(changes({ code: option('there') }, ['legs', 'shop', 'nowhere'])).toEqual([])
  })
})

describe('ranges of a measured value', () => {
  const range = (from: number | undefined, to: number | undefined, verdict: string, correction = false) => ({
    ...{ is: 'range', question: 'mass', verdict, correction },
    range: { ...(from !== undefined && { from }), ...(to !== undefined && { to }) },
  })
  test('an exact value: from the least up to a limit, and from a limit on', () => {
    expect(changes({}, ['mass'])).toEqual([range(60, undefined, 'ruled-out'), range(undefined, 42, 'doubtful')])
    expect(changes({ mass: reading(30) }, ['mass'])).toEqual([
      range(60, undefined, 'ruled-out', true),
      range(42, 60, 'open', true),
    ])
    expect(changes({ mass: cantTell }, ['mass'])).toEqual([
      range(60, undefined, 'ruled-out'),
      range(undefined, 42, 'doubtful'),
    ])
  })
  test('with an uncertainty: within twice of it around a limit nothing is decided, and that stands last', () => {
    const undecided = (from: number, to: number) => ({
      ...{ is: 'undecided', question: 'mass', range: { from, to }, correction: true },
    })
    expect(changes({ mass: reading(50, 1) }, ['mass'])).toEqual([
      range(62, undefined, 'ruled-out', true),
      range(undefined, 40, 'doubtful', true),
      undecided(40, 44),
      undecided(58, 62),
    ])
    // Bands that lie over one another are one.
    expect(changes({ mass: reading(50, 5) }, ['mass']).at(-1)).toEqual(undecided(32, 70))
    // What lies beyond the least and the most is nothing anybody reads.
    expect(changes({ mass: reading(50, 20) }, ['mass'])).toEqual([
      range(100, undefined, 'ruled-out', true),
      { ...undecided(0, 100), range: { to: 100 } },
    ])
  })
  test('of a family, what is met instead', () => {
    const answers = { wrap: option('whole'), volts: reading(3.6) }
    expect(changes(answers, ['mass'], one)).toEqual([
      range(60, undefined, 'ruled-out'),
      range(undefined, 42, 'doubtful'),
      range(42, 60, 'nothing-found'),
    ])
  })
  test('a limit of a sign that is out of date, or of a rule of no bearing, is none', () => {
    for (const change of changes({}, ['mass']))
      expect('range' in change && [20, 100].some(at => change.range.from === at || change.range.to === at)).toBe(false)
  })
  test('nothing measured is offered where there is danger', () => {
    expect(changes({ wrap: option('torn') }, ['mass', 'volts'])).toEqual([])
    expect(changes({ volts: reading(0.5) }, ['volts', 'wrap'])).toEqual([])
  })
  test('a band over a limit whose two sides come to one verdict decides nothing less', () => {
    const answers = { legs: option('four'), code: option('missing'), mass: reading(50, 1) }
    expect(judge(general, answers).verdict).toBe('doubtful')
    expect(changes(answers, ['mass'])).toEqual([
      range(62, undefined, 'ruled-out', true),
      { is: 'undecided', question: 'mass', range: { from: 58, to: 62 }, correction: true },
    ])
  })
})

const answer = fc.oneof(
  fc.constant(undefined),
  fc.constant(cantTell),
  fc.tuple(fc.integer({ min: 5, max: 200 }), fc.constantFrom(0, 0, 1, 4)).map(([value, u]) => reading(value, u)),
)
const answersTo = fc
  .record({
    wrap: fc.constantFrom(undefined, option('whole'), option('torn'), cantTell),
    legs: fc.constantFrom(undefined, option('three'), option('four'), cantTell),
    code: fc.constantFrom(undefined, option('there'), option('missing'), cantTell),
    volts: fc.constantFrom(undefined, reading(0.5), reading(1, 0.1), reading(3.6, 0.01)),
    mass: answer,
  })
  .map(all => Object.fromEntries(Object.entries(all).filter((pair): pair is [string, Answer] => pair[1] !== undefined)))
const holds = (change: Change, value: number): boolean =>
  'range' in change && value > (change.range.from ?? -1) && value < (change.range.to ?? 1000)

test('whatever was answered: every value comes to what the changes say of it, and what they leave out changes nothing', () => {
  fc.assert(
    fc.property(
      answersTo,
      fc.constantFrom(general, one),
      fc.double({ min: 5, max: 200, noNaN: true }),
      (answers, program, at) => {
        const now = judge(program, answers).verdict
        fc.pre(now !== 'danger')
        const given = answers['mass']
        const u = given?.kind === 'reading' ? given.u : 0
        // Edges themselves belong to the side on which the guard band puts them.
        const value = Math.round(at * 2) / 2 + 0.25
        fc.pre(value < 200)
        const with_ = (v: number, unsure: number) => judge(program, { ...answers, mass: reading(v, unsure) }).verdict
        const told = changesOf(program, answers, now, ['mass']).filter(change => holds(change, value))
        expect(told.length).toBeLessThanOrEqual(1)
        const [change] = told
        if (change?.is === 'undecided') {
          const near = Array.from({ length: 41 }, (_, i) => with_(value + ((i - 20) / 10) * u, 0))
          expect(new Set(near).size).toBeGreaterThan(1)
        } else expect(with_(value, u)).toBe(change?.is === 'range' ? change.verdict : now)
      },
    ),
    { numRuns: 500 },
  )
})

test('what makes a cell worse stands before what makes it better, and what is undecided behind both', () => {
  fc.assert(
    fc.property(answersTo, answers => {
      const all = changes(answers, ['mass', 'wrap', 'legs', 'code', 'volts'])
      const ranks = all.map(change => (change.is === 'undecided' ? -1 : severity[change.verdict]))
      expect(ranks).toEqual(ranks.toSorted((a, b) => b - a))
    }),
  )
})
