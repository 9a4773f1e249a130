// The catalogue: every message is well-formed, fits where Discord puts it, and gets all its values.
import { IntlMessageFormat } from 'intl-messageformat'
import { describe, expect, test } from 'vitest'
import { commands } from '../../src/discord/commands.ts'
import type { Key } from '../../src/words/catalogue.ts'
import { english } from '../../src/words/en/english.ts'
import { sayIn } from '../../src/words/say.ts'

const keys = Object.keys(english) as Key[]

test.each(keys)('%s is a well-formed ICU message', key => {
  expect(() => new IntlMessageFormat(english[key], 'en', undefined, { ignoreTag: true })).not.toThrow()
  expect(english[key].trim()).toBe(english[key])
})

/** CLDR plural rules (UTS 35, and its tables for en): one for 1, other for everything else. */
test.each([
  [0, '0 answers'],
  [1, '1 answer'],
  [2, '2 answers'],
  [1000, '1,000 answers'],
])('a plural: %d', (count, words) => {
  const message =
    count === 0
      ? sayIn('en')('check.choice', { what: 'x', date: 'y', count })
      : sayIn('en')('list.entry', { what: 'x', since: 'z', date: 'y', count })
  expect(message).toContain(count === 0 ? 'nothing answered' : words)
})

test('numbers are written as the reader writes them, though the words are English where a language is missing', () => {
  expect(sayIn('en-US')('problem.too-large', { at: 'x', most: 1_000_000 })).toContain('1,000,000')
  expect(sayIn('tlh')('check.back')).toBe(sayIn('en')('check.back'))
})

test('values are put in as they are: nothing in them is read as a message', () => {
  expect(sayIn('en')('refusal.unknown-family', { name: '{what} <b>#</b>' })).toContain('{what} <b>#</b>')
})

describe("commands fit Discord's limits (names 1 to 32 and lower case, descriptions 1 to 100, 25 options)", () => {
  type Described = { name: string; description: string; options?: readonly Described[] }
  const walk = (one: Described): Described[] => [one, ...(one.options ?? []).flatMap(walk)]
  const all = commands.flatMap(command => walk(command.describe(sayIn('en')) as Described))
  test.each(all.map(one => [one.name, one] as const))('%s', (_, one) => {
    expect(one.name).toMatch(/^[-_\p{Ll}\p{N}]{1,32}$/u)
    expect(one.description.length).toBeGreaterThan(0)
    expect(one.description.length).toBeLessThanOrEqual(100)
    expect(one.options?.length ?? 0).toBeLessThanOrEqual(25)
  })
})
