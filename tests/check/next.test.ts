// What comes next: danger, what was found out elsewhere, what decides first, what is easy, what is looked at beside, and risk last and asked for.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { mustKeepOff, nextOf } from '../../src/check/next.ts'
import { type Answer, type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { handsOn } from './hands.ts'
import { lanternFamilies, lanternOf, lanternProgram, lanternQuestions, lanternRules } from './lantern-pack.ts'

const program = lanternProgram('lamp')
const at = (answers: Answers, more: Partial<Check> = {}, of: Program = program): Check => {
  const begun = handsOn(of).begin()
  return { ...begun, answers: { ...begun.answers, ...answers }, trail: Object.keys(answers), ...more }
}
const next = (answers: Answers, more: Partial<Check> = {}, of: Program = program) => nextOf(of, at(answers, more, of))
const asks = (answers: Answers, more: Partial<Check> = {}, of: Program = program) => {
  const one = next(answers, more, of)
  return 'question' in one ? `${one.is} ${one.question}` : one.is === 'consent' ? `consent ${one.to}` : one.is
}
const no = option('no')
const safe = { smoke: no, wrap: no }
const quick = { mode: 'quick' } as const
/** Everything that only looking and a meter tells, with nothing against the cell. */
const easy: Answers = { ...safe, legs: option('three'), print: no, seam: no, price: no, mass: reading(45, 0.1) }
const changed = (change: (one: (typeof lanternQuestions)[number]) => object, rules = lanternRules): Program =>
  lanternProgram('lamp', lanternOf({ questions: lanternQuestions.map(change) as never, rules }))

test('danger that one gets away from comes first, then what waits to be asked again, then everything else', () => {
  const pending: Record<string, Answer> = { legs: option('four') }
  expect(asks({}, { pending })).toBe('ask smoke')
  expect(next({ smoke: no }, { pending })).toMatchObject({ is: 'confirm', question: 'legs', answer: option('four') })
  expect(asks({ smoke: no })).toBe('ask legs')
  // What was answered meanwhile waits no more.
  expect(asks({ smoke: no, legs: option('three') }, { pending })).not.toMatch(/^confirm/)
})

test('what the family has first goes before what is easier, and after what waits', () => {
  const first = lanternProgram('lamp', lanternOf({ families: [{ ...lanternFamilies[0], first: ['mass'] }] as never }))
  expect(asks({ smoke: no }, {}, first)).toBe('ask mass')
  expect(asks({ smoke: no, mass: reading(45, 0.1) }, {}, first)).toBe('ask legs')
  expect(asks({ smoke: no }, { pending: { legs: option('four') } }, first)).toBe('confirm legs')
})

describe('while danger may be near', () => {
  test('nothing is asked that needs hands', () => {
    expect(mustKeepOff(program, at({ smoke: cantTell }))).toBe(true)
    expect(mustKeepOff(program, at({ wrap: cantTell, smoke: no }))).toBe(false)
    expect(mustKeepOff(program, at({}))).toBe(false)
    const looked = { smoke: cantTell, legs: option('three'), print: no, seam: no, price: no }
    expect(asks(looked)).toBe('done')
    expect(asks({ ...looked, smoke: no })).toBe('ask wrap')
  })
  test('and once it is there, nothing at all', () => {
    expect(next({ smoke: option('yes') })).toEqual({ is: 'done', settled: true })
  })
})

describe('before the first question that needs hands', () => {
  const looked = { smoke: no, legs: option('three'), print: no, seam: no, price: no }
  test('it is asked once whether the cell may be touched, and danger and looks come before that', () => {
    const unasked = { consents: {} }
    expect(asks({}, unasked)).toBe('ask smoke')
    expect(asks({ smoke: no }, unasked)).toBe('ask legs')
    expect(asks(looked, unasked)).toBe('consent touch')
    expect(asks(looked)).toBe('ask wrap')
    expect(asks({ ...looked, wrap: no })).toBe('ask mass')
  })
  test('what was measured and waits to be asked again is asked for by whoever may touch it', () => {
    const pending = { mass: reading(30, 0.1) }
    expect(asks({ smoke: no }, { pending, consents: {} })).toBe('consent touch')
    expect(asks({ smoke: no }, { pending })).toBe('confirm mass')
  })
  test('one that may not be touched is kept off: only looks are asked for, and nothing risky is offered', () => {
    const refused = { consents: { touch: false } }
    expect(mustKeepOff(program, at({ smoke: no }, refused))).toBe(true)
    expect(asks({ smoke: no }, refused)).toBe('ask legs')
    expect(asks(looked, refused)).toBe('done')
    expect(asks(easy, refused)).toBe('done')
  })
})

describe('a quick check', () => {
  const four = { smoke: no, legs: option('four') }
  const urgent = (act: string) =>
    lanternProgram(
      'lamp',
      lanternOf({ rules: lanternRules.map(one => (one.id === 'torn' ? { ...one, act } : one)) as never }),
    )
  test('of what is ruled out asks for danger alone that one gets away from or leaves alone', () => {
    expect(asks(four, quick)).toBe('done')
    expect(asks(four, quick, urgent('leave'))).toBe('ask wrap')
    expect(asks(four)).toBe('ask wrap')
    expect(asks({ smoke: no, legs: option('three') }, quick)).toBe('ask wrap')
    // What is left alone where it is keeps hands off as well while nobody could tell it.
    const untold = { smoke: no, wrap: cantTell, legs: option('three'), print: no, seam: no, price: no }
    expect(asks(untold, {}, urgent('leave'))).toBe('done')
    expect(asks(untold)).toBe('ask mass')
  })
  test('asks what is quick, what tells of the family, and what a tool that is there has told', () => {
    const all = Object.fromEntries(['smoke', 'wrap', 'legs'].map(id => [id, safe[id as 'smoke'] ?? option('three')]))
    expect(asks(all, quick)).toBe('done')
    const told = changed(one => (one.id === 'print' ? { ...one, toldBy: ['scale'] } : one))
    expect(asks(all, { ...quick, tools: ['scale'] }, told)).toBe('ask print')
    expect(asks(all, { ...quick, tools: ['ruler'] }, told)).toBe('done')
    // A look that makes doubtful alone, by the family's own pack.
    const seam = lanternRules.map(one => (one.id === 'odd-seam' ? { ...one, strength: 'strong' } : one))
    const telling = changed(one => one, seam as never)
    expect(asks(all, quick, telling)).toBe('ask seam')
  })
  test('asks ten and no more, but what a tool at hand measures or has told', () => {
    const ten = { ...quick, trail: Array.from({ length: 10 }, (_, i) => `t${i}`) }
    const nine = { ...ten, trail: ten.trail.slice(1) }
    expect(asks({ smoke: no }, nine)).toBe('ask legs')
    expect(asks({ smoke: no }, ten)).toBe('done')
    const quickMass = changed(one => (one.id === 'mass' ? { ...one, quick: true } : one))
    expect(asks({ ...safe }, { ...ten, tools: ['scale'] }, quickMass)).toBe('ask mass')
    expect(asks({ ...safe }, { ...ten, tools: ['ruler'] }, quickMass)).toBe('done')
    expect(asks({ ...safe }, ten, quickMass)).toBe('done')
  })
})

describe('a tool', () => {
  test('that is not there is asked for nothing', () => {
    const looked = { ...easy } as Record<string, Answer>
    delete looked['mass']
    expect(asks(looked)).toBe('ask mass')
    expect(asks(looked, { tools: ['ruler'] })).not.toBe('ask mass')
    expect(asks(looked, { tools: ['scale'] })).toBe('ask mass')
  })
})

describe('a step that opens a wrap or loads a cell', () => {
  const weak = { ...easy, print: option('yes') }
  test('is asked for after everything easier, the wrap first, and goes on once it is agreed to', () => {
    expect(asks(easy)).toBe('consent unwrap')
    expect(asks(easy, { consents: { unwrap: true } })).toBe('ask dimples')
    expect(asks(easy, { consents: { unwrap: false } })).toBe('consent bench')
    expect(asks(easy, { consents: { unwrap: false, bench: true } })).toBe('ask load')
    expect(next(easy, { consents: { unwrap: false, bench: false } })).toEqual({ is: 'done', settled: false })
    const lifted = { ...easy, dimples: option('two') }
    expect(asks(lifted, { consents: { unwrap: true } })).toBe('consent bench')
  })
  test('is never offered while an easier danger is not told, and a load not while a meter may show one', () => {
    for (const untold of ['wrap', 'smoke']) expect(asks({ ...easy, [untold]: cantTell }), untold).toBe('done')
    const empty = {
      ...{ id: 'too-heavy', kind: 'hazard', act: 'isolate', when: { mass: { above: 90 } }, says: 'x', source: ['s'] },
    }
    const heavy = lanternProgram('lamp', lanternOf({ rules: [...lanternRules, empty] as never }))
    const untold = { ...easy, mass: cantTell }
    expect(asks(untold, {}, heavy)).toBe('consent unwrap')
    expect(asks(untold, { consents: { unwrap: false } }, heavy)).toBe('done')
    expect(asks(easy, { consents: { unwrap: false } }, heavy)).toBe('consent bench')
  })
  test('is not offered for what is failing; a load not where there is a single sign', () => {
    expect(asks(weak)).toBe('consent unwrap')
    expect(asks(weak, { consents: { unwrap: false } })).toBe('done')
    expect(asks({ ...easy, mass: reading(30, 0.1) })).toBe('done')
  })
  test('is counted among what is left, unless it was declined', () => {
    const left = (consents: Check['consents']) => {
      const one = next(easy, { consents })
      return 'left' in one ? one.left : undefined
    }
    expect(left({})).toEqual({ all: 2, of: { measure: 2 } })
    expect(left({ unwrap: false })).toEqual({ all: 1, of: { measure: 1 } })
  })
})

describe('looks for another purpose', () => {
  const beside = (among: string[], of: Program = program): Program => ({
    ...of,
    beside: { among, next: answers => among.find(id => answers[id] === undefined) },
  })
  const looks = beside(['print', 'seam', 'price'])
  const told = { ...safe, legs: option('three') }
  test('come after what a quick check asks, three of them, while nothing fails', () => {
    expect(asks(told, quick, looks)).toBe('ask print')
    expect(
      asks({ ...told, print: no, seam: no, price: no }, quick, beside(['print', 'seam', 'price', 'serials'])),
    ).toBe('done')
    expect(asks({ ...told, legs: option('four') }, quick, looks)).toBe('done')
    expect(asks({ ...told }, { ...quick, trail: Array(10).fill('x') }, looks)).toBe('done')
    expect(asks(told, quick, beside(['wings']))).toBe('done')
  })
  test('come before the last three of ten, while nothing speaks against the cell and no look for danger is open', () => {
    const seven = { ...quick, trail: ['smoke', 't1', 't2', 't3', 't4', 't5', 't6'] }
    expect(asks({ smoke: no }, seven, looks)).toBe('ask print')
    expect(asks({ smoke: no }, { ...seven, trail: seven.trail.slice(1) }, looks)).toBe('ask legs')
    // Those looked at already are none of the seven.
    expect(asks({ smoke: no, seam: no }, { ...seven, trail: [...seven.trail.slice(1), 'seam'] }, looks)).toBe(
      'ask legs',
    )
    expect(asks({ smoke: no }, { ...seven, mode: 'full' }, looks)).toBe('ask legs')
    expect(asks({ smoke: no, seam: option('yes') }, seven, beside(['print', 'price']))).toBe('ask legs')
    expect(asks({}, seven, looks)).toBe('ask smoke')
    const tool = changed(one => (one.id === 'mass' ? { ...one, quick: true } : one))
    expect(asks({ smoke: no }, { ...seven, tools: ['scale'] }, beside(['print'], tool))).not.toBe('ask print')
  })
})
