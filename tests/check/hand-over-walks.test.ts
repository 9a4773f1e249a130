// Random people with random rights doing random things to a check: what must hold of every hand-over.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { act } from '../../src/check/act.ts'
import type { Check } from '../../src/check/check.ts'
import { type Actor, offerLasts, type Taker } from '../../src/check/custody.ts'
import { custodyOf } from '../../src/check/custody-of.ts'
import { handOvers } from '../../src/check/hand-over.ts'
import { forgetPerson } from '../../src/check/person-in-check.ts'
import { screenOf } from '../../src/check/screen.ts'
import { option } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { asEvent, type Event, fresh, having, now, program, question } from './hand-over-people.ts'

test('whoever does whatever, nobody does what they may not, a check has one holder, and none is lost', () => {
  const anybody = fc.record({
    person: fc.constantFrom('ada', 'ben', 'cleo', 'dov'),
    here: fc.boolean(),
    roles: fc.subarray(['keepers', 'others']),
    moderator: fc.boolean(),
    helper: fc.boolean(),
  })
  const takers: fc.Arbitrary<Taker> = fc.oneof(
    fc.record({ to: fc.constant('person' as const), person: fc.constantFrom('ada', 'ben', 'cleo', 'dov') }),
    fc.record({ to: fc.constant('role' as const), role: fc.constantFrom('keepers', 'others') }),
    fc.record({ to: fc.constant('anyone' as const) }),
  )
  const events = fc.record({
    pick: fc.nat(),
    to: takers,
    shares: fc.boolean(),
    late: fc.constantFrom(0, 0, 0, offerLasts),
  })
  const all = [...handOvers, 'answer', 'answer', 'back', 'pause', 'resume', 'finish', 'go-on', 'close']
  fc.assert(
    fc.property(fc.array(fc.tuple(anybody, events), { maxLength: 60 }), steps => {
      let check = fresh
      let clock = now
      for (const [actor, { pick, to, shares, late }] of steps) {
        clock += late
        const is = all[pick % all.length] ?? 'close'
        // Closing ends a walk: it is drawn less often than the rest.
        if (is === 'close' && pick % 5 > 0) continue
        const made = is === 'offer' || is === 'pass-on' ? ({ is, to, why: '' } as const) : asEvent(is, check)
        const event = made.is === 'share' ? { ...made, shares } : made
        const before = structuredClone(check)
        const stepped = act(program, check, actor, event, clock)
        expect(check).toEqual(before)
        if (!stepped.ok) continue
        check = stepped.check
        entitled(before, check, actor, event, clock)
        expect(check.revision).toBe(before.revision + 1)
        expect(stepped.screen).toEqual(screenOf(program, check))
        const { history, offer: open, helpRequest } = custodyOf(check)
        expect(history.slice(0, custodyOf(before).history.length)).toEqual(custodyOf(before).history)
        expect(open && helpRequest).toBeUndefined()
        // Whoever holds it can always go on with it, or take it back and then go on.
        if (check.phase.is !== 'closed')
          expect(act(program, check, { ...actor, person: check.holder }, { is: 'close' }, clock).ok).toBe(true)
      }
    }),
    { numRuns: 400 },
  )
})

test('whoever is taken out of others’ checks leaves no trace in them, and the check goes on', () => {
  const chain = having(
    fresh,
    ['ada', { is: 'offer', to: { to: 'person', person: 'ben' }, why: 'from ada' }],
    ['ben', { is: 'take' }],
    ['ben', { is: 'offer', to: { to: 'anyone' }, why: 'from ben' }],
    ['keeper', { is: 'take' }],
    ['keeper', { is: 'answer', question: question(fresh), answer: option('no') }],
    ['keeper', { is: 'ask', words: 'help', where: 'c' }],
  )
  const helped = having(chain, ['warden', asEvent('answer', chain)])
  for (const person of ['ada', 'ben', 'warden']) {
    const left = forgetPerson(helped, person)
    expect(JSON.stringify(left)).not.toContain(person)
    expect(left.holder).toBe('keeper')
    expect(left.answers).toEqual(helped.answers)
    expect(custodyOf(left).history).toHaveLength(custodyOf(helped).history.length)
    const from = custodyOf(left).from
    expect([undefined, 'ben']).toContain(from)
  }
  const toBen = having(fresh, ['ada', { is: 'offer', to: { to: 'person', person: 'ben' }, why: '' }])
  expect(custodyOf(forgetPerson(toBen, 'ben')).offer).toBeUndefined()
})

/** Said a second time, from the outside: by whom each kind of change may have been caused. */
function entitled(before: Check, after: Check, actor: Actor, event: Event, at: number): void {
  const { starter, offer: open, helpRequest, from } = custodyOf(before)
  const held = actor.person === before.holder
  if (after.holder !== before.holder) {
    const tookIt =
      event.is === 'take' &&
      open !== undefined &&
      at < open.until &&
      actor.here &&
      (open.to.to === 'anyone' ||
        (open.to.to === 'person' && open.to.person === actor.person) ||
        (open.to.to === 'role' && actor.roles.includes(open.to.role)))
    const others = before.holder !== starter || open !== undefined || helpRequest !== undefined
    const tookOver = event.is === 'take-over' && actor.moderator && others
    const gaveBack = event.is === 'give-back' && held && after.holder === from
    expect(tookIt || tookOver || gaveBack).toBe(true)
    if (!gaveBack) expect(after.holder).toBe(actor.person)
    expect(after.consents).toEqual({})
    expect(custodyOf(after).shares).toBe(false)
  }
  for (const id of new Set([...Object.keys(before.answers), ...Object.keys(after.answers)]))
    if (JSON.stringify(after.answers[id]) !== JSON.stringify(before.answers[id]))
      expect(
        (held && (open === undefined || at >= open.until || isDanger(after))) ||
          ((actor.moderator || actor.helper === true) && helpRequest?.question === id),
      ).toBe(true)
  // Whom a question waits for is said by those who may help alone, and nobody's claim is taken from them.
  const [was, is] = [helpRequest?.claimed, custodyOf(after).helpRequest?.claimed]
  if (helpRequest && custodyOf(after).helpRequest && JSON.stringify(was) !== JSON.stringify(is)) {
    expect(actor.moderator || actor.helper === true).toBe(true)
    if (is) expect([is.by, was]).toEqual([actor.person, undefined])
    else expect(event.is === 'pass-on' || was?.by === actor.person).toBe(true)
  }
  if (after.phase.is === 'closed') expect(held).toBe(true)
  if (custodyOf(after).shares !== custodyOf(before).shares && after.holder === before.holder) expect(held).toBe(true)
}

const isDanger = (check: Check): boolean => judge(program, check.answers).verdict === 'danger'
