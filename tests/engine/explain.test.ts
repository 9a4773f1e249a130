// Beside a verdict: what was enough for it, and what was not asked, not told or not decided.
import { describe, expect, test } from 'vitest'
import { type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { smallestEnough } from '../../src/engine/enough.ts'
import { explain } from '../../src/engine/explain.ts'
import { answersRead, judge } from '../../src/engine/judge.ts'
import { scaleProgram } from './scale-pack.ts'

const general = scaleProgram()
const one = scaleProgram('one')
const explained = (answers: Answers, program = general) => explain(program, answers, judge(program, answers))
const enough = (answers: Answers, program = general) => explained(answers, program).enough
const unchecked = (answers: Answers, program = general) =>
  Object.fromEntries(explained(answers, program).unchecked.map(({ question, why }) => [question, why]))

const sound = { wrap: option('whole'), volts: reading(3.6, 0.01), mass: reading(50, 0.1) }

describe('enough', () => {
  test('for danger, ruled out and doubtful: the answers that alone come to it', () => {
    expect(enough({ ...sound, wrap: option('torn') })).toEqual(['wrap'])
    expect(enough({ ...sound, mass: reading(70, 0.1), legs: option('four') })).toEqual(['mass'])
    expect(enough({ ...sound, mass: reading(30, 0.1), legs: option('four') })).toEqual(['mass'])
    expect(enough({ ...sound, legs: option('four'), code: option('missing') })).toEqual(['legs', 'code'])
  })
  test('who cannot tell what would excuse a sign is part of it; who was not asked is not', () => {
    const four = { ...sound, legs: option('four') }
    expect(judge(general, { ...four, code: cantTell }).verdict).toBe('doubtful')
    expect(enough({ ...four, code: cantTell })).toEqual(['legs', 'code'])
    expect(enough(four)).toEqual(['legs'])
    expect(enough({ ...four, code: option('there') })).toEqual([])
  })
  test('of two that each come to it one is enough', () => {
    expect(enough({ wrap: option('torn'), volts: reading(0.5) })).toEqual(['wrap'])
  })
  test('for nothing found: what was met, dangers among it; for open nothing', () => {
    expect(judge(one, sound).verdict).toBe('nothing-found')
    expect(enough({ ...sound, legs: option('three') }, one)).toEqual(['wrap', 'volts', 'mass'])
    expect(enough(sound)).toEqual([])
  })
})

describe('the smallest set', () => {
  const needs = (...wanted: string[][]) => {
    const tried: string[] = []
    const holds = (subset: readonly string[]) => {
      tried.push(subset.join(''))
      return wanted.some(all => all.every(each => subset.includes(each)))
    }
    return { holds, tried }
  }
  test('is empty where nothing is needed, and everything where all is', () => {
    expect(smallestEnough(['a', 'b'], () => true)).toEqual([])
    expect(smallestEnough([], () => true)).toEqual([])
    expect(smallestEnough(['a', 'b', 'c'], needs(['a', 'b', 'c']).holds)).toEqual(['a', 'b', 'c'])
  })
  test('is the smaller one, then the first, in the order in which it was given', () => {
    expect(smallestEnough([...'abcde'], needs(['a', 'b', 'c'], ['d', 'e']).holds)).toEqual(['d', 'e'])
    expect(smallestEnough([...'abcd'], needs(['d', 'b'], ['c', 'a']).holds)).toEqual(['a', 'c'])
    expect(smallestEnough([...'edcba'], needs(['a', 'b', 'e'], ['c', 'e']).holds)).toEqual(['e', 'c'])
  })
  test('where no one of those that can be dropped is enough, two or all but one are', () => {
    expect(smallestEnough([...'abc'], needs(['a', 'b'], ['b', 'c'], ['a', 'c']).holds)).toEqual(['a', 'b'])
    // Of these three any two are enough, and none alone.
    expect(smallestEnough([...'xabcy'], needs([...'xyab'], [...'xybc'], [...'xyac']).holds)).toEqual([...'xaby'])
  })
  test('of very many, when it would take too long, is one of which nothing can be dropped', () => {
    const many = Array.from({ length: 40 }, (_, i) => `n${i}`)
    let asked = 0
    // Any twenty are enough: there is no smaller set, and too many of this size.
    const holds = (subset: readonly string[]) => {
      asked++
      return subset.length >= 20
    }
    const found = smallestEnough(many, holds)
    expect(found).toEqual(many.slice(20))
    // One look at each alone, one at what is needed, so many tries, and one at each that may be dropped.
    expect(asked).toBe(40 + 1 + 20_000 + 40)
  })
})

describe('not checked', () => {
  test('is what nobody asked, what could not be told, and a value too near the line of a danger', () => {
    const all = { wrap: 'not-asked', volts: 'not-asked', mass: 'not-asked', legs: 'not-asked', code: 'not-asked' }
    expect(unchecked({})).toEqual({ ...all, shop: 'not-asked' })
    expect(unchecked({ ...sound, legs: cantTell, code: option('there'), shop: option('new') })).toEqual({
      legs: 'cant-tell',
    })
    expect(unchecked({ ...sound, volts: reading(1.01, 0.1) })['volts']).toBe('undecided')
    expect(unchecked({ ...sound, volts: reading(1, 0) })).not.toHaveProperty('volts')
    expect(unchecked({ ...sound, volts: reading(1.25, 0.1) })).not.toHaveProperty('volts')
    expect(unchecked({ ...sound, volts: cantTell })['volts']).toBe('cant-tell')
    // Near a line that is of danger only beside something nobody has looked at: it is that which is not checked.
    expect(unchecked({ ...sound, volts: reading(1.95, 0.1) })).toMatchObject({ code: 'not-asked' })
    expect(unchecked({ ...sound, volts: reading(1.95, 0.1) })).not.toHaveProperty('volts')
    expect(unchecked({ ...sound, volts: reading(1.95, 0.1), code: option('missing') })['volts']).toBe('undecided')
    // Of no danger: near the line is near the line.
    expect(unchecked({ ...sound, mass: reading(42, 1) })).not.toHaveProperty('mass')
  })
  test('leaves out what the family settles', () => {
    expect(unchecked({}, one)).not.toHaveProperty('shop')
  })
})

test('what would change it is asked of what was enough and of what was not checked, each once', () => {
  const { changes } = explained({ ...sound, wrap: cantTell, legs: option('four'), code: cantTell })
  expect(changes().map(change => [change.question, change.is, 'verdict' in change ? change.verdict : ''])).toEqual([
    ['wrap', 'option', 'danger'],
    ['legs', 'option', 'open'],
    ['code', 'option', 'open'],
  ])
})

test('the answers a finding has read are those that were given, in the order of its rule', () => {
  const answers = { ...sound, legs: option('four'), code: cantTell }
  const [finding] = judge(general, answers).findings.filter(one => one.rule.id === 'no-code')
  if (!finding) throw new Error('nothing found')
  expect(answersRead(general, answers, finding)).toEqual({ code: cantTell, legs: option('four') })
  expect(answersRead(general, { legs: option('four') }, finding)).toEqual({ legs: option('four') })
})
