// From what a feature tells to rules: contradictions that count, remarks that do not, and exceptions that hold back.
import type { Pack } from '../../engine/pack/pack.ts'
import type { FactProblem } from '../facts/fact-problems.ts'
import type { Against, Facts, Remark, Trait } from '../facts/facts-schema.ts'
import { type Feature, featuresOf, isLook } from '../features.ts'
import { type CaseAnswers, plainlySold, type RuleDraft, soldExcepted, soldUnless, type Weight } from './rule-draft.ts'
import { againstSentence, exceptionSentence, remarkSentence, written } from './sentences.ts'

/** Rules of every trait in the base's order of questions; problems name their feature. */
export function deriveTraits(facts: Facts, base: Pack): { rules: RuleDraft[]; problems: FactProblem[] } {
  const rules: RuleDraft[] = []
  const problems: FactProblem[] = []
  for (const feature of featuresOf(base).values()) {
    const trait = facts.traits[feature.id]
    if (!trait) continue
    const found = problemsOf(feature, trait)
    problems.push(...found)
    if (found.length === 0) rules.push(...rulesOf(facts.identity.id, base, feature, trait))
  }
  return { rules, problems }
}

function problemsOf(feature: Feature, { made, against, remarks }: Trait): FactProblem[] {
  const all = feature.answer.options.map(one => one.id)
  const always = [...against, ...remarks].some(entry => all.every(option => entry.options.includes(option)))
  // Entries with side conditions of their own may share options; the plain ones may not contradict each other.
  const plain = against.filter(entry => !entry.together)
  const twice = plain.flatMap(entry => entry.options).find((option, i, list) => list.indexOf(option) < i)
  const both = against
    .flatMap(entry => entry.options)
    .find(option => made.includes(option) && plain.some(one => one.options.includes(option)))
  const clash = both ?? twice
  return [
    ...(always ? [{ code: 'always-speaks' as const, feature: feature.id }] : []),
    ...(clash === undefined ? [] : [{ code: 'contradictory' as const, feature: feature.id, option: clash }]),
  ]
}

function rulesOf(family: string, base: Pack, feature: Feature, trait: Trait): RuleDraft[] {
  const { made } = trait
  const counting = trait.against.flatMap((entry, i) => {
    const id = `${family}-${feature.id}-${i + 1}`
    const enough = made.length > 0 && isLook(feature) && !entry.together
    const says = entry.says ? written(entry.says) : againstSentence(base, feature.id, made, entry.options)
    const rule = ruleOf(id, feature, entry, made, weightOf(entry), says, enough)
    return entry.unless ? [rule, exceptionOf(rule, base, feature, entry, made)] : [rule]
  })
  const remarks = trait.remarks.map((entry, i) => {
    const says = entry.says ? written(entry.says) : remarkSentence(base, feature.id, entry.options)
    return ruleOf(`${family}-${feature.id}-r${i + 1}`, feature, entry, made, { kind: 'no-bearing' }, says, false)
  })
  return [...counting, ...remarks]
}

const weightOf = ({ tells, means = 'another-cell' }: Against): Weight =>
  tells === 'must' ? { kind: 'must', means } : { kind: 'sign', strength: tells }

function ruleOf(
  id: string,
  feature: Feature,
  entry: (Against | Remark) & { unless?: Against['unless'] },
  made: readonly string[],
  weight: Weight,
  says: RuleDraft['says'],
  enough: boolean,
): RuleDraft {
  const { options, together = {}, unless } = entry
  const sold = unless ? soldUnless(unless) : {}
  const sides: CaseAnswers = {
    ...Object.fromEntries(Object.entries(together).map(([side, wanted]) => [side, wanted[0] as string])),
    ...(unless && plainlySold),
  }
  const calm = made.find(option => !options.includes(option)) ?? otherThan(feature, options)
  return {
    id,
    weight,
    when: { [feature.id]: options, ...together, ...sold },
    says,
    source: 'described',
    fires: options.map(option => ({ [feature.id]: option, ...sides })),
    quiet: { ...sides, [feature.id]: calm },
    unknown: { ...sides, [feature.id]: 'cant-tell' },
    enough,
    holdsBack: false,
  }
}

const otherThan = (feature: Feature, options: readonly string[]): string =>
  feature.answer.options.find(one => !options.includes(one.id))?.id ?? 'cant-tell'

/** Says that an exception was used. Its contradiction does not count then, and the cell was not seen to be as made either. */
function exceptionOf(
  rule: RuleDraft,
  base: Pack,
  feature: Feature,
  entry: Against,
  made: readonly string[],
): RuleDraft {
  const unless = entry.unless ?? 'open-rewrap'
  const { options, together = {} } = entry
  const sides = Object.fromEntries(Object.entries(together).map(([side, wanted]) => [side, wanted[0] as string]))
  const sold = { 'sold-as': soldExcepted(unless) }
  return {
    id: `${rule.id}-x`,
    weight: { kind: 'no-bearing' },
    when: { [feature.id]: options, ...together, ...sold },
    says: exceptionSentence(base, feature.id, unless),
    source: 'described',
    fires: [{ [feature.id]: options[0] as string, ...sides, ...sold }],
    quiet: {
      ...sides,
      ...sold,
      [feature.id]: made.find(option => !options.includes(option)) ?? otherThan(feature, options),
    },
    unknown: { ...sides, ...sold, [feature.id]: 'cant-tell' },
    enough: false,
    holdsBack: rule.enough,
  }
}
