// Colours that carry meaning: readable as text, and kept apart for colour-blind eyes and in greyscale.
import { describe, expect, it } from 'vitest'
import { toneOf } from '../../src/pictures/cell/verdict-sign.ts'
import { seriesInks } from '../../src/pictures/charts/plot.ts'
import { inks } from '../../src/pictures/ink.ts'
import { type Blindness, blindness, contrast, grey, hex, type Rgb, seenWith } from './colour.ts'

const kinds = Object.keys(blindness) as Blindness[]
const eyes: [string, (colour: Rgb) => Rgb][] = [
  ['every colour', c => c],
  ['greyscale', grey],
  ...kinds.map(kind => [kind, (c: Rgb) => seenWith(kind, c)] as [string, (c: Rgb) => Rgb]),
]

describe('the arithmetic itself', () => {
  it('gives the contrasts that WCAG 2.2 states: 21 : 1 for black on white, 1 : 1 for equals', () => {
    expect(contrast(hex('#000000'), hex('#ffffff'))).toBeCloseTo(21, 6)
    expect(contrast(hex('#777777'), hex('#777777'))).toBe(1)
    // The grey just below 4.5 : 1 on white that accessibility handbooks quote: #777777 gives 4.48 (from memory).
    expect(contrast(hex('#777777'), hex('#ffffff'))).toBeCloseTo(4.48, 2)
  })

  it.each(kinds)('keeps greys grey under %s, as each row of the matrix sums to 1', kind => {
    for (const level of [0, 60, 128, 200, 255]) {
      for (const channel of seenWith(kind, [level, level, level]))
        expect(Math.abs(channel - level)).toBeLessThanOrEqual(1)
    }
  })

  it('takes red from protanopes and blue from tritanopes', () => {
    const [red] = seenWith('protanopia', [255, 0, 0])
    expect(red).toBeLessThan(150)
    const [, , blue] = seenWith('tritanopia', [0, 0, 255])
    expect(blue).toBeLessThan(200)
  })
})

describe.each(eyes)('for %s', (_, see) => {
  const ratio = (a: string, b: string): number => contrast(see(hex(a)), see(hex(b)))

  it('chart series stand apart by 3 : 1 (WCAG 2.2, 1.4.11) and from the panel', () => {
    expect(ratio(seriesInks.first, seriesInks.second)).toBeGreaterThanOrEqual(3)
    expect(ratio(seriesInks.first, seriesInks.fill)).toBeGreaterThanOrEqual(3)
    expect(ratio(seriesInks.first, inks.panel)).toBeGreaterThanOrEqual(3)
    expect(ratio(seriesInks.second, inks.panel)).toBeGreaterThanOrEqual(3)
  })

  it('arrows, rings and marks stand out from the panel and from a tile', () => {
    for (const mark of [inks.point, inks.against, inks.line]) {
      expect(ratio(mark, inks.panel)).toBeGreaterThanOrEqual(4.5)
      expect(ratio(mark, inks.casing)).toBeGreaterThanOrEqual(4.5)
    }
  })

  it('white words and signs are readable on every verdict colour', () => {
    for (const tone of Object.values(toneOf)) expect(ratio(inks.casing, tone)).toBeGreaterThanOrEqual(4.5)
  })
})
