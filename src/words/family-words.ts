// Says the things of families: features, figures, problems, differences, versions, and what a cell was held against.
import type { Pack, Question } from '../engine/pack/pack.ts'
import { featureName, optionLabel } from '../families/derive/sentences.ts'
import type { Difference } from '../families/diff.ts'
import type { FactProblem } from '../families/facts/fact-problems.ts'
import type { Identity } from '../families/facts/facts-schema.ts'
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
export const listOf = (say: Say, parts: readonly string[]): string =>
  new Intl.ListFormat(languageOf(say), { type: 'disjunction' }).format(parts)
export const sayOptions = (say: Say, base: Pack, feature: string, options: readonly string[]): string =>
  listOf(
    say,
    options.map(option => sayOption(say, base, feature, option)),
  )
export const together = (say: Say, parts: readonly string[]): string =>
  new Intl.ListFormat(languageOf(say), { type: 'conjunction' }).format(parts)

export const saySize = (say: Say, { format, kind }: Pick<Identity, 'format' | 'kind'>): string =>
  say('families.form.one-size', { format, kind: say(`families.kind.${kind}`) })

/** Which cells are meant, by all that the form asks for. */
export const sayTitle = (say: Say, identity: Pick<Identity, 'name' | 'maker' | 'format' | 'kind'>): string =>
  say('families.title', { name: plain(identity.name), maker: plain(identity.maker), size: saySize(say, identity) })

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
