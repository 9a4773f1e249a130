// Verdict cards keep every word; charts put their marks where the numbers are.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import { drawDischargeCurve } from '../../src/pictures/charts/draw-discharge-curve.ts'
import { drawRelease } from '../../src/pictures/charts/draw-release.ts'
import { drawTrend } from '../../src/pictures/charts/draw-trend.ts'
import { numbersIn } from '../../src/pictures/charts/plot.ts'
import { thin } from '../../src/pictures/charts/thin.ts'
import { tickDigits, ticks } from '../../src/pictures/charts/ticks.ts'
import { contactSheet } from './contact-sheet.ts'
import { curve, gallery, release, trend } from './gallery.ts'
import { type Node, parseSvg, partsNamed, walk } from './svg-tree.ts'

const wordsOf = (node: Node): string =>
  walk(node)
    .filter(one => one.name === 'text')
    .map(one => one.text)
    .join('')
const flat = (text: string): string => text.replace(/\s+/gu, '')
const coordinates = (node: Node): number[][] =>
  [...(walk(node).find(one => one.name === 'path')?.attributes['d'] ?? '').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
    m => [Number(m[1]), Number(m[2])],
  )

describe('a verdict card', () => {
  it('holds the whole caution, the word and every reason, however long', () => {
    const text = fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 500 }).filter(one => one.trim() !== '')
    fc.assert(
      fc.property(text, text, text, (word, reason, caution) => {
        const drawing = drawVerdictCard({
          tone: 'ruled-out',
          word,
          views: [{ show: { view: 'top', legs: 4 }, marks: [{ part: 'legs', text: reason }] }],
          caution,
        })
        const root = parseSvg(drawing.svg)
        expect(flat(wordsOf(partsNamed(root, 'caution')[0]!))).toBe(flat(caution))
        expect(flat(wordsOf(partsNamed(root, 'verdict')[0]!))).toBe(flat(word))
        expect(flat(wordsOf(partsNamed(root, 'reason')[0]!))).toBe(`1${flat(reason)}`)
        const lowest = Math.max(
          ...walk(root)
            .filter(one => one.name === 'text')
            .map(one => Number(one.attributes['y'])),
        )
        expect(lowest).toBeLessThan(drawing.height - 8)
      }),
      { numRuns: 60 },
    )
  })

  it('numbers marks through all views and repeats the numbers beside the reasons', () => {
    const marks = (n: number) => ({
      show: { view: 'top' as const, legs: 3 + n, ring: 'torn' as const },
      marks: [
        { part: 'legs' as const, text: `legs ${n}` },
        { part: 'ring' as const, text: `ring ${n}` },
      ],
    })
    const root = parseSvg(
      drawVerdictCard({
        tone: 'danger',
        word: 'Danger',
        views: [marks(1), marks(2)],
        reasons: ['and more'],
        caution: 'Stop.',
      }).svg,
    )
    expect(partsNamed(root, 'mark').map(wordsOf)).toEqual(['1', '2', '3', '4'])
    expect(partsNamed(root, 'reason').map(wordsOf)).toEqual(['1legs 1', '2ring 1', '3legs 2', '4ring 2', 'and more'])
  })

  it('sets a mark on the part that does not fit', () => {
    const root = parseSvg(
      drawVerdictCard({
        tone: 'danger',
        word: 'x',
        views: [{ show: { view: 'top' }, marks: [{ part: 'legs', text: 'y' }] }],
        caution: 'z',
      }).svg,
    )
    const ring = walk(partsNamed(root, 'mark')[0]!).find(one => one.name === 'ellipse')
    const plate = walk(partsNamed(root, 'contact')[0]!).at(-1)?.attributes['d'] ?? ''
    const [, left, y, right] = /^M([\d.]+) ([\d.]+)A.*? 0 1 0 ([\d.]+)/.exec(plate)?.map(Number) ?? []
    expect(Number(ring?.attributes['cx'])).toBeCloseTo(((left ?? 0) + (right ?? 0)) / 2, 0)
    expect(Number(ring?.attributes['cy'])).toBeCloseTo(y ?? 0, 0)
  })
})

