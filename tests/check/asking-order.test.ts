// What is asked before what, and how much is left: by what a question asks of a person, by danger, by tools that are there, by what tells of the family.
import { describe, expect, test } from 'vitest'
import { misfit } from '../../src/check/answer-fits.ts'
import type { Check } from '../../src/check/check.ts'
import { mayStillAsk, mostBeside, mostQuick } from '../../src/check/left.ts'
import { firstInOrder, isLevel, tellsOfFamily } from '../../src/check/order.ts'
import { stageOf } from '../../src/check/stage.ts'
import { hasTool, isAtHand, isToldByTool, toolsFor } from '../../src/check/tools.ts'
import { type Answer, cantTell, option, reading } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import type { Care, Question } from '../../src/engine/pack/pack.ts'
import type { Urgency } from '../../src/ground/urgencies.ts'

const ask = (id: string, more: object = {}): Question =>
  ({ id, ask: id, care: 'look', effort: 1, quick: false, answer: { kind: 'options', options: [] }, ...more }) as never
const measured = (id: string, quantity: string, care: Care = 'meter', more: object = {}): Question =>
  ask(id, { care, answer: { kind: 'reading', quantity, least: 1, most: 9, unit: 'u' }, ...more })

type Rule = { kind: string; reads: string[]; strength?: string; pack?: string }
/** A program as far as the order looks at it: its questions, and what each rule reads. */
const of = (questions: readonly Question[], rules: readonly Rule[] = [], more: object = {}): Program => {
  const all = rules.map((one, i) => ({ id: `r${i}`, pack: 'own', ...one }))
  const hazards = new Map<string, Urgency>()
  for (const { kind, reads } of all) if (kind === 'hazard') for (const id of reads) hazards.set(id, 'isolate')
  return {
    questions: new Map(questions.map(one => [one.id, one])),
    rules: all,
    reads: new Map(all.map(one => [one.id, one.reads])),
    hazards,
    given: {},
    ...more,
  } as never
}
const check = (more: object = {}): Check => ({ mode: 'full', answers: {}, trail: [], consents: {}, ...more }) as never
const first = (program: Program, wanted: readonly Question[], at = check()) => firstInOrder(program, at, wanted)?.id

const look = ask('look')
const other = ask('other')
const handle = ask('handle', { care: 'handle' })
const meter = measured('meter', 'voltage')
const scale = measured('scale', 'mass')

describe('what is asked first', () => {
  test('asks least of a person; of what asks as much, the first that is wanted', () => {
    const program = of([look, other, handle, meter])
    expect(first(program, [meter, handle, look, other])).toBe('look')
    expect(first(program, [meter, handle, other, look])).toBe('other')
    expect(first(program, [meter, handle])).toBe('handle')
    expect(first(program, [meter])).toBe('meter')
    expect(first(program, [])).toBeUndefined()
  })
  test('lifts no wrap and puts no load on', () => {
    const risky = [ask('unwrap', { care: 'unwrap' }), ask('bench', { care: 'bench' })]
    expect(first(of(risky), risky)).toBeUndefined()
    expect(['look', 'handle', 'meter', 'unwrap', 'bench'].map(care => isLevel(care as Care))).toEqual([
      ...[true, true, true, false, false],
    ])
  })
  test('needs no more care than the mildest danger that is still open', () => {
    const danger = { kind: 'hazard', reads: ['handle'] }
    expect(first(of([handle, meter], [danger]), [meter, handle])).toBe('handle')
    // Of what needs less than the danger, all may be asked; of what needs more, nothing.
    expect(first(of([look, handle, meter], [danger]), [meter, look, handle])).toBe('look')
    expect(first(of([meter, scale], [{ kind: 'hazard', reads: ['scale'] }]), [meter, scale])).toBe('meter')
  })
  test('of a danger that can no longer come about, nobody waits for it', () => {
    const danger = { kind: 'hazard', reads: ['handle', 'gone'] }
    const tool = [{ kind: 'must', reads: ['meter'] }]
    const at = (more: object) =>
      first(of([handle, meter], [danger, ...tool]), [meter, handle], check({ tools: ['meter'], ...more }))
    // The other thing it reads is neither answered nor asked any more: the tool at hand goes first.
    expect(at({})).toBe('meter')
    expect(at({ answers: { gone: option('x') } })).toBe('handle')
  })
})

