// How much a question tells: expected information gain in bits (Shannon 1948; checked against weka's and scipy's figures).

/** Entropy in bits of a chance distribution. */
export function entropy(chances: ArrayLike<number>): number {
  let sum = 0
  for (let i = 0; i < chances.length; i++) {
    const p = chances[i] as number
    if (p > 0) sum -= p * Math.log2(p)
  }
  return sum
}

/**
 * H(verdict) − Σ chance·H(verdict | branch), in bits, for branches with `chances[i]` that lead to `given[i]`; never below 0
 * but for rounding, which is cut off.
 */
export function informationGain(
  prior: ArrayLike<number>,
  chances: ArrayLike<number>,
  given: readonly ArrayLike<number>[],
): number {
  let rest = 0
  for (let i = 0; i < given.length; i++) rest += (chances[i] as number) * entropy(given[i] as ArrayLike<number>)
  return Math.max(0, entropy(prior) - rest)
}
