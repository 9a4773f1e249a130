// What only sounds as if something were burning now: a habit, a collection point, a thing that is burning hot; and packs that are no cells.
import { describe, expect, test } from 'vitest'
import { asksOfHabit, asksWhoTakes, isOfUnnamedPack } from '../../src/answers/calm.ts'
import { signsOfDanger } from '../../src/answers/danger.ts'
import type { Language } from '../../src/answers/entry.ts'
import { tellsOfHurt } from '../../src/answers/hurt.ts'
import { openShippedBook } from './questions.ts'

const book = await openShippedBook()
const asked = (question: string, language: Language) => book.lookUp(question, [language])
const signs = (question: string, language: Language) => signsOfDanger(question, language, () => false)

describe('a habit', () => {
  test.each<[string, Language]>([
    ['is it bad to always charge it to the top', 'en'],
    ['Ist es schlimm, den Akku immer auf 100 % zu laden', 'de'],
    ['es malo cargarla siempre hasta arriba', 'es'],
  ])('is asked about without an alarm: %s', (question, language) => {
    expect(asksOfHabit(question, language)).toBe(true)
    expect(asked(question, language).answer?.caution).not.toBe('emergency')
    expect([asked(question, language).answer, ...asked(question, language).near][0]?.id).toBe('cycle-life')
  })
  test.each<[string, Language]>([
    ['is it bad that it always gets hot', 'en'],
    ['ist es schlimm dass sie immer heiß wird', 'de'],
    ['es malo que la celda siempre se ponga muy caliente', 'es'],
  ])('of getting hot is none: %s', (question, language) => {
    expect(asksOfHabit(question, language)).toBe(false)
    expect(asked(question, language).answer?.caution).toBe('emergency')
  })
})

describe('a swollen battery', () => {
  test.each<[string, Language]>([
    ['does the recycling centre take swollen batteries', 'en'],
    ['Nimmt der Wertstoffhof aufgeblähte Akkus?', 'de'],
    ['un punto limpio acepta baterías hinchadas? cómo las llevo en el coche', 'es'],
  ])('that is only to be handed in is told of in the entry about that: %s', (question, language) => {
    const { answer, near } = asked(question, language)
    expect(answer?.id).toBe('disposal')
    // That entry asks first whether it happens now, and getting away is offered beside it.
    expect(answer?.texts[language]?.body).toMatch(/^(Is the cell burning|Brennt, raucht|¿Ahora mismo la celda arde)/)
    expect(near.some(entry => entry.caution === 'emergency')).toBe(true)
  })
  test.each<[string, Language]>([
    ['swollen and warm, does the recycling centre take it', 'en'],
    ['swollen battery on my desk, recycling centre is closed, what now', 'en'],
    ['aufgebläht und zischt, nimmt der wertstoffhof den akku', 'de'],
    ['akku ist heute aufgebläht, wertstoffhof oder was', 'de'],
    ['la batería hinchada huele, la acepta el punto limpio', 'es'],
    ['batería hinchada, qué hago, el punto limpio está lejos', 'es'],
  ])('of which more is told, or by somebody in haste, stays an emergency: %s', (question, language) => {
    expect(asksWhoTakes(question, signs(question, language), language)).toBe(false)
    expect(asked(question, language).answer?.caution).toBe('emergency')
  })
  test.each<[string, Language]>([
    ['my laptop keyboard is lifting up on one side', 'en'],
    ['the battery is pushing my trackpad up', 'en'],
    ['the back glass of my phone is coming loose', 'en'],
    ['phone doesnt lie flat on the table any more', 'en'],
    ['der akku drückt die tastatur von meinem laptop hoch', 'de'],
    ['rückseite vom handy steht ab', 'de'],
    ['spalt zwischen display und rahmen beim handy', 'de'],
    ['la batería del portátil me levanta el teclado', 'es'],
    ['la tapa trasera del móvil se está despegando', 'es'],
    ['hay una rendija entre la pantalla y el marco del móvil', 'es'],
  ])('is told by what it lifts: %s', (question, language) => {
    expect(signs(question, language)).not.toEqual([])
    expect(asked(question, language).answer?.caution).toBe('emergency')
  })
  test.each<[string, Language]>([
    ['my screen door is coming off', 'en'],
    ['the keyboard keys of my piano stick', 'en'],
    ['welche tastatur ist gut', 'de'],
    ['mein tisch wackelt', 'de'],
    ['cómo levanto la tapa del piano', 'es'],
  ])('is not told by what lifts where nothing has a cell in it: %s', (question, language) => {
    expect(signs(question, language)).toEqual([])
  })
})

test.each<[string, Language]>([
  ['it was in my pocket with keys and now its burning hot, i threw it on the floor', 'en'],
  ['la pila quemaba en el bolsillo y la tiré', 'es'],
])('what is burning hot burns nobody yet: %s', (question, language) => {
  expect(tellsOfHurt(question, language)).toBe(false)
  expect(asked(question, language).answer?.caution).toBe('emergency')
  expect(asked(question, language).answer?.forHurt).toBe(false)
})

test.each<[string, Language]>([
  ['it was burning hot and i burned my hand', 'en'],
  ['me está quemando la pierna', 'es'],
  ['se me quemaba el pantalón por la pila', 'es'],
])('whoever is burned is told what helps, though the thing is hot, too: %s', (question, language) => {
  expect(tellsOfHurt(question, language)).toBe(true)
})

test('what is true of a cell is not said of a pack that the entry does not name', () => {
  const text = { title: 'Is 9,900 mAh possible?', keywords: ['too much mah'], body: 'Not in one cell.' }
  expect(isOfUnnamedPack('my power bank says 50000 mah', 'en', text)).toBe(true)
  expect(isOfUnnamedPack('my power bank says 50000 mah', 'en', { ...text, body: 'In a power bank neither.' })).toBe(
    false,
  )
  expect(isOfUnnamedPack('my cell says 50000 mah', 'en', text)).toBe(false)
  expect(asked('Meine Powerbank soll 50000 mAh haben. Kann das stimmen?', 'de').answer).toBeUndefined()
  expect(asked('Eine 18650 mit 50000 mAh. Kann das stimmen?', 'de').answer?.id).toBe('impossible-capacity')
})

test('within a twentieth of a volt a full cell is full, and no question about 4.35 V', () => {
  expect(asked('charger stops at 4.24', 'en').answer?.id).toBe('which-charger')
  expect(asked('charger stops at 4.28', 'en').answer?.id).toBe('charged-to-4-35')
})
