// The life of a check, event by event: what is asked when, what is asked twice, and what is refused.
import { describe, expect, test } from 'vitest'
import { type Check, lifetime } from '../../src/check/check.ts'
import type { CheckEvent } from '../../src/check/events.ts'
import { type Stepping, start, step } from '../../src/check/step.ts'
import { type Answer, cantTell, option, reading } from '../../src/engine/answers.ts'
import { asked, handsOn, now, taken } from './hands.ts'
import { lanternFamilies, lanternOf, lanternProgram } from './lantern-pack.ts'

const program = lanternProgram('lamp')

const { begin, beginUnsaid, say, does } = handsOn(program)
/** Answers every question by name until the check is over or a consent is asked for; every other question with "can't tell". */
function play(check: Check, answers: Record<string, Answer>, asks: string[] = []): { check: Check; asks: string[] } {
  if (check.phase.is !== 'asking' && check.phase.is !== 'second-look') return { check, asks }
  const question = check.phase.question
  return play(say(check, answers[question] ?? cantTell), answers, [...asks, question])
}
const safe = { smoke: option('no'), wrap: option('no') }

describe('what is asked when', () => {
  test('what may mean "get away" comes first, however little it is likely to tell', () => {
    expect(asked(begin())).toBe('smoke')
  })
  test('nothing is held before the looks at hazards, and nothing measured before the wrap is known', () => {
    const { asks } = play(begin(), { smoke: option('no') })
    expect(asks.indexOf('smoke')).toBeLessThan(asks.indexOf('wrap'))
    expect(asks.indexOf('wrap')).toBeLessThan(asks.indexOf('mass'))
  })
  test('whoever could not tell about danger is asked nothing that needs hands', () => {
    const { asks } = play(begin(), {})
    expect(asks).toContain('smoke')
    expect(asks.filter(id => program.questions.get(id)?.care !== 'look')).toEqual([])
  })
  test('what needs a tool that is not there is not asked', () => {
    const equipped = does(beginUnsaid(), { is: 'equip', tools: ['lens'] })
    const begun = does(equipped, { is: 'begin', mode: 'full' })
    expect(play(begun, safe).asks).not.toContain('mass')
    expect(play(begin(), safe).asks).toContain('mass')
  })
  test('a hazard ends the check at once', () => {
    const { check, asks } = play(begin(), { smoke: option('yes') })
    expect(check.phase).toEqual({ is: 'done' })
    expect(asks).toEqual(['smoke'])
  })
  test('lifting a wrap is asked for after everything easier, and only with consent', () => {
    const { check, asks } = play(begin(), safe)
    expect(check.phase).toEqual({ is: 'consent', to: 'unwrap' })
    expect(asks).toEqual(expect.arrayContaining(['legs', 'print', 'mass']))
    const agreed = does(check, { is: 'consent', to: 'unwrap', given: true })
    expect(asked(agreed)).toBe('dimples')
    const declined = does(check, { is: 'consent', to: 'unwrap', given: false })
    expect(declined.phase).toEqual({ is: 'consent', to: 'bench' })
  })
  test('neither lifting nor a load is offered while a hazard could not be told', () => {
    expect(play(begin(), { smoke: option('no') }).check.phase).toEqual({ is: 'done' })
  })
  test('a load is never offered for a cell that has a sign against it', () => {
    const { check } = play(begin(), { ...safe, print: option('yes') })
    const declined = does(check, { is: 'consent', to: 'unwrap', given: false })
    expect(declined.phase).toEqual({ is: 'done' })
  })
  test('lifting is not offered for a cell that is already doubtful', () => {
    expect(play(begin(), { ...safe, mass: reading(30, 0.1) }).check.phase).toEqual({ is: 'done' })
  })
  test('what decides whether other answers count is asked before them, and after danger', () => {
    const [lamp] = lanternFamilies
    const first = (questions: readonly string[]) =>
      handsOn(lanternProgram('lamp', lanternOf({ families: [{ ...lamp, first: questions }] as never })))
    for (const wanted of ['seam', 'price', 'print']) {
      const { begin: start, say: tell } = first([wanted])
      expect(asked(start())).toBe('smoke')
      expect(asked(tell(start(), option('no')))).toBe(wanted)
    }
  })
  test('a quick check asks only the quick questions, and can go on in full', () => {
    const { check, asks } = play(begin({ mode: 'quick' }), safe)
    expect(asks.sort()).toEqual(['legs', 'smoke', 'wrap'])
    expect(check.phase).toEqual({ is: 'done' })
    const on = does(check, { is: 'go-on' })
    expect(['print', 'mass']).toContain(asked(on))
  })
  test('what only concerns cells bought together is asked only then', () => {
    expect(play(begin(), safe).asks).not.toContain('serials')
    expect(play(begin({ cells: 5 }), safe).asks).toContain('serials')
  })
  test('the check stops when no answer can change the verdict', () => {
    const unknown = lanternProgram()
    const outlook = unknown.outlook(handsOn(unknown).begin().answers)
    expect(outlook.reachable).toContain('open')
    const { check: over } = play(begin(), {
      ...safe,
      legs: option('three'),
      mass: reading(45, 0.1),
      print: option('no'),
    })
    expect(over.phase).toEqual({ is: 'consent', to: 'unwrap' })
  })
})