describe('a tool that is there', () => {
  const must = (id: string) => ({ kind: 'must', reads: [id] })
  const at = (program: Program, wanted: readonly Question[], tools: string[] = ['meter']) =>
    first(program, wanted, check({ tools }))
  test('goes before looks that tell less, and after those that tell more', () => {
    const program = of([look, meter], [must('meter')])
    expect(at(program, [meter, look])).toBe('meter')
    expect(at(program, [look, meter])).toBe('look')
    expect(at(program, [meter, look], [])).toBe('look')
    expect(first(program, [meter, look])).toBe('look')
  })
  test('only where it can decide: rule out, or a strong sign', () => {
    const by = (rule: object) => at(of([look, meter], [{ reads: ['meter'], ...rule } as Rule]), [meter, look])
    expect(by({ kind: 'must' })).toBe('meter')
    expect(by({ kind: 'sign', strength: 'strong' })).toBe('meter')
    expect(by({ kind: 'sign', strength: 'moderate' })).toBe('look')
    expect(by({ kind: 'hazard' })).toBe('look')
    expect(by({ kind: 'must', reads: ['look'] })).toBe('look')
  })
  test('waits for what is read off the label, and what it is held against there', () => {
    const label = ask('label', { topic: 'label' })
    const program = (reads: string[]) => of([label, meter], [must('meter'), { kind: 'must', reads }])
    expect(at(program(['label', 'meter']), [meter, label])).toBe('label')
    expect(at(program(['label']), [meter, label])).toBe('meter')
    const noLabel = of([look, meter], [must('meter'), { kind: 'must', reads: ['look', 'meter'] }])
    expect(at(noLabel, [meter, look])).toBe('meter')
  })
  test('waits for what it may have told already, and for a danger that takes less care', () => {
    const told = ask('told', { toldBy: ['meter'] })
    expect(at(of([told, meter], [must('meter')]), [meter, told])).toBe('told')
    expect(at(of([look, meter], [must('meter'), { kind: 'hazard', reads: ['look'] }]), [meter, look])).toBe('look')
  })
  test('puts no load on', () => {
    const bench = measured('bench', 'capacity', 'bench')
    expect(at(of([look, bench], [must('bench')]), [bench, look], ['load'])).toBe('look')
  })
})

describe('what tells of the family', () => {
  const family = { family: { pack: 'own' } }
  const telling = [{ kind: 'must', reads: ['other'] }]
  const quick = (more: object = {}) => check({ mode: 'quick', ...more })
  test('goes before what tells as much in a quick check, five of them', () => {
    const program = of([look, other], telling, family)
    expect(first(program, [look, other], quick())).toBe('other')
    expect(first(program, [look, other], check())).toBe('look')
    const five = ['a', 'b', 'c', 'd', 'e']
    const many = of(
      [look, other, ...five.map(id => ask(id))],
      [...telling, ...five.map(id => ({ kind: 'must', reads: [id] }))],
      family,
    )
    expect(first(many, [look, other], quick({ trail: five.slice(1) }))).toBe('other')
    expect(first(many, [look, other], quick({ trail: five }))).toBe('look')
  })
  test('is a look that alone rules out or nearly does, by the family’s own pack; beside it only the label', () => {
    const label = ask('label', { topic: 'label' })
    const tells = (rule: Partial<Rule>, more: object = family, id = 'other') =>
      tellsOfFamily(of([look, other, label], [{ kind: 'must', reads: ['other'], ...rule } as Rule], more), id)
    expect(tells({})).toBe(true)
    expect(tells({ reads: ['other', 'label'] })).toBe(true)
    expect(tells({ reads: ['other', 'look'] })).toBe(false)
    expect(tells({ reads: ['label'] })).toBe(false)
    expect(tells({ reads: ['label'] }, family, 'label')).toBe(false)
    expect(tells({ kind: 'sign', strength: 'strong' })).toBe(true)
    expect(tells({ kind: 'sign', strength: 'moderate' })).toBe(false)
    expect(tells({ kind: 'hazard' })).toBe(false)
    expect(tells({ pack: 'any-cell' })).toBe(false)
    expect(tells({}, {})).toBe(false)
    expect(tells({}, family, 'look')).toBe(false)
  })
})

describe('how many are left', () => {
  const many = Array.from({ length: 14 }, (_, i) => ask(`q${i}`))
  const beside = ['b0', 'b1', 'b2', 'b3'].map(id => ask(id))
  const label = ask('label', { topic: 'label' })
  const program = of([...many, ...beside, meter, label, handle])
  const left = (wanted: readonly Question[], some: readonly string[] = [], more: object = {}) =>
    mayStillAsk(program, check(more), wanted, some)
  test('in full: all, by stage, and beside them those that the packs know and nobody wants anyhow', () => {
    expect(left([look, meter, label, handle])).toEqual({ all: 4, of: { look: 2, measure: 1, label: 1 } })
    expect(left([many[0]!], ['b0', 'b0', 'q0', 'gone'])).toEqual({ all: 2, of: { look: 2 } })
    expect(left([])).toEqual({ all: 0, of: {} })
  })
  test('in a quick check: ten altogether, three beside, and those that a tool at hand answers on top', () => {
    const quick = (wanted: readonly Question[], some: readonly string[] = [], more: object = {}) =>
      left(wanted, some, { mode: 'quick', ...more })
    expect([mostQuick, mostBeside]).toEqual([10, 3])
    expect(quick(many)).toEqual({ all: 10 })
    expect(quick(many.slice(0, 4))).toEqual({ all: 4 })
    expect(quick(many, [], { trail: ['a', 'b', 'c'] })).toEqual({ all: 7 })
    expect(quick(many, [], { trail: Array(12).fill('a') })).toEqual({ all: 0 })
    expect(quick(many.slice(0, 2), ['b0', 'b1', 'b2', 'b3'])).toEqual({ all: 5 })
    expect(quick([...many, meter], [], { tools: ['meter'] })).toEqual({ all: 11 })
    expect(quick([...many, meter], [], { tools: [] })).toEqual({ all: 10 })
    expect(quick([ask('t', { toldBy: ['scale'] })], [], { tools: ['scale'], trail: Array(10).fill('a') })).toEqual({
      all: 1,
    })
  })
})

