// Handing a check over: every state against every event and everybody who could cause it, and what each does.
import { describe, expect, test } from 'vitest'
import { type Check, lifetime } from '../../src/check/check.ts'
import { type Actor, longestReason, mostHandled, offerLasts, stillAfter } from '../../src/check/custody.ts'
import { custodyOf, seesAnswers, seesProgress } from '../../src/check/custody-of.ts'
import { handOvers } from '../../src/check/hand-over.ts'
import { screenOf } from '../../src/check/screen.ts'
import { start } from '../../src/check/step.ts'
import { type Answer, cantTell, option } from '../../src/engine/answers.ts'
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
const harmless = (check: Check): Answer => option(question(check) === 'legs' ? 'three' : 'no')
const answer = (check: Check, given: Answer = harmless(check)): Event => ({
  is: 'answer',
  question: question(check),
  answer: given,
})

const toBen = having(fresh, ['ada', offer({ to: 'person', person: 'ben' })])
const withBen = having(toBen, ['ben', { is: 'take' }])
/** Past what only shows beside the cell: at a torn wrap, which a photograph shows. */
const atWrap = having(withBen, ['ben', answer(withBen)])

const asked = having(atWrap, ['ben', { is: 'ask', words: 'torn or creased?', where: 'c' }])

/** Every state there is, and who may cause which event in it; whatever is not listed is refused. */
const states: Readonly<Record<string, { check: Check; at?: number; may: Partial<Record<Name, readonly string[]>> }>> = {
  'with its starter': {
    check: fresh,
    may: { ada: ['offer', 'ask', 'share', 'pair', 'answer', 'close'] },
  },
  'offered to a person': {
    check: toBen,
    may: { ada: ['withdraw', 'share', 'pair', 'close'], ben: ['take', 'decline'], warden: ['take-over', 'redirect'] },
  },
  'offered to a role': {
    check: having(fresh, ['ada', offer({ to: 'role', role: 'keepers' })]),
    may: { ada: ['withdraw', 'share', 'pair', 'close'], keeper: ['take'], warden: ['take-over', 'redirect'] },
  },
  'offered to whoever takes it': {
    check: having(fresh, ['ada', offer({ to: 'anyone' })]),
    may: {
      ada: ['withdraw', 'share', 'pair', 'close'],
      ben: ['take'],
      keeper: ['take'],
      stranger: ['take'],
      helper: ['take'],
      warden: ['take', 'take-over', 'redirect'],
    },
  },
  'offered, and lapsed': {
    check: toBen,
    at: now + offerLasts,
    may: {
      ada: ['withdraw', 'share', 'pair', 'answer', 'close'],
      ben: ['decline'],
      warden: ['take-over', 'ask-closing'],
    },
  },
  'with somebody who took it': {
    check: withBen,
    may: { ben: ['offer', 'give-back', 'ask', 'share', 'pair', 'answer', 'close'], warden: ['take-over'] },
  },
  'a moderator is asked': {
    check: having(atWrap, ['ben', { is: 'ask', words: 'torn or creased?', where: 'c' }]),
    may: {
      ben: ['offer', 'give-back', 'unask', 'share', 'pair', 'answer', 'close'],
      helper: ['answer', 'claim', 'pass-on', 'send-back'],
      warden: ['answer', 'claim', 'pass-on', 'send-back', 'take-over'],
    },
  },
  'a moderator is asked, and it is paused': {
    check: having(atWrap, ['ben', { is: 'ask', words: '', where: null }], ['ben', { is: 'pause' }]),
    may: {
      ben: ['offer', 'give-back', 'unask', 'share', 'pair', 'close'],
      helper: ['answer', 'claim', 'pass-on', 'send-back'],
      warden: ['answer', 'claim', 'pass-on', 'send-back', 'take-over'],
    },
  },
  'a helper looks at it': {
    check: having(atWrap, ['ben', { is: 'ask', words: '', where: 'c' }], ['helper', { is: 'claim' }]),
    may: {
      ben: ['offer', 'give-back', 'unask', 'share', 'pair', 'answer', 'close'],
      helper: ['answer', 'let-go', 'pass-on', 'send-back'],
      warden: ['answer', 'pass-on', 'send-back', 'take-over'],
    },
  },
  'come to a verdict': {
    check: having(withBen, ['ben', { is: 'finish' }]),
    may: { ben: ['offer', 'give-back', 'share', 'pair', 'close'], warden: ['take-over'] },
  },
  'stands still at a question a moderator is asked': {
    check: asked,
    at: now + stillAfter + 3600_000,
    may: {
      ben: ['offer', 'give-back', 'unask', 'share', 'pair', 'answer', 'close'],
      helper: ['answer', 'claim', 'pass-on', 'send-back', 'ask-closing'],
      warden: ['answer', 'claim', 'pass-on', 'send-back', 'take-over', 'ask-closing'],
    },
  },
  'stands still with somebody who took it': {
    check: withBen,
    at: now + stillAfter + 3600_000,
    may: {
      ben: ['offer', 'give-back', 'ask', 'share', 'pair', 'answer', 'close'],
      warden: ['take-over', 'ask-closing'],
    },
  },
  'somebody has asked to close it': {
    check: taken(does(withBen, 'warden', { is: 'ask-closing' }, now + stillAfter + 3600_000)),
    at: now + stillAfter + 3600_000,
    may: {
      ben: ['offer', 'give-back', 'ask', 'share', 'pair', 'answer', 'close', 'keep-open'],
      warden: ['take-over'],
    },
  },
  'finished after a helper’s answer': {
    check: having(asked, ['helper', answer(asked)], ['ben', { is: 'finish' }]),
    may: {
      ben: ['offer', 'give-back', 'share', 'pair', 'close'],
      helper: ['reopen'],
      warden: ['take-over', 'reopen'],
    },
  },
  closed: { check: having(withBen, ['ben', { is: 'close' }]), may: {} },
  'run out': { check: withBen, at: now + lifetime + 3600_000, may: {} },
  'outside a server': {
    check: taken(start(program, { ...opening, server: null }, now)),
    may: { ada: ['answer', 'close'] },
  },
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
  test('danger is said at once, though the check waits for somebody else', () => {
    const alarmed = having(toBen, ['ada', answer(fresh, option('yes'))])
    expect(alarmed.phase).toEqual({ is: 'done' })
    expect(custodyOf(alarmed).offer).toBeUndefined()
  })
  test('a verdict is never hidden behind an offer', () => {
    const done = having(withBen, ['ben', { is: 'finish' }], ['ben', offer({ to: 'anyone' })])
    expect(screenOf(program, done).kind).toBe('verdict')
  })
  test('a moderator who was not asked takes nobody’s own check', () => {
    const kept = having(fresh, ['ada', { is: 'ask', words: '', where: null }], ['ada', { is: 'unask' }])
    expect(does(kept, 'warden', { is: 'take-over', why: '' })).toMatchObject({ refusal: { code: 'not-asked' } })
  })
  test('a reason is one line, so that it passes for nothing of ours', () => {
    const lined = having(fresh, ['ada', { is: 'offer', to: { to: 'anyone' }, why: 'no time\n\nNothing found.' }])
    expect(custodyOf(lined).history[0]?.why).toBe('no time Nothing found.')
  })
  test('nobody hands a check to themselves', () => {
    expect(does(fresh, 'ada', offer({ to: 'person', person: 'ada' }))).toMatchObject({
      refusal: { code: 'to-oneself' },
    })
  })
  test('what one person has consented to leads nobody else under a wrap', () => {
    let check: Check = { ...fresh, consents: { touch: true } }
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
    const tooOften = { refusal: { code: 'handed-too-often', most: mostHandled } }
    expect(does(check, 'ada', offer({ to: 'anyone' }))).toMatchObject(tooOften)
    expect(does(check, 'ada', { is: 'ask', words: '', where: null })).toMatchObject(tooOften)
    const { history } = custodyOf(check)
    const full = (before: Check): Check => ({ ...before, custody: { ...custodyOf(before), history } })
    const asked = full(having(fresh, ['ada', { is: 'ask', words: '', where: null }]))
    expect(does(asked, 'warden', { is: 'claim' })).toMatchObject(tooOften)
    expect(does(asked, 'warden', { is: 'ask-closing' }, now + stillAfter + 1)).toMatchObject(tooOften)
    const offered = full(having(fresh, ['ada', offer({ to: 'person', person: 'ben' })]))
    const redirected = { is: 'redirect', to: { to: 'anyone' }, why: '' } as const
    expect(does(offered, 'warden', redirected)).toMatchObject(tooOften)
    // Taking it back, and an answer, never make it go round.
    expect(does(offered, 'ada', { is: 'withdraw' }).ok).toBe(true)
    expect(does(asked, 'warden', { is: 'send-back', why: '' }).ok).toBe(true)
    expect(does(asked, 'ada', { is: 'unask' }).ok).toBe(true)
  })
  test('a reason that is too long is cut at whole characters', () => {
    const long = having(fresh, ['ada', { is: 'offer', to: { to: 'anyone' }, why: '🔋'.repeat(400) }])
    expect([...(custodyOf(long).history[0]?.why ?? '')]).toHaveLength(longestReason)
  })
})