describe('a second look', () => {
  const atLegs = () => {
    let check = begin()
    while (asked(check) !== 'legs') check = say(check, safe[asked(check) as 'smoke'] ?? cantTell)
    return check
  }
  test('is asked for before an answer rules the cell out, and the same answer then counts', () => {
    const second = say(atLegs(), option('four'))
    expect(second.phase).toEqual({ is: 'second-look', question: 'legs', answer: option('four') })
    expect(second.answers['legs']).toBeUndefined()
    const sure = say(second, option('four'))
    expect(sure.answers['legs']).toEqual(option('four'))
  })
  test('with another answer, the other one counts', () => {
    const three = say(say(atLegs(), option('four')), option('three'))
    expect(three.answers['legs']).toEqual(option('three'))
  })
  test('with "can\'t tell", nothing counts against the cell', () => {
    const unsure = say(say(atLegs(), option('four')), cantTell)
    expect(unsure.answers['legs']).toEqual(cantTell)
    expect(unsure.phase.is).not.toBe('done')
  })
  test('is confirmed by measuring again, though the figure is another', () => {
    let check = begin()
    while (asked(check) !== 'mass') check = say(check, safe[asked(check) as 'smoke'] ?? cantTell)
    const first = say(check, reading(8, 0.1))
    expect(first.phase.is).toBe('second-look')
    const other = say(first, reading(8.3, 0.1))
    expect(other.answers['mass']).toEqual(reading(8.3, 0.1))
    const normal = say(first, reading(45, 0.1))
    expect(normal.phase.is).not.toBe('second-look')
  })
  test('can be left by going back to the question', () => {
    const back = does(say(atLegs(), option('four')), { is: 'back' })
    expect(back.phase).toEqual({ is: 'asking', question: 'legs' })
  })
})

describe('back, pause, resume, finish, close', () => {
  test('back takes the last answer out and asks it again', () => {
    const first = begin()
    const second = say(first, option('no'))
    const back = does(second, { is: 'back' })
    expect(back.phase).toEqual({ is: 'asking', question: 'smoke' })
    expect(back.answers['smoke']).toBeUndefined()
  })
  test('what is being changed stays as it was answered, if one goes back from it', () => {
    const check = say(say(begin(), option('no')), option('three'))
    const [changed] = check.trail
    const changing = does(check, { is: 'change', question: changed as string })
    expect(changing.phase).toEqual({ is: 'asking', question: changed, changing: true })
    const back = does(changing, { is: 'back' })
    expect(back.answers).toEqual(check.answers)
    expect(back.phase).toEqual(check.phase)
  })
  test('what was declined after an answer is offered again once one goes back before it; what was agreed to stays', () => {
    const at = play(begin(), safe).check
    const declined = does(at, { is: 'consent', to: 'unwrap', given: false })
    expect(declined.consents.unwrap).toBe(false)
    expect(does(declined, { is: 'back' }).consents).toEqual({ touch: true })
    const agreed = does(at, { is: 'consent', to: 'unwrap', given: true })
    expect(does(agreed, { is: 'back' }).consents).toEqual({ touch: true, unwrap: true })
  })
  test('a slip that ended the check can be corrected', () => {
    const over = say(begin(), option('yes'))
    expect(over.phase.is).toBe('done')
    expect(asked(does(over, { is: 'back' }))).toBe('smoke')
  })
  test('pause keeps everything, resume asks the same question', () => {
    const check = say(begin(), option('no'))
    const paused = does(check, { is: 'pause' })
    const resumed = does(paused, { is: 'resume' })
    expect(resumed.phase).toEqual(check.phase)
    expect(resumed.answers).toEqual(check.answers)
  })
  test('finish shows what the answers so far amount to', () => {
    expect(does(begin(), { is: 'finish' }).phase).toEqual({ is: 'done' })
  })
  test('each change moves the revision by one and puts the expiry off', () => {
    const hour = 3600_000
    const later = taken(step(program, begin(), { is: 'pause' }, now + hour + 1))
    expect(later.revision).toBe(1)
    expect(later.expiresAt).toBeGreaterThanOrEqual(now + hour + 1 + lifetime)
    expect(later.expiresAt).toBe(begin().expiresAt + 2 * hour)
  })
})

