// Random streams of outcomes to audit releases with: few people, few weeks, counts near five, where one person would show most.
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { Outcome } from '../../../src/trends/outcome.ts'
import { type Week, weekPlus } from '../../../src/trends/week.ts'
import { base } from '../base-outcome.ts'

/** What one person's check can be in a stream: the cells it falls in. */
export type Kind = Pick<Outcome, 'verdict' | 'fired' | 'bought'>

export type Stream = {
  readonly seed: number
  readonly families: readonly string[]
  readonly kinds: readonly Kind[]
  readonly first: Week
  readonly weeks: number
  readonly outcomes: readonly Outcome[]
  /** People who have their outcomes deleted, and after the close of which week (counted from 0). */
  readonly deletions: readonly { readonly reporter: string; readonly afterWeek: number }[]
}

/** As in a real pack: a must rules out, a strong sign makes doubtful, without either it is open or nothing was found. */
export const kinds: readonly Kind[] = ['market', 'shop', 'friend'].flatMap(bought =>
  [[], ['must-a'], ['must-b'], ['must-a', 'must-b'], ['sign-c'], ['must-a', 'sign-c']].flatMap(fired => {
    const verdicts = fired.some(rule => rule.startsWith('must'))
      ? (['ruled-out'] as const)
      : fired.length > 0
        ? (['doubtful'] as const)
        : (['open', 'nothing-found'] as const)
    return verdicts.map(verdict => ({ verdict, fired, bought }))
  }),
)

/** The stream of a seed; every contribution is another person. `most`: it has so many weeks at most, and at least a quarter as many. */
export function randomStream(seed: number, deleting: boolean, most = 12): Stream {
  const random = xoroshiro128plus(seed)
  const int = (least: number, most: number) => uniformInt(random, least, most)
  const pick = <T>(list: readonly T[]): T => list[int(0, list.length - 1)]!
  const first = '2026-W14'
  const weeks = int(most / 4, most)
  const families = ['harrow-30', 'brant-40'].slice(0, int(1, 2))
  // Few kinds make cells coincide and nest, which is when a difference tells most.
  const some = Array.from({ length: int(1, 5) }, () => pick(kinds))
  const outcomes: Outcome[] = []
  for (let week = 0; week < weeks; week++) {
    for (const family of families) {
      const burst = pick([0, 1, 2, 3, 4, 4, 5, 5, 6, 9, 14])
      const kind = pick(some)
      for (let i = 0; i < burst; i++) {
        const reporter = outcomes.length.toString(16).padStart(64, '0')
        outcomes.push({
          ...base,
          ...(int(0, 2) === 0 ? pick(some) : kind),
          family,
          reporter,
          week: weekPlus(first, week),
        })
      }
    }
  }
  const deletions = deleting
    ? outcomes.filter(() => int(0, 5) === 0).map(o => ({ reporter: o.reporter, afterWeek: int(0, weeks - 1) }))
    : []
  return { seed, families, kinds, first, weeks, outcomes, deletions }
}
