// Derived packs against those written by hand: the same verdicts on every case and on answers drawn at random.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { openCoverage, readAnswer, runCase, uncovered } from '../../src/engine/cases.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { judge } from '../../src/engine/judge.ts'
import type { RawCase } from '../../src/engine/pack/schema.ts'
import { derive } from '../../src/families/derive/derive.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { anyCell, compileFamily } from './base.ts'
import { inventedFamilies, unnamedFamilies } from './known-families.ts'

const unnamed = await loadPacks(new URL('../packs/unnamed-maker', import.meta.url).pathname, { base: [anyCell] })
const shipped = await loadPacks(shippedRules)
const invented = shipped.packs.filter(one => one.pack.id === 'paper-harbour')
const day = anyCell.written

function derived(facts: Facts): Program {
  const result = derive(facts, anyCell)
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  const compiling = compileFamily(result.pack)
  if (!compiling.ok) throw new Error(JSON.stringify(compiling.problems))
  return compiling.program
}

const families = [
  ...Object.entries(unnamedFamilies).map(([id, facts]) => ({ id, facts, written: unnamed.packs })),
  ...Object.entries(inventedFamilies).map(([id, facts]) => ({ id, facts, written: invented })),
]

describe.each(families)('$id from facts', ({ id, facts, written }) => {
  const [pack] = written
  if (!pack) throw new Error('the hand-written pack is not there')
  const byHand = compile([anyCell, pack.pack], day, id)
  if (!byHand.ok) throw new Error(JSON.stringify(byHand.problems))
  const program = derived(facts)
  const mine = pack.cases.filter(one => one.case.family === id)

  test('gives the verdict of every case that was written for it', () => {
    const differing = mine.flatMap(({ case: one }) => {
      // Openly rewrapped cells are excepted, so it has to be said of a case whose lettering is on a wrap that it was not one.
      const lettering = one.answers['lettering-place']
      const said =
        lettering === 'wrap' || lettering === 'clear-wrap' ? { 'sold-as': 'new-bare', ...one.answers } : one.answers
      const read = readAll(byHand.program, said)
      const [hand, derived] = [byHand.program, program].map(each => judge(each, read).verdict)
      return hand === derived ? [] : [{ case: one.case, hand, derived }]
    })
    expect(differing).toEqual([])
    expect(mine.length).toBeGreaterThan(2)
  })

  test('judges whatever is answered like the hand-written one, open rewraps apart', () => {
    fc.assert(
      fc.property(answersFor(program), answers => {
        const sold = answers['sold-as']
        const rewrapped =
          sold === undefined || sold.kind === 'cant-tell' || (sold.kind === 'option' && sold.option === 'new-rewrap')
        const lettering = answers['lettering-place']
        fc.pre(!(rewrapped && lettering?.kind === 'option' && ['wrap', 'clear-wrap'].includes(lettering.option)))
        expect(judge(program, answers).verdict).toBe(judge(byHand.program, answers).verdict)
      }),
      { numRuns: 1500 },
    )
  })

  test('passes the checker: each of its rules is seen to fire, stay quiet and stay unknown', () => {
    const result = derive(facts, anyCell)
    if (!result.ok) throw new Error('does not derive')
    const coverage = openCoverage(result.pack.rules)
    const problems = result.cases.flatMap(one => runCase(program, one, one.case, coverage))
    expect([...problems, ...uncovered(coverage, result.pack.id)]).toEqual([])
  })
})

test('a rewrapped cell with its lettering on the wrap stays open, whatever else is met', () => {
  const program = derived(unnamedFamilies['unnamed-18650-c'] as Facts)
  const answers = { 'lettering-place': option('wrap'), 'sold-as': option('new-rewrap') }
  expect(judge(program, answers).verdict).toBe('open')
  expect(judge(program, { ...answers, 'sold-as': option('new-bare') }).verdict).toBe('ruled-out')
  const outlook = program.outlook({ ...program.given, ...answers })
  expect(outlook.reachable).not.toContain('nothing-found')
  expect(program.outlook({ ...program.given, ...answers, 'lettering-place': option('can') }).reachable).toContain(
    'nothing-found',
  )
})

/** Written answers of a case as the engine takes them. */
function readAll(program: Program, written: RawCase['answers']): Answers {
  return Object.fromEntries(
    Object.entries(written).map(([id, value]) => {
      const question = program.questions.get(id)
      const read = question && readAnswer(question, value, id)
      if (!read || 'code' in read) throw new Error(`${id} cannot be read`)
      return [id, read]
    }),
  )
}

/** Answers to any of a program's questions, dangers mostly left out, since they would decide everything. */
function answersFor(program: Program): fc.Arbitrary<Answers> {
  const asked = [...program.questions.values()]
  const one = (id: string): fc.Arbitrary<Answers[string]> => {
    const question = program.questions.get(id)
    if (question?.answer.kind === 'options')
      return fc.constantFrom(...question.answer.options.map(each => option(each.id)), cantTell)
    const answer = question?.answer
    if (answer?.kind !== 'reading') return fc.constant(cantTell)
    return fc.double({ min: answer.least, max: answer.most, noNaN: true }).map(value => reading(value))
  }
  const calm = asked.filter(question => !program.hazards.has(question.id) && program.given[question.id] === undefined)
  return fc
    .subarray(calm.map(question => question.id))
    .chain(ids => fc.tuple(...ids.map(id => one(id).map(answer => [id, answer] as const))))
    .map(entries => ({ ...program.given, ...Object.fromEntries(entries) }))
}
