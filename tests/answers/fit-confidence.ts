// Fits the weights of the search's confidence on our own fresh questions and prints them: logistic regression by gradient descent.
import type { Signs } from '../../src/answers/confidence.ts'
import { signsOfDanger, speaksOfOtherThings } from '../../src/answers/danger.ts'
import { openShippedSearch, questionsOf } from './questions.ts'

type Example = { readonly x: readonly number[]; readonly right: number }
const signs: readonly Exclude<keyof Signs, 'exact'>[] = ['common', 'close', 'agreed', 'lead', 'astray', 'elsewhere']
/** Pulls weights towards zero, so that a few odd questions do not decide. */
const ridge = 0.001
const rounds = 20_000

const search = await openShippedSearch()
const fresh = [
  ...(questionsOf('own-questions.yaml') ?? []).filter(one => one.fresh || one.right.length === 0),
  ...['worried-newcomers.yaml', 'counted-once.yaml', 'last-look.yaml', 'strangers.yaml', 'treacherous.yaml'].flatMap(
    file => questionsOf(file) ?? [],
  ),
]
const examples = fresh.flatMap(({ ask, language, right }): Example[] => {
  const [first] = search.find(ask, language)
  const names = (word: string) => search.names(word, language)
  // Signs of danger and other things are told by words alone: no sureness decides there.
  if (!first || signsOfDanger(ask, language, names).length > 0 || speaksOfOtherThings(ask, language, names)) return []
  return [{ x: [1, ...signs.map(sign => first.signs[sign])], right: right.includes(first.entry.id) ? 1 : 0 }]
})

const sure = (weights: readonly number[], { x }: Example): number =>
  1 / (1 + Math.exp(-x.reduce((sum, value, i) => sum + value * (weights[i] ?? 0), 0)))

function fitted(from: readonly Example[]): number[] {
  const weights = [0, ...signs.map(() => 0)]
  for (let round = 0; round < rounds; round++) {
    const slope = weights.map((weight, i) => (i === 0 ? 0 : ridge * weight))
    for (const example of from) {
      const off = (sure(weights, example) - example.right) / from.length
      for (const [i, value] of example.x.entries()) slope[i] = (slope[i] ?? 0) + off * value
    }
    for (const [i, value] of slope.entries()) weights[i] = (weights[i] ?? 0) - 0.5 * value
  }
  return weights
}

const weights = fitted(examples)
console.log(['constant', ...signs].map((name, i) => `${name}: ${(weights[i] ?? 0).toFixed(1)}`).join(', '))

// What to expect of questions it was not fitted on: each tenth judged by weights fitted on the other nine.
const tenth = (i: number) => i % 10
const judged = Array.from({ length: 10 }, (_, part) => {
  const mine = fitted(examples.filter((_, i) => tenth(i) !== part))
  return examples.filter((_, i) => tenth(i) === part).map(one => ({ right: one.right, sure: sure(mine, one) }))
}).flat()
for (const line of [0.6, 0.7, 0.75, 0.8, 0.85, 0.9]) {
  const shown = judged.filter(one => one.sure >= line)
  const wrong = shown.filter(one => one.right === 0).length
  console.log(`shown from ${line}: ${shown.length - wrong} right, ${wrong} wrong, of ${judged.length} questions`)
}