describe('refused, and nothing changed', () => {
  const phases: Record<string, Check> = {
    asking: begin(),
    consent: play(begin(), safe).check,
    paused: does(begin(), { is: 'pause' }),
    done: say(begin(), option('yes')),
    closed: does(begin(), { is: 'close' }),
  }
  const events: Record<string, CheckEvent> = {
    answer: { is: 'answer', question: 'smoke', answer: option('no') },
    consent: { is: 'consent', to: 'unwrap', given: true },
    back: { is: 'back' },
    pause: { is: 'pause' },
    resume: { is: 'resume' },
    finish: { is: 'finish' },
    'go-on': { is: 'go-on' },
    close: { is: 'close' },
  }
  const legal: Record<string, readonly string[]> = {
    asking: ['answer', 'pause', 'finish', 'close'],
    consent: ['consent', 'back', 'pause', 'finish', 'close'],
    paused: ['resume', 'close'],
    done: ['back', 'go-on', 'close'],
    closed: [],
  }
  const pairs = Object.keys(phases).flatMap(phase => Object.keys(events).map(event => [phase, event] as const))
  test.each(pairs)('while %s: %s', (phase, event) => {
    const check = phases[phase] as Check
    const before = structuredClone(check)
    expect(step(program, check, events[event] as CheckEvent, now).ok).toBe(legal[phase]?.includes(event))
    expect(check).toEqual(before)
  })

  const refusalOf = (stepping: Stepping) => (stepping.ok ? undefined : stepping.refusal.code)
  const answering = (answer: Answer, question = 'smoke') =>
    refusalOf(step(program, begin(), { is: 'answer', question, answer }, now))
  test('whatever is done to a closed check, it is said to be closed', () => {
    const closed = does(begin(), { is: 'close' })
    for (const event of Object.values(events)) expect(refusalOf(step(program, closed, event, now))).toBe('closed')
    expect(refusalOf(step(program, closed, { is: 'close' }, now + lifetime))).toBe('closed')
  })
  test('what does not fit the moment is said with it', () => {
    const paused = does(begin(), { is: 'pause' })
    const tried = step(program, paused, { is: 'answer', question: 'smoke', answer: option('no') }, now)
    expect(tried).toEqual({ ok: false, refusal: { code: 'not-now', event: 'answer', phase: 'paused' } })
  })
  test('an option that the question does not have', () => expect(answering(option('maybe'))).toBe('unknown-option'))
  test('a reading where an option is wanted', () => expect(answering(reading(3))).toBe('unknown-option'))
  test('consent to another step than the one that is offered', () => {
    const at = play(begin(), safe).check
    expect(refusalOf(step(program, at, { is: 'consent', to: 'bench', given: true }, now))).toBe('another-consent')
    expect(refusalOf(step(program, begin(), { is: 'consent', to: 'unwrap', given: true }, now))).toBeDefined()
  })
  test('a change of what was not answered, or is not asked', () => {
    const change = (question: string) => refusalOf(step(program, begin(), { is: 'change', question }, now))
    expect(change('legs')).toBe('nothing-to-change')
    expect(change('colour')).toBe('nothing-to-change')
  })
  test('an answer to another question', () => expect(answering(option('no'), 'wrap')).toBe('another-question'))
  test('anything after the expiry', () => {
    expect(refusalOf(step(program, begin(), { is: 'pause' }, now + lifetime))).toBe('expired')
  })
  test('going back before anything was answered', () => {
    expect(refusalOf(step(program, begin(), { is: 'back' }, now))).toBe('nothing-to-go-back-to')
  })
  test.each([
    [Number.NaN, 'not-a-number'],
    [Number.POSITIVE_INFINITY, 'not-a-number'],
    [4, 'reading-out-of-range'],
    [201, 'reading-out-of-range'],
  ])('a mass of %d g', (value, code) => {
    let check = begin()
    while (asked(check) !== 'mass') check = say(check, safe[asked(check) as 'smoke'] ?? cantTell)
    expect(refusalOf(step(program, check, { is: 'answer', question: 'mass', answer: reading(value) }, now))).toBe(code)
  })
  test.each([0, -1, 1.5, 10_001, Number.NaN])('a check of %d cells', cells => {
    expect(refusalOf(start(program, { id: 'c1', holder: 'ada', server: null, cells, family: 'lamp' }, now))).toBe(
      'too-many-cells',
    )
  })
})
