// From packs to a program: the questions and rules in scope for one family (or none), ready to judge and to look ahead.
import { type Urgency, urgencies } from '../ground/urgencies.ts'
import { type Answers, type FamilyId, option, type QuestionId, type RuleId } from './answers.ts'
import { questionsOf } from './conditions.ts'
import { type Bench, openBench } from './outlook/bench.ts'
import {
  atomsByQuestion,
  type CompiledModel,
  groupModel,
  solveAtOnce,
  solveModel,
  type Tangle,
} from './outlook/model.ts'
import { type OutlookReader, openOutlook } from './outlook/outlook.ts'
import type { Places } from './outlook/places.ts'
import { openSpace, type Space } from './outlook/space.ts'
import { countStates, mostStates, type State, statesOf } from './outlook/states.ts'
import type { Family, Pack, Question, Rule } from './pack/pack.ts'
import type { PackProblem } from './pack/problems.ts'

/** Which pack a verdict was judged by. */
export type PackRef = { readonly id: string; readonly version: string; readonly digest: string }

export type Program = {
  readonly packs: readonly PackRef[]
  /** The packs its questions and rules come from, with their words in other languages. */
  readonly scope: readonly Pack[]
  readonly family: Family | undefined
  /** Questions some rule in scope reads, in the packs' order. */
  readonly questions: ReadonlyMap<QuestionId, Question>
  readonly rules: readonly Rule[]
  /** The questions each rule reads. */
  readonly reads: ReadonlyMap<RuleId, readonly QuestionId[]>
  /** What must be met for "nothing found": the rules the family's pack lists, and every hazard; none without a family. */
  readonly enough: readonly Rule[]
  /** The questions that hazard rules read, with the most urgent thing one of them can mean. */
  readonly hazards: ReadonlyMap<QuestionId, Urgency>
  /** Signs whose last day is over: shown as out of date, no longer counted. A must never ages: the impossible stays so. */
  readonly expired: ReadonlySet<RuleId>
  /** What is settled by what the cell is sold as. */
  readonly given: Answers
  /** The ways each question can be answered, as far as the rules tell them apart. */
  readonly states: ReadonlyMap<QuestionId, readonly State[]>
  /** Sources by pack: two packs may use one name for different things. */
  readonly sources: Readonly<Record<string, Pack['sources']>>
  readonly space: Space
  /** How each of `rules` weighs places in the space: 0 false, 1 unknown, 2 true. */
  readonly weighers: readonly ((places: Places) => number)[]
  /** The same for `enough`: all of them false is what "nothing found" needs. */
  readonly metWhenFalse: readonly ((places: Places) => number)[]
  readonly outlook: OutlookReader
  /** What is worth a look for another purpose than the verdict, once the questions for that are done; none where it is absent. */
  readonly beside?: { next(answers: Answers): QuestionId | undefined; readonly among: readonly QuestionId[] }
}

type Counting = Exclude<Rule, { kind: 'no-bearing' }>

export type Compiling =
  | { readonly ok: true; readonly program: Program }
  | { readonly ok: false; readonly problems: readonly PackProblem[] }

/**
 * Compiles packs for one family. Packs without families apply to every cell; a pack with families joins only when one of them
 * is the family. `today` is YYYY-MM-DD; signs past their last day no longer count. `also`: questions that can be answered though no
 * rule reads them: they change no verdict. On one `bench` what programs share is made once.
 */
export function compile(
  packs: readonly Pack[],
  today: string,
  familyId?: FamilyId,
  also: readonly QuestionId[] = [],
  bench: Bench = openBench(),
): Compiling {
  const prepared = prepare(packs, today, familyId, also, bench)
  return prepared.ok ? judged(prepared, solveAtOnce(prepared.grouped)) : prepared
}

/**
 * The same in slices. The first gives a program that can be judged by: its outlook works out what it needs. In those that follow the
 * rest is worked out, and the last says whether the packs can be judged exactly.
 */
export function* compiling(
  packs: readonly Pack[],
  today: string,
  familyId?: FamilyId,
  also: readonly QuestionId[] = [],
  bench: Bench = openBench(),
): Generator<Compiling, Compiling, void> {
  const prepared = prepare(packs, today, familyId, also, bench)
  if (!prepared.ok) return prepared
  const slices = solveModel(prepared.grouped)
  for (;;) {
    yield prepared
    const slice = slices.next()
    if (slice.done) return judged(prepared, slice.value)
  }
}

type Prepared = Extract<Compiling, { ok: true }> & { readonly grouped: CompiledModel }

const judged = (prepared: Prepared, tangle: Tangle | undefined): Compiling =>
  tangle
    ? { ok: false, problems: [{ code: 'too-tangled', at: prepared.program.family?.id ?? 'rules', ...tangle }] }
    : prepared

