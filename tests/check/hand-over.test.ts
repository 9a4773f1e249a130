// Handing a check over: every state against every event and everybody who could cause it, and random people doing random things.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { act } from '../../src/check/act.ts'
import { type Check, lifetime } from '../../src/check/check.ts'
import {
  type Actor,
  custodyOf,
  longestReason,
  mostHandled,
  offerLasts,
  seesAnswers,
  seesProgress,
  type Taker,
} from '../../src/check/custody.ts'
import type { CheckEvent } from '../../src/check/events.ts'
import { type HandOverEvent, handOvers } from '../../src/check/hand-over.ts'
import { screenOf } from '../../src/check/screen.ts'
import { type Stepping, start } from '../../src/check/step.ts'
import { type Answer, cantTell, option } from '../../src/engine/answers.ts'
import { lanternProgram } from './lantern-pack.ts'

type Event = CheckEvent | HandOverEvent

const now = Date.UTC(2026, 10, 25)
const program = lanternProgram('lamp')
const person = (name: string, more: Partial<Actor> = {}): Actor => ({
  person: name,
  roles: [],
  moderator: false,
  ...more,
})
const people = {
  ada: person('ada'),
  ben: person('ben'),
  keeper: person('keeper', { roles: ['keepers'] }),
  stranger: person('stranger'),
  warden: person('warden', { moderator: true }),
} as const
type Name = keyof typeof people

function taken(stepping: Stepping): Check {
  if (!stepping.ok) throw new Error(`refused: ${JSON.stringify(stepping.refusal)}`)
  return stepping.check
}
const does = (check: Check, who: Name, event: Event, at = now) => act(program, check, people[who], event, at)
const having = (check: Check, ...deeds: readonly (readonly [Name, Event])[]): Check =>
  deeds.reduce((before, [who, event]) => taken(does(before, who, event)), check)
const question = (check: Check): string => ('question' in check.phase ? check.phase.question : '')
const answer = (check: Check, given: Answer = option('no')): Event => ({
  is: 'answer',
  question: question(check),
  answer: given,
})

const opening = { id: 'c1', holder: 'ada', server: 's', mode: 'full', cells: 1, family: 'lamp' } as const
const fresh = taken(start(program, opening, now))
const offer = (to: Taker): Event => ({ is: 'offer', to, why: 'needs a scale' })
const toBen = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })])
const withBen = having(toBen, ['ben', { is: 'take' }])

/** Every state there is, and who may cause which event in it; whatever is not listed is refused. */
const states: Readonly<Record<string, { check: Check; at?: number; may: Partial<Record<Name, readonly string[]>> }>> = {
  'with its starter': {
    check: fresh,
    may: { ada: ['offer', 'ask', 'share', 'answer', 'close'], warden: ['take-over'] },
  },
  'offered to a person': {
    check: toBen,
    may: { ada: ['withdraw', 'share', 'close'], ben: ['take', 'decline'], warden: ['take-over'] },
  },
  'offered to a role': {
    check: having(fresh, ['ada', offer({ to: 'role', role: 'keepers' })]),
    may: { ada: ['withdraw', 'share', 'close'], keeper: ['take'], warden: ['take-over'] },
  },
  'offered to whoever takes it': {
    check: having(fresh, ['ada', offer({ to: 'anyone' })]),
    may: {
      ada: ['withdraw', 'share', 'close'],
      ben: ['take'],
      keeper: ['take'],
      stranger: ['take'],
      warden: ['take', 'take-over'],
    },
  },
  'offered, and lapsed': {
    check: toBen,
    at: now + offerLasts,
    may: { ada: ['withdraw', 'share', 'close'], ben: ['decline'], warden: ['take-over'] },
  },
  'with somebody who took it': {
    check: withBen,
    may: { ben: ['offer', 'give-back', 'ask', 'share', 'answer', 'close'], warden: ['take-over'] },
  },
  'a moderator is asked': {
    check: having(withBen, ['ben', { is: 'ask', words: 'three or four?' }]),
    may: {
      ben: ['offer', 'give-back', 'unask', 'share', 'answer', 'close'],
      warden: ['answer', 'send-back', 'take-over'],
    },
  },
  'a moderator is asked, and it is paused': {
    check: having(withBen, ['ben', { is: 'ask', words: '' }], ['ben', { is: 'pause' }]),
    may: {
      ben: ['offer', 'give-back', 'unask', 'share', 'close'],
      warden: ['answer', 'send-back', 'take-over'],
    },
  },
  'come to a verdict': {
    check: having(withBen, ['ben', { is: 'finish' }]),
    may: { ben: ['offer', 'give-back', 'share', 'close'], warden: ['take-over'] },
  },
  closed: { check: having(withBen, ['ben', { is: 'close' }]), may: {} },
  'run out': { check: withBen, at: now + lifetime + 3600_000, may: {} },
  'outside a server': {
    check: taken(start(program, { ...opening, server: null }, now)),
    may: { ada: ['answer', 'close'] },
  },
}

