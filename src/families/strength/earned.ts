// How strongly a feature may tell: what a construction says, what reference cells have earned, and what speaks against it.
//
// One reference gives a sign; a must needs a construction that says so, or five independent references and a moderator's word.
// One person whose good cell contradicts caps a feature at moderate, two make it a remark: it varies.
import type { Pack } from '../../engine/pack/pack.ts'
import type { FactProblem } from '../facts/fact-problems.ts'
import type { Against, Construction, Facts, TellingStrength, Trait } from '../facts/facts-schema.ts'
import { featuresOf, isLook } from '../features.ts'
import { independent, type Reference } from './references.ts'

export type Earned = TellingStrength | 'none'
const ladder: readonly Earned[] = ['none', 'weak', 'moderate', 'strong', 'must']
const rank = (one: Earned): number => ladder.indexOf(one)
const lower = (a: Earned, b: Earned): Earned => (rank(a) <= rank(b) ? a : b)
const higher = (a: Earned, b: Earned): Earned => (rank(a) >= rank(b) ? a : b)

/** Independent references a must needs where no construction says so. */
export const forMust = 5
/** Seen at one glance and counted, so that one cell from the maker itself tells more. */
const plain = ['lettering-place', 'code-place', 'legs', 'vent-disc']

export type Standing = {
  /** Independent accepted references that show it as made. */
  readonly agree: number
  /** People whose good cell shows something else. */
  readonly contradict: number
}

export function standingOf(feature: string, made: readonly string[], references: readonly Reference[]): Standing {
  const seen = references.filter(one => one.state === 'accepted' && one.looks[feature] !== undefined)
  const agrees = (one: Reference) => made.includes(one.looks[feature] ?? '')
  return {
    agree: made.length === 0 ? 0 : independent(seen.filter(agrees)),
    contradict: made.length === 0 ? 0 : new Set(seen.filter(one => !agrees(one)).map(one => one.by)).size,
  }
}

/** What references alone have earned for a feature, before contradictions. */
export function earnedBy(feature: string, made: readonly string[], references: readonly Reference[]): Earned {
  const { agree } = standingOf(feature, made, references)
  if (agree >= forMust) return 'must'
  if (agree >= 3) return 'strong'
  if (agree === 2) return 'moderate'
  if (agree === 0) return 'none'
  const fromMaker = references.some(
    one => one.state === 'accepted' && one.how !== 'long-trusted' && made.includes(one.looks[feature] ?? ''),
  )
  return fromMaker && plain.includes(feature) ? 'moderate' : 'weak'
}

/** What a construction says of this very contradiction; none where it does not name it. */
export function saidBy(
  construction: Construction | undefined,
  feature: string,
  made: readonly string[],
  entry: Against,
): Earned {
  const trait = construction?.traits[feature]
  if (!trait || !same(trait.made, made)) return 'none'
  const said = entry.options.map(option =>
    trait.against
      .filter(one => one.options.includes(option) && within(entry.unless, one.unless))
      .reduce<Earned>((best, one) => higher(best, one.tells), 'none'),
  )
  return said.reduce(lower, said[0] ?? 'none')
}

const same = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every(one => b.includes(one))
/** An exception that a construction makes may not be left out. */
const within = (mine: Against['unless'], theirs: Against['unless']): boolean => theirs === undefined || mine === theirs

/** The most that a contradiction may tell; a moderator's word alone is a weak sign. */
export function mayTell(
  feature: string,
  trait: Trait,
  entry: Against,
  construction: Construction | undefined,
  references: readonly Reference[],
): Earned {
  const free = higher(
    'weak',
    higher(saidBy(construction, feature, trait.made, entry), earnedBy(feature, trait.made, references)),
  )
  const { contradict } = standingOf(feature, trait.made, references)
  if (contradict >= 2) return 'none'
  return contradict === 1 ? lower(free, 'moderate') : free
}

/**
 * The facts with every contradiction at the strength that it may have: what was wished for, or less. What two people's good cells
 * contradict becomes a remark.
 */
export function withEarned(
  facts: Facts,
  construction: Construction | undefined,
  references: readonly Reference[],
): Facts {
  const traits = Object.entries(facts.traits).map(([feature, trait]): [string, Trait] => {
    const judged = trait.against.map(entry => ({
      entry,
      may: mayTell(feature, trait, entry, construction, references),
    }))
    const kept = judged.flatMap(({ entry, may }) =>
      may === 'none' ? [] : [{ ...entry, tells: lower(entry.tells, may) as TellingStrength }],
    )
    const lost = judged.flatMap(({ entry, may }) =>
      may === 'none' ? [{ options: entry.options, ...(entry.together && { together: entry.together }) }] : [],
    )
    return [feature, { ...trait, against: kept, remarks: [...trait.remarks, ...lost].slice(0, 4) }]
  })
  return { ...facts, traits: Object.fromEntries(traits) }
}

/** Musts about looks that have not been earned, each with how many references stand behind it. */
export function unearnedMusts(
  facts: Facts,
  base: Pack,
  construction: Construction | undefined,
  references: readonly Reference[],
): FactProblem[] {
  return Object.entries(facts.traits).flatMap(([feature, trait]) => {
    const question = featuresOf(base).get(feature)
    if (!question || !(isLook(question) || question.care === 'unwrap')) return []
    const wrong = trait.against.some(
      entry => entry.tells === 'must' && mayTell(feature, trait, entry, construction, references) !== 'must',
    )
    if (!wrong) return []
    const { agree } = standingOf(feature, trait.made, references)
    return [{ code: 'must-not-earned' as const, feature, have: agree, need: forMust }]
  })
}
