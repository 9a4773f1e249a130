// Each thing that can be wrong with an entry, alone and with all that is needed to say it; and what is just not wrong.
import { describe, expect, test } from 'vitest'
import { checkEntries, longestTitle } from '../../src/answers/check-entries.ts'
import type { CautionKind, Entry, EntrySource, Language } from '../../src/answers/entry.ts'

const keywords = ['one', 'two', 'three', 'four', 'five']
const entry = (change: Partial<Entry> = {}): Entry => ({
  ...{ id: 'one', caution: 'line', inHand: false, forHurt: false, related: [] },
  sources: [{ kind: 'memory' }],
  texts: { en: { title: 'One', body: 'One is one.', keywords } },
  ...change,
})
const saying = (body: string, language: Language = 'en') => {
  const text = { title: 'One', body, keywords }
  return entry({ texts: { en: { title: 'One', body: 'One is one.', keywords }, [language]: text } })
}
const published = (text: string): EntrySource => ({ kind: 'published', text, told: {} })

test('a sound one has none', () => {
  expect(checkEntries([entry()])).toEqual([])
  expect(checkEntries([])).toEqual([])
})

test('its name is its own, also among those beside it; what it is related to is there, and is not itself', () => {
  const twice = { at: 'one', code: 'twice', name: 'one' }
  expect(checkEntries([entry(), entry()])).toEqual([twice])
  expect(checkEntries([entry()], [entry()])).toEqual([])
  expect(checkEntries([entry({ related: ['two'] })], [entry({ id: 'two' })])).toEqual([])
  expect(checkEntries([entry({ related: ['two', 'one'] })])).toEqual([
    { at: 'one', code: 'unknown-related', name: 'two', known: ['one'] },
    { at: 'one', code: 'itself-related' },
  ])
})

test('a source that was published has its year, or says that it has none', () => {
  const of = (...sources: EntrySource[]) => checkEntries([entry({ sources })])
  expect(of()).toEqual([{ at: 'one', code: 'no-source' }])
  expect(of(published('An office, 2021'), published('An office, 1998'), published('A leaflet, undated'))).toEqual([])
  expect(of(published('An office, 12021'))).toEqual([{ at: 'one', code: 'no-year', name: 'An office, 12021' }])
  expect(of(published('An office'), { kind: 'this-bot' })).toHaveLength(1)
})

test('a text is as long as it may be, with as many keywords as it takes, in each language by itself', () => {
  const text = (length: number) => `${'x'.repeat(length - 1)}.`
  expect(checkEntries([saying(text(2500))])).toEqual([])
  expect(checkEntries([saying(text(2501), 'de')])).toEqual([
    { at: 'one', code: 'body-too-long', language: 'de', length: 2501, most: 2500 },
  ])
  const titled = (title: string) => entry({ texts: { en: { title, body: 'One.', keywords } } })
  expect(checkEntries([titled('x'.repeat(longestTitle))])).toEqual([])
  expect(checkEntries([titled('x'.repeat(longestTitle + 1))])).toEqual([
    { at: 'one', code: 'title-too-long', language: 'en', length: 81, most: 80 },
  ])
  const few = entry({ texts: { en: { title: 'One', body: 'One.', keywords: keywords.slice(1) } } })
  expect(checkEntries([few])).toEqual([{ at: 'one', code: 'too-few-keywords', language: 'en', least: 5 }])
})

describe('no word vouches for a cell', () => {
  test.each<[Language, string, string, string]>([
    ['en', 'Look. It is Genuine then; so keep it.', 'Genuine', 'It is Genuine then;'],
    ['en', 'This is safe', 'safe', 'This is safe'],
    ['de', 'Sie ist echt.', 'echt', 'Sie ist echt.'],
    ['de', 'Eine echte Zelle: gut.', 'echte', 'Eine echte Zelle:'],
    ['es', 'Es segura.', 'segura', 'Es segura.'],
    ['es', 'Parece auténtico!', 'auténtico', 'Parece auténtico!'],
  ])('%s: %s', (language, body, name, sentence) => {
    expect(checkEntries([saying(body, language)])).toEqual([{ at: 'one', code: 'assures', language, name, sentence }])
  })
  test.each<[Language, string]>([
    ['en', 'Nothing shows that it is safe.'],
    ['en', 'Is it safe?'],
    ['en', "It isn't harmless."],
    ['en', 'Unsafe things.'],
    ['de', 'Keine Zelle ist sicher.'],
    ['de', 'Versichern hilft.'],
    ['es', 'Nada muestra que sea segura.'],
    ['es', 'Asegura la tapa.'],
  ])('%s: but %s', (language, body) => {
    expect(checkEntries([saying(body, language)])).toEqual([])
  })
  test('an answer of the sentence before excuses nothing', () => {
    expect(checkEntries([saying('It is not so. It is safe.')])).toHaveLength(1)
    expect(checkEntries([saying('Not so\nIt is safe')])).toHaveLength(1)
  })
})

describe('the caution', () => {
  const weak = (wanted: string, name: string) => [{ at: 'one', code: 'caution-too-weak', name, wanted }]
  const of = (title: string, body: string, caution: CautionKind) =>
    checkEntries([entry({ caution, texts: { en: { title, body, keywords } } })])
  test.each(['Smoking cells', 'It hisses', 'Burning', 'A leak', 'Swelling'])('of “%s” is to get away', title => {
    expect(of(title, 'So.', 'full')).toEqual(weak('emergency', 'full'))
    expect(of(title, 'So.', 'line')).toEqual(weak('emergency', 'line'))
    expect(of(title, 'So.', 'emergency')).toEqual([])
  })
  test.each(['Charge it.', 'Charging.', 'Discharge.', 'Then use it.', 'Buy two.', 'Re-sleeve it.'])(
    'of one that says “%s” is the whole one',
    body => {
      expect(of('One', body, 'line')).toEqual(weak('full', 'line'))
      expect(of('One', body, 'full')).toEqual([])
      expect(of('One', body, 'emergency')).toEqual([])
    },
  )
  test('of anything else is what it is', () => {
    expect(of('A recharger', 'Surcharged.', 'line')).toEqual([])
  })
})