const asEvent = (is: string, check: Check): Event => {
  if (is === 'offer') return offer({ to: 'anyone' })
  if (is === 'ask') return { is, words: 'help' }
  if (is === 'share') return { is, shares: true }
  if (is === 'answer')
    return { is, question: question(check) || (custodyOf(check).plea?.question ?? 'legs'), answer: option('no') }
  return { is, why: 'because' } as Event
}

describe.each(Object.entries(states))('%s', (_name, { check, at = now, may }) => {
  test.each(Object.keys(people) as Name[])('%s may do what is listed, and nothing else', who => {
    const all = [...handOvers, 'answer', 'close']
    const allowed = all.filter(is => does(check, who, asEvent(is, check), at).ok)
    expect(allowed.toSorted()).toEqual([...(may[who] ?? [])].toSorted())
  })
})

describe('what a hand-over does', () => {
  test('an offered check shows that it waits, and to whom', () => {
    expect(screenOf(program, toBen)).toMatchObject({ kind: 'offered', offer: { to: { person: 'ben' } } })
  })
  test('the first who may take it has it; the second is told that it is gone', () => {
    const open = having(fresh, ['ada', offer({ to: 'anyone' })])
    const won = having(open, ['ben', { is: 'take' }])
    expect(won.holder).toBe('ben')
    expect(does(won, 'keeper', { is: 'take' })).toEqual({ ok: false, refusal: { code: 'nothing-to-take' } })
  })
  test('nobody hands a check to themselves', () => {
    expect(does(fresh, 'ada', offer({ to: 'person', person: 'ada' }))).toMatchObject({
      refusal: { code: 'to-oneself' },
    })
  })
  test('what one person has consented to leads nobody else under a wrap', () => {
    let check = fresh
    while (check.phase.is !== 'consent') {
      const safe = ['smoke', 'wrap'].includes(question(check)) ? option('no') : cantTell
      check = taken(does(check, 'ada', answer(check, safe)))
    }
    const agreed = having(check, ['ada', { is: 'consent', to: 'unwrap', given: true }])
    expect(question(agreed)).toBe('dimples')
    const handed = having(agreed, ['ada', offer({ to: 'anyone' })], ['ben', { is: 'take' }])
    expect(handed.consents).toEqual({})
    expect(handed.phase).toEqual({ is: 'consent', to: 'unwrap' })
  })
  test('given back goes to whom it came from, with the reason in its history', () => {
    const chain = having(
      withBen,
      ['ben', offer({ to: 'role', role: 'keepers' })],
      ['keeper', { is: 'take' }],
      ['keeper', { is: 'give-back', why: ' no calliper ' }],
    )
    expect(chain.holder).toBe('ben')
    expect(custodyOf(chain).from).toBe('ada')
    expect(custodyOf(chain).history.map(({ by, did, why }) => ({ by, did, why }))).toEqual([
      { by: 'ada', did: 'offered', why: 'needs a scale' },
      { by: 'ben', did: 'took' },
      { by: 'ben', did: 'offered', why: 'needs a scale' },
      { by: 'keeper', did: 'took' },
      { by: 'keeper', did: 'gave-back', why: 'no calliper' },
    ])
  })
  test('a moderator takes over from somebody who is gone, and hands back', () => {
    const over = having(toBen, ['warden', { is: 'take-over', why: 'ada has left' }])
    expect(over.holder).toBe('warden')
    expect(custodyOf(over).offer).toBeUndefined()
    expect(having(over, ['warden', { is: 'give-back', why: '' }]).holder).toBe('ada')
  })
  test('a check that goes round too often stays where it is', () => {
    let check = fresh
    while (custodyOf(check).history.length < mostHandled)
      check = having(check, ['ada', offer({ to: 'anyone' })], ['ada', { is: 'withdraw' }])
    expect(does(check, 'ada', offer({ to: 'anyone' }))).toMatchObject({ refusal: { code: 'handed-too-often' } })
  })
  test('a reason that is too long is cut at whole characters', () => {
    const long = having(fresh, ['ada', { is: 'offer', to: { to: 'anyone' }, why: '🔋'.repeat(400) }])
    expect([...(custodyOf(long).history[0]?.why ?? '')]).toHaveLength(longestReason)
  })
})

