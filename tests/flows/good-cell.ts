// A good cell in a person's hand, looked at question by question as the bot asks.
import { expect } from 'vitest'
import type { Person } from '../../src/practice/people/person.ts'
import { buttons, type SeenMessage, text } from '../../src/practice/seen.ts'
import { answer, finalOf, pressed } from './hands.ts'

export const source = { how: ['maker'] }
export const good: Readonly<Record<string, string>> = {
  'Where is the small lettering': 'On the metal can',
  'Where is the small square code': 'On the wrap',
  'How many legs hold up': 'Three',
}
/** Looks at a good cell question by question, and lifts no ring; ends before it is sent. */
export async function look(person: Person, message: SeenMessage, said = good): Promise<SeenMessage> {
  let now = message
  for (let i = 0; i < 20 && buttons(now).some(one => one.customId?.endsWith('.unsure')); i++) {
    const mine = Object.entries(said).find(([asked]) => text(now).includes(asked))?.[1]
    now = await (mine ? answer(person, now, mine) : pressed(person, now, '.unsure'))
  }
  return pressed(person, now, '.leave')
}
export async function walked(
  person: Person,
  form: Awaited<ReturnType<Person['run']>>,
  order: string,
): Promise<SeenMessage> {
  if (form.kind !== 'modal') throw new Error('no form')
  const first = await finalOf(await person.submit(form.modal, { ...source, order, mass: '44.6 g' }))
  expect(text(first)).toMatch(/a good cell · 1 of 6/)
  const summary = await look(person, first)
  expect(text(summary)).toMatch(/what you see on the good cell\nFrom the maker/)
  return pressed(person, summary, 'Accept it')
}
