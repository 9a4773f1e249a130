// From known fakes to rules: a sign over a whole false look, which no cell can show that contradicts nothing of how it is made.
import type { Pack } from '../../engine/pack/pack.ts'
import type { FactProblem } from '../facts/fact-problems.ts'
import type { Facts, KnownFake, Trait } from '../facts/facts-schema.ts'
import { featuresOf } from '../features.ts'
import type { CaseAnswers, RuleDraft } from './rule-draft.ts'
import { fakeSentence } from './sentences.ts'

export const fakeRuleId = (family: string, fake: string): string => `${family}-fake-${fake}`

/** The id of the known fake a rule stands for; undefined for every other rule. */
export function fakeOfRule(family: string, rule: string): string | undefined {
  const start = fakeRuleId(family, '')
  return rule.startsWith(start) ? rule.slice(start.length) : undefined
}

export function deriveFakes(
  { identity, fakes, traits }: Facts,
  base: Pack,
): { rules: RuleDraft[]; problems: FactProblem[] } {
  const problems: FactProblem[] = []
  const rules: RuleDraft[] = []
  const seen = new Set<string>()
  for (const fake of fakes) {
    if (seen.has(fake.id)) problems.push({ code: 'twice', what: 'fake', name: fake.id })
    seen.add(fake.id)
    if (fake.state === 'retired') continue
    if (!differs(fake, traits)) problems.push({ code: 'fake-looks-genuine', fake: fake.title })
    else rules.push(ruleOf(identity.id, fake, base, traits))
  }
  return { rules, problems }
}

/** Whether at least one of its features is never as made: else a genuine cell would match. */
export const differs = ({ look }: KnownFake, traits: Facts['traits']): boolean =>
  Object.entries(look).some(([feature, options]) => {
    const made = traits[feature]?.made ?? []
    return made.length > 0 && options.every(option => !made.includes(option))
  })

function ruleOf(family: string, fake: KnownFake, base: Pack, traits: Readonly<Record<string, Trait>>): RuleDraft {
  const look = Object.entries(fake.look)
  const whole: CaseAnswers = Object.fromEntries(look.map(([feature, options]) => [feature, options[0] as string]))
  const [first = '', options = []] = look.find(([feature]) => (traits[feature]?.made ?? []).length > 0) ?? look[0] ?? []
  const all =
    featuresOf(base)
      .get(first)
      ?.answer.options.map(one => one.id) ?? []
  const calm = traits[first]?.made.find(one => !options.includes(one)) ?? all.find(one => !options.includes(one))
  return {
    id: fakeRuleId(family, fake.id),
    weight: { kind: 'sign', strength: 'strong' },
    when: fake.look,
    says: fakeSentence(fake),
    source: 'seen-here',
    fires: [whole],
    quiet: { ...whole, [first]: calm ?? 'cant-tell' },
    unknown: { ...whole, [first]: 'cant-tell' },
    enough: false,
    holdsBack: false,
  }
}
