// The queue: what waits since when, what stands still, and what was handled, each in its order.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { type Actor, stillAfter } from '../../src/check/custody.ts'
import { custodyOf } from '../../src/check/custody-of.ts'
import { untouchedSince } from '../../src/check/desk.ts'
import { handledFor, standingStill, waitingFor, waitingTooLong, waitOf } from '../../src/check/waiting.ts'
import { cantTell, option } from '../../src/engine/answers.ts'
import { does, type Event, fresh, having, type Name, now, people, taken } from './hand-over-people.ts'
import {
  ask,
  asked,
  atLegs,
  claimed,
  done,
  helped,
  passOn,
  redirect,
  says,
  to,
  toAnyone,
  withBen,
} from './hand-over-states.ts'

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
