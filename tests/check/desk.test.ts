// What the moderators' desk does about a check: whom it is offered to, whether it can be closed, an answer looked at again, a second helper.
import { describe, expect, test } from 'vitest'
import { act } from '../../src/check/act.ts'
import type { Check } from '../../src/check/check.ts'
import { offerLasts, stillAfter, type Taker } from '../../src/check/custody.ts'
import { custodyOf } from '../../src/check/custody-of.ts'
import { forgetPerson } from '../../src/check/person-in-check.ts'
import { helpingScreen, screenOf } from '../../src/check/screen.ts'
import { handledFor, standingStill, waitOf } from '../../src/check/waiting.ts'
import { cantTell, option } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { does, type Event, fresh, having, now, offer, people, program, question, taken } from './hand-over-people.ts'

const later = now + stillAfter + 3600_000
const says = (check: Check, given: string): Event => ({
  is: 'answer',
  question: question(check),
  answer: given === 'unsure' ? cantTell : option(given),
})
const ask: Event = { is: 'ask', words: 'how many?', where: 'c' }
/** At the question of legs, where four rule the cell out. */
const atLegs = (() => {
  let check = fresh
  while (question(check) !== 'legs') check = having(check, ['ada', says(check, 'no')])
  return check
})()
const stuck = having(atLegs, ['ada', ask])
const verdict = (check: Check) => judge(program, check.answers).verdict

describe('an offer to somebody else', () => {
  const toBen = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })])
  test('is for them alone from then on; whose it is changes only when they take it', () => {
    const moved = having(toBen, ['warden', { is: 'redirect', to: { to: 'role', role: 'keepers' }, why: 'ben is away' }])
    expect(moved.holder).toBe('ada')
    expect(does(moved, 'ben', { is: 'take' })).toMatchObject({ refusal: { code: 'not-for-you' } })
    expect(having(moved, ['keeper', { is: 'take' }]).holder).toBe('keeper')
    expect(custodyOf(moved).history.at(-1)).toMatchObject({ did: 'redirected', by: 'warden', why: 'ben is away' })
    expect(having(moved, ['ada', { is: 'withdraw' }]).custody?.offer).toBeUndefined()
  })
  test('goes to another person, a role or whoever takes it, and only while it stands', () => {
    const redirect = (to: Taker): Event => ({ is: 'redirect', to, why: '' })
    for (const to of [{ to: 'person', person: 'keeper' }, { to: 'role', role: 'keepers' }, { to: 'anyone' }] as const)
      expect(custodyOf(having(toBen, ['warden', redirect(to)])).offer?.to).toEqual(to)
    expect(does(fresh, 'warden', redirect({ to: 'anyone' }))).toMatchObject({ refusal: { code: 'nothing-to-take' } })
    const lapsed = does(toBen, 'warden', redirect({ to: 'anyone' }), now + offerLasts)
    expect(lapsed).toMatchObject({ refusal: { code: 'offer-lapsed' } })
  })
  test('never goes to its holder, nor by a helper', () => {
    const toAda = { is: 'redirect', to: { to: 'person', person: 'ada' }, why: '' } as const
    expect(does(toBen, 'warden', toAda)).toMatchObject({ refusal: { code: 'to-oneself' } })
    expect(does(toBen, 'helper', { ...toAda, to: { to: 'anyone' } })).toMatchObject({
      refusal: { code: 'not-moderator' },
    })
  })
})

describe('what a helper is shown', () => {
  test('is the question they are asked, with the options that only somebody beside the cell can choose', () => {
    const shown = helpingScreen(program, stuck)
    expect(shown).toMatchObject({
      kind: 'question',
      helping: true,
      question: { id: 'legs' },
      closed: [],
      left: { all: 1 },
    })
    expect(shown).not.toHaveProperty('second')
    const smoke = having(fresh, ['ada', ask])
    // Heat, hiss and smell are in no photograph: that there is none can only be said beside it.
    expect(helpingScreen(program, smoke)).toMatchObject({ question: { id: 'smoke' }, closed: ['no'] })
  })
  test('is nothing where nothing is asked, is asked no more, or the check is closed', () => {
    expect(helpingScreen(program, fresh)).toBeUndefined()
    expect(helpingScreen(program, having(stuck, ['ada', { is: 'unask' }]))).toBeUndefined()
    expect(helpingScreen(program, { ...stuck, phase: { is: 'closed' } })).toBeUndefined()
    const gone = {
      ...stuck,
      custody: { ...custodyOf(stuck), helpRequest: { question: 'wings', words: '', where: null } },
    }
    expect(helpingScreen(program, gone)).toBeUndefined()
  })
})

