// Alt texts: every fact has an English phrase, the limit holds, and what tells least goes first.
import fc from 'fast-check'
import { IntlMessageFormat } from 'intl-messageformat'
import { describe, expect, it } from 'vitest'
import type { AltFact } from '../../src/pictures/alt/alt-fact.ts'
import { joinAlt, type Phrase } from '../../src/pictures/alt/join-alt.ts'
import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import { type CellParameters, choices, parts, views } from '../../src/pictures/cell/parameters.ts'
import { readCellParameters } from '../../src/pictures/cell/read-cell-parameters.ts'
import { altEn } from '../../src/words/en/alt.ts'
import { gallery, optionSets, showsOf } from './gallery.ts'

const messages = new Map(Object.entries(altEn).map(([code, message]) => [code, new IntlMessageFormat(message, 'en')]))

const english: Phrase = (code, values) => {
  const message = messages.get(code)
  if (message === undefined) throw new Error(`no phrase for ${code}`)
  return String(message.format(values))
}

const said = (show: Partial<CellParameters>): string => joinAlt(drawCell(show).about, english)

describe('alt text in English', () => {
  it.each(gallery())('$name has words for every fact, and stays under Discord’s 1024', ({ drawing }) => {
    const text = joinAlt(drawing.about, english)
    expect(text.length).toBeGreaterThan(20)
    expect(text.length).toBeLessThanOrEqual(1024)
    expect(text).not.toMatch(/undefined|NaN|[{}]/)
  })

  it('has a phrase for everything a cell can show', () => {
    for (const view of views) {
      for (const pointAt of parts[view]) {
        for (const [key, words] of Object.entries(choices)) {
          if (key === 'view') continue
          for (const word of words) {
            const read = readCellParameters({ view, pointAt, lettering: 'wrap', code: 'wrap', [key]: word })
            if (!read.ok) throw new Error(JSON.stringify(read.refusal))
            expect(said(read.params)).toBeTruthy()
            expect(joinAlt(drawOptions([{ show: read.params }]).about, english)).toBeTruthy()
          }
        }
      }
    }
  })

  it('does not give the answer of a question away, but says where to look', () => {
    expect(said({ view: 'top', pointAt: 'legs' })).toContain('legs that the positive contact stands on')
    expect(said({ view: 'top', pointAt: 'legs' })).not.toContain('3 legs')
  })

  it('tells options apart: no two of a set read the same', () => {
    for (const set of optionSets) {
      const text = joinAlt(drawOptions(showsOf(set).map(show => ({ show }))).about, english)
      const told = showsOf(set).map((_, i) => {
        const from = text.indexOf(`${String.fromCharCode(65 + i)}: `)
        const to = text.indexOf(`${String.fromCharCode(66 + i)}: `)
        expect(from, text).toBeGreaterThanOrEqual(0)
        return text.slice(from + 3, to < 0 ? undefined : to).trim()
      })
      expect(new Set(told).size, text).toBe(told.length)
    }
  })

  it('keeps the caution of a verdict when reasons fill the room', () => {
    const caution = 'If you are not sure, do not use this cell.'
    const marks = Array.from({ length: 30 }, (_, i) => ({
      part: 'legs' as const,
      text: `Reason ${i}, told at some length.`,
    }))
    const card = drawVerdictCard({
      tone: 'ruled-out',
      word: 'Ruled out',
      views: [{ show: { view: 'top' }, marks }],
      caution,
    })
    const text = joinAlt(card.about, english)
    expect(text.length).toBeLessThanOrEqual(1024)
    expect(text).toContain('Ruled out')
    expect(text).toContain(caution)
    expect(joinAlt(card.about, english, 60)).toContain(caution)
  })

  it('reads like this', () => {
    const text = joinAlt(
      drawOptions([
        { show: { view: 'top', pointAt: 'legs', legs: 3 } },
        { show: { view: 'top', pointAt: 'legs', legs: 4 } },
        { label: 'Can’t tell' },
      ]).about,
      english,
    )
    expect(text).toBe(
      '3 drawings to compare. Drawing of a cell’s positive (+) end, seen straight on. A: The positive contact stands on 3 legs. B: The positive contact stands on 4 legs. C: Can’t tell.',
    )
  })
})

const fact: fc.Arbitrary<AltFact> = fc.record({
  code: fc.string({ minLength: 1, maxLength: 40 }),
  rank: fc.integer({ min: 0, max: 5 }),
})
const nested = fc
  .tuple(fact, fc.option(fc.array(fact, { minLength: 1, maxLength: 5 }), { nil: undefined }))
  .map(([one, parts]) => (parts ? { ...one, parts } : one))
const plain: Phrase = (code, values) => ('text' in values ? `${code}(${values['text']})` : code)

describe('joining under a limit', () => {
  it('never exceeds it', () => {
    fc.assert(
      fc.property(
        fc.array(nested, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 2, max: 200 }),
        (facts, limit) => {
          expect(joinAlt(facts, plain, limit).length).toBeLessThanOrEqual(limit)
        },
      ),
    )
  })

  it('drops the least telling first and keeps the order of the rest', () => {
    const facts = [
      { code: 'view', rank: 4 },
      { code: 'tell', rank: 0 },
      { code: 'colour', rank: 5 },
      { code: 'damage', rank: 2 },
    ]
    expect(joinAlt(facts, plain, 100)).toBe('view tell colour damage')
    expect(joinAlt(facts, plain, 17)).toBe('view tell damage')
    expect(joinAlt(facts, plain, 12)).toBe('tell damage')
    expect(joinAlt(facts, plain, 4)).toBe('tell')
    expect(joinAlt(facts, plain, 3)).toBe('te…')
  })

  it('cuts between letters, not inside one', () => {
    expect(joinAlt([{ code: '🔋🔋🔋', rank: 0 }], plain, 4)).toBe('🔋…')
  })
})