describe('a discharge curve', () => {
  const root = parseSvg(drawDischargeCurve(curve).svg)
  const xOf = (text: string): number =>
    Number(walk(partsNamed(root, 'axis-floor')[0]!).find(one => one.text === text)?.attributes['x'])
  const perMah = (xOf('2,000') - xOf('1,000')) / 1000
  const x = (mAh: number): number => xOf('1,000') + (mAh - 1000) * perMah

  it('falls from left to right and ends at the last reading', () => {
    const line = coordinates(partsNamed(root, 'voltage')[0]!)
    expect(line[0]?.[0]).toBeCloseTo(x(0), 0)
    expect(line[line.length - 1]?.[0]).toBeCloseTo(x(1999 * 1.2), 0)
    expect(line[0]?.[1]).toBeLessThan(line[line.length - 1]?.[1] ?? 0)
  })

  it('marks result, uncertainty, what was promised and cut-off where the axes say', () => {
    const band = walk(partsNamed(root, 'result')[0]!).find(one => one.name === 'rect')
    expect(Number(band?.attributes['x'])).toBeCloseTo(x(2380 - 42), 0)
    expect(Number(band?.attributes['width'])).toBeCloseTo(84 * perMah, 0)
    expect(coordinates(partsNamed(root, 'promised')[0]!)[0]?.[0]).toBeCloseTo(x(2900), 0)
    const level = (text: string): number =>
      Number(walk(partsNamed(root, 'axis-left')[0]!).find(one => one.text === text)?.attributes['y']) - 4.5
    const cut = Number(
      /^M[\d.]+ ([\d.]+)/.exec(
        walk(partsNamed(root, 'cut-off')[0]!).find(one => one.name === 'path')?.attributes['d'] ?? '',
      )?.[1],
    )
    expect(cut).toBeCloseTo(level('3.0') + (0.2 / 0.5) * (level('3.0') - level('3.5')), 0)
  })

  it('breaks its lines over a gap', () => {
    const moves = (d: string): number => d.split('M').length - 1
    const d = (drawing: string, name: string): string =>
      walk(partsNamed(parseSvg(drawing), name)[0]!).find(one => one.name === 'path')?.attributes['d'] ?? ''
    const gapped = { ...curve, points: curve.points.filter(p => p.capacity < 900 || p.capacity > 1010) }
    expect(moves(d(drawDischargeCurve(gapped).svg, 'voltage'))).toBe(2)
    expect(moves(d(drawDischargeCurve(gapped).svg, 'temperature'))).toBe(2)
    expect(moves(d(drawDischargeCurve({ ...gapped, gaps: [] }).svg, 'voltage'))).toBe(1)
  })

  it('survives a single point, none, and no temperature', () => {
    for (const points of [
      [],
      curve.points.slice(0, 1),
      curve.points.map(({ capacity, voltage }) => ({ capacity, voltage })),
    ]) {
      expect(drawDischargeCurve({ ...curve, points, gaps: [] }).svg).not.toMatch(/NaN|Infinity/)
    }
  })

  it('speaks the reader’s numbers', () => {
    expect(drawDischargeCurve({ ...curve, number: numbersIn('de') }).svg).toContain('>3,5<')
    expect(drawDischargeCurve({ ...curve, number: numbersIn('de') }).svg).toContain('>1.000<')
  })

  it('loses no dip when a long log is thinned', () => {
    const points = Array.from({ length: 100_000 }, (_, i) => ({
      capacity: i / 40,
      voltage: i === 54_321 ? 2.1 : 3.7 + 0.1 * Math.sin(i / 9000),
    }))
    const kept = thin(points, 300)
    expect(kept.length).toBeLessThanOrEqual(1200)
    expect(Math.min(...kept.map(p => p.voltage))).toBe(2.1)
    expect(kept[0]).toBe(points[0])
    expect(kept[kept.length - 1]).toBe(points[points.length - 1])
    expect(kept.every((p, i) => i === 0 || p.capacity >= (kept[i - 1]?.capacity ?? 0))).toBe(true)
  })
})

