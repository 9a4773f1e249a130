// What a moderator chooses while a family is made: the size in the form, and the letter of a way of building by what it says.
import type { Say } from '../../src/words/say.ts'

export const bare18650 = (say: Say): string =>
  say('families.form.one-size', { format: '18650', kind: say('families.kind.bare') })

/** The button of the line that says all of these, and nothing of `not`: what it is silent of is as the line above the letters says. */
export function letterOf(words: string, says: readonly string[], not: readonly string[]): RegExp {
  // The page's text runs on from one way of building to the next: each begins with its letter and the name of a feature.
  const ways = words.split(/(?=[A-Z] \p{L}[\p{L} ]+: )/u)
  const lines = ways.filter(line => says.every(one => line.includes(one)) && !not.some(one => line.includes(one)))
  const [letter] = lines.map(line => /^([A-Z]) /.exec(line)?.[1]).filter(one => one !== undefined)
  if (!letter || lines.length !== 1) throw new Error(`${lines.length} lines say ${says.join(', ')} in:\n${words}`)
  return new RegExp(`^${letter}$`)
}
