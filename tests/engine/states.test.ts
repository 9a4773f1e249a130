// The finitely many states of a question: every answer falls into exactly one, and each state is reached by its own answers.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cantTell, reading } from '../../src/engine/answers.ts'
import type { Atom } from '../../src/engine/conditions.ts'
import { countStates, signatureOf, statesOf } from '../../src/engine/outlook/states.ts'
import type { Question } from '../../src/engine/pack/pack.ts'
import { guard, sideOf } from '../../src/ground/guard-band.ts'

const mass: Question = {
  id: 'mass',
  ask: '',
  care: 'meter',
  effort: 1,
  quick: false,
  unsureOdds: 0.5,
  answer: { kind: 'reading', quantity: 'mass', unit: 'g', least: 0, most: 1000 },
}
const atomsAt = (limits: readonly number[]): Atom[] =>
  limits.flatMap(limit => [
    { op: 'below' as const, question: 'mass', limit },
    { op: 'above' as const, question: 'mass', limit },
  ])

describe('states of a reading', () => {
  const limits = fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 6 })
  const value = fc.double({ min: 0, max: 1000, noNaN: true })
  const u = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 600, noNaN: true }))

  test('every reading lies in one of them, whatever its value and uncertainty', () => {
    fc.assert(
      fc.property(limits, value, u, (some, v, spread) => {
        const atoms = atomsAt(some)
        const known = statesOf(mass, atoms).map(state => signatureOf(state.answers[0] ?? cantTell, atoms))
        expect(known).toContain(signatureOf(reading(v, spread), atoms))
        expect(new Set(known).size).toBe(known.length)
      }),
      { numRuns: 2000 },
    )
  })

  test('there are as many as clear gaps, exact hits and runs of undecided limits', () => {
    fc.assert(
      fc.property(limits, some => {
        const k = some.length
        // "can't tell" weighs like the run over all limits, so it is not a state of its own.
        expect(statesOf(mass, atomsAt(some))).toHaveLength(k + 1 + k + (k * (k + 1)) / 2)
        expect(countStates(mass, atomsAt(some))).toBe(statesOf(mass, atomsAt(some)).length)
      }),
    )
  })

  test('"can\'t tell" is always in the last state', () => {
    fc.assert(
      fc.property(limits, some => {
        expect(statesOf(mass, atomsAt(some)).at(-1)?.answers).toContainEqual(cantTell)
      }),
    )
  })
})

describe('which side of a limit a reading lies on', () => {
  // JCGM 106:2012 decision rule with guard band w = 2u for the lower limit 3000 mAh and u = 40 (worked example, by hand):
  // below only up to 2920, meets only from 3080, undecided between.
  test.each([
    [2900, 'less'],
    [2920, 'less'],
    [2920.1, 'undecided'],
    [2960, 'undecided'],
    [3010, 'undecided'],
    [3079.9, 'undecided'],
    [3080, 'more'],
    [3200, 'more'],
  ])('%d mAh with u = 40 against 3000 is %s', (value, side) => {
    expect(guard).toBe(2)
    expect(sideOf(value, 40, 3000)).toBe(side)
  })
  test('a printed figure on the limit is neither below nor above it', () => {
    expect(sideOf(3000, 0, 3000)).toBe('equal')
  })
})
