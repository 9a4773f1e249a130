// Seeded chance for the simulations of this room: the same draws on every run.
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'

/** An even draw from [from, to). */
export function uniformFrom(chance: RandomGenerator, from: number, to: number): number {
  return from + uniformFloat64(chance) * (to - from)
}

/** A draw from the standard normal law (Box and Muller 1958). */
export function normalFrom(chance: RandomGenerator): number {
  const radius = Math.sqrt(-2 * Math.log(1 - uniformFrom(chance, 0, 1)))
  return radius * Math.cos(2 * Math.PI * uniformFrom(chance, 0, 1))
}
