// Plurals and numbers as Unicode's CLDR writes them, held against what is said: sample numbers of the plural rules, number patterns.
//
// Plural rules: CLDR 48, supplemental/plurals.xml, as published in the package cldr-core 48.2.0 and on
// https://www.unicode.org/cldr/charts/48/supplemental/language_plural_rules.html. Number patterns and symbols: CLDR 45,
// main/{en,de,es,es_419}.xml, as published in cldr-numbers-modern 45.0.0.
import { describe, expect, test } from 'vitest'
import type { Key } from '../../src/words/catalogue.ts'
import { sayIn } from '../../src/words/say.ts'

/** “one” and “other” with their samples, “2~16” written out at its ends; Spanish “many” is said like “other”. */
const samples = {
  en: { one: [1], other: [0, 2, 16, 100, 1000, 10_000, 100_000, 1_000_000, 0.1, 1.5, 10.5] },
  de: { one: [1], other: [0, 2, 16, 100, 1000, 10_000, 100_000, 1_000_000, 0.1, 1.5, 10.5] },
  es: { one: [1, 1.0], other: [0, 2, 16, 100, 1000, 10_000, 100_000, 0.1, 0.9, 1.1, 1.6, 10.5, 1_000_000, 2_000_000] },
} as const
/** A noun in the singular and in the plural, with the message it stands in and the value that counts it. */
const counted: readonly (readonly [Key, string, Record<keyof typeof samples, readonly [string, string]>])[] = [
  [
    'privacy.deleted',
    'checks',
    { en: ['check', 'checks'], de: ['Prüfung', 'Prüfungen'], es: ['comprobación', 'comprobaciones'] },
  ],
  [
    'next.hazard-unsure',
    'count',
    {
      en: ['question about danger is', 'questions about danger are'],
      de: ['Gefahrenzeichen', 'Gefahrenzeichen'],
      es: ['pregunta sobre peligros', 'preguntas sobre peligros'],
    },
  ],
]
const others = { drafts: 5, counted: 5, decisions: 5, signs: '“?”' }

describe.each(['en', 'de', 'es'] as const)('%s counts as CLDR does', language => {
  const say = sayIn(language)
  const number = new Intl.NumberFormat(language)
  test.each(counted)('in %s', (key, value, nouns) => {
    for (const [form, noun] of [
      ['one', nouns[language][0]],
      ['other', nouns[language][1]],
    ] as const)
      for (const sample of samples[language][form])
        expect(say(key, { ...others, [value]: sample })).toMatch(
          new RegExp(`(?<![\\d.,])${number.format(sample).replaceAll('.', '\\.')} ${noun}(?!\\p{L})`, 'u'),
        )
  })
})

describe('numbers are written as CLDR’s patterns and symbols say', () => {
  // #,##0.### everywhere; the group is left out below five digits where minimumGroupingDigits is 2.
  test.each([
    ['en', ['1,234.5', '3,500', '12,345', '1,234,567.891', '0.125']],
    ['en-GB', ['1,234.5', '3,500', '12,345', '1,234,567.891', '0.125']],
    ['de', ['1.234,5', '3.500', '12.345', '1.234.567,891', '0,125']],
    ['es-ES', ['1234,5', '3500', '12.345', '1.234.567,891', '0,125']],
    ['es-419', ['1,234.5', '3,500', '12,345', '1,234,567.891', '0.125']],
  ])('%s', (locale, written) => {
    const values = [1234.5, 3500, 12_345, 1_234_567.891, 0.125]
    expect(values.map(value => sayIn(locale)('answer.reading', { value, unit: 'mAh' }))).toEqual(
      written.map(one => `${one} mAh`),
    )
  })

  // #,##0% in English and in Latin America, #,##0 % with a no-break space in German and in Spain.
  test.each([
    ['en', '12%'],
    ['de', '12\u00a0%'],
    ['es-ES', '12\u00a0%'],
  ])('a percentage in %s', (locale, written) => {
    const shares = { name: 'x', checks: 20, more: 0, share: 0.12, low: 0.12, high: 0.12 }
    expect(sayIn(locale)('trends.count.share', shares)).toContain(`(${written};`)
  })
})
