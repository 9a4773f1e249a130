// Everybody who has to do with a check that is handed over, and what they can cause; shared by the tests of the hand-over.
import { act } from '../../src/check/act.ts'
import type { Check } from '../../src/check/check.ts'
import type { Actor, Taker } from '../../src/check/custody.ts'
import { custodyOf } from '../../src/check/custody-of.ts'
import type { CheckEvent } from '../../src/check/events.ts'
import type { HandOverEvent } from '../../src/check/hand-over.ts'
import { start } from '../../src/check/step.ts'
import { option } from '../../src/engine/answers.ts'
import { now, taken } from './hands.ts'
import { lanternProgram } from './lantern-pack.ts'

export type Event = CheckEvent | HandOverEvent

export { now, taken }
export const program = lanternProgram('lamp')
const person = (name: string, more: Partial<Actor> = {}): Actor => ({
  person: name,
  here: true,
  roles: [],
  moderator: false,
  ...more,
})
export const people = {
  ada: person('ada'),
  ben: person('ben'),
  keeper: person('keeper', { roles: ['keepers'] }),
  stranger: person('stranger'),
  warden: person('warden', { moderator: true }),
  helper: person('helper', { helper: true }),
  /** Somebody who is not of the server. */
  passer: person('passer', { here: false }),
} as const
export type Name = keyof typeof people

export const does = (check: Check, who: Name, event: Event, at = now) => act(program, check, people[who], event, at)
export const having = (check: Check, ...deeds: readonly (readonly [Name, Event])[]): Check =>
  deeds.reduce((before, [who, event]) => taken(does(before, who, event)), check)
export const question = (check: Check): string => ('question' in check.phase ? check.phase.question : '')

export const opening = { id: 'c1', holder: 'ada', server: 's', mode: 'full', cells: 1, family: 'lamp' } as const
export const fresh = taken(start(program, opening, now))
export const offer = (to: Taker): Event => ({ is: 'offer', to, why: 'needs a scale' })

export const asEvent = (is: string, check: Check): Event => {
  if (is === 'offer') return offer({ to: 'anyone' })
  if (is === 'ask') return { is, words: 'help', where: 'c' }
  if (is === 'pass-on') return { is, to: { to: 'anyone' } }
  if (is === 'redirect') return { is, to: { to: 'anyone' }, why: 'nobody took it' }
  if (is === 'pair') return { is, wanted: true }
  if (is === 'share') return { is, shares: true }
  if (is === 'answer') {
    const asked = question(check) || (custodyOf(check).helpRequest?.question ?? 'legs')
    return { is, question: asked, answer: option(asked === 'legs' ? 'three' : 'no') }
  }
  return { is, why: 'because' } as Event
}
