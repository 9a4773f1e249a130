// A cell held against every family of a server: what contradicts each, which are made alike, and whether the looks are another's.
//
// From the families' own rules alone, by weighing; nothing is compiled. What is found here is said beside a verdict and never
// changes it: the verdict is that of the family the cell is sold as.
import type { Answers, QuestionId } from '../../engine/answers.ts'
import { weigh } from '../../engine/conditions.ts'
import type { Pack } from '../../engine/pack/pack.ts'
import { fakeOfRule } from '../derive/derive-fakes.ts'
import type { Facts, KnownFake } from '../facts/facts-schema.ts'
import { featuresOf, isLook } from '../features.ts'

/** A family to be held against: its facts, and the pack derived from them. */
export type Candidate = { readonly facts: Facts; readonly pack: Pack }

export type Held = {
  readonly candidate: Candidate
  /** Features whose answer a counting rule of it contradicts, the strongest first. */
  readonly contradicts: readonly QuestionId[]
  /** Whether a must of it is contradicted. */
  readonly must: boolean
  /** Features answered as it is made. */
  readonly asMade: readonly QuestionId[]
  readonly fakes: readonly KnownFake[]
}

const strengthOf: Record<string, number> = { must: 3, strong: 2, moderate: 1 }

/** How the answers stand to one family. Weak signs and remarks contradict nothing. */
export function holdAgainst(candidate: Candidate, answers: Answers): Held {
  const { facts, pack } = candidate
  const found = new Map<QuestionId, number>()
  const fakes: KnownFake[] = []
  const features = Object.keys(facts.traits)
  for (const rule of pack.rules) {
    const strength = rule.kind === 'must' ? 'must' : rule.kind === 'sign' ? rule.strength : 'none'
    const weight = strengthOf[strength] ?? 0
    if (weight === 0 || weigh(rule.when, answers) !== 'true') continue
    const fake = fakeOfRule(pack.id, rule.id)
    if (fake !== undefined) {
      fakes.push(...facts.fakes.filter(one => one.id === fake))
      continue
    }
    const feature = features.find(one => rule.id.startsWith(`${pack.id}-${one}-`))
    if (feature) found.set(feature, Math.max(found.get(feature) ?? 0, weight))
  }
  const asMade = features.filter(feature => {
    const answer = answers[feature]
    return answer?.kind === 'option' && (facts.traits[feature]?.made ?? []).includes(answer.option)
  })
  const contradicts = [...found].sort((a, b) => b[1] - a[1]).map(([feature]) => feature)
  return { candidate, contradicts, must: [...found.values()].some(weight => weight === 3), asMade, fakes }
}

/** Families whose looks are told apart by nothing that is known of them are one group. */
export function groupsOf(candidates: readonly Candidate[]): Candidate[][] {
  const groups = new Map<string, Candidate[]>()
  for (const one of candidates) {
    const key = looksKey(one.facts)
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()]
}

const looksKey = ({ identity, traits }: Facts): string =>
  JSON.stringify([
    identity.format,
    Object.keys(traits)
      .sort()
      .flatMap(feature => {
        const { made = [], against = [] } = traits[feature] ?? {}
        const counting = against.flatMap(one => (one.tells === 'weak' || one.together ? [] : one.options))
        return made.length + counting.length > 0 ? [[feature, [...made].sort(), counting.sort()]] : []
      }),
  ])

export type AgainstAll =
  /** Nothing that was answered says anything of any of them. */
  | { readonly is: 'nothing-to-say' }
  | { readonly is: 'fits-none'; readonly of: number; readonly why: readonly Held[] }
  /** Fits these, which are made alike; `of` families were held against. */
  | { readonly is: 'fits'; readonly fit: readonly Held[]; readonly of: number }
  | { readonly is: 'fits-several'; readonly fit: readonly Held[]; readonly of: number }

/** A cell that is not listed, held against all families of its size. */
export function againstAll(candidates: readonly Candidate[], answers: Answers): AgainstAll {
  const format = answers['format']
  const sized =
    format?.kind === 'option' ? candidates.filter(one => one.facts.identity.format === format.option) : [...candidates]
  const held = sized.map(one => holdAgainst(one, answers))
  if (held.every(one => one.contradicts.length + one.asMade.length === 0)) return { is: 'nothing-to-say' }
  const fit = held.filter(one => one.contradicts.length === 0)
  if (fit.length === 0) return { is: 'fits-none', of: held.length, why: held }
  const groups = groupsOf(fit.map(one => one.candidate))
  return { is: groups.length === 1 ? 'fits' : 'fits-several', fit, of: held.length }
}

/** At least so many answers, looked at twice, contradict what it is sold as and are as the other is made. */
const leastForAnother = 2
/** Where so many groups fit as well, naming one would be a guess. */
const mostGroups = 2

/**
 * The families that a cell sold as `sold` looks like instead, made alike among themselves; empty if that cannot be said. It takes two
 * answers that were looked at twice, contradict `sold` and are as made there, and no contradicted must there.
 */
export function looksLikeAnother(
  sold: Candidate,
  candidates: readonly Candidate[],
  answers: Answers,
  twice: ReadonlySet<QuestionId>,
): readonly Held[] {
  const against = holdAgainst(sold, answers).contradicts.filter(feature => twice.has(feature))
  if (against.length < leastForAnother) return []
  const others = candidates
    .filter(one => one.pack.id !== sold.pack.id && one.facts.identity.format === sold.facts.identity.format)
    .map(one => holdAgainst(one, answers))
    .filter(one => !one.must)
  const fitting = others.filter(
    one => against.filter(feature => one.asMade.includes(feature)).length >= leastForAnother,
  )
  if (fitting.length === 0 || groupsOf(fitting.map(one => one.candidate)).length > mostGroups) return []
  // Of two kinds that fit, neither is named.
  return groupsOf(fitting.map(one => one.candidate)).length === 1 ? fitting : []
}

export type LookWorth = { readonly question: QuestionId; readonly worth: number }

/**
 * The look that parts the families most for its effort, among those not answered; undefined where nothing is left to part. Odds are
 * those of the base pack.
 */
export function nextLook(
  groups: readonly (readonly Candidate[])[],
  base: Pack,
  answers: Answers,
  among: readonly QuestionId[],
): LookWorth | undefined {
  const left = groups.flatMap(([one]) => (one && holdAgainst(one, answers).contradicts.length === 0 ? [one] : []))
  if (left.length === 0) return undefined
  const worths = among.flatMap((question): LookWorth[] => {
    const feature = featuresOf(base).get(question)
    if (!feature || answers[question] !== undefined || !isLook(feature)) return []
    const { options } = feature.answer
    const total = options.reduce((sum, one) => sum + one.odds, feature.unsureOdds)
    const parted = options.reduce((sum, one) => {
      const said: Answers = { ...answers, [question]: { kind: 'option', option: one.id } }
      return sum + (one.odds / total) * left.filter(each => holdAgainst(each, said).contradicts.length > 0).length
    }, 0)
    return parted > 0 ? [{ question, worth: parted / feature.effort }] : []
  })
  return worths.sort((a, b) => b.worth - a.worth)[0]
}
