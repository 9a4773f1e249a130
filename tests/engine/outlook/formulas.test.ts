// Formulas and partitions, each kept once: what they say is what plain evaluation says, and what says the same is the same.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { always, type Formula, type Formulas, never, openFormulas } from '../../../src/engine/outlook/formulas.ts'
import { openPartitions } from '../../../src/engine/outlook/partitions.ts'

const flags = (...holds: number[]) => Uint8Array.from(holds)
type Tree =
  | { readonly is: 'literal'; readonly variable: number; readonly holds: number[] }
  | { readonly is: 'and' | 'or'; readonly of: Tree[] }
const literal = fc.record({
  is: fc.constant('literal' as const),
  variable: fc.integer({ min: 0, max: 3 }),
  holds: fc.array(fc.constantFrom(0, 1), { minLength: 3, maxLength: 3 }),
})
const { tree } = fc.letrec<{ tree: Tree }>(tie => ({
  tree: fc.oneof(
    { maxDepth: 3 },
    literal,
    fc.record({ is: fc.constantFrom('and' as const, 'or' as const), of: fc.array(tie('tree'), { maxLength: 3 }) }),
  ),
}))
const build = (formulas: Formulas, one: Tree): Formula =>
  one.is === 'literal'
    ? formulas.literal(one.variable, Uint8Array.from(one.holds))
    : formulas[one.is](one.of.map(part => build(formulas, part)))
const says = (one: Tree, states: readonly number[]): boolean =>
  one.is === 'literal'
    ? one.holds[states[one.variable] as number] === 1
    : one.is === 'and'
      ? one.of.every(part => says(part, states))
      : one.of.some(part => says(part, states))
const everywhere = Array.from({ length: 81 }, (_, i) => [
  i % 3,
  Math.floor(i / 3) % 3,
  Math.floor(i / 9) % 3,
  Math.floor(i / 27),
])

describe('formulas', () => {
  test('say of every state what plain evaluation says, fixed one question after another, in any order', () => {
    fc.assert(
      fc.property(tree, fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }), (one, order) => {
        const formulas = openFormulas()
        const formula = build(formulas, one)
        for (const states of everywhere) {
          const end = order.reduce(
            (left, variable) => formulas.restrict(left, variable, states[variable] as number),
            formula,
          )
          expect(end).toBe(says(one, states) ? always : never)
        }
      }),
      { numRuns: 150 },
    )
  })
  test('are kept once: what was made before has its number, whatever the order and grouping of its parts', () => {
    fc.assert(
      fc.property(tree, tree, (a, b) => {
        const formulas = openFormulas()
        const [one, other] = [build(formulas, a), build(formulas, b)]
        const both = formulas.and([one, other])
        const either = formulas.or([one, other])
        const size = formulas.size
        expect([build(formulas, a), build(formulas, b)]).toEqual([one, other])
        expect(formulas.and([other, one, other, always])).toBe(both)
        expect(formulas.or([never, other, one])).toBe(either)
        expect(formulas.and([both, one])).toBe(both)
        expect(formulas.or([either, other])).toBe(either)
        expect(formulas.size).toBe(size)
      }),
    )
  })
  test('nothing and everything are what they are', () => {
    const { and, or, literal: of, variables, restrict, literalsOf, size } = openFormulas()
    expect(size).toBe(2)
    expect([and([]), or([]), and([always]), or([never])]).toEqual([always, never, always, never])
    const one = of(1, flags(0, 1))
    expect([and([one, never]), or([one, always]), and([one, always]), or([one, never])]).toEqual([
      never,
      always,
      one,
      one,
    ])
    expect([of(1, flags(0, 0)), of(1, flags(1, 1))]).toEqual([never, always])
    for (const formula of [never, always]) {
      expect(variables(formula)).toEqual([])
      expect(literalsOf(formula, 1)).toEqual([])
      expect(restrict(formula, 1, 0)).toBe(formula)
    }
  })
  test('of many states are told apart by each of them', () => {
    for (const length of [14, 15, 16, 31]) {
      const formulas = openFormulas()
      const seen = Array.from({ length }, (_, i) =>
        formulas.literal(
          0,
          Uint8Array.from({ length }, (_, at) => (at === i ? 1 : 0)),
        ),
      )
      expect(new Set(seen).size).toBe(length)
      for (const [i, one] of seen.entries())
        expect(Array.from({ length }, (_, at) => formulas.restrict(one, 0, at))).toEqual(
          Array.from({ length }, (_, at) => (at === i ? always : never)),
        )
    }
    const formulas = openFormulas()
    expect(formulas.literal(0, flags(0, 1))).not.toBe(formulas.literal(1, flags(0, 1)))
  })
  test('know what they depend on, rising, and the literals over each, once', () => {
    const formulas = openFormulas()
    const [a, b, c] = [
      formulas.literal(7, flags(0, 1)),
      formulas.literal(3, flags(0, 1)),
      formulas.literal(7, flags(1, 0)),
    ]
    const deep = formulas.or([
      formulas.and([a, b]),
      formulas.and([c, formulas.literal(5, flags(1, 0))]),
      formulas.and([a, c]),
    ])
    expect(formulas.variables(deep)).toEqual([3, 5, 7])
    expect([...formulas.literalsOf(deep, 7)].sort((x, y) => x - y)).toEqual([a, c].sort((x, y) => x - y))
    expect(formulas.literalsOf(deep, 3)).toEqual([b])
    expect(formulas.literalsOf(deep, 4)).toEqual([])
    expect(formulas.literalsOf(a, 7)).toEqual([a])
    expect(formulas.literalsOf(deep, 7)).toBe(formulas.literalsOf(deep, 7))
    expect(formulas.holdsOf(c)).toEqual(flags(1, 0))
    expect(formulas.restrict(deep, 4, 0)).toBe(deep)
    expect(formulas.variables(formulas.restrict(deep, 7, 0))).toEqual([5])
  })
})

