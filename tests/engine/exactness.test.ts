// Exactness: on thousands of random packs, what the outlook says can still come out equals brute force over all completions.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Answers } from '../../src/engine/answers.ts'
import { smallestEnough } from '../../src/engine/enough.ts'
import { openBench } from '../../src/engine/outlook/bench.ts'
import { compileModel, groupModel, type Model, solveModel } from '../../src/engine/outlook/model.ts'
import { type Outlook, openOutlook } from '../../src/engine/outlook/outlook.ts'
import { severity, type Verdict, verdicts } from '../../src/ground/verdicts.ts'
import { completions, modelWithAnswers, plainVerdict } from './random-models.ts'

function read(model: Model): (answers: Answers) => Outlook {
  const result = compileModel(model)
  if (!result.ok) throw new Error(`too tangled: ${result.tangle.rules}`)
  return openOutlook(result.compiled)
}

test('a model solved in slices says what one says that is solved at once, also to whoever asks between two slices', () => {
  fc.assert(
    fc.property(modelWithAnswers(6), fc.nat(12), ({ model, answers }, asked) => {
      const grouped = groupModel(model)
      const said: Outlook[] = []
      const slices = solveModel(grouped)
      for (let i = 0; ; i++) {
        if (i === asked) said.push(openOutlook(grouped)(answers))
        if (slices.next().done) break
      }
      said.push(openOutlook(grouped)(answers), openOutlook(grouped)({}))
      const atOnce = read(model)
      const wanted = [...said.slice(1).map(() => atOnce(answers)), atOnce({})]
      for (const [i, outlook] of said.entries()) {
        const same = wanted[i] as Outlook
        expect(outlook.reachable).toEqual(same.reachable)
        for (const [v, chance] of outlook.chances.entries()) expect(chance).toBeCloseTo(same.chances[v] as number, 12)
        const gains = (one: Outlook) => new Map(one.prospects.map(({ question, gain }) => [question, gain]))
        expect(new Set(gains(outlook).keys())).toEqual(new Set(gains(same).keys()))
        for (const [question, gain] of gains(outlook)) expect(gain).toBeCloseTo(gains(same).get(question) as number, 12)
      }
    }),
    { numRuns: 400 },
  )
})

function bruteForce(model: Model, answers: Answers): Record<Verdict, number> {
  const chances = Object.fromEntries(verdicts.map(v => [v, 0])) as Record<Verdict, number>
  for (const one of completions(model, answers)) chances[plainVerdict(model, one.answers)] += one.chance
  return chances
}

/** Whether some completion of the other questions gives two different verdicts for two answers to `id`. */
function matters(model: Model, answers: Answers, id: string): boolean {
  const question = model.questions.find(q => q.id === id)
  const others = { ...model, questions: model.questions.filter(q => q.id !== id) }
  for (const rest of completions(others, answers)) {
    const seen = new Set(
      question?.states.map(s => plainVerdict(model, { ...rest.answers, [id]: s.answers[0] as never })),
    )
    if (seen.size > 1) return true
  }
  return false
}

test('the reachable verdicts, their chances and the stop point equal brute force on 3,000 random packs of up to 6 questions', () => {
  fc.assert(
    fc.property(modelWithAnswers(6), ({ model, answers }) => {
      const outlook = read(model)(answers)
      const exact = bruteForce(model, answers)
      expect(outlook.reachable).toEqual(verdicts.filter(v => exact[v] > 0))
      for (const [i, v] of verdicts.entries()) expect(outlook.chances[i]).toBeCloseTo(exact[v], 10)
      expect(outlook.prospects.length === 0).toBe(verdicts.filter(v => exact[v] > 0).length === 1)
    }),
    { numRuns: 3000 },
  )
}, 240_000)

test('the same on 400 random packs of 8 questions', () => {
  const eight = modelWithAnswers(8).filter(
    ({ model, answers }) => model.questions.length === 8 && Object.keys(answers).length >= 2,
  )
  fc.assert(
    fc.property(eight, ({ model, answers }) => {
      const exact = bruteForce(model, answers)
      expect(read(model)(answers).reachable).toEqual(verdicts.filter(v => exact[v] > 0))
    }),
    { numRuns: 400 },
  )
}, 240_000)

