// What is said to whoever may not do something with a check, and in which order: the first thing that stands in the way.
import { describe, expect, test } from 'vitest'
import { act } from '../../src/check/act.ts'
import { type Check, expiryFrom, lifetime } from '../../src/check/check.ts'
import { type Actor, longestReason, mostHandled, offerLasts, stillAfter } from '../../src/check/custody.ts'
import { custodyOf, isFor, isInOtherHands, seesAnswers, seesProgress } from '../../src/check/custody-of.ts'
import { untouchedSince } from '../../src/check/desk.ts'
import { handOver, handOvers, isHandOver } from '../../src/check/hand-over.ts'
import { start } from '../../src/check/step.ts'
import { handledFor, standingStill, waitingFor, waitingTooLong, waitOf } from '../../src/check/waiting.ts'
import { cantTell, option } from '../../src/engine/answers.ts'
import {
  asEvent,
  does,
  type Event,
  fresh,
  having,
  type Name,
  now,
  offer,
  opening,
  people,
  program,
  question,
  taken,
} from './hand-over-people.ts'

/** An answer that speaks against nothing. */
const harmless = (check: Check) => option(question(check) === 'legs' ? 'three' : 'no')
const says = (check: Check): Event => ({ is: 'answer', question: question(check), answer: harmless(check) })
const atLegs = having(fresh, ['ada', says(fresh)])
const ask: Event = { is: 'ask', words: 'three or four?', where: 'c' }
const toBen = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })])
const toKeepers = having(fresh, ['ada', offer({ to: 'role', role: 'keepers' })])
const toAnyone = having(fresh, ['ada', offer({ to: 'anyone' })])
const withBen = having(toBen, ['ben', { is: 'take' }])
const asked = having(atLegs, ['ada', ask])
const claimed = having(asked, ['helper', { is: 'claim' }])
const finished = having(fresh, ['ada', { is: 'finish' }])
const helped = having(asked, ['helper', says(asked)])
const done = having(helped, ['ada', { is: 'finish' }])
const outside = taken(start(program, { ...opening, server: null }, now))
const late = now + stillAfter + 3600_000
/** Handed to and fro as often as it may be. */
const often = (check: Check): Check => {
  const line = { by: 'ada', did: 'withdrew', at: now } as const
  const { history, ...custody } = custodyOf(check)
  return { ...check, custody: { ...custody, history: [...history, ...Array(mostHandled - history.length).fill(line)] } }
}
const tooOften = { code: 'handed-too-often', most: mostHandled }
const to = (person: string): Event => ({ is: 'offer', to: { to: 'person', person }, why: '' })
const passOn = (person: string): Event => ({ is: 'pass-on', to: { to: 'person', person } })
const redirect = (person: string): Event => ({ is: 'redirect', to: { to: 'person', person }, why: '' })
const away = (who: Name): Actor => ({ ...people[who], here: false })

