// How strongly a feature tells: the ladder step by step, and what contradictions do to it.
import { expect, test } from 'vitest'
import { massHalfWidth } from '../../src/families/derive/figure-limits.ts'
import { earnedBy, mayTell, withEarned } from '../../src/families/strength/earned.ts'
import { independent, massOfReferences, type Reference } from '../../src/families/strength/references.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { named, referenceOf } from './made-families.ts'

const cells = (count: number, more: Partial<Reference> = {}) =>
  Array.from({ length: count }, (_, i) => referenceOf(`r${i}`, { how: 'long-trusted', ...more }))
const other = (id: string) => referenceOf(id, { looks: { legs: 'four' } })

test('one reference gives a sign, two a moderate, three a strong one, five what a must needs', () => {
  const steps = [0, 1, 2, 3, 4, 5].map(count => earnedBy('legs', ['three'], cells(count)))
  expect(steps).toEqual(['none', 'weak', 'moderate', 'strong', 'strong', 'must'])
})

test('one from the maker tells more of what is counted at a glance, and no more of a disc of print', () => {
  expect(earnedBy('legs', ['three'], [referenceOf('a', { how: 'maker' })])).toBe('moderate')
  const print = referenceOf('a', { how: 'maker', looks: { print: 'clean' } })
  expect(earnedBy('print', ['clean'], [print])).toBe('weak')
})

test('five cells of one order, or of one person, count as one', () => {
  expect(independent(cells(5))).toBe(5)
  expect(independent(cells(5, { order: 'one box' }))).toBe(1)
  expect(independent(cells(5, { by: 'me' }))).toBe(1)
  expect(earnedBy('legs', ['three'], cells(5, { order: 'One Box ' }))).toBe('weak')
})

test('what is only offered, or was withdrawn, counts nothing', () => {
  expect(earnedBy('legs', ['three'], cells(5, { state: 'offered' }))).toBe('none')
  expect(earnedBy('legs', ['three'], cells(5, { state: 'withdrawn' }))).toBe('none')
})

test("one contradicting person caps a construction's must at moderate, two make it a remark", async () => {
  const { constructions } = await loadConstructions()
  const built = constructions.find(one => one.construction === 'two-dimples-three-legs')
  if (!built) throw new Error('it is gone')
  const facts = { ...named('f-aaaaaa', 'Tried'), traits: built.traits }
  const legs = facts.traits['legs']
  const entry = legs?.against[0]
  if (!legs || !entry) throw new Error('it says nothing of legs')
  const may = (references: Reference[]) => mayTell('legs', legs, entry, built, references)
  expect(may([])).toBe('must')
  expect(may([other('x')])).toBe('moderate')
  expect(may([other('x'), referenceOf('x2', { looks: { legs: 'four' }, by: 'x' })])).toBe('moderate')
  expect(may([other('x'), other('y')])).toBe('none')
  const varied = withEarned(facts, built, [other('x'), other('y')]).traits['legs']
  expect(varied?.against).toEqual([])
  expect(varied?.remarks.some(one => one.options.includes('four'))).toBe(true)
})

test('a must that leaves out an exception of its construction is not said by it', async () => {
  const { constructions } = await loadConstructions()
  const built = constructions.find(one => one.construction === 'two-dimples-three-legs')
  const trait = built?.traits['lettering-place']
  const entry = trait?.against[0]
  if (!trait || !entry) throw new Error('it says nothing of lettering')
  const { unless: _, ...without } = entry
  expect(mayTell('lettering-place', trait, entry, built, [])).toBe('must')
  expect(mayTell('lettering-place', trait, without, built, [])).toBe('weak')
})

test('the mass: 46 g from three cells leaves 0.94 g, and one cell more than three', () => {
  // Known sigma, 99 %: 2.576 x 0.253 x sqrt(4/3) + 0.4 % of 46 = 0.753 + 0.184; scipy.stats.norm.ppf(0.995) = 2.5758293.
  expect(massHalfWidth(46, 3)).toBeCloseTo(0.937, 3)
  expect(massHalfWidth(46, 1)).toBeGreaterThan(massHalfWidth(46, 3))
  // sqrt(1 + 1/3) x 2.576 = 2.97 sigma, as a prediction interval with a known sigma has it for three cells.
  expect((massHalfWidth(46, 3) - 0.004 * 46) / (0.0055 * 46)).toBeCloseTo(2.97, 2)
})

test('masses set a middle by order, and a scale of one gram sets none', () => {
  const weighed = (id: string, value: number, u: number, order: string) =>
    referenceOf(id, { mass: { value, u }, order })
  const middle = massOfReferences([
    weighed('a', 44, 0.05, 'one'),
    weighed('b', 45, 0.05, 'one'),
    weighed('c', 46, 0.05, 'two'),
    weighed('d', 60, 0.6, 'three'),
  ])
  expect(middle).toEqual({ middle: 45.25, cells: 2 })
  expect(massOfReferences([weighed('a', 44, 0.6, 'one')])).toBeUndefined()
})