test('stages: danger that one sees and gets away from, what is printed, what is looked at, what takes a tool', () => {
  const hazards = new Map<string, Urgency>([
    ['away', 'get-away'],
    ['leave', 'leave'],
    ['hand', 'get-away'],
  ])
  const program = of([], [], { hazards })
  const stage = (id: string, more: object = {}) => stageOf(program, ask(id, more))
  expect(stage('away')).toBe('safety')
  expect(stage('away', { topic: 'label' })).toBe('safety')
  expect(stage('leave')).toBe('look')
  expect(stage('hand', { care: 'handle' })).toBe('look')
  expect(stage('hand', { care: 'meter' })).toBe('measure')
  expect(['meter', 'unwrap', 'bench'].map(care => stage('x', { care, topic: 'label' }))).toEqual(
    Array(3).fill('measure'),
  )
  expect(['look', 'handle'].map(care => stage('x', { care, topic: 'label' }))).toEqual(['label', 'label'])
})

describe('tools', () => {
  test.each([
    ['mass', ['scale']],
    ['energy-per-mass', ['scale']],
    ['diameter', ['calliper', 'ruler']],
    ['length', ['calliper', 'ruler']],
    ['energy-per-volume', ['calliper', 'ruler']],
    ['voltage', ['meter']],
    ['ac-resistance', ['meter']],
    ['dc-resistance', ['meter']],
    ['voltage-lost', ['meter']],
    ['capacity', ['load']],
    ['claimed-capacity', []],
  ])('%s takes one of %j', (quantity, tools) => {
    expect(toolsFor(measured('q', quantity))).toEqual(tools)
    expect(toolsFor(measured('q', quantity, 'bench'))).toEqual(['load'])
    expect(toolsFor(measured('q', quantity, 'bench', { needs: ['lens'] }))).toEqual(['lens'])
  })
  test('at hand is what was said to be there and is needed', () => {
    expect(isAtHand(check({ tools: ['meter'] }), meter)).toBe(true)
    expect(isAtHand(check({ tools: ['scale'] }), meter)).toBe(false)
    expect(isAtHand(check({ tools: ['meter'] }), look)).toBe(false)
    expect(isAtHand(check(), meter)).toBe(false)
    expect(hasTool(check(), meter)).toBe(true)
    expect(hasTool(check({ tools: ['ruler'] }), measured('q', 'length'))).toBe(true)
  })
  test('told is what a tool that is there may have told', () => {
    const told = ask('t', { toldBy: ['scale', 'meter'] })
    expect(isToldByTool(check({ tools: ['meter'] }), told)).toBe(true)
    expect(isToldByTool(check({ tools: ['lens'] }), told)).toBe(false)
    expect(isToldByTool(check(), told)).toBe(false)
    expect(isToldByTool(check({ tools: ['meter'] }), look)).toBe(false)
  })
})

test.each<[string, Answer, object | undefined]>([
  ['legs', option('three'), undefined],
  ['legs', cantTell, undefined],
  ['mass', cantTell, undefined],
  ['legs', option('six'), { code: 'unknown-option', question: 'legs', option: 'six' }],
  ['legs', reading(3), { code: 'unknown-option', question: 'legs', option: '3' }],
  ['mass', option('six'), { code: 'unknown-option', question: 'mass', option: 'six' }],
  ['mass', reading(1), undefined],
  ['mass', reading(9, 0.1), undefined],
  ['mass', reading(0.9), { code: 'reading-out-of-range', question: 'mass', value: 0.9, least: 1, most: 9, unit: 'u' }],
  ['mass', reading(9.1), { code: 'reading-out-of-range', question: 'mass', value: 9.1, least: 1, most: 9, unit: 'u' }],
  ['mass', reading(Number.NaN), { code: 'not-a-number', question: 'mass' }],
  ['mass', reading(5, Number.NaN), { code: 'not-a-number', question: 'mass' }],
  ['mass', reading(5, -0.1), { code: 'not-a-number', question: 'mass' }],
  ['no-such', option('x'), undefined],
])('to %s the answer %j: %j', (id, answer, refusal) => {
  const legs = ask('legs', { answer: { kind: 'options', options: [{ id: 'three' }, { id: 'four' }] } })
  expect(misfit(of([legs, measured('mass', 'mass')]), id, answer)).toEqual(refusal)
})