const no = (code: string) => ({ code })
test.each<[string, Check, Name | Actor, Event, object, number?]>([
  ['offer: another’s', toBen, 'ben', to('ada'), no('not-yours')],
  ['offer: from elsewhere', fresh, away('ada'), to('ben'), no('outside-server')],
  ['offer: twice', toBen, 'ada', to('keeper'), no('offered')],
  ['offer: to its holder', fresh, 'ada', to('ada'), no('to-oneself')],
  ['offer: too often, to its holder', often(fresh), 'ada', to('ada'), no('to-oneself')],
  ['offer: too often', often(fresh), 'ada', to('ben'), tooOften],
  ['take: nothing', fresh, 'ben', { is: 'take' }, no('nothing-to-take')],
  ['take: lapsed', toBen, 'ada', { is: 'take' }, no('offer-lapsed'), now + offerLasts],
  ['take: one’s own', toAnyone, 'ada', { is: 'take' }, no('to-oneself')],
  ['take: meant for another', toBen, 'keeper', { is: 'take' }, no('not-for-you')],
  ['take: of another role', toKeepers, 'ben', { is: 'take' }, no('not-for-you')],
  ['take: from elsewhere', toAnyone, 'passer', { is: 'take' }, no('not-for-you')],
  ['decline: nothing', fresh, 'ben', { is: 'decline', why: '' }, no('nothing-to-take')],
  ['decline: for another', toBen, 'keeper', { is: 'decline', why: '' }, no('not-for-you')],
  ['decline: for anyone', toAnyone, 'ben', { is: 'decline', why: '' }, no('not-for-you')],
  ['withdraw: another’s', toBen, 'ben', { is: 'withdraw' }, no('not-yours')],
  ['withdraw: nothing', fresh, 'ada', { is: 'withdraw' }, no('nothing-to-take')],
  ['give back: another’s', withBen, 'ada', { is: 'give-back', why: '' }, no('not-yours')],
  ['give back: offered', having(withBen, ['ben', to('keeper')]), 'ben', { is: 'give-back', why: '' }, no('offered')],
  ['give back: to nobody', fresh, 'ada', { is: 'give-back', why: '' }, no('nothing-to-give-back')],
  ['ask: another’s', fresh, 'ben', ask, no('not-yours')],
  ['ask: from elsewhere', fresh, away('ada'), ask, no('outside-server')],
  ['ask: offered', toBen, 'ada', ask, no('offered')],
  ['ask: twice', asked, 'ada', ask, no('asked-already')],
  ['ask: at no question', finished, 'ada', ask, no('nothing-to-ask')],
  ['ask: too often', often(atLegs), 'ada', ask, tooOften],
  ['unask: another’s', asked, 'helper', { is: 'unask' }, no('not-yours')],
  ['unask: nothing', fresh, 'ada', { is: 'unask' }, no('not-asked')],
  ['claim: by anybody', asked, 'ben', { is: 'claim' }, no('not-moderator')],
  ['claim: nothing', fresh, 'helper', { is: 'claim' }, no('not-asked')],
  ['claim: too often', often(asked), 'helper', { is: 'claim' }, tooOften],
  ['claim: twice', claimed, 'helper', { is: 'claim' }, no('to-oneself')],
  ['claim: another’s', claimed, 'warden', { is: 'claim' }, no('claimed-already')],
  ['let go: nothing', asked, 'helper', { is: 'let-go' }, no('not-claimed')],
  ['let go: another’s', claimed, 'warden', { is: 'let-go' }, no('not-claimed')],
  ['pass on: by anybody', asked, 'ben', passOn('helper'), no('not-moderator')],
  ['pass on: to its holder', asked, 'helper', passOn('ada'), no('to-oneself')],
  ['send back: by anybody', asked, 'ada', { is: 'send-back', why: '' }, no('not-moderator')],
  ['send back: nothing', fresh, 'helper', { is: 'send-back', why: '' }, no('not-asked')],
  ['take over: by a helper', asked, 'helper', { is: 'take-over', why: '' }, no('not-moderator')],
  ['take over: nobody’s', fresh, 'warden', { is: 'take-over', why: '' }, no('not-asked')],
  [
    'take over: one’s own',
    having(toBen, ['warden', { is: 'take-over', why: '' }]),
    'warden',
    { is: 'take-over', why: '' },
    no('to-oneself'),
  ],
  ['share: another’s', withBen, 'ada', { is: 'share', shares: true }, no('not-yours')],
  ['redirect: by a helper', toBen, 'helper', redirect('keeper'), no('not-moderator')],
  ['redirect: to its holder', toBen, 'warden', redirect('ada'), no('to-oneself')],
  ['redirect: nothing', fresh, 'warden', redirect('ben'), no('nothing-to-take')],
  ['redirect: lapsed', toBen, 'warden', redirect('ben'), no('offer-lapsed'), now + offerLasts],
  ['redirect: too often', often(toBen), 'warden', redirect('keeper'), tooOften],
  ['closing: by anybody', withBen, 'ada', { is: 'ask-closing' }, no('not-moderator'), late],
  ['closing: nobody’s', fresh, 'warden', { is: 'ask-closing' }, no('not-asked'), late],
  ['closing: of what a helper was not asked', withBen, 'helper', { is: 'ask-closing' }, no('not-moderator'), late],
  ['closing: while it moves', withBen, 'warden', { is: 'ask-closing' }, { code: 'moves-still', hours: 24 }],
  ['closing: too often', often(withBen), 'warden', { is: 'ask-closing' }, tooOften, late],
  ['keep: another’s', withBen, 'warden', { is: 'keep-open' }, no('not-yours')],
  ['keep: not asked', withBen, 'ben', { is: 'keep-open' }, no('closing-not-asked')],
  ['pair: another’s', asked, 'helper', { is: 'pair', wanted: true }, no('not-yours')],
  ['reopen: by anybody', done, 'ben', { is: 'reopen' }, no('not-moderator')],
  ['reopen: offered', having(done, ['ada', to('ben')]), 'helper', { is: 'reopen' }, no('offered')],
  ['reopen: twice', having(done, ['helper', { is: 'reopen' }]), 'helper', { is: 'reopen' }, no('asked-already')],
  ['reopen: not finished', helped, 'helper', { is: 'reopen' }, no('not-finished')],
  ['reopen: nobody helped', finished, 'warden', { is: 'reopen' }, no('not-helped')],
  ['reopen: too often', often(done), 'helper', { is: 'reopen' }, tooOften],
  ['answer: another’s', fresh, 'ben', says(fresh), no('not-yours')],
  ['answer: of a helper who was not asked', fresh, 'helper', says(fresh), no('not-yours')],
  ['answer: by anybody, where a moderator was asked', asked, 'ben', says(asked), no('not-yours')],
  ['answer: to what was not asked', asked, 'helper', { ...says(fresh) }, no('not-yours')],
  ['finish: another’s', fresh, 'warden', { is: 'finish' }, no('not-yours')],
  ['finish: while offered', toBen, 'ada', { is: 'finish' }, no('offered')],
])('%s', (_, check, who, event, refusal, at = now) => {
  const actor = typeof who === 'string' ? people[who] : who
  expect(act(program, check, actor, event, at)).toEqual({ ok: false, refusal })
})

