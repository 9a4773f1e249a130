// What the outlook is computed from: questions with their states, rules with their conditions, and nothing of a pack's words.
import type { Answer, Answers, QuestionId, RuleId } from '../answers.ts'
import { type Atom, atomsOf, type Condition, weighAtom } from '../conditions.ts'
import type { Strength } from '../pack/pack.ts'
import { type Formula, type Formulas, openFormulas } from './formulas.ts'
import { type Groups, type Item, itemOf, openGroups, TooTangled } from './groups.ts'
import { type State, signatureOf } from './states.ts'

export type ModelRule = { readonly id: RuleId; readonly when: Condition } & (
  | { readonly kind: 'hazard' | 'must' }
  | { readonly kind: 'sign'; readonly strength: Strength }
)
export type ModelQuestion = { readonly id: QuestionId; readonly effort: number; readonly states: readonly State[] }

export type Model = {
  readonly questions: readonly ModelQuestion[]
  readonly rules: readonly ModelRule[]
  /** Conditions that must all be false before "nothing found"; undefined where no family is known. */
  readonly enough: readonly Condition[] | undefined
}

export type CompiledModel = {
  readonly model: Model
  readonly formulas: Formulas
  readonly groups: Groups
  /** Items of the whole model in groups that share no question, with the variables of each. */
  readonly parts: readonly { readonly items: readonly Item[]; readonly variables: readonly number[] }[]
  readonly settled: number
  /** Which state an answer puts a question in. */
  stateOf(variable: number, answer: Answer): number
  readonly variableOf: ReadonlyMap<QuestionId, number>
}

/** How many groups may be kept before a pack counts as too tangled (about 120 bytes and 10 µs each). */
export const groupCap = 60_000

export type Tangle = {
  readonly rules: readonly RuleId[]
  readonly questions: readonly QuestionId[]
  readonly cap: number
}

/**
 * Compiles a model. Questions that no rule reads are left out. `{ ok: false }` names the rules and questions of the group
 * that cannot be solved within `cap` kept groups.
 */
export function compileModel(
  model: Model,
  cap = groupCap,
): { readonly ok: true; readonly compiled: CompiledModel } | { readonly ok: false; readonly tangle: Tangle } {
  const formulas = openFormulas()
  const variableOf = new Map(model.questions.map((question, i) => [question.id, i]))
  const atoms = atomsByQuestion([...model.rules.map(rule => rule.when), ...(model.enough ?? [])])
  const stateIndex = model.questions.map(question => {
    const mine = atoms.get(question.id) ?? []
    return new Map(question.states.map((state, i) => [signatureOf(state.answers[0] as Answer, mine), i]))
  })
  const chances = model.questions.map(({ states }) => {
    const total = states.reduce((sum, state) => sum + state.odds, 0)
    return Float64Array.from(states, state => state.odds / total)
  })
  const groups = openGroups(formulas, chances, cap)
  const items = itemsOf(model, formulas, variableOf)
  const { settled, groups: parts } = groups.split(items)
  for (const part of parts) {
    try {
      groups.solve(part)
      for (const variable of groups.variables(part))
        for (const branch of groups.branches(part, variable)) groups.solve(branch.items)
    } catch (error) {
      if (!(error instanceof TooTangled)) throw error
      const questions = groups.variables(part).map(variable => (model.questions[variable] as ModelQuestion).id)
      const rules = model.rules.filter(rule => atomsOf(rule.when).some(atom => questions.includes(atom.question)))
      return { ok: false, tangle: { rules: rules.map(rule => rule.id), questions, cap } }
    }
  }
  const stateOf = (variable: number, answer: Answer): number => {
    const question = model.questions[variable] as ModelQuestion
    const state = stateIndex[variable]?.get(signatureOf(answer, atoms.get(question.id) ?? []))
    if (state === undefined) throw new RangeError(`no state of ${question.id} fits this answer`)
    return state
  }
  return {
    ok: true,
    compiled: {
      model,
      formulas,
      groups,
      settled,
      variableOf,
      stateOf,
      parts: parts.map(part => ({ items: part, variables: groups.variables(part) })),
    },
  }
}

/** Every atom of the conditions, by the question it reads, each written atom once. */
export function atomsByQuestion(conditions: readonly Condition[]): Map<QuestionId, Atom[]> {
  const found = new Map<QuestionId, Map<string, Atom>>()
  for (const atom of conditions.flatMap(atomsOf)) {
    const mine = found.get(atom.question) ?? new Map<string, Atom>()
    found.set(atom.question, mine.set(JSON.stringify(atom), atom))
  }
  return new Map([...found].map(([question, mine]) => [question, [...mine.values()]]))
}

function itemsOf(model: Model, formulas: Formulas, variableOf: ReadonlyMap<QuestionId, number>): Item[] {
  /** The formula under which `condition` is `wanted`; unknown is neither. */
  function formulaFor(condition: Condition, wanted: 'true' | 'false'): Formula {
    if ('question' in condition) {
      const variable = variableOf.get(condition.question)
      const question = variable === undefined ? undefined : model.questions[variable]
      if (variable === undefined || !question) throw new RangeError(`no question ${condition.question}`)
      return formulas.literal(
        variable,
        question.states.map(s => weighAtom(condition, s.answers[0]) === wanted),
      )
    }
    if (condition.op === 'not') return formulaFor(condition.of, wanted === 'true' ? 'false' : 'true')
    const parts = condition.of.map(part => formulaFor(part, wanted))
    return (condition.op === 'all') === (wanted === 'true') ? formulas.and(parts) : formulas.or(parts)
  }
  const counting = model.rules.map(rule =>
    itemOf(rule.kind === 'sign' ? rule.strength : rule.kind, formulaFor(rule.when, 'true')),
  )
  const met = (model.enough ?? []).map(condition => itemOf('enough', formulaFor(condition, 'false')))
  return [...counting, ...met]
}

/** The variables and states of the answers that the model reads at all. */
export function statesGiven(compiled: CompiledModel, answers: Answers): Map<number, number> {
  const given = new Map<number, number>()
  for (const [question, answer] of Object.entries(answers)) {
    const variable = compiled.variableOf.get(question)
    if (variable !== undefined) given.set(variable, compiled.stateOf(variable, answer))
  }
  return given
}
