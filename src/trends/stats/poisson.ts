// Poisson numbers for simulations, from a generator that is handed in.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import type { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

export type Random = ReturnType<typeof xoroshiro128plus>

/** A product of uniform numbers stays above zero for means up to this. */
const mostAtOnce = 500

/** One Poisson number of this mean, by Knuth's product of uniform numbers; a large mean is the sum of smaller ones. */
export function poisson(random: Random, mean: number): number {
  if (mean > mostAtOnce) return poisson(random, mostAtOnce) + poisson(random, mean - mostAtOnce)
  const limit = Math.exp(-mean)
  let count = -1
  for (let product = 1; product > limit; count++) product *= uniformFloat64(random)
  return count
}
