// What a person sees of a check in each of its phases, and what each event makes of the next: as data, word for word.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { lifetime } from '../../src/check/check.ts'
import { forgetPerson, forgotten, giveBackWithout } from '../../src/check/person-in-check.ts'
import { helpingScreen, screenOf } from '../../src/check/screen.ts'
import { mostCells, phaseOf, start, step } from '../../src/check/step.ts'
import { cantTell, option, reading } from '../../src/engine/answers.ts'
import { asked, handsOn, now, taken } from './hands.ts'
import { lanternProgram } from './lantern-pack.ts'

const program = lanternProgram('lamp')
const { begin, beginUnsaid, say, does } = handsOn(program)
const safe = { smoke: option('no'), wrap: option('no'), legs: option('three') }
const to = (id: string): Check => {
  let check = begin()
  while (asked(check) !== id) check = say(check, safe[asked(check) as 'smoke'] ?? cantTell)
  return check
}
const screen = (check: Check) => screenOf(program, check)
const offer = { to: { to: 'anyone' }, until: now + 9 } as const
const offered = (check: Check): Check => ({ ...check, custody: { starter: 'ada', shares: false, history: [], offer } })

describe('a screen', () => {
  test('of a question has the question, its stage, how many are answered and left, and nothing that does not hold', () => {
    const check = begin()
    const shown = screen(check)
    expect(shown).toEqual({
      ...{ kind: 'question', check, question: program.questions.get('smoke'), again: undefined, stage: 'safety' },
      ...{ answered: 0, left: shown.kind === 'question' ? shown.left : undefined },
    })
    expect(screen(say(check, option('no')))).toMatchObject({ answered: 1, stage: 'look' })
  })
  test('says what is asked again, and that it was answered before', () => {
    const four = say(to('legs'), option('four'))
    expect(screen(four)).toMatchObject({ kind: 'question', again: option('four') })
    expect(screen(four)).not.toHaveProperty('togetherWith')
    const changing = does(say(begin(), option('no')), { is: 'change', question: 'smoke' })
    expect(screen(changing)).toMatchObject({ changing: true, again: undefined })
    expect(screen(begin())).not.toHaveProperty('changing')
  })
  test('says what it comes to already, once nothing milder can come out', () => {
    const sure = say(say(to('legs'), option('four')), option('four'))
    expect(asked(sure)).not.toBe('done')
    expect(screen(sure)).toMatchObject({ decided: 'ruled-out' })
    expect(screen(begin())).not.toHaveProperty('decided')
    // Doubtful, and it will not get better.
    const light = { ...begin(), answers: { ...begin().answers, mass: reading(30, 0.1) } }
    expect(screen(light)).toMatchObject({ decided: 'doubtful' })
  })
  test('says that somebody is stuck at just the second answer in a row that could not be told', () => {
    const trail = ['smoke', 'legs', 'print', 'seam', 'price']
    const stuck = (...untold: boolean[]) => {
      const ids = trail.slice(0, untold.length)
      const answers = Object.fromEntries(ids.map((id, i) => [id, untold[i] ? cantTell : option('no')]))
      return (
        'stuck' in
        screen({
          ...begin(),
          trail: ids,
          answers: { ...answers, legs: untold[1] ? cantTell : option('three') },
          phase: { is: 'asking', question: 'mass' },
        })
      )
    }
    expect([stuck(true), stuck(true, true), stuck(false, true, true), stuck(true, true, true)]).toEqual([
      false,
      true,
      true,
      false,
    ])
    expect([stuck(true, false, true), stuck(true, true, false), stuck(false, false)]).toEqual([false, false, false])
  })
  test('of an offered check shows that it waits, but of one that is over what came of it', () => {
    expect(screen(offered(begin()))).toEqual({ kind: 'offered', check: offered(begin()), offer })
    expect(screen(offered({ ...begin(), phase: { is: 'done' } })).kind).toBe('verdict')
    expect(screen(offered({ ...begin(), phase: { is: 'closed' } })).kind).toBe('closed')
    expect(screen(offered({ ...begin(), phase: { is: 'paused' } })).kind).toBe('offered')
  })
  test('of every other phase is that phase', () => {
    for (const phase of [{ is: 'beginning' }, { is: 'paused' }, { is: 'closed' }] as const) {
      const check: Check = { ...begin(), phase }
      expect(screen(check)).toEqual({ kind: phase.is, check })
    }
    const check: Check = { ...begin(), phase: { is: 'consent', to: 'bench' } }
    expect(screen(check)).toEqual({ kind: 'consent', check, to: 'bench' })
  })
  test('of a verdict has the judgement, what explains it, and whether more could be asked', () => {
    const check: Check = { ...begin(), phase: { is: 'done' } }
    const shown = screen(check)
    if (shown.kind !== 'verdict') throw new Error(shown.kind)
    expect(shown.judgement.verdict).toBe('open')
    expect(shown.explanation.unchecked).not.toEqual([])
    expect(shown.more).toBe(true)
  })
  test('of a question that is no more is nothing to be shown', () => {
    expect(() => screen({ ...begin(), phase: { is: 'asking', question: 'wings' } })).toThrow(
      'the program has no question wings',
    )
  })
  test('for a helper is of the question they were asked, in whatever phase the check is, with what was said of it first', () => {
    const helpRequest = { question: 'legs', words: '', where: null }
    const custody = { starter: 'ada', shares: false, history: [], helpRequest }
    const four = { ...say(to('legs'), option('four')), custody }
    expect(helpingScreen(program, four)).toEqual({
      ...{ kind: 'question', check: four, question: program.questions.get('legs'), again: option('four') },
      ...{ helping: true, closed: [], stage: 'look', answered: four.trail.length, left: { all: 1 } },
    })
    expect(helpingScreen(program, { ...four, phase: { is: 'paused' } })).toMatchObject({ again: undefined })
    const other: Check = { ...four, phase: { is: 'second-look', question: 'mass', answer: reading(8) } }
    expect(helpingScreen(program, other)).toMatchObject({ again: undefined })
    const pair: Check = { ...four, custody: { ...custody, pair: true }, saidBy: { legs: 'helper' } }
    expect(helpingScreen(program, pair)).toMatchObject({ second: true, again: undefined })
    const figure: Check = { ...four, custody: { ...custody, helpRequest: { ...helpRequest, question: 'mass' } } }
    expect(helpingScreen(program, figure)).toMatchObject({ closed: [], stage: 'measure' })
  })
})