describe('the desk and its holder', () => {
  const mine = having(toBen, ['warden', { is: 'take-over', why: '' }])
  const events: readonly Event[] = [redirect('ben'), { is: 'ask-closing' }, { is: 'reopen' }]
  test.each(events)('nobody does to a check of theirs what the desk does to others’: $is', event => {
    expect(does(mine, 'warden', event, late)).toEqual({ ok: false, refusal: no('to-oneself') })
  })
})

test('outside a server nothing is handed over; of a closed check, and of one that has run out, that is said before all else', () => {
  for (const is of handOvers) {
    for (const who of ['ada', 'warden'] as const) {
      expect(does(outside, who, asEvent(is, outside))).toEqual({ ok: false, refusal: no('outside-server') })
      const closed: Check = { ...toBen, phase: { is: 'closed' } }
      expect(does(closed, who, asEvent(is, closed), now + lifetime)).toEqual({ ok: false, refusal: no('closed') })
      expect(does(toBen, who, asEvent(is, toBen), toBen.expiresAt)).toEqual({ ok: false, refusal: no('expired') })
    }
  }
  expect(does(toBen, 'ada', { is: 'withdraw' }, toBen.expiresAt - 1).ok).toBe(true)
  expect([...handOvers, 'answer', 'close', 'know'].filter(is => isHandOver({ is }))).toEqual([...handOvers])
})

