// Over 200 random walks of each depth no figure is typed twice: what was typed is never asked again, alone or as a part of another form.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { knownFigures } from '../../src/check/known/known-figures.ts'
import { type Answer, cantTell, option, reading } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import type { Question } from '../../src/engine/pack/pack.ts'
import type { Quantity } from '../../src/ground/quantities.ts'
import { tools } from '../../src/ground/tools.ts'
import { fieldsLeft } from '../../src/readings/form.ts'
import { shippedPrograms } from '../rules/shipped-programs.ts'
import { handsOn } from './hands.ts'

const programs = shippedPrograms()

/** An option or a value of the question's range; about every fifth cannot be told. Dangers are not walked into: they end the walk. */
function answerBy(program: Program, question: Question, pick: number): Answer {
  if (pick % 5 === 0) return cantTell
  const { answer } = question
  if (answer.kind === 'reading') return reading(answer.least + ((answer.most - answer.least) * (pick % 97)) / 97, 0.1)
  const options = program.hazards.has(question.id) ? answer.options.slice(0, 1) : answer.options
  return option(options[pick % options.length]?.id ?? '')
}

/** The figures a form asks for by name, but for the nominal voltage, which may be left empty: one that asks for a single value asks for its quantity. */
const figuresOf = (quantity: Quantity, program: Program, check: Check, question: string): string[] =>
  fieldsLeft(quantity, knownFigures(program, check, question))
    .filter(field => field.otherwise === undefined)
    .map(({ id }) => (id === 'value' ? quantity : id).replace('claimed-capacity', 'capacity'))

test.each(['quick', 'full'] as const)(
  'in a %s check no figure is typed twice',
  mode => {
    let typed = 0
    fc.assert(
      fc.property(
        fc.nat({ max: programs.length - 1 }),
        fc.subarray([...tools]),
        fc.array(fc.nat({ max: 10_000 }), { minLength: 60, maxLength: 60 }),
        (which, there, picks) => {
          const program = programs[which] as Program
          const { beginUnsaid, does, say } = handsOn(program)
          let check = does(does(beginUnsaid(), { is: 'equip', tools: there }), { is: 'begin', mode })
          const known = new Set<string>()
          for (let i = 0; i < 400 && check.phase.is !== 'done'; i++) {
            const { phase } = check
            if (phase.is === 'consent') {
              check = does(check, { is: 'consent', to: phase.to, given: phase.to === 'touch' })
              continue
            }
            if (phase.is !== 'asking' && phase.is !== 'second-look') throw new Error(phase.is)
            const question = program.questions.get(phase.question) as Question
            const again = phase.is === 'second-look'
            const answer = again ? phase.answer : answerBy(program, question, picks[i % picks.length] ?? 0)
            if (!again && question.answer.kind === 'reading') {
              const fields = figuresOf(question.answer.quantity, program, check, question.id)
              expect(
                fields.filter(field => known.has(field)),
                question.id,
              ).toEqual([])
              if (answer.kind === 'reading') for (const field of fields) known.add(field)
              typed += fields.length
            }
            check = say(check, answer)
          }
          expect(check.phase.is).toBe('done')
        },
      ),
      { numRuns: 200 },
    )
    expect(typed).toBeGreaterThan(50)
  },
  400_000,
)
