// Reach: what a practitioner calls false at a glance is called so, with all that is known, and most of it in a quick check without tools.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { judge } from '../../src/engine/judge.ts'
import { failing as failed, type Verdict } from '../../src/ground/verdicts.ts'
import { handsOn } from '../check/hands.ts'
import { falseCells } from './false-cells.ts'
import { shippedProgram } from './shipped-programs.ts'
import { sound } from './sound-looks.ts'

const program = shippedProgram()
const { begin, say } = handsOn(program)
const failing: readonly Verdict[] = failed

describe('with all that is known of it', () => {
  test.each(falseCells)('$name is danger, ruled out or doubtful', ({ tells }) => {
    expect(failing).toContain(judge(program, { ...sound, ...tells }).verdict)
  })
})

const ordinary: Answers = {
  format: option('18650'),
  chemistry: option('nickel-or-cobalt'),
  'claimed-capacity': reading(3000),
  'claimed-current': reading(15),
  'current-word': option('continuous'),
}

type Walked = { readonly verdict: Verdict; readonly asked: readonly string[]; readonly caughtAfter: number | undefined }

/** A quick check of somebody without tools who sees what is to be seen; second looks are not counted as questions. */
function quick(tells: Answers, tools: Check['tools'] = []): Walked {
  const answers = { ...sound, ...tells }
  const several = answers['how-many']?.kind === 'option' && answers['how-many'].option === 'several'
  const cells = several ? 4 : 1
  let check = begin({ mode: 'quick', cells, tools })
  const asked: string[] = []
  let caughtAfter: number | undefined
  while (check.phase.is === 'asking' || check.phase.is === 'second-look') {
    const { is, question } = check.phase
    if (is === 'asking') asked.push(question)
    check = say(check, answers[question] ?? cantTell)
    if (caughtAfter === undefined && failing.includes(judge(program, check.answers).verdict)) caughtAfter = asked.length
  }
  return { verdict: judge(program, check.answers).verdict, asked, caughtAfter }
}

test('a quick check without tools catches more than half within ten questions, of those that show without one', () => {
  const shown = falseCells.filter(({ measured }) => !measured)
  const caught = shown.filter(({ tells }) => (quick(tells).caughtAfter ?? Number.POSITIVE_INFINITY) <= 10)
  expect(shown.length).toBeGreaterThanOrEqual(50)
  expect(caught.length / shown.length).toBeGreaterThanOrEqual(0.55)
})

test('a quick check stays short, and asks for nothing that needs a tool that is not there', () => {
  const { asked } = quick(ordinary)
  expect(asked.length).toBeLessThanOrEqual(16)
  for (const id of asked) expect(program.questions.get(id)?.needs ?? []).toEqual([])
})

test('where a scale is there the mass is asked for in a quick check too, and tells', () => {
  expect(quick(ordinary, ['scale']).asked).toContain('mass')
  expect(quick(ordinary, ['ruler']).asked).not.toContain('mass')
  const light = falseCells.filter(({ tells }) => 'mass' in tells)
  for (const { name, tells } of light) expect(failing, name).toContain(quick(tells, ['scale']).verdict)
})

test('the kind of cell is asked for before the voltage', () => {
  let check = begin({ tools: ['meter'] })
  const asked: string[] = []
  for (let i = 0; i < 120 && check.phase.is === 'asking'; i++) {
    asked.push(check.phase.question)
    check = say(check, sound[check.phase.question] ?? cantTell)
  }
  expect(asked).toContain('voltage')
  expect(asked.indexOf('chemistry')).toBeGreaterThanOrEqual(0)
  expect(asked.indexOf('chemistry')).toBeLessThan(asked.indexOf('voltage'))
})
