// How strongly a feature tells: the ladder step by step, and what contradictions do to it.
import { expect, test } from 'vitest'
import { massHalfWidth } from '../../src/families/derive/figure-limits.ts'
import { earnedBy, mayTell, saidBy, standingOf, unearnedMusts, withEarned } from '../../src/families/strength/earned.ts'
import { independent, massOfReferences, type Reference } from '../../src/families/strength/references.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { anyCell } from './base.ts'
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

const trait = {
  made: ['three'],
  against: [{ options: ['four'], tells: 'must', from: 'moderator' }],
  remarks: [],
} as const
const built = (tells: string, more: object = {}, made: readonly string[] = ['three']) =>
  ({
    traits: {
      legs: { made, remarks: [], against: [{ options: ['four', 'five'], tells, from: 'construction', ...more }] },
    },
  }) as never
const entryOf = (options: string[], more: object = {}) =>
  ({ options, tells: 'must', from: 'moderator', ...more }) as never

test('a construction says of a contradiction what it says of each of its answers, the least of them', () => {
  const said = (options: string[], construction = built('strong'), more: object = {}) =>
    saidBy(construction, 'legs', ['three'], entryOf(options, more))
  expect(said(['four'])).toBe('strong')
  expect(said(['four', 'other'])).toBe('none')
  expect(saidBy(undefined, 'legs', ['three'], entryOf(['four']))).toBe('none')
  expect(saidBy(built('strong'), 'print', ['three'], entryOf(['four']))).toBe('none')
  // Of another way of making, it says nothing.
  expect(said(['four'], built('strong', {}, ['three', 'other']))).toBe('none')
  expect(said(['four'], built('strong', {}, ['four']))).toBe('none')
  // An exception that it makes has to be made.
  const excepted = built('must', { unless: 'open-rewrap' })
  expect(said(['four'], excepted)).toBe('none')
  expect(said(['four'], excepted, { unless: 'open-rewrap' })).toBe('must')
  expect(said(['four'], excepted, { unless: 'protected' })).toBe('none')
  expect(said(['four'], built('must'), { unless: 'protected' })).toBe('must')
  const two = {
    traits: {
      legs: {
        made: ['three'],
        remarks: [],
        against: [
          entryOf(['four'], { tells: 'weak' }),
          entryOf(['four'], { tells: 'strong' }),
          entryOf(['five'], { tells: 'moderate' }),
        ],
      },
    },
  }
  expect(said(['four'], two as never)).toBe('strong')
  expect(said(['four', 'five'], two as never)).toBe('moderate')
})

test('agreeing are independent accepted references that show it as made; contradicting, people whose good cell does not', () => {
  const seen = [
    ...cells(3),
    referenceOf('a', { looks: { legs: 'four' }, by: 'p' }),
    referenceOf('b', { looks: { legs: 'five' }, by: 'p' }),
    referenceOf('c', { looks: { legs: 'four' }, state: 'offered' }),
    referenceOf('d', { looks: { print: 'poor' } }),
  ]
  expect(standingOf('legs', ['three'], seen)).toEqual({ agree: 3, contradict: 1 })
  expect(standingOf('legs', [], seen)).toEqual({ agree: 0, contradict: 0 })
  expect(standingOf('legs', ['three', 'four', 'five'], seen)).toEqual({ agree: 4, contradict: 0 })
})

test.each([
  ['legs', 'maker', 'moderate'],
  ['vent-disc', 'seller-maker-names', 'moderate'],
  ['code-place', 'maker', 'moderate'],
  ['lettering-place', 'maker', 'moderate'],
  ['legs', 'long-trusted', 'weak'],
  ['dimples', 'maker', 'weak'],
] as const)('one cell, %s, known by %s: %s', (feature, how, earned) => {
  const of = (state: Reference['state'], look = 'x') =>
    referenceOf(`r-${state}-${look}`, { how, state, looks: { [feature]: look } })
  expect(earnedBy(feature, ['x'], [of('accepted')])).toBe(earned)
  // One from the maker that was only offered, or looks otherwise, lends nothing to another.
  const trusted = referenceOf('t', { how: 'long-trusted', looks: { [feature]: 'x' } })
  expect(earnedBy(feature, ['x'], [trusted, of('offered'), of('accepted', 'y')])).toBe('weak')
})

