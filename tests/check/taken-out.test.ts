// A person who is taken out of a check that others hold: what was theirs in it, and what the check is without them.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { custodyOf } from '../../src/check/custody-of.ts'
import { forgetPerson, forgotten, giveBackWithout, partIn } from '../../src/check/person-in-check.ts'
import { option } from '../../src/engine/answers.ts'
import { type Event, fresh, having, offer, question } from './hand-over-people.ts'

const ask: Event = { is: 'ask', words: 'how many legs?', where: 'channel' }
const answers = (check: Check, given: string): Event => ({
  is: 'answer',
  question: question(check),
  answer: option(given),
})
/** Ben took it from Ada, who began it, and asked about the legs; the helper answered that. */
const taken = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })], ['ben', { is: 'take' }])
const withBen = having(taken, ['ben', answers(taken, 'no')], ['ben', ask])
const helped = having(withBen, ['helper', answers(withBen, 'three')])

describe('what a person has to do with another’s check', () => {
  test('is what they did or what was done to them, and the questions they answered for its holder', () => {
    const { history } = custodyOf(helped)
    expect(partIn(helped, 'ada')).toMatchObject({ check: 'c1', server: 's', started: true, answered: [] })
    expect(partIn(helped, 'ada').history).toEqual(history.filter(one => one.by === 'ada'))
    // The offer was made to Ben: it is his, too.
    expect(partIn(helped, 'ben').history).toEqual(history.filter(one => one.by !== 'helper'))
    expect(partIn(helped, 'ben').started).toBe(false)
    expect(partIn(helped, 'helper')).toMatchObject({ answered: [question(withBen)], history: [{ did: 'helped' }] })
    expect(partIn(helped, 'stranger')).toMatchObject({ started: false, history: [], answered: [] })
  })
})

describe('a holder who goes', () => {
  test('leaves the check to whoever began it, without an answer of theirs, and shown to nobody', () => {
    const back = giveBackWithout({ ...helped, leaves: 'declined' }, 'ben') as Check
    expect(back).toMatchObject({
      holder: 'ada',
      answers: {},
      trail: [],
      consents: {},
      packs: [],
      phase: { is: 'paused' },
    })
    expect(back).not.toHaveProperty('saidBy')
    expect(back).not.toHaveProperty('leaves')
    const { starter, shares, history, ...others } = custodyOf(back)
    expect({ starter, shares, others }).toEqual({ starter: 'ada', shares: false, others: {} })
    expect(history).toHaveLength(custodyOf(helped).history.length)
    expect(JSON.stringify(back)).not.toMatch(/\bben\b/)
  })
  test('who began it themselves has nobody to leave it to', () => {
    expect(giveBackWithout(fresh, 'ada')).toBeUndefined()
  })
})

describe('somebody who is forgotten', () => {
  test('did what they did without a name and without their words; others keep theirs', () => {
    const forgot = custodyOf(forgetPerson(helped, 'ada')).history
    expect(forgot[0]).toMatchObject({ by: forgotten, did: 'offered', to: { to: 'person', person: 'ben' } })
    expect(forgot[0]).not.toHaveProperty('why')
    expect(custodyOf(forgetPerson(helped, 'ben')).history[0]).toMatchObject({
      ...{ by: 'ada', why: 'needs a scale', to: { to: 'person', person: forgotten } },
    })
  })
  test('began it no more: its holder did', () => {
    expect(custodyOf(forgetPerson(helped, 'ada'))).toMatchObject({ starter: 'ben' })
    expect(custodyOf(forgetPerson(helped, 'ada')).from).toBeUndefined()
    expect(custodyOf(forgetPerson(helped, 'helper'))).toMatchObject({ starter: 'ada' })
  })
  test('is offered nothing any more; an offer to others stands', () => {
    const toBen = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })])
    expect(custodyOf(forgetPerson(toBen, 'ben')).offer).toBeUndefined()
    expect(custodyOf(forgetPerson(toBen, 'keeper')).offer).toEqual(custodyOf(toBen).offer)
    const toRole = having(fresh, ['ada', offer({ to: 'role', role: 'keepers' })])
    expect(custodyOf(forgetPerson(toRole, 'keepers')).offer).toEqual(custodyOf(toRole).offer)
  })
  test('looks at no question any more, and none is meant for them; it waits for everybody again', () => {
    const claimed = having(withBen, ['helper', { is: 'claim' }])
    expect(custodyOf(forgetPerson(claimed, 'helper')).helpRequest).toEqual(custodyOf(withBen).helpRequest)
    expect(custodyOf(forgetPerson(claimed, 'warden')).helpRequest).toEqual(custodyOf(claimed).helpRequest)
    const meant = having(withBen, ['warden', { is: 'pass-on', to: { to: 'person', person: 'helper' } }])
    expect(custodyOf(forgetPerson(meant, 'helper')).helpRequest).toEqual(custodyOf(withBen).helpRequest)
    expect(custodyOf(forgetPerson(meant, 'warden')).helpRequest).toEqual(custodyOf(meant).helpRequest)
  })
  test('gave no answer by name; the answers stay', () => {
    const forgot = forgetPerson(helped, 'helper')
    expect(forgot.answers).toEqual(helped.answers)
    expect(forgot.saidBy).toEqual({ [question(withBen)]: forgotten })
    expect(forgetPerson(helped, 'ada').saidBy).toEqual(helped.saidBy)
  })
})
