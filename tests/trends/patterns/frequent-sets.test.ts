// Frequent and closed sets against two published tables, and against brute force on random ones.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { closedSets, closureOf } from '../../../src/trends/patterns/closed-sets.ts'
import { frequentSets, tableOf } from '../../../src/trends/patterns/frequent-sets.ts'

const published = [
  {
    // Han & Kamber, Data Mining: Concepts and Techniques, the AllElectronics transactions T100 to T900.
    name: 'nine shop transactions, two at least',
    transactions: ['I1 I2 I5', 'I2 I4', 'I2 I3', 'I1 I2 I4', 'I1 I3', 'I2 I3', 'I1 I3', 'I1 I2 I3 I5', 'I1 I2 I3'],
    least: 2,
    frequent: [
      'I1:6',
      'I2:7',
      'I3:6',
      'I4:2',
      'I5:2',
      'I1 I2:4',
      'I1 I3:4',
      'I1 I5:2',
      'I2 I3:4',
      'I2 I4:2',
      'I2 I5:2',
      'I1 I2 I3:2',
      'I1 I2 I5:2',
    ],
    closed: ['I1', 'I2', 'I3', 'I1 I2', 'I1 I3', 'I2 I3', 'I2 I4', 'I1 I2 I3', 'I1 I2 I5'],
    generators: ['I1', 'I2', 'I3', 'I4', 'I5', 'I1 I2', 'I1 I3', 'I2 I3', 'I1 I2 I3'],
  },
  {
    // Han, Pei & Yin 2000, Mining frequent patterns without candidate generation, SIGMOD, table 1.
    name: 'five transactions, three at least',
    transactions: ['f a c d g i m p', 'a b c f l m o', 'b f h j o', 'b c k s p', 'a f c e l p m n'],
    least: 3,
    frequent: [
      'a:3',
      'b:3',
      'c:4',
      'f:4',
      'm:3',
      'p:3',
      'a c:3',
      'a f:3',
      'a m:3',
      'c f:3',
      'c m:3',
      'c p:3',
      'f m:3',
      'a c f:3',
      'a c m:3',
      'a f m:3',
      'c f m:3',
      'a c f m:3',
    ],
    closed: ['b', 'c', 'f', 'c p', 'a c f m'],
    generators: ['a', 'b', 'c', 'f', 'm', 'p', 'c f'],
  },
]

// Closed sets and generators by brute force, weka 3.6.14 Apriori and node-fpgrowth 1.2.1, all three alike.
test.each(published)('$name', ({ transactions, least, frequent, closed, generators }) => {
  const table = tableOf(transactions.map(t => t.split(' ')))
  const name = (items: readonly number[]) => items.map(i => table.items[i]).join(' ')
  const sets = frequentSets(table, least, Number.POSITIVE_INFINITY)
  expect(sets.map(s => `${name(s.items)}:${s.support}`).sort()).toEqual([...frequent].sort())
  const found = closedSets(sets)
  expect(found.map(s => name(closureOf(table, s.generators[0]!))).sort()).toEqual([...closed].sort())
  expect(found.flatMap(s => s.generators.map(name)).sort()).toEqual([...generators].sort())
})

const rows = fc.array(fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f')), { minLength: 1, maxLength: 70 })

test('every set with enough rows, none else, each once', () => {
  fc.assert(
    fc.property(rows, fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 4 }), (list, least, largest) => {
      const table = tableOf(list)
      const found = frequentSets(table, least, largest).map(s => [s.items.map(i => table.items[i]).join(''), s.support])
      const letters = [...'abcdef']
      const all = Array.from({ length: 64 }, (_, mask) => letters.filter((_, i) => mask & (1 << i)))
      const brute = all
        .filter(set => set.length >= 1 && set.length <= largest)
        .map(set => [set.join(''), list.filter(row => set.every(i => (row as string[]).includes(i))).length] as const)
        .filter(([, support]) => support >= least)
      expect(found.map(String).sort()).toEqual(brute.map(String).sort())
    }),
  )
})

test('sets that hold a root are the same whether only they are searched or all; marked rows are counted in each', () => {
  fc.assert(
    fc.property(rows, fc.integer({ min: 1, max: 4 }), (list, least) => {
      const isRoot = (item: string) => item > 'd'
      const marked = (row: number) => row % 3 === 0
      const table = tableOf(list, marked, isRoot)
      const named = (sets: ReturnType<typeof frequentSets>) =>
        sets.map(s => [s.items.map(i => table.items[i]!).sort(), s.support, s.marked, s.print])
      const all = named(frequentSets(table, least, 3))
      const rooted = named(frequentSets(table, least, 3, table.items.filter(isRoot).length))
      expect(rooted).toEqual(all.filter(([items]) => (items as string[]).some(isRoot)))
      for (const [items, , count] of all) {
        const having = list.filter((row, i) => marked(i) && (items as string[]).every(one => row.includes(one as 'a')))
        expect(count).toBe(having.length)
      }
    }),
  )
})

test('a closed set has all the rows of its generators, and no more items fit', () => {
  fc.assert(
    fc.property(rows, list => {
      const table = tableOf(list)
      const having = (items: readonly number[]) =>
        list.filter(row => items.every(i => row.includes(table.items[i]!))).length
      const closed = closedSets(frequentSets(table, 1, 3)).map(set => ({
        ...set,
        closure: closureOf(table, set.generators[0]!),
      }))
      expect(new Set(closed.map(s => s.closure.join())).size).toBe(closed.length)
      for (const { closure, generators, support } of closed) {
        expect(having(closure)).toBe(support)
        for (const item of table.items.keys()) {
          if (!closure.includes(item)) expect(having([...closure, item])).toBeLessThan(support)
        }
        for (const set of generators) {
          expect(having(set)).toBe(support)
          for (const left of set) {
            const part = set.filter(i => i !== left)
            if (part.length > 0) expect(having(part)).toBeGreaterThan(support)
          }
        }
      }
    }),
  )
})
