// Tarone's correction: a pattern too rare to reach significance whatever happened need not be paid for.

/**
 * The smallest k such that at most k patterns could reach `level`/k at all; testing those at `level`/k keeps the chance of any false
 * find under `level`. Tarone 1990, Biometrics 46:515–522, in the form of Terada et al. 2013, PNAS 110:12996–13001.
 * @param least least attainable p of each pattern
 */
export function taroneFactor(least: readonly number[], level: number): number {
  const sorted = [...least].sort((a, b) => a - b)
  // What could reach level/k falls as k grows, so once it is at most k it stays so.
  let low = 1
  let high = Math.max(1, sorted.length)
  while (low < high) {
    const k = (low + high) >>> 1
    if (countUpTo(sorted, level / k) <= k) high = k
    else low = k + 1
  }
  return low
}

/** How many of the sorted numbers are at most `limit`. */
function countUpTo(sorted: readonly number[], limit: number): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (sorted[middle]! <= limit) low = middle + 1
    else high = middle
  }
  return low
}
