// A pack's own cases: answers that fit no question are named, differences from what was expected too, and rules without a case.
import { describe, expect, test } from 'vitest'
import { cantTell, option, reading, sameAnswer } from '../../src/engine/answers.ts'
import { openCoverage, type RawAnswer, readAnswer, runCase, uncovered } from '../../src/engine/cases.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import type { Question } from '../../src/engine/pack/pack.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'

const read = readPack({
  ...{ pack: 'small', version: '1.0.0', written: '2026-11-25', title: 'A small pack', about: 'For tests.' },
  sources: { trade: { kind: 'common-practice', text: 'common practice' } },
  questions: [
    {
      ...{ id: 'wrap', ask: 'Is the wrap whole?', care: 'look', effort: 1 },
      options: [
        { id: 'whole', label: 'Whole' },
        { id: 'torn', label: 'Torn' },
      ],
    },
    { id: 'mass', ask: 'How heavy?', care: 'meter', effort: 2, reading: { quantity: 'mass', least: 5, most: 200 } },
  ],
  rules: [
    { id: 'torn-wrap', kind: 'hazard', act: 'isolate', when: { wrap: 'torn' }, says: 'Torn.', source: ['trade'] },
    { id: 'light', kind: 'sign', strength: 'strong', when: { mass: { below: 42 } }, says: 'Light.', source: ['trade'] },
  ],
  families: [
    { id: 'one', name: 'One', maker: 'Nobody', given: {}, enough: ['light'] },
    { id: 'other', name: 'Other', maker: 'Nobody', given: { wrap: 'whole' }, enough: ['light'] },
  ],
})
if (!read.ok) throw new Error(JSON.stringify(read.problems))
const programFor = (family: string): Program => {
  const compiled = compile([read.pack], '2026-11-25', family)
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  return compiled.program
}
const program = programFor('one')
const question = (id: string) => program.questions.get(id) as Question

describe('a written answer', () => {
  test.each<[string, RawAnswer, unknown]>([
    ['wrap', 'torn', option('torn')],
    ['wrap', 'cant-tell', cantTell],
    ['mass', 'cant-tell', cantTell],
    ['mass', { reading: 45, u: 0.1 }, reading(45, 0.1)],
    ['mass', { reading: 45, u: 0, unit: 'g' }, reading(45, 0)],
    // The least and the most can be read.
    ['mass', { reading: 5, u: 0 }, reading(5, 0)],
    ['mass', { reading: 200, u: 0 }, reading(200, 0)],
    ['wrap', 'tron', { code: 'unknown-name', at: 'here', what: 'option', name: 'tron', known: ['whole', 'torn'] }],
    ['mass', 'torn', { code: 'not-an-option-question', at: 'here', name: 'mass' }],
    ['wrap', { reading: 45, u: 0 }, { code: 'not-a-reading-question', at: 'here', name: 'wrap' }],
    ['mass', { reading: 45, u: 0, unit: 'kg' }, { code: 'unit-does-not-fit', unit: 'kg', wanted: 'g' }],
    ['mass', { reading: Number.NaN, u: 0 }, { code: 'not-a-number' }],
    ['mass', { reading: 45, u: Number.POSITIVE_INFINITY }, { code: 'not-a-number' }],
    ['mass', { reading: 4.9, u: 0 }, { code: 'out-of-range', value: 4.9, least: 5, most: 200, unit: 'g' }],
    ['mass', { reading: 200.1, u: 0 }, { code: 'out-of-range', value: 200.1, least: 5, most: 200, unit: 'g' }],
  ])('to %s: %j', (id, value, expected) => {
    expect(readAnswer(question(id), value, 'here')).toMatchObject(expected as object)
  })
})

describe('a case', () => {
  const run = (raw: object, of = program, seen = openCoverage(of.rules)) =>
    runCase(of, { case: 'a case', answers: {}, rules: {}, ...raw } as Parameters<typeof runCase>[1], 'cases.0', seen)

  test('that says what comes of its answers holds, and what each rule did is remembered', () => {
    const seen = openCoverage(program.rules)
    const whole = { answers: { wrap: 'torn', mass: { reading: 45, u: 0.1 } }, verdict: 'danger' } as const
    expect(run({ ...whole, rules: { 'torn-wrap': 'fires', light: 'quiet' } }, program, seen)).toEqual([])
    expect(Object.fromEntries(seen)).toEqual({ 'torn-wrap': new Set(['fires']), light: new Set(['quiet']) })
    // What cannot be told, or is not said, leaves a rule open.
    const open = { answers: { mass: 'cant-tell' }, verdict: 'open' } as const
    expect(run({ ...open, rules: { 'torn-wrap': 'unknown', light: 'unknown' } }, program, seen)).toEqual([])
    expect(seen.get('light')).toEqual(new Set(['quiet', 'unknown']))
  })
  test('that says something else is named with what came, rule by rule and of the verdict; it shows nothing', () => {
    const seen = openCoverage(program.rules)
    const raw = { answers: { wrap: 'whole' }, rules: { 'torn-wrap': 'fires' }, verdict: 'danger' } as const
    expect(run(raw, program, seen)).toEqual([
      { code: 'case-differs', at: 'cases.0', name: 'torn-wrap', expected: 'fires', got: 'quiet' },
      { code: 'case-differs', at: 'cases.0', name: 'verdict', expected: 'danger', got: 'open' },
    ])
    expect(seen.get('torn-wrap')?.size).toBe(0)
  })
  test('of a family has what that family brings', () => {
    expect(run({ rules: { 'torn-wrap': 'quiet' } }, programFor('other'))).toEqual([])
    expect(run({ rules: { 'torn-wrap': 'unknown' } })).toEqual([])
  })
  test('with names that are nobody’s is told so, with those that are known', () => {
    expect(run({ answers: { wrp: 'torn', mass: 'torn' } })).toEqual([
      { code: 'unknown-name', at: 'cases.0.answers', what: 'question', name: 'wrp', known: ['wrap', 'mass'] },
      { code: 'not-an-option-question', at: 'cases.0.answers.mass', name: 'mass' },
    ])
    expect(run({ rules: { ligt: 'fires' } })).toEqual([
      { code: 'unknown-name', at: 'cases.0.rules', what: 'rule', name: 'ligt', known: ['torn-wrap', 'light'] },
    ])
  })
  test('is wanted for a rule that fires, stays quiet and stays open', () => {
    const seen = openCoverage(program.rules)
    seen.get('light')?.add('quiet').add('fires').add('unknown')
    seen.get('torn-wrap')?.add('quiet')
    expect(uncovered(seen, 'cases')).toEqual([
      { code: 'uncovered', at: 'cases', name: 'torn-wrap', lacks: ['fires', 'unknown'] },
    ])
  })
})

test('answers are the same by option, by value and uncertainty, or both untold', () => {
  expect(sameAnswer(option('a'), option('a'))).toBe(true)
  expect(sameAnswer(option('a'), option('b'))).toBe(false)
  expect(sameAnswer(reading(1, 0.1), reading(1, 0.1))).toBe(true)
  expect(sameAnswer(reading(1, 0.1), reading(1, 0.2))).toBe(false)
  expect(sameAnswer(reading(1, 0.1), reading(2, 0.1))).toBe(false)
  expect(sameAnswer(cantTell, cantTell)).toBe(true)
  expect(sameAnswer(cantTell, option('a'))).toBe(false)
  expect(sameAnswer(undefined, undefined)).toBe(true)
  expect(sameAnswer(undefined, cantTell)).toBe(false)
})