describe('what each deed leaves', () => {
  const at = now + 5
  const deed = (check: Check, who: Name, event: Event) => {
    const next = taken(does(check, who, event, at))
    const { history, ...custody } = custodyOf(next)
    expect(next.revision).toBe(check.revision + 1)
    expect(history.slice(0, -1)).toEqual(custodyOf(check).history)
    return { next, custody, line: history.at(-1) }
  }
  const mine = { starter: 'ada', shares: false }
  const request = { question: 'legs', words: 'three or four?', where: 'c' }

  test('offered and taken back, declined, redirected', () => {
    const keepers = { to: 'role', role: 'keepers' } as const
    const offered = deed(fresh, 'ada', { is: 'offer', to: keepers, why: ' no  scale ' })
    expect(offered.custody).toEqual({ ...mine, offer: { to: keepers, until: at + offerLasts } })
    expect(offered.line).toEqual({ by: 'ada', did: 'offered', at, to: keepers, why: 'no scale' })
    expect(deed(toBen, 'ada', { is: 'withdraw' })).toMatchObject({
      ...{ custody: mine, line: { by: 'ada', did: 'withdrew', at } },
    })
    const declined = deed(toBen, 'ben', { is: 'decline', why: 'no time' })
    expect(declined.custody).toEqual(mine)
    expect(declined.line).toEqual({ by: 'ben', did: 'declined', at, why: 'no time' })
    const moved = deed(toBen, 'warden', { is: 'redirect', to: keepers, why: '' })
    expect(moved.custody).toEqual({ ...mine, offer: { to: keepers, until: at + offerLasts } })
    expect(moved.line).toEqual({ by: 'warden', did: 'redirected', at, to: keepers })
  })
  test('an offer ends what was asked; what was asked goes on with no one else', () => {
    expect(deed(asked, 'ada', to('ben')).custody).not.toHaveProperty('helpRequest')
    const handed = having(asked, ['ada', to('ben')], ['ben', { is: 'take' }])
    expect(custodyOf(handed)).not.toHaveProperty('helpRequest')
  })
  test('taken, given back, taken over: in whose hands it is, and whose it was', () => {
    expect(deed(toBen, 'ben', { is: 'take' })).toMatchObject({
      next: { holder: 'ben' },
      line: { by: 'ben', did: 'took', at },
    })
    expect(deed(toBen, 'ben', { is: 'take' }).custody).toEqual({ ...mine, from: 'ada' })
    const third = having(withBen, ['ben', to('keeper')], ['keeper', { is: 'take' }])
    expect(custodyOf(third).from).toBe('ben')
    const over = deed(third, 'warden', { is: 'take-over', why: 'away' })
    expect(over).toMatchObject({ next: { holder: 'warden' }, custody: { ...mine, from: 'keeper' } })
    expect(over.line).toEqual({ by: 'warden', did: 'took-over', at, why: 'away' })
    const back = deed(third, 'keeper', { is: 'give-back', why: '' })
    expect(back).toMatchObject({ next: { holder: 'ben' }, custody: { ...mine, from: 'ada' } })
    expect(back.line).toEqual({ by: 'keeper', did: 'gave-back', at })
    // With its starter again it is nobody’s to give back.
    expect(deed(withBen, 'ben', { is: 'give-back', why: '' }).custody).toEqual(mine)
  })
  test('what its holder shared, consented to and decided to leave is theirs; that one said no stays', () => {
    const open: Check = {
      ...toBen,
      ...{ consents: { unwrap: true }, leaves: 'outcome' },
      custody: { ...custodyOf(toBen), shares: true, pair: true },
    }
    const { next, custody } = deed(open, 'ben', { is: 'take' })
    expect(custody).toEqual({ ...mine, from: 'ada' })
    expect(next.consents).toEqual({})
    expect(next).not.toHaveProperty('leaves')
    expect(deed({ ...open, leaves: 'declined' }, 'ben', { is: 'take' }).next.leaves).toBe('declined')
  })
  test('asked and unasked, claimed and let go, passed on and sent back', () => {
    expect(deed(atLegs, 'ada', ask).custody).toEqual({ ...mine, helpRequest: request })
    expect(deed(atLegs, 'ada', ask).line).toEqual({ by: 'ada', did: 'asked', at, why: 'three or four?' })
    expect(deed(asked, 'ada', { is: 'unask' })).toMatchObject({ line: { by: 'ada', did: 'unasked', at } })
    expect(deed(asked, 'ada', { is: 'unask' }).custody).toEqual(mine)
    const about = { at, question: 'legs' }
    const claim = deed(asked, 'helper', { is: 'claim' })
    expect(claim.custody).toEqual({ ...mine, helpRequest: { ...request, claimed: { by: 'helper', at } } })
    expect(claim.line).toEqual({ by: 'helper', did: 'claimed', ...about })
    const free = deed(claimed, 'helper', { is: 'let-go' })
    expect(free.custody).toEqual({ ...mine, helpRequest: request })
    expect(free.line).toEqual({ by: 'helper', did: 'let-go', ...about })
    const keepers = { to: 'role', role: 'keepers' } as const
    const passed = deed(claimed, 'helper', { is: 'pass-on', to: keepers })
    expect(passed.custody).toEqual({ ...mine, helpRequest: { ...request, meant: keepers } })
    expect(passed.line).toEqual({ by: 'helper', did: 'passed-on', to: keepers, ...about })
    // Whom it was passed on to stays known while somebody else looks at it, and after they let it go.
    const looked = deed(passed.next, 'warden', { is: 'claim' })
    expect(looked.custody.helpRequest).toEqual({ ...request, meant: keepers, claimed: { by: 'warden', at } })
    expect(deed(looked.next, 'warden', { is: 'let-go' }).custody.helpRequest).toEqual({ ...request, meant: keepers })
    const anyone = deed(passed.next, 'warden', { is: 'pass-on', to: { to: 'anyone' } })
    expect(anyone.custody.helpRequest).toEqual(request)
    expect(anyone.line).toEqual({ by: 'warden', did: 'passed-on', to: { to: 'anyone' }, ...about })
    const back = deed(claimed, 'warden', { is: 'send-back', why: 'look at the edge' })
    expect(back.custody).toEqual(mine)
    expect(back.line).toEqual({ by: 'warden', did: 'sent-back', why: 'look at the edge', ...about })
  })
  test('shared or not, and a second helper or none, leave no line', () => {
    const shared = taken(does(withBen, 'ben', { is: 'share', shares: true }))
    expect(custodyOf(shared)).toEqual({ ...custodyOf(withBen), shares: true })
    const pair = taken(does(shared, 'ben', { is: 'pair', wanted: true }))
    expect(custodyOf(pair)).toEqual({ ...custodyOf(shared), pair: true })
    expect(custodyOf(taken(does(pair, 'ben', { is: 'pair', wanted: false })))).toEqual(custodyOf(shared))
  })
  test('asked to be closed and kept open; a wish for two helpers leaves that alone', () => {
    const closing = taken(does(withBen, 'warden', { is: 'ask-closing' }, late))
    expect(custodyOf(closing)).toMatchObject({ closing: { by: 'warden', at: late } })
    expect(custodyOf(closing).history.at(-1)).toEqual({ by: 'warden', did: 'asked-closing', at: late })
    const pair = taken(does(closing, 'ben', { is: 'pair', wanted: true }, late))
    expect(custodyOf(pair)).toMatchObject({ closing: { by: 'warden', at: late }, pair: true })
    const kept = taken(does(pair, 'ben', { is: 'keep-open' }, late))
    expect(custodyOf(kept)).not.toHaveProperty('closing')
    expect(custodyOf(kept).pair).toBe(true)
    expect(custodyOf(kept).history.at(-1)).toEqual({ by: 'ben', did: 'kept-open', at: late })
  })
  test('looked at again, it is claimed by whoever does', () => {
    const { custody, line } = deed(done, 'helper', { is: 'reopen' })
    expect(custody.helpRequest).toEqual({ question: 'legs', words: '', where: null, claimed: { by: 'helper', at } })
    expect(line).toEqual({ by: 'helper', did: 'reopened', at, question: 'legs' })
  })
  test('an answer of a helper ends the asking with a line of its own', () => {
    const { custody, line } = deed(claimed, 'helper', says(claimed))
    expect(custody).toEqual(mine)
    expect(line).toEqual({ by: 'helper', did: 'helped', at, question: 'legs' })
  })
  test('every deed puts off its end, but the one that asks for it', () => {
    for (const [check, who, event] of [
      [toBen, 'ben', { is: 'take' }],
      [withBen, 'ben', { is: 'share', shares: true }],
      [asked, 'helper', { is: 'claim' }],
    ] as const)
      expect(taken(does(check, who, event, late)).expiresAt).toBe(expiryFrom(late))
    expect(taken(does(withBen, 'warden', { is: 'ask-closing' }, late)).expiresAt).toBe(withBen.expiresAt)
  })
})

