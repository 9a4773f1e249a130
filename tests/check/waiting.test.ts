// What waits, for whom, in which order; what waits for nobody is not in it, and who may not see it does not.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { offerLasts } from '../../src/check/custody.ts'
import { waitingFilters, waitingFor, waitingTooLong, waitOf } from '../../src/check/waiting.ts'
import { does, fresh, having, now, offer, people, taken } from './hand-over-people.ts'

const stuck = having(fresh, ['ada', { is: 'ask', words: 'help', where: 'c' }])
const claimed = having(stuck, ['helper', { is: 'claim' }])
const passedOn = having(stuck, ['warden', { is: 'pass-on', to: { to: 'role', role: 'keepers' } }])
const offered = having(fresh, ['ada', offer({ to: 'anyone' })])
const toBen = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })])
const held = having(offered, ['ben', { is: 'take' }])
const closed = having(stuck, ['ada', { is: 'close' }])
const list = (checks: readonly Check[]) => checks.map((check, i) => ({ ...check, id: `check${i}` }))
const ids = (
  checks: readonly Check[],
  who: keyof typeof people,
  filter: (typeof waitingFilters)[number] = 'all',
  at = now,
) => waitingFor(list(checks), people[who], filter, at).map(one => one.check.id)

test('waits: a question, and an offer until it lapses; not: a check that goes on, and one that is over', () => {
  expect(waitOf(stuck, now)).toMatchObject({ for: 'help', since: now, claimedBy: null, meant: null })
  expect(waitOf(offered, now)).toMatchObject({ for: 'taker', to: { to: 'anyone' } })
  expect(waitOf(offered, now + offerLasts)).toBeUndefined()
  expect([held, closed, fresh].map(check => waitOf(check, now))).toEqual([undefined, undefined, undefined])
})

describe('who sees what', () => {
  const all = [stuck, offered, toBen]
  test('moderators all of it, helpers the questions and what they may take, nobody else anything', () => {
    expect(ids(all, 'warden')).toEqual(['check0', 'check1', 'check2'])
    expect(ids(all, 'helper')).toEqual(['check0', 'check1'])
    for (const who of ['stranger', 'ben', 'keeper', 'passer'] as const) expect(ids(all, who)).toEqual([])
  })
  test('by what it is, whether it is free, and whose it is', () => {
    const some = [stuck, claimed, passedOn, offered]
    const byFilter = Object.fromEntries(waitingFilters.map(filter => [filter, ids(some, 'helper', filter)]))
    expect(byFilter).toEqual({
      all: ['check0', 'check1', 'check2', 'check3'],
      help: ['check0', 'check1', 'check2'],
      free: ['check0', 'check2'],
      mine: ['check1'],
      taker: ['check3'],
    })
    const keeping = { ...people.helper, roles: ['keepers'] }
    expect(waitingFor(list(some), keeping, 'mine', now).map(one => one.check.id)).toEqual(['check1', 'check2'])
  })
})

test('2,000 at once: the longest waiting first, and none is lost', () => {
  const many = Array.from({ length: 2000 }, (_, i) => ({
    ...taken(does(fresh, 'ada', { is: 'ask', words: '', where: null }, now - ((i * 7919) % 2000))),
    id: `check${i}`,
  }))
  const waiting = waitingFor(many, people.warden, 'all', now)
  expect(waiting).toHaveLength(2000)
  for (let i = 1; i < waiting.length; i++) expect(waiting[i]?.since).toBeGreaterThanOrEqual(waiting[i - 1]?.since ?? 0)
})

describe('claiming', () => {
  test('is for those who may help; it keeps nobody from answering, and only they let it go', () => {
    expect(does(stuck, 'stranger', { is: 'claim' })).toMatchObject({ ok: false, refusal: { code: 'not-moderator' } })
    expect(does(claimed, 'warden', { is: 'claim' })).toMatchObject({ ok: false, refusal: { code: 'claimed-already' } })
    expect(does(claimed, 'warden', { is: 'let-go' })).toMatchObject({ ok: false, refusal: { code: 'not-claimed' } })
    expect(waitOf(having(claimed, ['helper', { is: 'let-go' }]), now)).toMatchObject({ claimedBy: null })
    expect(does(claimed, 'warden', { is: 'send-back', why: 'look again' }).ok).toBe(true)
  })
  test('a helper answers and sends back, but takes nothing over', () => {
    expect(does(stuck, 'helper', { is: 'send-back', why: 'look again' }).ok).toBe(true)
    expect(does(stuck, 'helper', { is: 'take-over', why: '' })).toMatchObject({ refusal: { code: 'not-moderator' } })
  })
  test('a question that is left to everybody again is nobody’s, and one that is answered is claimed by nobody', () => {
    const again = having(claimed, ['warden', { is: 'pass-on', to: { to: 'anyone' } }])
    expect(waitOf(again, now)).toMatchObject({ claimedBy: null, meant: null })
    expect(waitOf(having(claimed, ['ada', { is: 'unask' }]), now)).toBeUndefined()
  })
})

test('too long: from the very moment on, since somebody last said that they look at it, the longest first', () => {
  const hour = 3600_000
  const tooLong = (checks: readonly Check[], at: number) =>
    waitingTooLong(list(checks), hour, at).map(one => one.check.id)
  expect(tooLong([stuck], now + hour - 1)).toEqual([])
  expect(tooLong([stuck], now + hour)).toEqual(['check0'])
  const later = having(stuck, ['helper', { is: 'claim' }])
  const since = later.custody?.helpRequest?.claimed?.at ?? 0
  expect(tooLong([later], since + hour - 1)).toEqual([])
  expect(tooLong([later, fresh, stuck], since + hour)).toEqual(['check0', 'check2'])
})
