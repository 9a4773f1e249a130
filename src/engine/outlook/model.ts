// What the outlook is computed from: questions with their states, rules with their conditions, and nothing of a pack's words.
import type { Answers, QuestionId, RuleId } from '../answers.ts'
import { type Atom, atomsOf, type Condition } from '../conditions.ts'
import type { Strength } from '../pack/pack.ts'
import { type Bench, openBench } from './bench.ts'
import type { Formula } from './formulas.ts'
import { type Group, type Item, itemOf, restrict, split, variablesOf } from './groups.ts'
import { openSpace, type Space, type SpaceQuestion } from './space.ts'
import type { State } from './states.ts'
import type { Summary } from './summaries.ts'
import { TooTangled } from './views.ts'

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
  /** Answers that never change: their questions are settled while compiling. */
  readonly given?: Answers
}

export type CompiledModel = {
  readonly model: Model
  readonly space: Space
  readonly bench: Bench
  /** Items of the whole model in groups that share no question, with the places of the questions that each group reads. */
  readonly parts: readonly { readonly items: Group; readonly indexes: readonly number[] }[]
  readonly settled: Summary
}

/** How many new groups may be needed before a pack counts as too tangled. */
const viewCap = 10_000

export type Tangle = {
  readonly rules: readonly RuleId[]
  readonly questions: readonly QuestionId[]
  readonly cap: number
}

export type ModelCompiling =
  | { readonly ok: true; readonly compiled: CompiledModel }
  | { readonly ok: false; readonly tangle: Tangle }

/**
 * Compiles a model on a bench, where what other models made is found again. `{ ok: false }` names the rules and questions of the group
 * that cannot be solved within `cap` new groups.
 */
export function compileModel(
  model: Model,
  bench: Bench = openBench(),
  space: Space = spaceOf(model, bench),
  cap = viewCap,
): ModelCompiling {
  const compiled = groupModel(model, bench, space)
  const tangle = solveAtOnce(compiled, cap)
  return tangle ? { ok: false, tangle } : { ok: true, compiled }
}

/** Solves a model in its groups; undefined once that is done. */
export function solveAtOnce(compiled: CompiledModel, cap = viewCap): Tangle | undefined {
  const { views } = compiled.bench
  for (const { items } of compiled.parts) {
    try {
      views.within(cap, () => views.viewOf(items))
    } catch (error) {
      return tangleOf(error, compiled, items, cap)
    }
  }
  return undefined
}

/** The same in slices. */
export function* solveModel(compiled: CompiledModel, cap = viewCap): Generator<void, Tangle | undefined> {
  for (const { items } of compiled.parts) {
    try {
      yield* compiled.bench.views.solving(items, cap)
    } catch (error) {
      return tangleOf(error, compiled, items, cap)
    }
  }
  return undefined
}

function tangleOf(error: unknown, { model, space, bench }: CompiledModel, group: Group, cap: number): Tangle {
  if (!(error instanceof TooTangled)) throw error
  const read = new Set(variablesOf(bench.formulas, group))
  const questions = space.questions.filter(one => read.has(one.variable.number)).map(one => one.id)
  const rules = model.rules.filter(rule => atomsOf(rule.when).some(atom => questions.includes(atom.question)))
  return { rules: rules.map(rule => rule.id), questions, cap }
}

/** A model in its groups, none of them solved yet: whoever asks for an outlook has those solved that it needs. */
export function groupModel(
  model: Model,
  bench: Bench = openBench(),
  space: Space = spaceOf(model, bench),
): CompiledModel {
  const { formulas } = bench
  const indexOfVariable = new Map(space.questions.map(({ variable }, i) => [variable.number, i]))
  let items: readonly Item[] = itemsOf(model, bench, space)
  for (const [id, answer] of Object.entries(model.given ?? {})) {
    const variable = space.questions[space.indexOf.get(id) ?? -1]?.variable
    if (variable) items = restrict(formulas, items, variable.number, variable.stateOf(answer))
  }
  const { settled, groups } = split(formulas, items)
  const parts = groups.map(group => ({
    items: group,
    indexes: variablesOf(formulas, group).map(number => indexOfVariable.get(number) as number),
  }))
  return { model, space, bench, settled, parts }
}

/** The space of a model that stands alone. */
function spaceOf(model: Model, bench: Bench): Space {
  const atoms = atomsByQuestion([...model.rules.map(rule => rule.when), ...(model.enough ?? [])])
  return openSpace(
    model.questions.map((question): SpaceQuestion => {
      const { id, states } = question
      return { id, variable: bench.variable(question, id, atoms.get(id) ?? [], () => states) }
    }),
  )
}

/** Every atom of the conditions, by the question it reads, each written atom once. */
export function atomsByQuestion(conditions: readonly Condition[]): Map<QuestionId, Atom[]> {
  const found = new Map<QuestionId, Map<string, Atom>>()
  for (const atom of conditions.flatMap(atomsOf)) {
    const mine = found.get(atom.question) ?? new Map<string, Atom>()
    found.set(atom.question, mine.set(`${atom.op} ${'limit' in atom ? atom.limit : atom.options.join()}`, atom))
  }
  return new Map([...found].map(([question, mine]) => [question, [...mine.values()]]))
}

function itemsOf(model: Model, { formulas }: Bench, space: Space): Item[] {
  /** The formula under which `condition` is `wanted`; unknown is neither. */
  function formulaFor(condition: Condition, wanted: 'true' | 'false'): Formula {
    if ('question' in condition) {
      const variable = space.questions[space.indexOf.get(condition.question) ?? -1]?.variable
      if (!variable) throw new RangeError(`no question ${condition.question}`)
      return variable.formulaOf(condition, wanted)
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