describe('partitions', () => {
  const numbers = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 12 })
  const pair = fc
    .integer({ min: 1, max: 12 })
    .chain(length =>
      fc.tuple(
        ...Array.from({ length: 2 }, () =>
          fc.array(fc.integer({ min: 0, max: 3 }), { minLength: length, maxLength: length }),
        ),
      ),
    )
  /** Classes numbered as they first occur. */
  const plain = (keys: readonly unknown[]) => {
    const first = [...new Set(keys)]
    return { classOf: keys.map(key => first.indexOf(key)), firstOf: first.map(key => keys.indexOf(key)) }
  }
  test('number their classes as they first occur, and are kept once', () => {
    fc.assert(
      fc.property(numbers, list => {
        const partitions = openPartitions()
        const one = partitions.of(list)
        expect({ classOf: [...one.classOf], firstOf: one.firstOf }).toEqual(plain(list))
        expect(partitions.of(list.map(number => 9 - number))).toBe(one)
        expect(partitions.size).toBe(1)
      }),
    )
  })
  test('are refined to what both tell apart, whichever is first', () => {
    fc.assert(
      fc.property(pair, ([a = [], b = []]) => {
        const partitions = openPartitions()
        const [one, other] = [partitions.of(a), partitions.of(b)]
        const fine = partitions.refine(one, other)
        const keys = a.map((number, i) => `${number} ${b[i]}`)
        expect({ classOf: [...fine.classOf], firstOf: fine.firstOf }).toEqual(plain(keys))
        expect(partitions.refine(other, one)).toBe(fine)
        expect(partitions.refine(one, other)).toBe(fine)
        expect(partitions.refine(one, partitions.whole(a.length))).toBe(one)
        expect(partitions.refine(partitions.whole(a.length), one)).toBe(one)
        expect(partitions.refine(one, one)).toBe(one)
      }),
    )
  })
  test('are coarsened by putting classes together', () => {
    const partitions = openPartitions()
    const one = partitions.of([0, 1, 2, 0, 1])
    expect(partitions.coarsen(one, [0, 1, 2])).toBe(one)
    const two = partitions.coarsen(one, [0, 1, 0])
    expect([...two.classOf]).toEqual([0, 1, 0, 0, 1])
    expect(two.firstOf).toEqual([0, 1])
    expect(partitions.coarsen(one, [0, 0, 0])).toBe(partitions.whole(5))
  })
  test('weigh each class by the chances of its states', () => {
    const partitions = openPartitions()
    const chances = [0.1, 0.2, 0.3, 0.4]
    const one = partitions.of([5, 6, 5, 7])
    expect(partitions.weigh(one, chances)).toEqual([0.4, 0.2, 0.4])
    expect(partitions.weigh(one, chances)).toBe(partitions.weigh(one, chances))
    expect(partitions.weigh(partitions.whole(4), chances)[0]).toBeCloseTo(1, 12)
    expect(partitions.weigh(one, [1, 0, 0, 0])).toEqual([1, 0, 0])
  })
  test('of everything are one class, of each size one', () => {
    const partitions = openPartitions()
    expect([...partitions.whole(3).classOf]).toEqual([0, 0, 0])
    expect(partitions.whole(3)).toBe(partitions.whole(3))
    expect(partitions.whole(3)).toBe(partitions.of([4, 4, 4]))
    expect(partitions.whole(4)).not.toBe(partitions.whole(3))
    expect(partitions.size).toBe(2)
  })
})
