// What a handful of invented entries answers, and how sure that is: getting away first, the hurt before all, and nothing that is not sure.
import { describe, expect, test } from 'vitest'
import { openRanking } from '../../src/answers/bm25.ts'
import { openBook } from '../../src/answers/book.ts'
import { namesCells, signsOfDanger, speaksOfOtherThings } from '../../src/answers/danger.ts'
import { onlySoundsHurt, tellsOfHurt } from '../../src/answers/hurt.ts'
import { openAnswerSearch } from '../../src/answers/search.ts'
import { madeEntry } from './made-entry.ts'

const fire = madeEntry(
  'fire',
  'It is hot or smoking',
  ['cell smokes', 'it hisses', 'a hot pack'],
  'Get away.',
  'emergency',
)
const swell = madeEntry('swell', 'It is swollen', ['swollen cell', 'bulging wrap'], 'Leave it.', 'emergency')
const post = madeEntry('post', 'Sending a parcel', ['ship by courier', 'post them abroad'], 'Ask the courier first.')
const shelf = madeEntry(
  'shelf',
  'Keeping cells on a shelf',
  ['store cells over winter', 'garage too cold'],
  'Dry and cool.',
)
const aid = madeEntry('aid', 'Somebody is hurt', ['burnt hand', 'swallowed a piece'], 'Call.', 'emergency', {
  forHurt: true,
})
const book = openBook([post, shelf, fire, swell, aid])

describe('a question', () => {
  test.each<[string, string | undefined, string[]]>([
    // By its id or title, whatever stands beside it in the book.
    ['post', 'post', []],
    ['sending a PARCEL?', 'post', []],
    // One of an entry's own phrasings; with more in it, no longer.
    ['ship by courier', 'post', []],
    ['ship by courier over winter', undefined, ['post', 'shelf']],
    // Signs of danger: the entry that has a word of them, or of the question, or the most general one.
    ['my cell is bulging', 'swell', ['fire', 'shelf']],
    ['my cell is smoking', 'fire', ['swell', 'shelf']],
    ['parcel winter bulging wrap cell', 'swell', ['shelf', 'post', 'fire']],
    ['it crackles', 'fire', []],
    // Of something else that is hot or smokes, no answer, though one is near.
    ['the kettle is hot', undefined, ['fire']],
    ['the oven smokes', undefined, ['fire']],
    // Of another world, or a thing no entry knows, only what is an entry's own phrasing.
    ['is my kazoo by courier', undefined, ['post']],
    ['ship by courier spreadsheet', undefined, ['post']],
    // What is urgent is put before what is nearest, where it is as sure as an answer has to be.
    ['parcel hot pack wrap', 'fire', ['post', 'swell']],
    ['store cells over winter hot pack', 'shelf', ['fire', 'swell']],
    ['courier shelf hot', undefined, ['fire', 'post', 'shelf']],
    // Among what is only near, getting away is moved up from the second place.
    ['cells', undefined, ['swell', 'shelf', 'fire']],
    // One word is not enough.
    ['parcel', undefined, ['post']],
    ['wrap', undefined, ['swell']],
    ['', undefined, []],
  ])('“%s” is answered by %s', (question, answer, near) => {
    const found = book.lookUp(question, ['en'])
    expect([found.answer?.id, found.near.map(one => one.id)]).toEqual([answer, near])
    expect(found.language).toBe('en')
  })
  test('of danger is answered by what names it, and not by what only speaks of it', () => {
    const speaks = { ...swell, texts: { en: { ...swell.texts.en, body: 'It crackles.' } } }
    expect(openBook([post, speaks, fire]).lookUp('it crackles', ['en']).answer?.id).toBe('fire')
    const named = { ...swell, texts: { en: { ...swell.texts.en, keywords: ['it crackles'] } } }
    expect(openBook([post, named, fire]).lookUp('it crackles', ['en']).answer?.id).toBe('swell')
    // Where nothing tells of getting away, it is what is nearest.
    expect(openBook([post, shelf]).lookUp('cells on a shelf crackle, it crackles', ['en']).answer?.id).toBe('shelf')
  })
  test('of somebody who is hurt is answered by what helps them, in any language', () => {
    expect(book.lookUp('burnt my hand on a cell', ['en'])).toMatchObject({ answer: aid, language: 'en' })
    expect(book.lookUp('mano quemada con la pila', ['en'])).toMatchObject({ answer: aid, language: 'es' })
    expect(book.lookUp('sunburn on my hand', ['en']).answer).toBeUndefined()
    // Without such an entry it is looked up as any other.
    expect(openBook([post, shelf]).lookUp('burnt my hand on a cell', ['en']).answer?.id).not.toBe('aid')
  })
  test('by its id is answered in the language that its writer reads; by its title, in that of the title', () => {
    const both = { ...post, texts: { ...post.texts, de: { title: 'Ein Paket', keywords: [], body: '' } } }
    expect(openBook([both]).lookUp('post', ['de', 'es']).language).toBe('de')
    expect(openBook([both]).lookUp('post', []).language).toBe('en')
    expect(openBook([both]).lookUp('ein paket!', ['en'])).toEqual({ answer: both, near: [], language: 'de' })
    expect(openBook([both]).entry('post')).toBe(both)
    expect(openBook([both]).entry('nowhere')).toBeUndefined()
  })
})

