// Facts from elsewhere: taken in where they fit, never over an answer, and never ruling a cell out unseen.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { followed } from '../../src/check/known/known-figures.ts'
import { step } from '../../src/check/step.ts'
import { type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'
import { handsOn, now } from './hands.ts'

const program = shippedProgram()

const { begin: beginWith, does } = handsOn(program)
const begin = (known: Answers) => beginWith({ known })
const modest: Answers = { format: option('18650'), 'claimed-capacity': reading(3000) }

describe('a check that starts with facts', () => {
  test('asks none of them again, and goes on with what may mean danger', () => {
    const check = begin(modest)
    expect(check.answers).toMatchObject(modest)
    expect(check.trail).toEqual(['format', 'claimed-capacity'])
    expect(check.phase).toMatchObject({ is: 'asking' })
    expect(check.phase).not.toMatchObject({ question: 'format' })
    expect(check.revision).toBe(0)
  })

  test('asks a claim that alone would rule the cell out a second time, wherever it stands among them', () => {
    for (const facts of [
      { format: option('18650'), 'claimed-capacity': reading(9900) },
      { 'claimed-capacity': reading(9900), format: option('18650') },
    ]) {
      let check = begin(facts)
      // Danger is asked about first, whatever is known.
      const asked: string[] = []
      while (check.phase.is === 'asking') {
        const { question } = check.phase
        asked.push(question)
        const [harmless] = program.states.get(question)?.[0]?.answers ?? []
        check = does(check, { is: 'answer', question, answer: harmless ?? cantTell })
      }
      expect(asked[0]).toBe('hot-now')
      expect(asked.every(id => program.hazards.has(id))).toBe(true)
      expect(check.phase).toMatchObject({ is: 'second-look' })
      expect(judge(program, check.answers).verdict).not.toBe('ruled-out')
      let sure = check
      while (sure.phase.is === 'second-look') {
        expect(judge(program, sure.answers).verdict).not.toBe('ruled-out')
        const { question, answer } = sure.phase
        sure = does(sure, { is: 'answer', question, answer })
      }
      expect(judge(program, sure.answers).verdict).toBe('ruled-out')
    }
  })

  test('leaves out what the packs do not ask, and what does not fit', () => {
    const check = begin({
      colour: option('purple'),
      format: option('9 volt'),
      'claimed-capacity': reading(1e9),
      'claimed-current': option('much'),
    })
    expect(check.trail).toEqual([])
  })

  test('going back asks the last of them', () => {
    const check = does(begin(modest), { is: 'back' })
    expect(check.phase).toEqual({ is: 'asking', question: 'claimed-capacity' })
  })
})

describe('facts that arrive while a check is open', () => {
  test('fill in what is open and change no answer', () => {
    const check = begin({ format: option('21700') })
    const known = does(check, { is: 'know', answers: modest })
    expect(known.answers).toMatchObject({ format: option('21700'), 'claimed-capacity': reading(3000) })
    expect(known.trail).toEqual(['format', 'claimed-capacity'])
    expect(known.revision).toBe(check.revision + 1)
  })

  test('are refused by a closed check', () => {
    const closed = does(begin({}), { is: 'close' })
    expect(step(program, closed, { is: 'know', answers: modest }, now)).toMatchObject({
      ok: false,
      refusal: { code: 'closed' },
    })
  })
})

test('whatever is known beforehand, nothing is ruled out before somebody has looked twice', () => {
  const facts = fc.array(fc.tuple(fc.constantFrom(...program.questions.keys()), fc.nat({ max: 50 })), { maxLength: 12 })
  fc.assert(
    fc.property(facts, picks => {
      const known = Object.fromEntries(
        picks.flatMap(([id, pick]) => {
          const states = program.states.get(id) ?? []
          const answer = states[pick % Math.max(1, states.length)]?.answers[0]
          return answer ? [[id, answer]] : []
        }),
      )
      const check = begin(known)
      expect(judge(program, check.answers).verdict).not.toBe('ruled-out')
      expect(new Set(check.trail).size).toBe(check.trail.length)
      for (const id of check.trail)
        if (!known[id]) expect(followed(program, check.answers, id)).toBe(true)
        else expect(check.answers[id]).toEqual(known[id])
    }),
    { numRuns: 300 },
  )
})