describe('a check that stands still', () => {
  const idle = having(fresh, ['ada', offer({ to: 'anyone' })], ['ben', { is: 'take' }])
  const asked = taken(does(idle, 'warden', { is: 'ask-closing' }, later))
  test('is listed once nobody has touched it for a day, for moderators; for helpers where a question waits', () => {
    const listed = (who: 'warden' | 'helper' | 'stranger', at: number) =>
      standingStill([idle, stuck, fresh], people[who], at)
    expect(listed('warden', now + stillAfter - 1)).toEqual([])
    expect(listed('warden', later)).toHaveLength(2)
    expect(listed('helper', later)).toEqual([stuck])
    expect(listed('stranger', later)).toEqual([])
  })
  test('is not asked about while it moves, nor twice, and gains no life by being asked about', () => {
    expect(does(idle, 'warden', { is: 'ask-closing' })).toMatchObject({ refusal: { code: 'moves-still', hours: 24 } })
    expect(does(asked, 'warden', { is: 'ask-closing' }, later)).toMatchObject({ refusal: { code: 'closing-asked' } })
    expect(asked.expiresAt).toBe(idle.expiresAt)
  })
  test('is closed or kept by its holder alone, and going on keeps it, too', () => {
    expect(does(asked, 'warden', { is: 'keep-open' }, later)).toMatchObject({ refusal: { code: 'not-yours' } })
    const kept = taken(does(asked, 'ben', { is: 'keep-open' }, later))
    expect(custodyOf(kept).closing).toBeUndefined()
    expect(does(kept, 'ben', { is: 'keep-open' }, later)).toMatchObject({ refusal: { code: 'closing-not-asked' } })
    const went = taken(does(asked, 'ben', says(asked, 'no'), later))
    expect(custodyOf(went).closing).toBeUndefined()
  })
  test('forgets who asked with them', () => {
    expect(JSON.stringify(forgetPerson(asked, 'warden'))).not.toContain('warden')
  })
})

