// What is said to whoever may not do something with a check, and in which order: the first thing that stands in the way.
import { describe, expect, test } from 'vitest'
import { act } from '../../src/check/act.ts'
import { type Check, lifetime } from '../../src/check/check.ts'
import { type Actor, offerLasts } from '../../src/check/custody.ts'
import { handOvers, isHandOver } from '../../src/check/hand-over.ts'
import { asEvent, does, type Event, fresh, having, type Name, now, people, program } from './hand-over-people.ts'
import {
  ask,
  asked,
  atLegs,
  claimed,
  done,
  finished,
  helped,
  late,
  often,
  outside,
  passOn,
  redirect,
  says,
  to,
  toAnyone,
  toBen,
  toKeepers,
  tooOften,
  withBen,
} from './hand-over-states.ts'

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
