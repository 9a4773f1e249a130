// The book of answers: which language a question is looked up in, entries by id, and no answer that is not sure.
import { describe, expect, test } from 'vitest'
import { openBook } from '../../src/answers/book.ts'
import { spokenIn } from '../../src/answers/spoken-in.ts'
import { shippedAnswers } from './questions.ts'

const book = openBook(await shippedAnswers())

test('what people type in a few words is answered where it is one of an entry’s own phrasings', () => {
  expect(book.lookUp('how do i store cells', ['en']).answer?.id).toBe('storage')
  expect(book.lookUp('darf ich über nacht laden', ['de']).answer?.id).toBe('charging-overnight')
  expect(book.lookUp('cómo cargo una celda', ['es']).answer?.id).toBe('charging')
})

describe('the language of a question', () => {
  test.each([
    ['is it fine to leave them charging while i sleep', ['en']],
    ['kann ich die über nacht laden', ['de']],
    ['¿puedo dejarlas cargando por la noche?', ['es']],
    ['18650', ['en', 'de', 'es']],
  ] as const)('%s', (question, spoken) => {
    expect(spokenIn(question, ['en', 'de', 'es'])).toEqual(spoken)
  })
})

test('an English question of somebody who reads German is looked up in English', () => {
  expect(book.lookUp('is it fine to leave them charging while i sleep', ['de', 'en']).answer?.id).toBe(
    'charging-overnight',
  )
  expect(book.lookUp('which headlamp throws furthest at night', ['de', 'en']).answer).toBeUndefined()
})

test('an id finds its entry, and so does its title in any language, however it is typed', () => {
  for (const entry of book.entries) {
    expect(book.lookUp(entry.id, ['es']).answer?.id).toBe(entry.id)
    for (const { title } of Object.values(entry.texts))
      expect(book.lookUp(title.toLowerCase().replace(/[?¿:]/g, ''), ['en']).answer?.id, title).toBe(entry.id)
  }
})

test('where nothing is sure, getting away stands first', () => {
  const { answer, near } = book.lookUp('my vape battery got warm in my pocket is it safe', ['en'])
  expect(answer).toBeUndefined()
  expect(near[0]?.caution).toBe('emergency')
})

test('what is sure is an answer with others beside it, what is not is none', () => {
  const sure = book.lookUp('is it fine to leave them charging while i sleep', ['en'])
  expect(sure.answer?.id).toBe('charging-overnight')
  expect(sure.near).not.toContain(sure.answer)
  const unsure = book.lookUp('which headlamp throws furthest', ['en'])
  expect(unsure.answer).toBeUndefined()
  expect(book.lookUp('', ['en'])).toEqual({ near: [] })
})
