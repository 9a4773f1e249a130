// Says the things of families: features, figures, problems, differences, versions, and what a cell was held against.
import type { Pack, Question } from '../engine/pack/pack.ts'
import { featureName, optionLabel } from '../families/derive/sentences.ts'
import type { Difference } from '../families/diff.ts'
import type { FactProblem } from '../families/facts/fact-problems.ts'
import type { Facts, Trait } from '../families/facts/facts-schema.ts'
import type { FamilyHead } from '../families/family-store.ts'
import { leadingFeatures } from '../families/features.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'

const languageOf = (say: Say): string => say.locale.slice(0, 2)
export const sayFeature = (say: Say, base: Pack, feature: string): string => featureName(base, feature, languageOf(say))
export const sayOption = (say: Say, base: Pack, feature: string, option: string): string =>
  optionLabel(base, feature, option, languageOf(say))
/** What is asked of a feature, and where to look, in the words of the check. */
export function sayAsked(say: Say, base: Pack, question: Question): { readonly ask: string; readonly look?: string } {
  const words = base.words[languageOf(say)]?.questions[question.id]
  const look = words?.look ?? question.look
  return { ask: words?.ask ?? question.ask, ...(look !== undefined && { look }) }
}
const list = (say: Say, parts: readonly string[]): string =>
  new Intl.ListFormat(languageOf(say), { type: 'disjunction' }).format(parts)
export const sayOptions = (say: Say, base: Pack, feature: string, options: readonly string[]): string =>
  list(
    say,
    options.map(option => sayOption(say, base, feature, option)),
  )
export const together = (say: Say, parts: readonly string[]): string =>
  new Intl.ListFormat(languageOf(say), { type: 'conjunction' }).format(parts)

export const sayTitle = (say: Say, { name, maker, format }: Pick<FamilyHead, 'name' | 'maker' | 'format'>): string =>
  say('families.title', { name: plain(name), maker: plain(maker), format })

/** The strongest that a look alone tells. */
export const strongest = (trait: Trait) => {
  const plainly = trait.against.filter(one => !one.together)
  const order = ['must', 'strong', 'moderate', 'weak'] as const
  return order.find(tells => plainly.some(one => one.tells === tells)) ?? 'no-bearing'
}

/** A line a feature, those that are looked at first in front; then figures and how many known fakes there are. */
export function sayFacts(say: Say, base: Pack, facts: Facts): string[] {
  const known = Object.keys(facts.traits)
  const order = [...leadingFeatures.filter(one => known.includes(one)), ...known.filter(one => !isLeading(one))]
  const lines = order.flatMap(feature => {
    const trait = facts.traits[feature]
    if (!trait) return []
    const made = trait.made.length > 0 ? sayOptions(say, base, feature, trait.made) : say('families.made-open')
    return [
      say('families.line', {
        feature: sayFeature(say, base, feature),
        made,
        tells: say(`families.tells.${strongest(trait)}`),
      }),
    ]
  })
  return [
    ...(lines.length > 0 ? lines : [say('families.nothing-known')]),
    ...sayRewrap(say, base, facts).map(one => `-# ${one}`),
    ...sayFigures(say, facts),
  ]
}

/** What is not held against openly rewrapped cells, in one sentence; none where there is no such thing. */
export function sayRewrap(say: Say, base: Pack, { traits }: Pick<Facts, 'traits'>): string[] {
  const excepted = Object.keys(traits).filter(one => traits[one]?.against.some(each => each.unless === 'open-rewrap'))
  const features = together(
    say,
    excepted.map(one => sayFeature(say, base, one)),
  )
  return excepted.length > 0 ? [say('families.rewrap', { features })] : []
}

const isLeading = (feature: string): boolean => (leadingFeatures as readonly string[]).includes(feature)

export function sayFigures(say: Say, { figures, fakes }: Pick<Facts, 'figures' | 'fakes'>): string[] {
  const { capacity, currents, mass } = figures
  const seen = fakes.filter(one => one.state === 'seen').length
  return [
    ...(capacity ? [say('families.printed', { typical: capacity.typical })] : []),
    ...(currents
      ? [
          say('families.current', {
            list: currents
              .map(({ amps, cutOff }) =>
                typeof cutOff === 'number'
                  ? say('families.current.cut', { amps, cutOff })
                  : say('families.current.free', { amps }),
              )
              .join(' · '),
          }),
        ]
      : []),
    ...(mass ? [say('families.mass', { middle: mass.middle, cells: mass.cells })] : []),
    ...(seen > 0 ? [say('families.fakes.count', { count: seen })] : []),
  ]
}

export function sayFactProblem(say: Say, base: Pack, problem: FactProblem): string {
  const named = (): string => {
    switch (problem.code) {
      case 'always-speaks':
      case 'contradictory':
      case 'must-not-earned':
        return sayFeature(say, base, problem.feature)
      case 'fake-looks-genuine':
        return plain(problem.fake)
      case 'figure-out-of-range':
        return say('families.diff.figure', { figure: problem.figure })
      default:
        return plain('at' in problem ? problem.at : problem.code)
    }
  }
  const told = [
    ...(['always-speaks', 'contradictory', 'fake-looks-genuine', 'figure-out-of-range'] as const),
    ...(['least-above-typical', 'nothing-to-hold-against', 'must-not-earned'] as const),
    ...(['name-of-two-alphabets', 'name-reads-like-link'] as const),
  ]
  const code = told.find(one => one === problem.code) ?? 'other'
  return say(`families.problem.${code}`, { feature: named() })
}

export function sayDifference(say: Say, base: Pack, one: Difference): string {
  const feature = 'feature' in one ? sayFeature(say, base, one.feature) : ''
  const options = (chosen: readonly string[]) =>
    chosen.length > 0 && 'feature' in one ? sayOptions(say, base, one.feature, chosen) : say('families.made-open')
  switch (one.is) {
    case 'feature-new':
      return say('families.diff.feature-new', { feature, made: options(one.made) })
    case 'feature-gone':
      return say('families.diff.feature-gone', { feature })
    case 'made':
      return say('families.diff.made', { feature, before: options(one.before), after: options(one.after) })
    case 'tells':
      return say('families.diff.tells', {
        feature,
        options: options(one.options),
        before: say(`families.strength.${one.before}`),
        after: say(`families.strength.${one.after}`),
      })
    case 'exception':
      return say('families.diff.exception', { feature, now: one.now ? 'yes' : 'no' })
    case 'remarks':
    case 'words':
      return say(`families.diff.${one.is}`, { feature })
    case 'figure':
      return say('families.diff.figure', { figure: one.figure })
    case 'fake-new':
    case 'fake-gone':
    case 'fake-changed':
      return say(`families.diff.${one.is}`, { title: plain(one.title) })
    case 'name':
      return say('families.diff.name', { before: plain(one.before), after: plain(one.after) })
    default:
      return say('families.diff.other', { what: one.is })
  }
}
