// Random people with random rights doing random things to a check: what must hold of every hand-over.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { act } from '../../src/check/act.ts'
import type { Check } from '../../src/check/check.ts'
import { type Actor, mayHelp, offerLasts, stillAfter, type Taker } from '../../src/check/custody.ts'
import { custodyOf, isSecond } from '../../src/check/custody-of.ts'
import { handOvers } from '../../src/check/hand-over.ts'
import { forgetPerson } from '../../src/check/person-in-check.ts'
import { screenOf } from '../../src/check/screen.ts'
import { cantTell, option } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { asEvent, type Event, fresh, having, now, people, program, question, taken } from './hand-over-people.ts'
import { withoutWork } from './without-work.ts'

const offered = having(fresh, ['ada', { is: 'offer', to: { to: 'person', person: 'ben' }, why: '' }])
const asked = having(fresh, ['ada', asEvent('answer', fresh)], ['ada', { is: 'ask', words: '', where: null }])
/** After an answer that ben gave as a helper. */
const finished = (() => {
  const helped = act(program, asked, { ...people.helper, person: 'ben' }, asEvent('answer', asked), now)
  return having(taken(helped), ['ada', { is: 'finish' }])
})()

test('whoever does whatever, nobody does what they may not, a check has one holder, and none is lost', () => {
  const anybody = fc.record({
    person: fc.constantFrom('ada', 'ben', 'cleo', 'dov'),
    here: fc.constantFrom(true, true, true, false),
    roles: fc.subarray(['keepers', 'others']),
    moderator: fc.boolean(),
    helper: fc.boolean(),
  })
  const takers: fc.Arbitrary<Taker> = fc.oneof(
    fc.record({ to: fc.constant('person' as const), person: fc.constantFrom('ada', 'ben', 'cleo', 'dov') }),
    fc.record({ to: fc.constant('role' as const), role: fc.constantFrom('keepers', 'others') }),
    fc.record({ to: fc.constant('anyone' as const) }),
  )
  // Closing ends a walk, and finishing all questions: they are drawn less often than the rest.
  const often = [...handOvers, 'ask', 'answer', 'answer', 'answer', 'back', 'pause', 'resume', 'go-on']
  const events = fc.record({
    is: fc.oneof(
      { weight: 30, arbitrary: fc.constantFrom(...often) },
      { weight: 1, arbitrary: fc.constantFrom('finish', 'finish', 'finish', 'close') },
    ),
    /** Mostly the holder acts, as with anything at all. */
    holds: fc.boolean(),
    to: takers,
    shares: fc.boolean(),
    late: fc.oneof(
      { weight: 12, arbitrary: fc.constant(0) },
      { weight: 1, arbitrary: fc.constantFrom(stillAfter + 3600_000, offerLasts) },
    ),
    says: fc.constantFrom('harmless', 'harmless', 'yes', 'four', 'cant-tell'),
  })
  // Walks begin where much can happen: what is far from the first question is hardly ever come to by chance.
  const begun = fc.constantFrom(fresh, offered, asked, finished, finished)
  const did = new Map<string, number>()
  fc.assert(
    fc.property(
      begun,
      fc.array(fc.tuple(anybody, events), { minLength: 10, maxLength: 60, size: 'max' }),
      (first, steps) => {
        let check = first
        let clock = now
        for (const [anyone, { is, holds, to, shares, late, says }] of steps) {
          clock += late
          const actor = holds ? { ...anyone, person: check.holder } : anyone
          const event = drawn(is, check, { to, shares, says })
          const before = structuredClone(check)
          const stepped = act(program, check, actor, event, clock)
          expect(check).toEqual(before)
          if (!stepped.ok) continue
          check = stepped.check
          did.set(event.is, (did.get(event.is) ?? 0) + 1)
          entitled(before, check, actor, event, clock)
          expect(check.revision).toBe(before.revision + 1)
          expect(withoutWork(stepped.screen)).toEqual(withoutWork(screenOf(program, check)))
          const { history, offer: open, helpRequest } = custodyOf(check)
          expect(history.slice(0, custodyOf(before).history.length)).toEqual(custodyOf(before).history)
          expect(open && helpRequest).toBeUndefined()
          undoable(check, actor, clock, did)
          // Whoever holds it can always go on with it, or take it back and then go on.
          if (check.phase.is !== 'closed')
            expect(act(program, check, { ...actor, person: check.holder }, { is: 'close' }, clock).ok).toBe(true)
        }
      },
    ),
    { numRuns: 300 },
  )
  // A walk that never comes to a deed says nothing about it.
  for (const one of ['take', 'take-over', 'redirect', 'reopen', 'ask-closing', 'keep-open', 'let-go'])
    expect([...did.keys()]).toContain(one)
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
  // Danger is said by anybody who may answer, and taken back by whoever holds the check alone.
  if (isDanger(before) && !isDanger(after)) expect(held).toBe(true)
  const [offerWas, offerIs] = [open, custodyOf(after).offer]
  if (offerWas && offerIs && offerWas !== offerIs && JSON.stringify(offerWas) !== JSON.stringify(offerIs))
    expect([event.is, actor.moderator, held]).toEqual(['redirect', true, false])
  const [asksWas, asksIs] = [custodyOf(before).closing, custodyOf(after).closing]
  if (!asksWas && asksIs) {
    expect([mayHelp(actor), held, asksIs.by]).toEqual([true, false, actor.person])
    expect(after.expiresAt).toBe(before.expiresAt)
  }
  if (asksWas && !asksIs) expect(held || after.holder !== before.holder).toBe(true)
  if (custodyOf(before).pair !== custodyOf(after).pair) expect(held || after.holder !== before.holder).toBe(true)
  // A verdict stands until another answer is given, and is looked at again by whoever gave the answer, or a moderator.
  if (event.is === 'reopen') {
    expect(after.answers).toEqual(before.answers)
    expect(after.phase).toEqual({ is: 'done' })
    const by = before.saidBy?.[custodyOf(after).helpRequest?.question ?? '']
    expect(by !== undefined && (actor.moderator || by === actor.person)).toBe(true)
  }
  // Where a second helper is wanted, nobody confirms their own answer.
  const asked = helpRequest?.question ?? ''
  if (isSecond(before, asked) && !held && after.confirmed?.includes(asked))
    expect(before.saidBy?.[asked]).not.toBe(actor.person)
  if (custodyOf(after).shares !== custodyOf(before).shares && after.holder === before.holder) expect(held).toBe(true)
}

type Drawn = { readonly to: Taker; readonly shares: boolean; readonly says: string }

function drawn(is: string, check: Check, { to, shares, says }: Drawn): Event {
  if (is === 'offer' || is === 'pass-on' || is === 'redirect') return { is, to, why: '' }
  const made = asEvent(is, check)
  if (made.is === 'share') return { ...made, shares }
  if (made.is === 'pair') return { ...made, wanted: shares }
  if (made.is !== 'answer' || says === 'harmless') return made
  return { ...made, answer: says === 'cant-tell' ? cantTell : option(made.question === 'legs' ? 'four' : 'yes') }
}

/** Each deed with what takes it back, by whoever may do both: what is left is what there was, and the two lines of its history. */
const undone: readonly (readonly [Event, Event])[] = [
  [{ is: 'claim' }, { is: 'let-go' }],
  [{ is: 'offer', to: { to: 'anyone' }, why: '' }, { is: 'withdraw' }],
  [{ is: 'ask', words: '', where: null }, { is: 'unask' }],
  [
    { is: 'pair', wanted: true },
    { is: 'pair', wanted: false },
  ],
  [{ is: 'ask-closing' }, { is: 'keep-open' }],
  [{ is: 'reopen' }, { is: 'send-back', why: '' }],
]

function undoable(check: Check, actor: Actor, at: number, did: Map<string, number>): void {
  for (const [deed, back] of undone) {
    // A check that was just touched does not stand still.
    const when = deed.is === 'ask-closing' ? at + stillAfter + 3600_000 : at
    const done = act(program, check, actor, deed, when)
    if (!done.ok) continue
    const whose = back.is === 'keep-open' ? { ...actor, person: check.holder } : actor
    const undid = act(program, done.check, whose, back, when)
    // Nobody is left with what they cannot take back; a question is taken out of the way by an offer, which its history says.
    expect(undid.ok).toBe(true)
    did.set(back.is, (did.get(back.is) ?? 0) + 1)
    const { helpRequest, pair } = custodyOf(check)
    const gone = (deed.is === 'offer' && helpRequest) || (deed.is === 'pair' && pair)
    if (undid.ok && !gone) expect(bare(undid.check)).toEqual(bare(check))
  }
}

/** A check without what every deed leaves: its revision, how long it lives, and its history. */
function bare(check: Check) {
  const { revision: _revision, expiresAt: _until, custody: _custody, ...rest } = check
  const { history: _history, ...custody } = custodyOf(check)
  return { ...rest, custody }
}

const isDanger = (check: Check): boolean => judge(program, check.answers).verdict === 'danger'