/** Everything but what its outlook can be worked out of when it is asked. */
function prepare(
  packs: readonly Pack[],
  today: string,
  familyId: FamilyId | undefined,
  also: readonly QuestionId[],
  bench: Bench,
): Prepared | Extract<Compiling, { ok: false }> {
  const family = familyId === undefined ? undefined : findFamily(packs, familyId)
  if (familyId !== undefined && !family) {
    const known = packs.flatMap(pack => pack.families.map(candidate => candidate.id))
    return { ok: false, problems: [{ code: 'unknown-name', at: 'family', what: 'family', name: familyId, known }] }
  }
  const inScope = packs.filter(pack => pack.families.length === 0 || pack.id === family?.pack)
  const rules = inScope.flatMap(pack =>
    pack.rules.filter(
      rule => (!rule.families || rule.families.includes(family?.id ?? '')) && !family?.waives?.includes(rule.id),
    ),
  )
  const twice = repeated(inScope)
  if (twice.length > 0) return { ok: false, problems: twice }
  const read = new Set([...rules.flatMap(rule => questionsOf(rule.when)), ...also])
  const questions = inScope.flatMap(pack => pack.questions.filter(question => read.has(question.id)))
  const expired = new Set(
    rules
      .filter(rule => rule.kind !== 'must' && rule.validUntil !== undefined && rule.validUntil < today)
      .map(rule => rule.id),
  )
  const counting = rules.filter((rule): rule is Counting => rule.kind !== 'no-bearing' && !expired.has(rule.id))
  // Nothing is "nothing found" while a danger sign is unknown, whatever a pack lists.
  const closes = family && !family.openEnded ? [...family.enough, ...(family.notWhile ?? [])] : undefined
  const enough = closes
    ? rules.filter(rule => closes.includes(rule.id) || (rule.kind === 'hazard' && !expired.has(rule.id)))
    : []
  const atoms = atomsByQuestion(rules.map(rule => rule.when))
  // What every cell is asked stands first, so that the same rules find their questions in the same places whatever the family.
  const general = new Set(rules.flatMap(rule => (rule.families ? [] : questionsOf(rule.when))))
  const inOrder = [...questions.filter(one => general.has(one.id)), ...questions.filter(one => !general.has(one.id))]
  const tooMany = inOrder.flatMap(question => {
    const states = countStates(question, atoms.get(question.id) ?? [])
    return states > mostStates ? [{ name: question.id, states }] : []
  })
  if (tooMany.length > 0)
    return {
      ok: false,
      problems: tooMany.map(one => ({ code: 'too-many-states', at: 'rules', ...one, most: mostStates })),
    }
  const space = openSpace(
    inOrder.map(question => {
      const mine = atoms.get(question.id) ?? []
      return { id: question.id, variable: bench.variable(question, question.id, mine, () => statesOf(question, mine)) }
    }),
    bench.weighers,
  )
  const given: Answers = Object.fromEntries(Object.entries(family?.given ?? {}).map(([id, one]) => [id, option(one)]))
  const modelQuestions = space.questions.map(({ id, variable }, i) => ({
    id,
    effort: inOrder[i]?.effort ?? 1,
    states: variable.states,
  }))
  const model = { questions: modelQuestions, rules: counting, enough: closes && enough.map(rule => rule.when), given }
  const grouped = groupModel(model, bench, space)
  return {
    ok: true,
    grouped,
    program: {
      packs: inScope.map(({ id, version, digest }) => ({ id, version, digest })),
      scope: inScope,
      family,
      questions: new Map(questions.map(question => [question.id, question])),
      rules,
      reads: new Map(rules.map(rule => [rule.id, questionsOf(rule.when)])),
      enough,
      hazards: hazardsOf(rules, questions),
      expired,
      given,
      states: new Map(space.questions.map(({ id, variable }) => [id, variable.states])),
      sources: Object.fromEntries(inScope.map(pack => [pack.id, pack.sources])),
      space,
      weighers: rules.map(rule => space.weigher(rule.when)),
      metWhenFalse: enough.map(rule => space.weigher(rule.when)),
      outlook: openOutlook(grouped),
    },
  }
}

/** Questions and rules that two installed packs define alike. */
function repeated(packs: readonly Pack[]): PackProblem[] {
  const find = (what: 'question' | 'rule', names: readonly string[]) =>
    names.flatMap((name, i): PackProblem[] =>
      names.indexOf(name) < i ? [{ code: 'duplicate', at: 'packs', what, name }] : [],
    )
  return [
    ...find(
      'question',
      packs.flatMap(pack => pack.questions.map(one => one.id)),
    ),
    ...find(
      'rule',
      packs.flatMap(pack => pack.rules.map(one => one.id)),
    ),
  ]
}

/** What a label says is no sign of danger: it tells which line another answer is held against. */
function hazardsOf(rules: readonly Rule[], questions: readonly Question[]): Map<QuestionId, Urgency> {
  const label = new Set(questions.flatMap(question => (question.topic === 'label' ? [question.id] : [])))
  const found = new Map<QuestionId, Urgency>()
  for (const rule of rules)
    if (rule.kind === 'hazard')
      for (const id of questionsOf(rule.when))
        if (!label.has(id) && isMoreUrgent(rule.act, found.get(id))) found.set(id, rule.act)
  return found
}

const isMoreUrgent = (one: Urgency, than: Urgency | undefined): boolean =>
  than === undefined || urgencies.indexOf(one) < urgencies.indexOf(than)

export function findFamily(packs: readonly Pack[], id: FamilyId): Family | undefined {
  return packs.flatMap(pack => pack.families).find(family => family.id === id)
}
