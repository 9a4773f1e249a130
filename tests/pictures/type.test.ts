// Measured and wrapped text: as wide as the renderer sets it, and nothing lost.
import { Resvg } from '@resvg/resvg-js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { renderOptions } from '../../src/pictures/png.ts'
import { measureText, type Weight } from '../../src/pictures/type/measure.ts'
import { wrapText } from '../../src/pictures/type/wrap.ts'

const size = 100

/** The renderer's advance of one letter: how much wider ten more of it make the ink, kerning off. */
function advance(letter: string, weight: Weight): number {
  const ink = (n: number): number => {
    const text = letter.repeat(n).replace(/&/g, '&amp;').replace(/</g, '&lt;')
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="4000" height="300" font-family="Source Sans 3" font-weight="${weight === 'bold' ? 700 : 500}"><text x="100" y="200" font-size="${size}" style="font-kerning:none">${text}</text></svg>`
    return new Resvg(svg, renderOptions(svg, 4000)).innerBBox()?.width ?? 0
  }
  return (ink(11) - ink(1)) / 10
}

describe('measuring', () => {
  it.each(['medium', 'bold'] as const)('agrees with the renderer for %s letters', weight => {
    for (const letter of 'aMiW.,0%&<éßłŐœΩλЖщыў±×–“') {
      // Never less than the renderer takes; more only for letters that share a width with another or are not tabled.
      const excess = measureText(letter, size, weight) - advance(letter, weight)
      expect(excess, letter).toBeGreaterThan(-0.6)
      expect(excess, letter).toBeLessThan(letter === 'ў' ? 40 : 9)
    }
  })

  it('never measures a sentence narrower than it is drawn', () => {
    const sentences = [
      'Do not use this cell if you are not sure.',
      'Verwende diese Zelle nicht, wenn du unsicher bist.',
      'N’utilisez pas cet accu si vous n’êtes pas sûr.',
      'Nie używaj tego ogniwa, jeśli nie masz pewności.',
      'Не используйте этот элемент, если не уверены.',
      'Μη χρησιμοποιείτε αυτό το στοιχείο αν δεν είστε σίγουροι.',
      'Không sử dụng viên pin này nếu bạn không chắc chắn.',
      'Ne használd ezt a cellát, ha nem vagy biztos benne.',
    ]
    for (const text of sentences) {
      for (const weight of ['medium', 'bold'] as const) {
        const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="3000" height="100" font-family="Source Sans 3" font-weight="${weight === 'bold' ? 700 : 500}"><text x="50" y="60" font-size="30">${text}</text></svg>`
        const drawn = new Resvg(svg, renderOptions(svg, 3000)).innerBBox()?.width ?? 0
        const measured = measureText(text, 30, weight)
        expect(measured, text).toBeGreaterThanOrEqual(drawn - 2)
        expect(measured, text).toBeLessThan(drawn * 1.1)
      }
    }
  })
})

const words = fc.string({ unit: 'grapheme', maxLength: 120 })

describe('wrapping', () => {
  it('gives every letter back, in order', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 30, max: 300 }), (text, width) => {
        const flat = (all: string): string => all.replace(/\s+/gu, '')
        expect(flat(wrapText(text, width, 14).join(''))).toBe(flat(text))
      }),
    )
  })

  it('keeps every line within the width unless a single letter is wider', () => {
    fc.assert(
      fc.property(
        words,
        fc.integer({ min: 30, max: 300 }),
        fc.constantFrom<Weight>('medium', 'bold'),
        (text, width, weight) => {
          for (const line of wrapText(text, width, 14, weight)) {
            if ([...line].length > 1) expect(measureText(line, 14, weight)).toBeLessThanOrEqual(width + 1e-6)
          }
        },
      ),
    )
  })

  it('keeps a figure with its unit and the figures beside it', () => {
    const lines = (text: string) => wrapText(text, 120, 14.5).map(line => line.replaceAll('\u00a0', ' '))
    expect(lines('21700 (about 21 × 70 mm)')).toEqual(['21700 (about', '21 × 70 mm)'])
    expect(lines('Beides, etwa IFR und 3,7 V')).toEqual(['Beides, etwa IFR', 'und 3,7 V'])
    expect(wrapText('no break\u00a0here', 80, 14.5)).toEqual(['no', 'break\u00a0here'])
  })

  it('breaks scripts without spaces, and keeps breaks that are there', () => {
    expect(wrapText('電池を使わないでください', 60, 14).length).toBeGreaterThan(2)
    expect(wrapText('a\nb', 300, 14)).toEqual(['a', 'b'])
  })
})
