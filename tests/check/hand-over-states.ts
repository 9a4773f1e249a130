// The states of a check that is handed over, from which tests of the desk and of the hand-over begin.
import type { Check } from '../../src/check/check.ts'
import { mostHandled, stillAfter } from '../../src/check/custody.ts'
import { custodyOf } from '../../src/check/custody-of.ts'
import { start } from '../../src/check/step.ts'
import { option } from '../../src/engine/answers.ts'
import { type Event, fresh, having, now, offer, opening, program, question, taken } from './hand-over-people.ts'

/** An answer that speaks against nothing. */
export const harmless = (check: Check) => option(question(check) === 'legs' ? 'three' : 'no')
export const says = (check: Check): Event => ({ is: 'answer', question: question(check), answer: harmless(check) })
export const atLegs = having(fresh, ['ada', says(fresh)])
export const ask: Event = { is: 'ask', words: 'three or four?', where: 'c' }
export const toBen = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })])
export const toKeepers = having(fresh, ['ada', offer({ to: 'role', role: 'keepers' })])
export const toAnyone = having(fresh, ['ada', offer({ to: 'anyone' })])
export const withBen = having(toBen, ['ben', { is: 'take' }])
export const asked = having(atLegs, ['ada', ask])
export const claimed = having(asked, ['helper', { is: 'claim' }])
export const finished = having(fresh, ['ada', { is: 'finish' }])
export const helped = having(asked, ['helper', says(asked)])
export const done = having(helped, ['ada', { is: 'finish' }])
export const outside = taken(start(program, { ...opening, server: null }, now))
export const late = now + stillAfter + 3600_000
/** Handed to and fro as often as it may be. */
export const often = (check: Check): Check => {
  const line = { by: 'ada', did: 'withdrew', at: now } as const
  const { history, ...custody } = custodyOf(check)
  return { ...check, custody: { ...custody, history: [...history, ...Array(mostHandled - history.length).fill(line)] } }
}
export const tooOften = { code: 'handed-too-often', most: mostHandled }
export const to = (person: string): Event => ({ is: 'offer', to: { to: 'person', person }, why: '' })
export const passOn = (person: string): Event => ({ is: 'pass-on', to: { to: 'person', person } })
export const redirect = (person: string): Event => ({ is: 'redirect', to: { to: 'person', person }, why: '' })
