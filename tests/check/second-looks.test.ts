// Second looks with the shipped packs: every answer that accuses is asked again, and nothing accuses before it was.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { accusing } from '../../src/check/answer-fits.ts'
import type { Check } from '../../src/check/check.ts'
import { type Answer, type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'
import { asked, handsOn } from './hands.ts'

const program = shippedProgram()

const { begin: beginWith, say, does } = handsOn(program)
const begin = (known: Answers = {}) => beginWith({ known })

const harmless: Answers = {
  'hot-now': option('nothing'),
  swollen: option('straight'),
  leaking: option('clean'),
  'wrap-torn': option('whole'),
  ring: option('whole'),
}

/** Answers by name until one of `until` is asked or asked again. */
function walkTo(check: Check, until: (check: Check) => boolean, answers: Answers): Check {
  let at = check
  for (let i = 0; i < 150 && !until(at) && at.phase.is === 'asking'; i++) at = say(at, answers[asked(at)] ?? cantTell)
  return at
}
const second = (check: Check): boolean => check.phase.is === 'second-look'
/** A check that began with these facts, once danger was asked about: what accuses is then asked again. */
const knowing = (facts: Answers): Check => walkTo(begin(facts), second, harmless)

test('a capacity mistyped by ten is asked again itself, though the size was answered after it', () => {
  for (const known of [
    { 'claimed-capacity': reading(26_000), format: option('18650') },
    { format: option('18650'), 'claimed-capacity': reading(26_000) },
  ]) {
    const check = knowing(known)
    expect(check.phase).toEqual({ is: 'second-look', question: 'claimed-capacity', answer: reading(26_000) })
    const corrected = say(check, reading(2600))
    expect(judge(program, corrected.answers).verdict).toBe('open')
    expect(second(corrected)).toBe(false)
  }
})

test('what is confirmed counts once every answer that accuses was looked at twice', () => {
  const capacity = knowing({ format: option('18650'), 'claimed-capacity': reading(9900) })
  const size = say(capacity, reading(9900))
  expect(size.phase).toEqual({ is: 'second-look', question: 'format', answer: option('18650') })
  expect(judge(program, size.answers).verdict).toBe('open')
  const both = say(size, option('18650'))
  expect(judge(program, both.answers).verdict).toBe('ruled-out')
  expect([...(both.confirmed ?? [])].sort()).toEqual(['claimed-capacity', 'format'])
})

test('a size that was the slip clears the cell', () => {
  const size = say(knowing({ format: option('18650'), 'claimed-capacity': reading(6500) }), reading(6500))
  expect(judge(program, say(size, option('21700')).answers).verdict).toBe('open')
})

test('a look that makes a cell doubtful alone is asked again, and counts only when seen twice', () => {
  const at = walkTo(begin(), check => asked(check) === 'weld-marks', harmless)
  const again = say(at, option('spots'))
  expect(again.phase).toEqual({ is: 'second-look', question: 'weld-marks', answer: option('spots') })
  expect(judge(program, again.answers).verdict).toBe('open')
  expect(judge(program, say(again, option('none')).answers).verdict).toBe('open')
  expect(judge(program, say(again, option('spots')).answers).verdict).toBe('doubtful')
})

test('signs that only add up are not asked again, nor is a danger', () => {
  const weak = begin({ 'label-energy': option('differs'), 'measured-capacity': option('half-to-80') })
  expect(judge(program, weak.answers).verdict).toBe('doubtful')
  expect(second(weak)).toBe(false)
  expect(say(begin(), option('happening')).phase).toEqual({ is: 'done' })
})

test('who takes the second look back is asked anew, and what was sure before is not asked a third time', () => {
  const size = say(knowing({ format: option('18650'), 'claimed-capacity': reading(9900) }), reading(9900))
  const back = does(size, { is: 'back' })
  expect(back.phase).toEqual({ is: 'asking', question: 'format' })
  const once = say(back, option('18650'))
  expect(once.phase).toMatchObject({ is: 'second-look', question: 'format' })
  expect(say(once, option('18650')).phase.is).not.toBe('second-look')
})

test('on any walk, nothing accuses that was not looked at twice, and the trail holds what is answered', () => {
  const questions = [...program.questions.keys()]
  const walk = fc.array(fc.tuple(fc.nat(), fc.boolean()), { minLength: 5, maxLength: 60 })
  const facts = fc.array(fc.tuple(fc.constantFrom(...questions), fc.nat()), { maxLength: 5 })
  fc.assert(
    fc.property(facts, walk, (known, picks) => {
      const stateOf = (id: string, pick: number): Answer => {
        const states = program.states.get(id) ?? []
        return states[pick % Math.max(1, states.length)]?.answers[0] ?? cantTell
      }
      let check = begin(Object.fromEntries(known.map(([id, pick]) => [id, stateOf(id, pick)])))
      for (const [pick, twice] of picks) {
        const confirmed = check.confirmed ?? []
        for (const id of accusing(program, check.answers)) expect(confirmed).toContain(id)
        expect([...check.trail].sort()).toEqual(
          Object.keys(check.answers)
            .filter(id => id !== 'how-many')
            .sort(),
        )
        if (check.phase.is !== 'asking' && check.phase.is !== 'second-look') break
        const same = check.phase.is === 'second-look' && twice
        check = say(check, same && check.phase.is === 'second-look' ? check.phase.answer : stateOf(asked(check), pick))
      }
    }),
    { numRuns: 150 },
  )
}, 120_000)