describe('an answer that is looked at again', () => {
  const helped = having(stuck, ['helper', says(stuck, 'three')], ['ada', { is: 'finish' }])
  test('leaves the verdict as it stands until another answer is given, and asks of it then', () => {
    const again = having(helped, ['helper', { is: 'reopen' }])
    expect(screenOf(program, again).kind).toBe('verdict')
    expect(waitOf(again, now)).toMatchObject({ for: 'help', question: 'legs', claimedBy: 'helper' })
    const once = having(again, ['helper', { is: 'answer', question: 'legs', answer: option('four') }])
    expect(once.phase).toMatchObject({ is: 'second-look', question: 'legs' })
    const twice = having(once, ['helper', { is: 'answer', question: 'legs', answer: option('four') }])
    expect(verdict(twice)).toBe('ruled-out')
  })
  test('is the helper’s own, or any for a moderator; what the holder gave anew is nobody’s', () => {
    const other = { ...people.helper, person: 'another' }
    expect(act(program, helped, other, { is: 'reopen' }, now)).toMatchObject({ refusal: { code: 'not-helped' } })
    expect(does(helped, 'warden', { is: 'reopen' }).ok).toBe(true)
    const own = having(helped, ['ada', { is: 'change', question: 'legs' }], ['ada', says(atLegs, 'three')])
    const done = having(own, ['ada', { is: 'finish' }])
    expect(does(done, 'warden', { is: 'reopen' })).toMatchObject({ refusal: { code: 'not-helped' } })
  })
  test('is none of a check that found danger, and nobody but its holder takes danger back', () => {
    const change: Event = { is: 'change', question: 'smoke' }
    const danger = having(helped, ['ada', change], ['ada', { is: 'answer', question: 'smoke', answer: option('yes') }])
    expect(verdict(danger)).toBe('danger')
    expect(does(danger, 'helper', { is: 'reopen' })).toMatchObject({ refusal: { code: 'danger-stands' } })
    const found: Event = { is: 'know', answers: { wrap: option('yes') } }
    const since = having(helped, ['helper', { is: 'reopen' }], ['ada', found])
    expect(verdict(since)).toBe('danger')
    const other: Event = { is: 'answer', question: 'legs', answer: option('three') }
    expect(verdict(having(since, ['helper', other]))).toBe('danger')
  })
  test('is kept waiting whatever its holder does about the verdict, and none that is closed', () => {
    const again = having(helped, ['helper', { is: 'reopen' }], ['ada', { is: 'leave-nothing' }])
    expect(custodyOf(again).helpRequest).toMatchObject({ question: 'legs' })
    const closed = having(helped, ['ada', { is: 'close' }])
    expect(does(closed, 'helper', { is: 'reopen' })).toMatchObject({ refusal: { code: 'closed' } })
  })
  test('says who helped, with which answer and when, to moderators and to that helper', () => {
    const [one] = handledFor([helped], people.warden)
    expect(one).toMatchObject({ by: 'helper', did: 'helped', at: now, question: 'legs', answer: option('three') })
    expect(handledFor([helped], people.helper)).toHaveLength(1)
    expect(handledFor([helped], { ...people.helper, person: 'another' })).toEqual([])
    expect(handledFor([helped], people.stranger)).toEqual([])
    expect(handledFor([having(helped, ['ada', { is: 'close' }])], people.warden)).toEqual([])
  })
})

describe('a second helper, where the holder wants one', () => {
  const wanted = having(stuck, ['ada', { is: 'pair', wanted: true }], ['helper', { is: 'claim' }])
  const once = having(wanted, ['helper', { is: 'answer', question: 'legs', answer: option('four') }])
  test('must be another one, who is not told what the first has said', () => {
    expect(once.phase).toMatchObject({ is: 'second-look' })
    expect(waitOf(once, now)).toMatchObject({ for: 'help', claimedBy: null })
    expect(does(once, 'helper', says(once, 'four'))).toMatchObject({ refusal: { code: 'second-helper' } })
    expect(helpingScreen(program, once)).toMatchObject({ second: true, again: undefined })
    expect(verdict(having(once, ['warden', says(once, 'four')]))).toBe('ruled-out')
  })
  test('who says something else makes it “can’t tell”, which counts against nothing', () => {
    const torn = having(once, ['warden', says(once, 'three')])
    expect(torn.answers['legs']).toEqual(cantTell)
    expect(custodyOf(torn).helpRequest).toBeUndefined()
    expect(
      custodyOf(torn)
        .history.filter(one => one.did === 'helped')
        .map(one => one.by),
    ).toEqual(['helper', 'warden'])
  })
  test('who has taken it on keeps it, though another was faster to answer', () => {
    const faster = having(wanted, ['warden', says(wanted, 'four')])
    expect(waitOf(faster, now)).toMatchObject({ for: 'help', claimedBy: 'helper' })
    expect(custodyOf(faster).history.at(-1)).toMatchObject({ by: 'warden', did: 'helped' })
    expect(verdict(having(faster, ['helper', says(faster, 'four')]))).toBe('ruled-out')
  })
  test('is not wanted any more once the holder says so', () => {
    const alone = having(once, ['ada', { is: 'pair', wanted: false }], ['helper', says(once, 'four')])
    expect(verdict(alone)).toBe('ruled-out')
  })
  test('is not needed for what accuses nothing, nor to confirm what the holder saw', () => {
    expect(having(wanted, ['helper', says(wanted, 'three')]).answers['legs']).toEqual(option('three'))
    const own = having(atLegs, ['ada', says(atLegs, 'four')], ['ada', { is: 'pair', wanted: true }], ['ada', ask])
    expect(verdict(having(own, ['helper', says(own, 'four')]))).toBe('ruled-out')
  })
})
