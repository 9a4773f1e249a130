// What each deed of a hand-over leaves: whose the check is, what is offered and asked, and the line that says so.
import { describe, expect, test } from 'vitest'
import { type Check, expiryFrom } from '../../src/check/check.ts'
import { longestReason, offerLasts } from '../../src/check/custody.ts'
import { custodyOf, isFor, isInOtherHands, seesAnswers, seesProgress } from '../../src/check/custody-of.ts'
import { handOver } from '../../src/check/hand-over.ts'
import { does, type Event, fresh, having, type Name, now, people, taken } from './hand-over-people.ts'
import {
  ask,
  asked,
  atLegs,
  claimed,
  done,
  finished,
  late,
  says,
  to,
  toAnyone,
  toBen,
  toKeepers,
  withBen,
} from './hand-over-states.ts'

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