test('words are one line of at most so many characters; words of nothing are none', () => {
  const why = (words: string) => {
    const next = handOver(fresh, { is: 'offer', to: { to: 'anyone' }, why: words }, people.ada, now)
    return next.ok ? custodyOf(next.check).history[0] : undefined
  }
  expect(why(' \n ')).not.toHaveProperty('why')
  expect(why(' a \t\n b ')).toMatchObject({ why: 'a b' })
  expect(why('x'.repeat(longestReason))).toMatchObject({ why: 'x'.repeat(longestReason) })
  expect(why('x'.repeat(longestReason + 1))).toMatchObject({ why: 'x'.repeat(longestReason) })
})

describe('whose it is', () => {
  const names = Object.keys(people) as Name[]
  test('an offer is for whom it names, of this server alone', () => {
    const forWhom = (taker: Parameters<typeof isFor>[0]) => names.filter(who => isFor(taker, people[who]))
    expect(forWhom({ to: 'anyone' })).toEqual(names.filter(who => who !== 'passer'))
    expect(forWhom({ to: 'person', person: 'ben' })).toEqual(['ben'])
    expect(forWhom({ to: 'role', role: 'keepers' })).toEqual(['keeper'])
    expect(isFor({ to: 'person', person: 'passer' }, people.passer)).toBe(false)
  })
  test('it is in other hands where somebody else holds it, or it is offered or asked about', () => {
    expect([fresh, finished, toBen, withBen, asked].map(isInOtherHands)).toEqual([false, false, true, true, true])
    expect(isInOtherHands(having(withBen, ['ben', { is: 'give-back', why: '' }]))).toBe(false)
  })
  test('who sees how far it is, and what was answered', () => {
    const seeing = (check: Check, sees: typeof seesProgress) => names.filter(who => sees(check, people[who]))
    expect(seeing(fresh, seesProgress)).toEqual(['ada', 'warden'])
    expect(seeing(toKeepers, seesProgress)).toEqual(['ada', 'keeper', 'warden'])
    expect(seeing(toAnyone, seesProgress)).toEqual(['ada', 'warden'])
    expect(seeing(fresh, seesAnswers)).toEqual(['ada'])
  })
})

