// Random people pressing random things, in any order: what must hold of every check on the shipped packs.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import type { CheckEvent } from '../../src/check/events.ts'
import { screenOf } from '../../src/check/screen.ts'
import { step } from '../../src/check/step.ts'
import type { Answer } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { questionsOf, weigh } from '../../src/engine/conditions.ts'
import { judge } from '../../src/engine/judge.ts'
import { shippedPrograms } from '../rules/shipped-programs.ts'
import { handsOn, now } from './hands.ts'
import { lanternProgram } from './lantern-pack.ts'
import { withoutWork } from './without-work.ts'

const programs = [lanternProgram('lamp'), lanternProgram(), ...shippedPrograms()]

/** An event a person could cause now, picked by `pick`; mostly an answer. */
function eventFor(program: Program, check: Check, pick: number): CheckEvent {
  const others: CheckEvent[] = [
    { is: 'back' },
    { is: 'pause' },
    { is: 'resume' },
    { is: 'finish' },
    { is: 'go-on' },
    { is: 'consent', to: 'touch', given: pick % 3 > 0 },
    { is: 'consent', to: 'unwrap', given: pick % 3 > 0 },
    { is: 'consent', to: 'bench', given: pick % 3 > 0 },
  ]
  if (check.phase.is === 'consent') return { is: 'consent', to: check.phase.to, given: pick % 4 > 0 }
  if (check.phase.is === 'paused') return { is: 'resume' }
  if ('question' in check.phase && pick % 10 > 0) {
    const states = program.states.get(check.phase.question) ?? []
    // Mostly the first answer, which is mostly harmless, so that walks get far.
    const state = states[pick % 5 === 1 ? pick % states.length : 0]
    return {
      is: 'answer',
      question: check.phase.question,
      answer: (check.phase.is === 'second-look' ? check.phase.answer : state?.answers[0]) as Answer,
    }
  }
  return others[pick % others.length] as CheckEvent
}

test('invariants of every walk', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...programs),
      fc.boolean(),
      fc.array(fc.nat({ max: 10_000 }), { maxLength: 90 }),
      (program, quick, picks) => {
        let check = handsOn(program).beginUnasked({ mode: quick ? 'quick' : 'full' })
        for (const pick of picks) {
          const before = check
          const stepped = step(program, check, eventFor(program, check, pick), now)
          if (!stepped.ok) continue
          check = stepped.check
          expect(check.revision).toBe(before.revision + 1)
          expect(withoutWork(stepped.screen)).toEqual(withoutWork(screenOf(program, check)))
          // The trail is exactly what the person answered, and nothing is asked twice without going back.
          for (const id of check.trail) expect(check.answers[id]).toBeDefined()
          if (check.phase.is === 'asking') expect(check.trail).not.toContain(check.phase.question)
          if ('question' in check.phase) {
            const question = program.questions.get(check.phase.question)
            // Hands are asked for only of somebody who has said that the cell may be touched.
            if (question?.care === 'handle' || question?.care === 'meter') expect(check.consents.touch).toBe(true)
            if (question?.care === 'unwrap') {
              expect(check.consents.unwrap).toBe(true)
              for (const id of program.hazards.keys())
                if (['look', 'handle'].includes(program.questions.get(id)?.care ?? ''))
                  expect(check.answers[id]?.kind).not.toBe('cant-tell')
            }
            if (question?.care === 'bench') {
              expect(check.consents.bench).toBe(true)
              const hazards = program.rules.filter(
                rule =>
                  rule.kind === 'hazard' &&
                  questionsOf(rule.when).every(id => program.questions.get(id)?.care !== 'bench'),
              )
              for (const rule of hazards) expect(weigh(rule.when, check.answers)).toBe('false')
            }
          }
          if (judge(program, check.answers).verdict === 'danger')
            expect(['done', 'paused', 'closed']).toContain(check.phase.is)
          if (stepped.screen.kind === 'verdict') {
            const { judgement, explanation } = stepped.screen
            if (judgement.verdict === 'nothing-found') {
              expect(program.family).toBeDefined()
              for (const rule of program.rules)
                if (rule.kind === 'hazard') expect(weigh(rule.when, check.answers)).toBe('false')
            }
            expect(judgement.findings.filter(finding => finding.carries).length > 0).toBe(
              ['danger', 'ruled-out', 'doubtful'].includes(judgement.verdict),
            )
            const only = Object.fromEntries(explanation.enough.map(id => [id, check.answers[id] as Answer]))
            if (judgement.verdict !== 'open') expect(judge(program, only).verdict).toBe(judgement.verdict)
          }
        }
      },
    ),
    { numRuns: 400 },
  )
}, 240_000)
