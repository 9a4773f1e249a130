// The alt texts of everything the shipped packs draw, in every language: whole sentences under Discord's limit that tell options apart.
import { describe, expect, test } from 'vitest'
import type { AltFact } from '../../src/pictures/alt/alt-fact.ts'
import { joinAlt } from '../../src/pictures/alt/join-alt.ts'
import { drawMeasuring, measuringKinds } from '../../src/pictures/measuring/draw-measuring.ts'
import { sayAltFact } from '../../src/words/alt-words.ts'
import { altDe } from '../../src/words/de/alt.ts'
import { altEn } from '../../src/words/en/alt.ts'
import { altEs } from '../../src/words/es/alt.ts'
import { sayIn } from '../../src/words/say.ts'
import { gallery } from './gallery.ts'
import { shipped } from './shipped.ts'

/** Characters that Discord takes as the description of an item in a media gallery. */
const limit = 1024
const words = { en: altEn, de: altDe, es: altEs }
const locales = Object.keys(words) as (keyof typeof words)[]

const drawings = (locale: string) => [
  ...shipped(locale),
  ...measuringKinds.map(kind => ({ name: kind, drawing: drawMeasuring(kind) })),
  ...gallery(),
]

const codes = (facts: readonly AltFact[]): string[] => facts.flatMap(fact => [fact.code, ...codes(fact.parts ?? [])])

describe.each(locales)('in %s', locale => {
  const say = sayIn(locale)
  const told = drawings(locale)
  const text = (facts: readonly AltFact[]) => joinAlt(facts, (code, values) => sayAltFact(say, code, values))

  test('there is something to tell', () => {
    expect(told.length).toBeGreaterThan(140)
  })

  test('every fact has a sentence in this very language', () => {
    const lacking = new Set(told.flatMap(({ drawing }) => codes(drawing.about)).filter(code => !words[locale][code]))
    expect([...lacking]).toEqual([])
  })

  test('every text is under the limit, and none has a hole in it', () => {
    for (const { name, drawing } of told) {
      const alt = text(drawing.about)
      expect(alt.length, name).toBeLessThanOrEqual(limit)
      expect(alt, name).toMatch(/^\S.+[.!?…]$/s)
      expect(alt, name).not.toMatch(/undefined|NaN|[{}]| {2}|\.\./)
    }
  })

  test('every option is told, by its letter, and no two alike', () => {
    const sheets = told.filter(({ drawing }) => drawing.about[0]?.code === 'options')
    expect(sheets.length).toBeGreaterThan(40)
    for (const { name, drawing } of sheets) {
      const options = drawing.about.filter(fact => fact.code.startsWith('option') && fact.code !== 'options')
      const lines = options.map(fact => text([fact]).replace(/^\S+: /, ''))
      expect(new Set(lines).size, name).toBe(lines.length)
      for (const fact of options) expect(text(drawing.about), name).toContain(text([fact]))
    }
  })

  test('a verdict’s caution is never left out', () => {
    const cards = told.filter(({ name }) => name.startsWith('verdict of'))
    for (const { name, drawing } of cards) expect(text(drawing.about), name).toContain(say('caution.line'))
  })
})
