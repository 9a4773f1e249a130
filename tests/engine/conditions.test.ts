// Conditions: each atom weighed alone, and what a condition reads.
import { expect, test } from 'vitest'
import { type Answer, cantTell, option, reading } from '../../src/engine/answers.ts'
import { type Atom, atomsOf, type Condition, questionsOf, weighAtom } from '../../src/engine/conditions.ts'
import { atomsByQuestion } from '../../src/engine/outlook/model.ts'

const is = (...options: string[]): Condition => ({ op: 'is', question: 'legs', options })
const light: Condition = { op: 'below', question: 'mass', limit: 40 }
const heavy: Condition = { op: 'above', question: 'mass', limit: 60 }

test('conditions name their atoms in reading order, and each question once', () => {
  const both: Condition = { op: 'all', of: [is('four'), { op: 'not', of: { op: 'any', of: [light, is('three')] } }] }
  expect(atomsOf(both)).toEqual([is('four'), light, is('three')])
  expect(questionsOf(both)).toEqual(['legs', 'mass'])
  expect(questionsOf(both)).toBe(questionsOf(both))
  const found = atomsByQuestion([both, is('four'), { ...light }])
  expect(found.get('legs')).toEqual([is('four'), is('three')])
  expect(found.get('mass')).toHaveLength(1)
})

test.each<[string, Atom, Answer | undefined, string]>([
  ['unasked', is('four') as Atom, undefined, 'unknown'],
  ['untold', is('four') as Atom, cantTell, 'unknown'],
  ['told', is('four', 'five') as Atom, option('five'), 'true'],
  ['told otherwise', is('four') as Atom, option('five'), 'false'],
  ['told a figure', is('four') as Atom, reading(4), 'false'],
  ['unless, unasked', { op: 'unless', question: 'legs', options: ['four'] }, undefined, 'unknown'],
  ['unless, untold', { op: 'unless', question: 'legs', options: ['four'] }, cantTell, 'true'],
  ['unless, told', { op: 'unless', question: 'legs', options: ['four'] }, option('four'), 'false'],
  ['unless, told otherwise', { op: 'unless', question: 'legs', options: ['four'] }, option('five'), 'true'],
  ['below', light as Atom, reading(39), 'true'],
  ['below, on the limit', light as Atom, reading(40), 'false'],
  ['below, above it', light as Atom, reading(41), 'false'],
  ['below, too near', light as Atom, reading(39, 1), 'unknown'],
  ['above', heavy as Atom, reading(61), 'true'],
  ['above, on the limit', heavy as Atom, reading(60), 'false'],
  ['above, below it', heavy as Atom, reading(59), 'false'],
  ['a limit of an option', heavy as Atom, option('four'), 'unknown'],
  ['a limit, untold', heavy as Atom, cantTell, 'unknown'],
])('an atom, %s, is weighed alone', (_, atom, answer, truth) => {
  expect(weighAtom(atom, answer)).toBe(truth)
})