test('a moderator’s word alone is a weak sign; what was earned or said is the most, and what contradicts takes of it', () => {
  const may = (construction: never, references: Reference[]) =>
    mayTell('legs', trait as never, trait.against[0] as never, construction, references)
  expect(may(undefined as never, [])).toBe('weak')
  expect(may(built('strong'), cells(2))).toBe('strong')
  expect(may(built('weak'), cells(3))).toBe('strong')
  expect(may(undefined as never, cells(5))).toBe('must')
  expect(may(undefined as never, [...cells(5), other('x')])).toBe('moderate')
  expect(may(undefined as never, [other('x')])).toBe('weak')
  expect(may(built('must'), [other('x'), other('y')])).toBe('none')
})

test('wished for is the most that is given; what nobody may say any more is a remark, four of them at most', () => {
  const wish = (tells: string, references: Reference[], remarks: object[] = [], more: object = {}) =>
    withEarned(
      {
        ...named('f-aaaaaa', 'Tried'),
        traits: { legs: { ...trait, remarks, against: [{ ...trait.against[0], tells, ...more }] } },
      } as never,
      undefined,
      references,
    ).traits['legs']
  expect(wish('weak', cells(5))?.against).toMatchObject([{ tells: 'weak' }])
  expect(wish('must', cells(3))?.against).toMatchObject([{ options: ['four'], tells: 'strong', from: 'moderator' }])
  const varied = [other('x'), other('y')]
  expect(wish('must', varied, [{ options: ['five'] }])).toEqual({
    ...{ made: ['three'], against: [], remarks: [{ options: ['five'] }, { options: ['four'] }] },
  })
  const together = { print: ['poor'] }
  expect(wish('must', varied, [], { together })?.remarks).toEqual([{ options: ['four'], together }])
  expect(wish('must', varied, Array(4).fill({ options: ['five'] }))?.remarks).toEqual(
    Array(4).fill({ options: ['five'] }),
  )
})

test('a must of a look that has not been earned is named with what it has and needs', () => {
  const facts = {
    ...named('f-aaaaaa', 'Tried'),
    traits: { legs: trait, 'no-feature': trait, 'measured-capacity': trait },
  } as never
  const problem = (have: number) => [{ code: 'must-not-earned', feature: 'legs', have, need: 5 }]
  const looked = (references: Reference[]) =>
    unearnedMusts(facts, anyCell, undefined, references).filter(one => 'feature' in one && one.feature === 'legs')
  expect(looked([])).toEqual(problem(0))
  expect(looked(cells(4))).toEqual(problem(4))
  expect(looked(cells(5))).toEqual([])
  expect(unearnedMusts(facts, anyCell, built('must'), []).some(one => 'feature' in one && one.feature === 'legs')).toBe(
    false,
  )
  const strong = {
    ...named('f-aaaaaa', 'Tried'),
    traits: { legs: { ...trait, against: [{ ...trait.against[0], tells: 'strong' }] } },
  } as never
  expect(unearnedMusts(strong, anyCell, undefined, [])).toEqual([])
  const all = unearnedMusts(facts, anyCell, undefined, []).map(one => 'feature' in one && one.feature)
  expect(all).not.toContain('no-feature')
})

test('a weight counts from a scale that shows tenths, of cells that were accepted', () => {
  const weighed = (u: number, more: object = {}) =>
    massOfReferences([referenceOf('a', { mass: { value: 44, u }, ...more })])
  expect(weighed(0.3)).toEqual({ middle: 44, cells: 1 })
  expect(weighed(0.31)).toBeUndefined()
  expect(weighed(0.05, { state: 'offered' })).toBeUndefined()
  const thirds = [44, 44.5, 45.6].map((value, i) => referenceOf(`r${i}`, { mass: { value, u: 0.05 } }))
  expect(massOfReferences(thirds)).toEqual({ middle: 44.7, cells: 3 })
  const sameOrder = thirds.map(one => ({ ...one, order: ' One Box' }))
  expect(massOfReferences(sameOrder)).toEqual({ middle: 44.7, cells: 1 })
})