describe('a moderator who is asked', () => {
  const asked = having(atWrap, ['ben', { is: 'ask', words: 'is it torn?', where: 'c' }])
  test('answers that question and no other; the answer is marked as theirs, and the asking is over', () => {
    const helped = having(asked, ['warden', answer(asked)])
    expect(helped.holder).toBe('ben')
    expect(helped.saidBy).toEqual({ [question(asked)]: 'warden' })
    expect(custodyOf(helped).helpRequest).toBeUndefined()
    expect(custodyOf(helped).history.at(-1)).toMatchObject({ by: 'warden', did: 'helped' })
    expect(does(helped, 'warden', answer(helped))).toEqual({ ok: false, refusal: { code: 'not-yours' } })
  })
  test('says danger at a question that only shows beside the cell, and never that there is none', () => {
    const smoke = having(withBen, ['ben', { is: 'ask', words: 'is that smoke?', where: 'c' }])
    expect(does(smoke, 'warden', answer(smoke))).toEqual({ ok: false, refusal: { code: 'only-beside-it' } })
    expect(having(smoke, ['warden', answer(smoke, option('yes'))]).phase).toEqual({ is: 'done' })
    expect(having(smoke, ['warden', answer(smoke, cantTell)]).answers[question(smoke)]).toEqual(cantTell)
  })
  test('is asked no longer once the holder goes back to another question', () => {
    expect(custodyOf(having(asked, ['ben', { is: 'back' }])).helpRequest).toBeUndefined()
  })
  test('an answer of the holder’s own ends the asking, and takes the mark away', () => {
    const own = having(asked, ['ben', answer(asked)])
    expect(custodyOf(own).helpRequest).toBeUndefined()
    expect(own.saidBy).toBeUndefined()
    const again = having(asked, ['warden', answer(asked)], ['ben', { is: 'back' }])
    expect(having(again, ['ben', answer(again)]).saidBy).toBeUndefined()
  })
  test('an answer that alone rules the cell out is asked a second time, of the moderator too', () => {
    let check = withBen
    while (question(check) !== 'legs') check = having(check, ['ben', answer(check)])
    const stuck = having(check, ['ben', { is: 'ask', words: '', where: null }])
    const once = having(stuck, ['warden', answer(stuck, option('four'))])
    expect(once.phase).toMatchObject({ is: 'second-look' })
    expect(custodyOf(once).helpRequest).toBeDefined()
    const twice = having(once, ['warden', answer(once, option('four'))])
    expect(twice.answers['legs']).toEqual(option('four'))
    expect(custodyOf(twice).helpRequest).toBeUndefined()
  })
  test('a check that was paused meanwhile is answered all the same', () => {
    const paused = having(asked, ['ben', { is: 'pause' }])
    const helped = taken(does(paused, 'warden', { is: 'answer', question: question(asked), answer: harmless(asked) }))
    expect(helped.answers[question(asked)]).toEqual(harmless(asked))
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
