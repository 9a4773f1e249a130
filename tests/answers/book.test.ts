// The book of answers: which language a question is looked up in, entries by id, and no answer that is not sure.
import { describe, expect, test } from 'vitest'
import { openBook } from '../../src/answers/book.ts'
import { shippedAnswers } from './questions.ts'

const book = openBook(await shippedAnswers())

test('what people type in a few words is answered where it is one of an entry’s own phrasings', () => {
  expect(book.lookUp('how do i store cells', ['en']).answer?.id).toBe('storage')
  expect(book.lookUp('darf ich über nacht laden', ['de']).answer?.id).toBe('charging-overnight')
  expect(book.lookUp('cómo cargo una celda', ['es']).answer?.id).toBe('charging')
})

describe('a question is looked up in the language that it is in, whatever its writer reads', () => {
  test.each([
    ['is it fine to leave them charging while i sleep', 'en', 'charging-overnight'],
    ['kann ich die über nacht laden', 'de', 'charging-overnight'],
    ['¿puedo dejarlas cargando por la noche?', 'es', 'charging-overnight'],
    ['cómo sé si mi 18650 es falsa', 'es', 'is-mine-fake'],
    ['woran erkenne ich eine gefälschte 18650', 'de', 'is-mine-fake'],
    ['Hilfe mein Akku raucht', 'de', 'hot-or-smoking'],
    ['help my battery is smoking', 'en', 'hot-or-smoking'],
    ['ayuda sale humo', 'es', 'hot-or-smoking'],
    // No small word tells.
    ['gefälschte Zellen erkennen', 'de', 'is-mine-fake'],
    ['celda hinchada', 'es', 'hot-or-smoking'],
    ['swollen cell', 'en', 'hot-or-smoking'],
  ] as const)('%s', (question, language, id) => {
    for (const reads of [['en'], ['de'], ['es'], ['es', 'de']] as const) {
      const found = book.lookUp(question, reads)
      expect([found.language, found.answer?.id], reads.join()).toEqual([language, id])
    }
  })

  test('words that all languages share are taken for those of its writer', () => {
    for (const language of ['en', 'de', 'es'] as const) {
      expect(book.lookUp('18650', [language]).language).toBe(language)
      expect(book.lookUp('LiFePO4 32700', [language]).language).toBe(language)
    }
  })
})

describe('a sign of danger is answered by getting away, however unsure the search is', () => {
  test.each([
    ['it smokes', 'en'],
    ['HELP its hissing on my desk', 'en'],
    ['my cat knocked the battery over and now it is hissing', 'en'],
    ['es zischt', 'de'],
    ['there is a puddle under my battery', 'en'],
    ['it popped and turned black at one end', 'en'],
    ['akku wird von selbst warm', 'de'],
    ['die zelle ist unten verfärbt', 'de'],
    ['la celda está chamuscada', 'es'],
    ['der akku vom hund seinem halsband ist aufgebläht', 'de'],
    ['huele raro y está caliente', 'es'],
  ] as const)('%s', (question, language) => {
    expect(book.lookUp(question, [language]).answer?.caution).toBe('emergency')
  })

  test.each([
    ['my cat is hissing at the dog', 'en'],
    ['is there a smoking area at the station', 'en'],
    ['his brother likes it', 'en'],
    ['mein chef raucht zu viel', 'de'],
    ['mi gato está hinchado', 'es'],
  ] as const)('but not one of something else: %s', (question, language) => {
    expect(book.lookUp(question, [language]).answer).toBeUndefined()
  })
})

test('one word in common is not enough, unless it is all there is', () => {
  expect(book.lookUp('is this sofa heavy', ['en']).answer).toBeUndefined()
  expect(book.lookUp('what does mah mean', ['en']).answer?.id).toBe('what-mah-means')
})

test('an id finds its entry, and so does its title in any language, however it is typed', () => {
  for (const entry of book.entries) {
    expect(book.lookUp(entry.id, ['es']).answer?.id).toBe(entry.id)
    for (const { title } of Object.values(entry.texts))
      expect(book.lookUp(title.toLowerCase().replace(/[?¿:]/g, ''), ['en']).answer?.id, title).toBe(entry.id)
  }
})

test('getting away needs no sureness where it comes first and a cell, or what holds one, is named', () => {
  expect(book.lookUp('my vape battery got warm in my pocket is it safe', ['en']).answer?.caution).toBe('emergency')
})

test('words of ours in other worlds, and a subject that no entry names, are no question of ours', () => {
  for (const [question, language] of [
    ['how do i merge two cells in a spreadsheet', 'en'],
    ['quiero aprender a tocar la batería', 'es'],
    ['is my kazoo genuine', 'en'],
    ['woran erkenne ich einen falschen hunderter', 'de'],
  ] as const)
    expect(book.lookUp(question, [language]).answer, question).toBeUndefined()
})

test('a place is no other thing, and a thing is none where a charger is named', () => {
  for (const question of ['solvent smell in the kitchen', 'the sofa is scorched under the charger'])
    expect(book.lookUp(question, ['en']).answer?.caution, question).toBe('emergency')
})

test('what is sure is an answer with others beside it, what is not is none', () => {
  const sure = book.lookUp('is it fine to leave them charging while i sleep', ['en'])
  expect(sure.answer?.id).toBe('charging-overnight')
  expect(sure.near).not.toContain(sure.answer)
  const unsure = book.lookUp('which headlamp throws furthest', ['en'])
  expect(unsure.answer).toBeUndefined()
  expect(book.lookUp('', ['en'])).toEqual({ near: [], language: 'en' })
})
