// What the outlook is computed from: questions with their states, rules with their conditions, and nothing of a pack's words.
import type { QuestionId, RuleId } from '../answers.ts'
import { type Atom, atomsOf, type Condition, weighAtom } from '../conditions.ts'
import type { Strength } from '../pack/pack.ts'
import { type Formula, type Formulas, openFormulas } from './formulas.ts'
import { type Group, type Item, itemOf, split, variablesOf } from './groups.ts'
import { openSpace, type Space } from './space.ts'
import type { State } from './states.ts'
import type { Summary } from './summaries.ts'
import { openViews, TooTangled, type Views } from './views.ts'

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
  readonly space: Space
  readonly formulas: Formulas
  readonly views: Views
  /** Items of the whole model in groups that share no question, with the variables of each. */
  readonly parts: readonly { readonly items: Group; readonly variables: readonly number[] }[]
  readonly settled: Summary
  /** The chance of each state of each variable. */
  readonly chances: readonly (readonly number[])[]
}

/** How many groups may be kept before a pack counts as too tangled. */
const viewCap = 10_000

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
  space = spaceOf(model),
  cap = viewCap,
): { readonly ok: true; readonly compiled: CompiledModel } | { readonly ok: false; readonly tangle: Tangle } {
  const formulas = openFormulas()
  const chances = model.questions.map(({ states }) => {
    const total = states.reduce((sum, state) => sum + state.odds, 0)
    return states.map(state => state.odds / total)
  })
  const views = openViews(formulas, chances, cap)
  const { settled, groups } = split(formulas, itemsOf(model, formulas, space))
  for (const group of groups) {
    try {
      views.viewOf(group)
    } catch (error) {
      if (!(error instanceof TooTangled)) throw error
      const questions = variablesOf(formulas, group).map(variable => (model.questions[variable] as ModelQuestion).id)
      const rules = model.rules.filter(rule => atomsOf(rule.when).some(atom => questions.includes(atom.question)))
      return { ok: false, tangle: { rules: rules.map(rule => rule.id), questions, cap } }
    }
  }
  views.settleDown()
  const parts = groups.map(items => ({ items, variables: variablesOf(formulas, items) }))
  return {
    ok: true,
    compiled: { model, space, formulas, views, settled, parts, chances },
  }
}

/** The space of a model that stands alone. */
function spaceOf(model: Model): Space {
  return openSpace(model.questions, atomsByQuestion([...model.rules.map(rule => rule.when), ...(model.enough ?? [])]))
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

function itemsOf(model: Model, formulas: Formulas, { variableOf }: Space): Item[] {
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