describe('a check', () => {
  const opening = { id: 'c1', holder: 'ada', server: 's', cells: 1, family: 'lamp' } as const
  test('begins with what is known of it and nothing more', () => {
    expect(taken(start(program, opening, now))).toEqual({
      ...{ ...opening, mode: 'quick', revision: 0, packs: program.packs, day: '2026-11-29', trail: [], consents: {} },
      ...{
        answers: { 'how-many': option('one') },
        phase: { is: 'beginning' },
        startedAt: now,
        expiresAt: now + lifetime,
      },
    })
    expect(taken(start(program, { ...opening, cells: 2 }, now)).answers).toEqual({ 'how-many': option('several') })
    expect(taken(start(program, { ...opening, mode: 'full' }, now))).toMatchObject({
      mode: 'full',
      phase: { is: 'asking' },
      revision: 0,
    })
    expect(taken(start(program, { ...opening, cells: mostCells }, now)).cells).toBe(mostCells)
    expect(start(program, { ...opening, cells: mostCells + 1 }, now)).toEqual({
      ...{ ok: false, refusal: { code: 'too-many-cells', cells: mostCells + 1, most: mostCells } },
    })
  })
  test('without a question of how many has no answer to it', () => {
    const asks = { ...program, questions: new Map([...program.questions].filter(([id]) => id !== 'how-many')) }
    expect(taken(start(asks, opening, now)).answers).toEqual({})
  })
  test('takes facts and tools before it begins, and stays at its beginning', () => {
    const known = does(beginUnsaid(), { is: 'know', answers: { print: option('yes') } })
    expect(known).toMatchObject({ phase: { is: 'beginning' }, trail: ['print'], revision: 1 })
    const equipped = does(known, { is: 'equip', tools: ['lens'] })
    expect(equipped).toMatchObject({ phase: { is: 'beginning' }, tools: ['lens'], revision: 2 })
    const begun = does(equipped, { is: 'begin', mode: 'full' })
    expect(begun).toMatchObject({ phase: { is: 'asking', question: 'smoke' }, mode: 'full', revision: 3 })
  })
  test('each event is taken in the phases that it is for, and said not to fit in the others', () => {
    const phases: Record<Check['phase']['is'], Check> = {
      beginning: beginUnsaid(),
      asking: say(begin(), option('no')),
      'second-look': say(to('legs'), option('four')),
      consent: { ...say(begin(), option('no')), phase: { is: 'consent', to: 'unwrap' } },
      paused: does(begin(), { is: 'pause' }),
      done: does(say(begin(), option('no')), { is: 'finish' }),
      closed: does(begin(), { is: 'close' }),
    }
    const events = {
      begin: { is: 'begin', mode: 'full' },
      equip: { is: 'equip', tools: [] },
      answer: { is: 'answer', question: 'legs', answer: option('three') },
      change: { is: 'change', question: 'smoke' },
      know: { is: 'know', answers: {} },
      back: { is: 'back' },
      pause: { is: 'pause' },
      resume: { is: 'resume' },
      consent: { is: 'consent', to: 'unwrap', given: true },
      finish: { is: 'finish' },
      'go-on': { is: 'go-on' },
      'leave-nothing': { is: 'leave-nothing' },
      close: { is: 'close' },
    } as const
    const goes = Object.fromEntries(
      Object.entries(phases).map(([name, check]) => [
        name,
        Object.values(events)
          .filter(event => step(program, check, event, now).ok)
          .map(event => event.is),
      ]),
    )
    expect(goes).toEqual({
      beginning: ['begin', 'equip', 'know', 'pause', 'close'],
      asking: ['answer', 'change', 'know', 'back', 'pause', 'finish', 'close'],
      'second-look': ['answer', 'change', 'know', 'back', 'pause', 'close'],
      consent: ['change', 'know', 'back', 'pause', 'consent', 'finish', 'close'],
      paused: ['know', 'resume', 'close'],
      done: ['change', 'know', 'back', 'go-on', 'leave-nothing', 'close'],
      closed: [],
    })
    expect(step(program, phases.paused, events.back, now)).toEqual({
      ...{ ok: false, refusal: { code: 'not-now', event: 'back', phase: 'paused' } },
    })
    expect(does(phases.done, { is: 'leave-nothing' })).toMatchObject({ leaves: 'declined', phase: { is: 'done' } })
    expect(does(phases.consent, { is: 'consent', to: 'unwrap', given: false }).consents).toEqual({
      touch: true,
      unwrap: false,
    })
    expect(step(program, phases.asking, { is: 'answer', question: 'mass', answer: cantTell }, now)).toEqual({
      ...{ ok: false, refusal: { code: 'another-question', question: 'legs' } },
    })
    expect(step(program, phases.asking, { is: 'change', question: 'mass' }, now)).toEqual({
      ...{ ok: false, refusal: { code: 'nothing-to-change', question: 'mass' } },
    })
  })
  test('says who answered in its holder’s place, until its holder does', () => {
    const by = (check: Check, person?: string) =>
      taken(
        step(
          program,
          check,
          { is: 'answer', question: 'smoke', answer: option('no'), ...(person && { by: person }) },
          now,
        ),
      )
    const said = by(begin(), 'helper')
    expect(said.saidBy).toEqual({ smoke: 'helper' })
    const again = by(does(said, { is: 'change', question: 'smoke' }))
    expect(again).not.toHaveProperty('saidBy')
    expect(
      by(does({ ...said, saidBy: { smoke: 'helper', legs: 'warden' } }, { is: 'change', question: 'smoke' })).saidBy,
    ).toEqual({ legs: 'warden' })
  })
  test('what was looked at twice is remembered, and what is changed then is not', () => {
    const sure = say(say(to('legs'), option('four')), option('four'))
    expect(sure.confirmed).toEqual(['legs'])
    const other = say(does(sure, { is: 'change', question: 'legs' }), option('three'))
    expect(other).not.toHaveProperty('confirmed')
    const waits = say(to('legs'), option('four'))
    expect(waits.pending).toEqual({ legs: option('four') })
    expect(say(waits, option('three'))).not.toHaveProperty('pending')
    expect(does(waits, { is: 'back' })).not.toHaveProperty('pending')
  })
  test('waits as its next step is', () => {
    const left = { all: 1 }
    expect(phaseOf({ is: 'ask', question: 'q', left })).toEqual({ is: 'asking', question: 'q' })
    expect(phaseOf({ is: 'confirm', question: 'q', answer: cantTell, left })).toEqual({
      is: 'second-look',
      question: 'q',
      answer: cantTell,
    })
    expect(phaseOf({ is: 'consent', to: 'bench', left })).toEqual({ is: 'consent', to: 'bench' })
    expect(phaseOf({ is: 'done', settled: true })).toEqual({ is: 'done' })
  })
})

