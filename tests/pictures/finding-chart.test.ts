// The chart of a finding: what would be too much is drawn where it is, every colour stands in the key, and what is marked is what was noticed.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { drawTrend, type TrendWeek } from '../../src/pictures/charts/draw-trend.ts'
import { numbersIn } from '../../src/pictures/charts/plot.ts'
import { type Node, parseSvg, partsNamed, walk } from './svg-tree.ts'

const words = { failed: 'Failed', bound: 'Too much', alarm: 'Noticed', withheld: 'Not shown' }
const week = fc.record({
  failed: fc.option(
    fc.integer({ min: 0, max: 30 }).map(fives => fives * 5),
    { nil: undefined, freq: 6 },
  ),
  bound: fc.option(fc.integer({ min: 1, max: 60 }), { nil: undefined }),
  alarm: fc.boolean(),
})
const weeks: fc.Arbitrary<TrendWeek[]> = fc.array(week, { minLength: 1, maxLength: 26 }).map(list =>
  list.map(({ failed, bound, alarm }, i) => ({
    name: `W${i + 1}`,
    // As findings are drawn: a week without a release is marked by nothing.
    ...(failed !== undefined && { failed, alarm }),
    ...(bound !== undefined && { bound }),
  })),
)
const coloursIn = (nodes: readonly Node[]): Set<string> =>
  new Set(
    nodes
      .flatMap(walk)
      .flatMap(({ attributes }) => [attributes['fill'], attributes['stroke']])
      .filter((one): one is string => one !== undefined && one !== 'none'),
  )
const drawn = (list: readonly TrendWeek[]) =>
  parseSvg(drawTrend({ title: 'Rook', weeks: list, words, number: numbersIn('en') }).svg)
const saysIn = (root: Node): string =>
  walk(root)
    .filter(one => one.name === 'text')
    .map(one => one.text)
    .join(' ')

test('every colour of the plot stands in the key, and the key names what is drawn and nothing else', () => {
  fc.assert(
    fc.property(weeks, list => {
      const root = drawn(list)
      const plot = ['week', 'withheld', 'bound'].flatMap(name => partsNamed(root, name))
      const rows = partsNamed(root, 'key')
      expect(rows.length).toBeGreaterThan(0)
      const explained = coloursIn(rows)
      for (const colour of coloursIn(plot)) expect([...explained]).toContain(colour)
      const says = saysIn(root)
      expect(says.includes(words.bound)).toBe(list.some(one => one.bound !== undefined))
      expect(says.includes(words.alarm)).toBe(list.some(one => one.alarm === true))
      expect(says.includes(words.withheld)).toBe(list.some(one => one.failed === undefined))
    }),
  )
})

test('a column reaches over the line where it is more than what would be too much, and only there; marks stand over what was noticed', () => {
  fc.assert(
    fc.property(weeks, list => {
      const root = drawn(list)
      const columns = partsNamed(root, 'week')
      const shown = list.filter(one => one.failed !== undefined)
      expect(columns).toHaveLength(shown.length)
      for (const [i, column] of columns.entries())
        expect(walk(column).some(one => one.name === 'circle')).toBe(shown[i]?.alarm === true)
      const line =
        partsNamed(root, 'bound')
          .flatMap(walk)
          .find(one => one.name === 'path')?.attributes['d'] ?? ''
      const points = [...line.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
      expect(points).toHaveLength(2 * list.filter(one => one.bound !== undefined).length)
      const at = list.flatMap((one, i) => (one.bound === undefined ? [] : [i]))
      for (const [n, i] of at.entries()) {
        const { failed, bound = 0 } = list[i] ?? {}
        if (failed === undefined) continue
        const rect = columns[shown.indexOf(list[i] as TrendWeek)]?.children[0]?.attributes
        expect(Number(rect?.['y']) < (points[2 * n]?.[1] ?? 0)).toBe(failed > bound)
      }
    }),
  )
})