describe('the queue', () => {
  const named = (check: Check, id: string, more: Partial<Check> = {}): Check => ({ ...check, id, ...more })
  const ids = (list: readonly { readonly check: Check }[]) => list.map(one => one.check.id)

  test('of what has waited as long, the first by its id; a check that is over or has run out waits no more', () => {
    const list = [named(asked, 'b'), named(toAnyone, 'c'), named(asked, 'a')]
    expect(ids(waitingFor(list, people.warden, 'all', now))).toEqual(['a', 'b', 'c'])
    expect(ids(waitingTooLong(list, 0, now))).toEqual(['a', 'b', 'c'])
    expect(waitOf(asked, asked.expiresAt - 1)).toBeDefined()
    expect(waitOf(asked, asked.expiresAt)).toBeUndefined()
  })
  test('waits since it was asked, or looked at again; an offer since it was offered, or offered to somebody else', () => {
    const at = (check: Check, who: Name, event: Event, when: number) => taken(does(check, who, event, when))
    const twice = at(at(fresh, 'ada', to('ben'), now + 1), 'warden', redirect('keeper'), now + 2)
    expect(waitOf(twice, now + 3)?.since).toBe(now + 2)
    const claimedLater = at(at(atLegs, 'ada', ask, now + 1), 'helper', { is: 'claim' }, now + 2)
    expect(waitOf(claimedLater, now + 3)).toMatchObject({ since: now + 1, claimedBy: 'helper', question: 'legs' })
    expect(waitOf(at(done, 'helper', { is: 'reopen' }, now + 7), now + 8)?.since).toBe(now + 7)
    const unsaid: Check = { ...asked, custody: { ...custodyOf(asked), history: [] } }
    expect(waitOf(unsaid, now)?.since).toBe(asked.startedAt)
  })
  test('mine is what was passed on or offered to me or a role of mine; what is offered to everybody is nobody’s', () => {
    const toWarden = named(having(asked, ['helper', passOn('warden')]), 'passed')
    const list = [toWarden, named(having(fresh, ['ada', to('warden')]), 'offered'), named(toAnyone, 'open')]
    expect(ids(waitingFor(list, people.warden, 'mine', now))).toEqual(['offered', 'passed'])
    expect(ids(waitingFor(list, people.helper, 'mine', now))).toEqual([])
    expect(waitOf(toWarden, now)).toMatchObject({ meant: { to: 'person', person: 'warden' } })
  })
  test('stands still what nobody has touched for a day, the longest first, and none that is over', () => {
    const touched = (hours: number) => ({ expiresAt: withBen.expiresAt + hours * 3600_000 })
    const list = [
      named(withBen, 'c', touched(2)),
      named(withBen, 'b'),
      named(withBen, 'a'),
      named(fresh, 'own'),
      named({ ...withBen, phase: { is: 'closed' } }, 'closed'),
    ]
    const still = (actor: Actor, when: number) => standingStill(list, actor, when).map(one => one.id)
    const since = untouchedSince(withBen)
    expect(still(people.warden, since + stillAfter - 1)).toEqual([])
    expect(still(people.warden, since + stillAfter)).toEqual(['a', 'b'])
    expect(still(people.warden, since + stillAfter + 3 * 3600_000)).toEqual(['a', 'b', 'c'])
    expect(still(people.warden, withBen.expiresAt)).toEqual(['c'])
  })
  test('handled is what was helped or sent back, the latest first; an answer only where it stands as it was given', () => {
    const sent = named(having(asked, ['helper', { is: 'send-back', why: '' }]), 'sent')
    const later = named(taken(does(asked, 'warden', says(asked), now + 9)), 'later')
    const list = [named(helped, 'b'), sent, later, named(helped, 'a'), named(claimed, 'open')]
    expect(handledFor(list, people.warden).map(({ check, did, by, answer }) => [check.id, did, by, answer])).toEqual([
      ['later', 'helped', 'warden', option('three')],
      ['a', 'helped', 'helper', option('three')],
      ['b', 'helped', 'helper', option('three')],
      ['sent', 'sent-back', 'helper', undefined],
    ])
    expect(ids(handledFor(list, people.helper))).toEqual(['a', 'b', 'sent'])
    const anew = having(helped, ['ada', { is: 'change', question: 'legs' }])
    const own = having(anew, ['ada', { is: 'answer', question: 'legs', answer: cantTell }])
    expect(handledFor([own], people.warden)[0]?.answer).toBeUndefined()
  })
})