test('a question is offered exactly when it can still change the verdict, and its branches have the exact chances', () => {
  fc.assert(
    fc.property(modelWithAnswers(5), ({ model, answers }) => {
      const { prospects } = read(model)(answers)
      const open = model.questions.filter(q => !answers[q.id]).map(q => q.id)
      expect(new Set(prospects.map(p => p.question))).toEqual(new Set(open.filter(id => matters(model, answers, id))))
      for (const prospect of prospects)
        for (const branch of prospect.branches()) {
          const exact = bruteForce(model, { ...answers, [prospect.question]: branch.answers[0] as never })
          for (const [i, v] of verdicts.entries()) expect(branch.verdicts[i]).toBeCloseTo(exact[v], 10)
        }
    }),
    { numRuns: 1000 },
  )
}, 240_000)

test('what is given is settled while compiling, and models on one bench answer as models that stand alone', () => {
  fc.assert(
    fc.property(modelWithAnswers(6), modelWithAnswers(4), ({ model, answers }, other) => {
      const [first] = Object.entries(answers)
      const given: Answers = first ? { [first[0]]: first[1] } : {}
      const bench = openBench()
      for (const before of [other.model, { ...model, rules: model.rules.slice(1) }]) compileModel(before, bench)
      const result = compileModel({ ...model, given }, bench)
      if (!result.ok) throw new Error(`too tangled: ${result.tangle.rules}`)
      const outlook = openOutlook(result.compiled)(answers)
      const exact = bruteForce(model, answers)
      expect(outlook.reachable).toEqual(verdicts.filter(v => exact[v] > 0))
      for (const [i, v] of verdicts.entries()) expect(outlook.chances[i]).toBeCloseTo(exact[v], 10)
    }),
    { numRuns: 500 },
  )
}, 240_000)

test('an extra answer never enlarges the reachable set, and reordering or repeating a must changes nothing', () => {
  fc.assert(
    fc.property(modelWithAnswers(6), fc.nat(), ({ model, answers }, pick) => {
      const before = read(model)(answers).reachable
      const open = model.questions.filter(q => !answers[q.id])
      const question = open[pick % Math.max(1, open.length)]
      for (const state of question?.states ?? []) {
        const after = read(model)({ ...answers, [question?.id ?? '']: state.answers[0] as never }).reachable
        expect(before).toEqual(expect.arrayContaining([...after]))
      }
      const musts = model.rules.filter(r => r.kind !== 'sign')
      const turned = {
        ...model,
        rules: [...model.rules].reverse().concat(musts.map(r => ({ ...r, id: `${r.id}-again` }))),
      }
      expect(read(turned)(answers).reachable).toEqual(before)
    }),
    { numRuns: 500 },
  )
}, 240_000)

test('the answers judged alone, the rest unknown, are never worse than any completion', () => {
  fc.assert(
    fc.property(modelWithAnswers(5), ({ model, answers }) => {
      const mildest = severity[plainVerdict(model, answers)]
      for (const one of completions(model, answers))
        expect(severity[plainVerdict(model, one.answers)]).toBeGreaterThanOrEqual(mildest)
    }),
    { numRuns: 500 },
  )
}, 240_000)

test('the smallest enough set is enough, none is smaller, and none of it can be dropped (all subsets tried)', () => {
  fc.assert(
    fc.property(modelWithAnswers(6), ({ model, answers }) => {
      const wanted = severity[plainVerdict(model, answers)]
      const holds = (ids: readonly string[]) =>
        read(model)(Object.fromEntries(ids.map(id => [id, answers[id] as never]))).reachable.every(
          v => severity[v] >= wanted,
        )
      const given = Object.keys(answers)
      const found = smallestEnough(given, holds)
      expect(holds(found)).toBe(true)
      for (let mask = 0; mask < 2 ** given.length; mask++) {
        const subset = given.filter((_, i) => mask & (1 << i))
        if (subset.length < found.length) expect(holds(subset)).toBe(false)
      }
    }),
    { numRuns: 300 },
  )
}, 240_000)