// As the fitted weights have it: other weights have other figures.
test.each<[string, [string, number][]]>([
  [
    'ship by courier over winter',
    [
      ['post', 0.806],
      ['shelf', 0.174],
    ],
  ],
  [
    'courier shelf hot',
    [
      ['fire', 0.642],
      ['post', 0.299],
      ['shelf', 0.177],
    ],
  ],
  [
    'couriir winter zeppelin',
    [
      ['shelf', 0.606],
      ['post', 0.239],
    ],
  ],
  [
    'swollen cells',
    [
      ['swell', 0.999],
      ['shelf', 0.056],
      ['fire', 0.066],
    ],
  ],
])('how sure “%s” is of each', (question, sure) => {
  const found = openAnswerSearch([post, shelf, fire, swell]).find(question, 'en')
  expect(found.map(one => [one.entry.id, Math.round(one.confidence * 1000) / 1000])).toEqual(sure)
})

test('each sign of a question that was mistyped and speaks of what nobody knows', () => {
  const [first, second] = openAnswerSearch([post, shelf, fire, swell]).find('couriir winter zeppelin', 'en')
  const rounded = (signs: object = {}) =>
    Object.fromEntries(Object.entries(signs).map(([name, sign]) => [name, Math.round((sign as number) * 1000) / 1000]))
  const both = { common: 0.25, exact: 0, elsewhere: 0, astray: 0.672 }
  expect(rounded(first?.signs)).toEqual({ ...both, close: 0.276, agreed: 0.333, lead: 1 })
  expect(rounded(second?.signs)).toEqual({ ...both, close: 0.283, agreed: 0.667, lead: 0 })
})

test('a ranking weighs fields and terms, and leaves out what has none of them', () => {
  const rank = openRanking(
    [
      { a: ['x', 'y'], b: ['z'] },
      { a: ['z'], b: ['x', 'x'] },
      { a: ['w'], b: ['w'] },
    ],
    { a: 3, b: 1 },
  )
  const ranked = (...asked: [string, number][]) =>
    rank(asked.map(([term, counts]) => ({ term, counts }))).map(({ place, score }) => [
      place,
      Math.round(score * 1e4) / 1e4,
    ])
  expect(ranked(['x', 1])).toEqual([
    [0, 3.942],
    [1, 1.8391],
  ])
  expect(ranked(['x', 1], ['z', 1])).toEqual([
    [1, 6.5633],
    [0, 5.4133],
  ])
  expect(ranked(['x', 0.8], ['z', 1])).toEqual([
    [1, 6.1955],
    [0, 4.6249],
  ])
  expect([ranked(['q', 1]), ranked()]).toEqual([[], []])
  const alike = openRanking([{ a: ['x'] }, { a: ['x'] }], { a: 1 })
  expect(alike([{ term: 'x', counts: 1 }]).map(one => one.place)).toEqual([0, 1])
})

describe('told by words alone', () => {
  test('a cell, or what holds or charges one, is named', () => {
    for (const text of ['my cell', 'the 18650', 'a charger', 'Powerbank?', 'liion'])
      expect(namesCells(text, 'en'), text).toBe(true)
    expect(namesCells('power bank', 'en')).toBe(true)
    expect(namesCells('two cells in a spreadsheet', 'en')).toBe(false)
    expect(namesCells('my kettle', 'en')).toBe(false)
  })
  test('it speaks of other things where it names one, another world, or a subject that nobody knows', () => {
    const nobody = () => false
    expect(speaksOfOtherThings('my kettle whistles', 'en', nobody)).toBe(true)
    expect(speaksOfOtherThings('my kettle and a cell', 'en', nobody)).toBe(false)
    expect(speaksOfOtherThings('a cell in a spreadsheet', 'en', nobody)).toBe(true)
    expect(speaksOfOtherThings('is my kazoo good', 'en', nobody)).toBe(true)
    expect(speaksOfOtherThings('is my kazoo good', 'en', word => word === 'kazoo')).toBe(false)
    expect(speaksOfOtherThings('it stands on the sofa', 'en', nobody)).toBe(false)
    expect(speaksOfOtherThings('how to store', 'en', nobody)).toBe(false)
  })
  test('a sign of danger is the whole words around it, and none of another thing', () => {
    expect(signsOfDanger('well it is on fire now', 'en', () => false)).toEqual(['on', 'fire'])
    expect(signsOfDanger('smoke', 'en', () => false)).toEqual(['smoke'])
    expect(signsOfDanger('nothing at all', 'en', () => false)).toEqual([])
    expect(signsOfDanger('my kettle smokes', 'en', () => false)).toEqual([])
    expect(signsOfDanger('my kettle and my charger smoke', 'en', () => false)).toEqual(['smoke'])
  })
  test.each([
    ['my hand is burnt', true],
    ['brunt hand', true],
    ['bunrt hnad', true],
    ['burnt', false],
    ['burnt burnt', false],
    ['he swallowed the liquid', true],
    ['swallowd teh liqiud', true],
    ['hand and leg', false],
    ['sunburn on my hand', false],
  ])('“%s” tells that somebody is hurt: %s', (text, tells) => {
    expect(tellsOfHurt(text, 'en')).toBe(tells)
  })
  test('what only sounds so is about something else, and never where a cell is named', () => {
    expect(onlySoundsHurt('sunburn on my hand', 'en')).toBe(true)
    expect(onlySoundsHurt('sunburn from a cell', 'en')).toBe(false)
    expect(onlySoundsHurt('burnt hand', 'en')).toBe(false)
  })
})