describe('a trend', () => {
  it('has a column per released week, a texture for the others, and a sign on each alarm', () => {
    const root = parseSvg(drawTrend(trend).svg)
    const heights = partsNamed(root, 'week').map(week => Number(week.children[0]?.attributes['height']))
    expect(heights).toHaveLength(15)
    expect(partsNamed(root, 'withheld')).toHaveLength(1)
    expect(partsNamed(root, 'week').filter(week => walk(week).some(one => one.name === 'circle'))).toHaveLength(3)
    // Heights are proportional to the counts: 5, 5, 10, …
    expect((heights[2] ?? 0) / (heights[0] ?? 1)).toBeCloseTo(2, 1)
    expect((heights[13] ?? 0) / (heights[0] ?? 1)).toBeCloseTo(9, 1)
  })

  it('names the last week, and no two names touch', () => {
    for (const weeks of [trend.weeks, Array.from({ length: 52 }, (_, i) => ({ name: `2031-W${i + 1}`, failed: 5 }))]) {
      const names = walk(parseSvg(drawTrend({ ...trend, weeks }).svg)).filter(
        one => one.name === 'text' && weeks.some(week => week.name === one.text),
      )
      expect(names[names.length - 1]?.text).toBe(weeks[weeks.length - 1]?.name)
      const xs = names.map(one => Number(one.attributes['x']))
      for (let i = 1; i < xs.length; i++) expect((xs[i] ?? 0) - (xs[i - 1] ?? 0)).toBeGreaterThan(24)
    }
  })
})

describe('a release', () => {
  it('draws bars as long as the shares, and none for what is withheld', () => {
    const rows = partsNamed(parseSvg(drawRelease(release).svg), 'row')
    const bars = rows.map(row =>
      row.children
        .filter(one => one.name === 'rect' && one.attributes['height'] === '15')
        .map(one => Number(one.attributes['width'])),
    )
    expect(bars.map(list => list.length)).toEqual([2, 2, 2, 2, 1])
    const [track = 0, bar = 0] = bars[1] ?? []
    expect(bar / track).toBeCloseTo(0.31, 2)
    expect(wordsOf(rows[4]!)).toContain('too few')
  })
})

describe('ticks', () => {
  it('are round, evenly spaced, inside the range and not too many', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
        fc.integer({ min: 2, max: 8 }),
        (from, span, count) => {
          const list = ticks(from, from + span, count)
          expect(list.length).toBeLessThanOrEqual(count + 1)
          for (const value of list) expect(value >= from - span * 1e-6 && value <= from + span * (1 + 1e-6)).toBe(true)
          const steps = list.slice(1).map((value, i) => value - (list[i] ?? 0))
          for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 6)
        },
      ),
    )
  })

  it('carry as many decimals as their step needs', () => {
    expect([ticks(2.7, 4.2, 5), ticks(0, 3000, 6), ticks(0, 1, 4)].map(tickDigits)).toEqual([1, 0, 1])
  })
})

describe('the contact sheet', () => {
  it('holds every picture once, with its name, and none on top of another', () => {
    const entries = gallery().slice(0, 12)
    const sheet = parseSvg(contactSheet(entries, 3).svg)
    const frames = sheet.children
      .filter(one => one.name === 'svg')
      .map(one => ['x', 'y', 'width', 'height'].map(key => Number(one.attributes[key])))
    expect(frames).toHaveLength(12)
    for (const [i, a] of frames.entries()) {
      for (const b of frames.slice(i + 1)) {
        const [ax = 0, ay = 0, aw = 0, ah = 0] = a
        const [bx = 0, by = 0, bw = 0, bh = 0] = b
        expect(ax + aw <= bx || bx + bw <= ax || ay + ah <= by || by + bh <= ay).toBe(true)
      }
    }
  })
})