describe('a moderator who is asked', () => {
  const asked = having(withBen, ['ben', { is: 'ask', words: 'is this smoke?' }])
  test('answers that question and no other; the answer is marked as theirs, and the asking is over', () => {
    const helped = having(asked, ['warden', answer(asked)])
    expect(helped.holder).toBe('ben')
    expect(helped.saidBy).toEqual({ [question(asked)]: 'warden' })
    expect(custodyOf(helped).plea).toBeUndefined()
    expect(custodyOf(helped).history.at(-1)).toMatchObject({ by: 'warden', did: 'helped' })
    expect(does(helped, 'warden', answer(helped))).toEqual({ ok: false, refusal: { code: 'not-yours' } })
  })
  test('an answer of the holder’s own ends the asking, and takes the mark away', () => {
    const own = having(asked, ['ben', answer(asked)])
    expect(custodyOf(own).plea).toBeUndefined()
    expect(own.saidBy).toBeUndefined()
    const again = having(asked, ['warden', answer(asked)], ['ben', { is: 'back' }])
    expect(having(again, ['ben', answer(again)]).saidBy).toBeUndefined()
  })
  test('an answer that alone rules the cell out is asked a second time, of the moderator too', () => {
    let check = withBen
    while (question(check) !== 'legs') check = having(check, ['ben', answer(check)])
    const stuck = having(check, ['ben', { is: 'ask', words: '' }])
    const once = having(stuck, ['warden', answer(stuck, option('four'))])
    expect(once.phase).toMatchObject({ is: 'second-look' })
    expect(custodyOf(once).plea).toBeDefined()
    const twice = having(once, ['warden', answer(once, option('four'))])
    expect(twice.answers['legs']).toEqual(option('four'))
    expect(custodyOf(twice).plea).toBeUndefined()
  })
  test('a check that was paused meanwhile is answered all the same', () => {
    const paused = having(asked, ['ben', { is: 'pause' }])
    const helped = taken(does(paused, 'warden', { is: 'answer', question: question(asked), answer: option('no') }))
    expect(helped.answers[question(asked)]).toEqual(option('no'))
  })
})

test('who sees how far a check is, and who sees what was answered', () => {
  const seeing = (check: Check, sees: (check: Check, actor: Actor) => boolean) =>
    (Object.keys(people) as Name[]).filter(who => sees(check, people[who]))
  expect(seeing(toBen, seesProgress)).toEqual(['ada', 'ben', 'warden'])
  expect(seeing(withBen, seesProgress)).toEqual(['ada', 'ben', 'warden'])
  expect(seeing(withBen, seesAnswers)).toEqual(['ben'])
  expect(seeing(having(withBen, ['ben', { is: 'share', shares: true }]), seesAnswers)).toEqual(['ada', 'ben'])
})

test('whoever does whatever, nobody does what they may not, a check has one holder, and none is lost', () => {
  const anybody = fc.record({
    person: fc.constantFrom('ada', 'ben', 'cleo', 'dov'),
    roles: fc.subarray(['keepers', 'others']),
    moderator: fc.boolean(),
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
        const made = is === 'offer' ? ({ is, to, why: '' } as const) : asEvent(is, check)
        const event = made.is === 'share' ? { ...made, shares } : made
        const before = structuredClone(check)
        const stepped = act(program, check, actor, event, clock)
        expect(check).toEqual(before)
        if (!stepped.ok) continue
        check = stepped.check
        entitled(before, check, actor, event, clock)
        expect(check.revision).toBe(before.revision + 1)
        expect(stepped.screen).toEqual(screenOf(program, check))
        const { history, offer: open, plea } = custodyOf(check)
        expect(history.slice(0, custodyOf(before).history.length)).toEqual(custodyOf(before).history)
        expect(open && plea).toBeUndefined()
        // Whoever holds it can always go on with it, or take it back and then go on.
        if (check.phase.is !== 'closed')
          expect(act(program, check, { ...actor, person: check.holder }, { is: 'close' }, clock).ok).toBe(true)
      }
    }),
    { numRuns: 400 },
  )
})

/** Said a second time, from the outside: by whom each kind of change may have been caused. */
function entitled(before: Check, after: Check, actor: Actor, event: Event, at: number): void {
  const { offer: open, plea, from } = custodyOf(before)
  const held = actor.person === before.holder
  if (after.holder !== before.holder) {
    const tookIt =
      event.is === 'take' &&
      open !== undefined &&
      at < open.until &&
      (open.to.to === 'anyone' ||
        (open.to.to === 'person' && open.to.person === actor.person) ||
        (open.to.to === 'role' && actor.roles.includes(open.to.role)))
    const tookOver = event.is === 'take-over' && actor.moderator
    const gaveBack = event.is === 'give-back' && held && after.holder === from
    expect(tookIt || tookOver || gaveBack).toBe(true)
    if (!gaveBack) expect(after.holder).toBe(actor.person)
    expect(after.consents).toEqual({})
    expect(custodyOf(after).shares).toBe(false)
  }
  for (const id of new Set([...Object.keys(before.answers), ...Object.keys(after.answers)]))
    if (JSON.stringify(after.answers[id]) !== JSON.stringify(before.answers[id]))
      expect((held && open === undefined) || (actor.moderator && plea?.question === id)).toBe(true)
  if (after.phase.is === 'closed') expect(held).toBe(true)
  if (custodyOf(after).shares !== custodyOf(before).shares && after.holder === before.holder) expect(held).toBe(true)
}
