// Random small models and brute force over all their completions: the oracle the outlook is held against.
import fc from 'fast-check'
import { type Answer, type Answers, cantTell, option } from '../../src/engine/answers.ts'
import { atomsOf, type Condition, weigh } from '../../src/engine/conditions.ts'
import { atomsByQuestion, type Model, type ModelRule } from '../../src/engine/outlook/model.ts'
import { type State, statesOf } from '../../src/engine/outlook/states.ts'
import type { Question } from '../../src/engine/pack/pack.ts'
import { doubtfulFrom, signWeight, type Verdict } from '../../src/ground/verdicts.ts'

const least = 0
const most = 100

/** A question of a random pack: n options, or a reading with the limits its rules happen to use. */
type Shape = { readonly kind: 'options'; readonly count: number } | { readonly kind: 'reading' }

const shape: fc.Arbitrary<Shape> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 2, max: 4 }).map(count => ({ kind: 'options' as const, count })) },
  { weight: 1, arbitrary: fc.constant({ kind: 'reading' as const }) },
)

function toQuestion(one: Shape, i: number): Question {
  const common = { id: `q${i}`, ask: '', care: 'look' as const, effort: 1 + (i % 3), quick: false, unsureOdds: 0.5 }
  if (one.kind === 'reading')
    return { ...common, answer: { kind: 'reading', quantity: 'mass', unit: 'g', least, most } }
  const options = Array.from({ length: one.count }, (_, o) => ({ id: `o${o}`, label: '', odds: 1 + o, show: {} }))
  return { ...common, answer: { kind: 'options', options } }
}

function atom(questions: readonly Question[]): fc.Arbitrary<Condition> {
  return fc.nat({ max: questions.length - 1 }).chain((i): fc.Arbitrary<Condition> => {
    const { id, answer } = questions[i] as Question
    if (answer.kind === 'reading')
      return fc.record({
        op: fc.constantFrom('below' as const, 'above' as const),
        question: fc.constant(id),
        limit: fc.constantFrom(20, 50, 80),
      })
    const options = fc.uniqueArray(fc.constantFrom(...answer.options.map(o => o.id)), { minLength: 1, maxLength: 2 })
    return fc
      .tuple(options, fc.constantFrom('is' as const, 'is' as const, 'is' as const, 'unless' as const))
      .map(([some, op]) => ({ op, question: id, options: some }))
  })
}

function condition(questions: readonly Question[]): fc.Arbitrary<Condition> {
  const one = atom(questions)
  const few = fc.array(one, { minLength: 1, maxLength: 3 })
  return fc.oneof(
    { weight: 3, arbitrary: one },
    { weight: 3, arbitrary: few.map(of => ({ op: 'all' as const, of })) },
    { weight: 2, arbitrary: few.map(of => ({ op: 'any' as const, of })) },
    { weight: 1, arbitrary: few.map(of => ({ op: 'not' as const, of: { op: 'all' as const, of } })) },
    {
      weight: 1,
      arbitrary: fc.tuple(one, few).map(([a, of]) => ({
        op: 'all' as const,
        of: [
          { op: 'not' as const, of: a },
          { op: 'any' as const, of },
        ],
      })),
    },
  )
}

function rule(questions: readonly Question[], i: number): fc.Arbitrary<ModelRule> {
  return fc
    .tuple(
      condition(questions),
      fc.constantFrom('hazard' as const, 'must' as const, 'sign' as const, 'sign' as const, 'sign' as const),
      fc.constantFrom('weak' as const, 'moderate' as const, 'strong' as const),
    )
    .map(([when, kind, strength]) =>
      kind === 'sign' ? { id: `r${i}`, when, kind, strength } : { id: `r${i}`, when, kind },
    )
}

/** A model of up to `maxQuestions` questions and ten rules, and answers to some of its questions. */
export function modelWithAnswers(maxQuestions: number): fc.Arbitrary<{ model: Model; answers: Answers }> {
  return fc.array(shape, { minLength: 1, maxLength: maxQuestions }).chain(shapes => {
    const questions = shapes.map(toQuestion)
    const rules = fc
      .integer({ min: 1, max: 10 })
      .chain(count => fc.tuple(...Array.from({ length: count }, (_, i) => rule(questions, i))))
    const enough = fc.option(fc.array(condition(questions), { minLength: 1, maxLength: 3 }), { nil: undefined })
    return fc.tuple(rules, enough).chain(([some, conditions]) => {
      const model = toModel(questions, some, conditions)
      const given = fc.tuple(
        ...model.questions.map(q => fc.option(fc.constantFrom(...q.states.map(firstOf)), { nil: undefined })),
      )
      return given.map(list => ({
        model,
        answers: Object.fromEntries(model.questions.flatMap((q, i) => (list[i] ? [[q.id, list[i]]] : []))) as Answers,
      }))
    })
  })
}

const firstOf = (state: State): Answer => state.answers[0] as Answer

function toModel(questions: readonly Question[], rules: readonly ModelRule[], enough?: readonly Condition[]): Model {
  const atoms = atomsByQuestion([...rules.map(r => r.when), ...(enough ?? [])])
  return {
    questions: questions.map(q => ({ id: q.id, effort: q.effort, states: statesOf(q, atoms.get(q.id) ?? []) })),
    rules,
    enough,
  }
}

/** The verdict on complete or incomplete answers, written out from the design and from nothing of the engine's outlook. */
export function plainVerdict(model: Model, answers: Answers): Verdict {
  const fired = model.rules.filter(r => weigh(r.when, answers) === 'true')
  if (fired.some(r => r.kind === 'hazard')) return 'danger'
  if (fired.some(r => r.kind === 'must')) return 'ruled-out'
  const score = fired.reduce((sum, r) => sum + (r.kind === 'sign' ? signWeight[r.strength] : 0), 0)
  if (score >= doubtfulFrom) return 'doubtful'
  const met = model.enough?.every(c => weigh(c, answers) === 'false') ?? false
  return met ? 'nothing-found' : 'open'
}

/** Every completion of `answers`, with its chance under independent odds. */
export function* completions(
  model: Model,
  answers: Answers,
  from = 0,
): Generator<{ answers: Answers; chance: number }> {
  const question = model.questions[from]
  if (!question) yield { answers, chance: 1 }
  else if (answers[question.id]) yield* completions(model, answers, from + 1)
  else {
    const total = question.states.reduce((sum, state) => sum + state.odds, 0)
    for (const state of question.states)
      for (const rest of completions(model, { ...answers, [question.id]: firstOf(state) }, from + 1))
        yield { answers: rest.answers, chance: rest.chance * (state.odds / total) }
  }
}

/** The questions a model's rules read. */
export const readBy = (model: Model): Set<string> =>
  new Set([...model.rules.map(r => r.when), ...(model.enough ?? [])].flatMap(atomsOf).map(a => a.question))

export { cantTell, option }
