// Looks for another purpose than the verdict: asked last, while nothing is decided, each once; and whether going on could change anything.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { screenOf } from '../../src/check/screen.ts'
import { type Answer, cantTell, option } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { asked, handsOn } from './hands.ts'
import { lanternProgram } from './lantern-pack.ts'

/** As for a cell that is held against others: these are looked at as well. */
const beside = (...among: readonly string[]): Program => ({
  ...lanternProgram('lamp'),
  beside: { among, next: answers => among.find(id => answers[id] === undefined) },
})
const safe: Readonly<Record<string, Answer>> = { smoke: option('no'), wrap: option('no'), legs: option('three') }

/** A quick check of these answers, with "no" to the rest: what is asked, and how many were said to be left each time. */
function quick(program: Program, answers = safe) {
  const { begin, say } = handsOn(program)
  let check: Check = begin({ mode: 'quick' })
  const asks: string[] = []
  const lefts: number[] = []
  while (check.phase.is === 'asking' || check.phase.is === 'second-look') {
    const screen = screenOf(program, check)
    if (screen.kind === 'question') lefts.push(screen.left.all)
    asks.push(asked(check))
    check = say(check, check.phase.is === 'second-look' ? check.phase.answer : (answers[asked(check)] ?? option('no')))
  }
  return { check, asks, lefts }
}

describe('looks beside the verdict', () => {
  test('are asked after everything that is', () => {
    expect(quick(lanternProgram('lamp')).asks.sort()).toEqual(['legs', 'smoke', 'wrap'])
    const { asks } = quick(beside('print', 'seam'))
    expect(asks.slice(0, 3).sort()).toEqual(['legs', 'smoke', 'wrap'])
    expect(asks.slice(3)).toEqual(['print', 'seam'])
  })
  test('are counted among what is left, those alone that the packs ask and nobody has answered', () => {
    expect(quick(beside('print', 'seam')).lefts).toEqual([5, 4, 3, 2, 1])
    expect(quick(beside('print', 'wings')).lefts.at(0)).toBe(4)
    const { begin } = handsOn(beside('print', 'seam'))
    const known = begin({ mode: 'quick', known: { print: cantTell } })
    expect(screenOf(beside('print', 'seam'), known)).toMatchObject({ left: { all: 4 } })
  })
  test('are not asked once something is decided', () => {
    const { asks, check } = quick(beside('print', 'seam'), { ...safe, legs: option('four') })
    expect(asks).not.toContain('print')
    expect(check.phase).toEqual({ is: 'done' })
  })
  test('are three at most in a quick check', () => {
    const { asks } = quick(beside('print', 'seam', 'price', 'serials'))
    expect(asks.slice(3)).toEqual(['print', 'seam', 'price'])
  })
})

describe('going on in full', () => {
  const more = (check: Check) => {
    const screen = screenOf(lanternProgram('lamp'), check)
    return screen.kind === 'verdict' ? screen.more : undefined
  }
  test('is offered where it could still change the verdict', () => {
    expect(more(quick(lanternProgram('lamp')).check)).toBe(true)
  })
  test('is not offered after a danger, nor when there is nothing left to ask', () => {
    expect(more(quick(lanternProgram('lamp'), { smoke: option('yes') }).check)).toBe(false)
    const { check } = quick(lanternProgram('lamp'))
    const rest = { mass: cantTell, print: cantTell, seam: cantTell, price: cantTell, dimples: cantTell, load: cantTell }
    expect(more({ ...check, answers: { ...check.answers, ...rest } })).toBe(false)
  })
})