describe('without a person', () => {
  const line = { by: 'ada', did: 'offered', at: now, to: { to: 'person', person: 'ben' }, why: 'w' } as const
  const held: Check = {
    ...begin(),
    ...{ holder: 'ben', saidBy: { legs: 'cleo' }, leaves: 'outcome', settled: true, consents: { unwrap: true } },
    custody: {
      ...{ starter: 'ada', from: 'dora', shares: true, pair: true, offer, history: [line, { ...line, by: 'ben' }] },
      ...{ closing: { by: 'eve', at: now }, helpRequest: { question: 'legs', words: 'x', where: 'c' } },
    },
  }
  test('it goes back to whoever began it, with nothing that the other did to it', () => {
    const back = giveBackWithout(held, 'ben')
    expect(back?.custody).toEqual({
      ...{ starter: 'ada', shares: false },
      history: [
        { ...line, to: { to: 'person', person: forgotten } },
        { by: forgotten, did: 'offered', at: now, to: { to: 'person', person: forgotten } },
      ],
    })
    expect(back).toMatchObject({ holder: 'ada', settled: true, answers: {}, trail: [], packs: [], consents: {} })
    expect(back).not.toHaveProperty('leaves')
    expect(back).not.toHaveProperty('saidBy')
  })
  test('it has their name nowhere, and everybody else’s where it was', () => {
    const custodyWithout = (person: string) => forgetPerson(held, person).custody
    expect(custodyWithout('stranger')).toEqual(held.custody)
    expect(custodyWithout('ada')).toMatchObject({ starter: 'ben' })
    expect(custodyWithout('ada')).not.toHaveProperty('from')
    expect(custodyWithout('dora')).not.toHaveProperty('from')
    expect(custodyWithout('dora')).toMatchObject({ starter: 'ada', offer, closing: { by: 'eve' } })
    expect(custodyWithout('eve')).not.toHaveProperty('closing')
    expect(forgetPerson(held, 'cleo').saidBy).toEqual({ legs: forgotten })
    const { custody: _, saidBy: _said, ...plain } = held
    expect(forgetPerson(plain, 'ben')).toEqual(plain)
  })
})
