// What a moderator chooses while a family is made: the size in the form, and the letter of a way of building by what the page says.
import { leadingFeatures } from '../../src/families/features.ts'
import { sayLook } from '../../src/words/family-facts-words.ts'
import { sayFeature } from '../../src/words/family-words.ts'
import type { Say } from '../../src/words/say.ts'
import { anyCell } from '../families/base.ts'

export const bare18650 = (say: Say): string =>
  say('families.form.one-size', { format: '18650', kind: say('families.kind.bare') })

type Looks = Readonly<Partial<Record<(typeof leadingFeatures)[number], string>>>

/** The button of the letter that stands at all of `looks`, and in no line of `unnamed`: there it is as most of them are, or nothing is said of it. */
export function letterOf(say: Say, words: string, looks: Looks, unnamed: readonly (keyof Looks)[]): RegExp {
  const lines = linesOf(say, words)
  const lettered = (feature: string, look = '') => {
    const entries = (lines.get(feature) ?? '').split(' · ').filter(one => one.includes(look))
    return entries.flatMap(one => /^([A-Z](?:, [A-Z])*): /.exec(one)?.[1]?.split(', ') ?? [])
  }
  const wanted = Object.entries(looks).map(([feature, look]) => lettered(feature, sayLook(say, anyCell, feature, look)))
  const [first = [], ...rest] = wanted
  const letters = first
    .filter(one => rest.every(each => each.includes(one)))
    .filter(one => !unnamed.some(feature => lettered(feature).includes(one)))
  if (letters.length !== 1) throw new Error(`${letters.length} letters have ${JSON.stringify(looks)} in:\n${words}`)
  return new RegExp(`^${letters[0]}$`)
}

/** The page's text runs on from one feature to the next: each begins with its name, for the last time there. */
function linesOf(say: Say, words: string): Map<string, string> {
  const starts = leadingFeatures
    .map(feature => ({ feature, name: `${sayFeature(say, anyCell, feature)}: ` }))
    .map(one => ({ ...one, at: words.search(new RegExp(`${one.name}(?:[A-Z](?:, [A-Z])*: )`)) }))
    .filter(one => one.at >= 0)
    .sort((a, b) => a.at - b.at)
  return new Map(starts.map(({ feature, name, at }, i) => [feature, words.slice(at + name.length, starts[i + 1]?.at)]))
}
