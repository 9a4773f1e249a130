// Where the voltage of a resting cell is heading: V(t) = V∞ − a·e^(−t/τ).

export type Relaxation = {
  readonly settled_V: number
  readonly amplitude_V: number
  readonly tau_s: number
  /** Root mean square of what the fit leaves over, V. */
  readonly residual_V: number
  /** Standard uncertainty of `settled_V` from the residuals, V. */
  readonly u_V: number
}

/**
 * Least squares over at least five points: for each τ the other two follow linearly, so only τ is searched, on a
 * logarithmic scale from a tenth of the mean spacing to ten times the span. Null where τ ends at a border: no such curve.
 */
export function fitRelaxation(time_s: ArrayLike<number>, voltage_V: ArrayLike<number>): Relaxation | null {
  const count = Math.min(time_s.length, voltage_V.length)
  if (count < 5) return null
  const start = time_s[0]!
  const span = time_s[count - 1]! - start
  if (!(span > 0)) return null
  const at = (tau: number) => linearPart(time_s, voltage_V, count, start, tau)
  const [low, high] = [Math.log(span / (10 * count)), Math.log(span * 10)]
  let best = low
  let least = Number.POSITIVE_INFINITY
  const coarse = (high - low) / 60
  for (let x = low; x <= high; x += coarse) {
    const { squares } = at(Math.exp(x))
    if (squares < least) [best, least] = [x, squares]
  }
  if (best <= low + coarse / 2 || best >= high - coarse) return null
  const tau = Math.exp(narrow(x => at(Math.exp(x)).squares, best - coarse, best + coarse))
  const { settled, slope, squares, covariance } = at(tau)
  if (!Number.isFinite(settled)) return null
  const residual = Math.sqrt(squares / Math.max(1, count - 3))
  return {
    settled_V: settled,
    amplitude_V: -slope,
    tau_s: tau,
    residual_V: residual,
    u_V: residual * Math.sqrt(covariance),
  }
}

/** Regression of V on e^(−t/τ): intercept, slope, sum of squares left, and the intercept's variance factor. */
function linearPart(
  time_s: ArrayLike<number>,
  voltage_V: ArrayLike<number>,
  count: number,
  start: number,
  tau: number,
) {
  let [meanX, meanY] = [0, 0]
  for (let n = 0; n < count; n++) {
    meanX += Math.exp((start - time_s[n]!) / tau) / count
    meanY += voltage_V[n]! / count
  }
  let [xx, xy, yy] = [0, 0, 0]
  for (let n = 0; n < count; n++) {
    const x = Math.exp((start - time_s[n]!) / tau) - meanX
    const y = voltage_V[n]! - meanY
    xx += x * x
    xy += x * y
    yy += y * y
  }
  const slope = xy / xx
  return {
    slope,
    settled: meanY - slope * meanX,
    squares: Math.max(0, yy - slope * xy),
    covariance: 1 / count + (meanX * meanX) / xx,
  }
}

/** Golden-section search for the minimum of f between a and b (Kiefer 1953). */
function narrow(f: (x: number) => number, a: number, b: number): number {
  const golden = (Math.sqrt(5) - 1) / 2
  let [left, right] = [b - golden * (b - a), a + golden * (b - a)]
  let [atLeft, atRight] = [f(left), f(right)]
  for (let turn = 0; turn < 60; turn++) {
    if (atLeft < atRight) {
      b = right
      ;[right, atRight] = [left, atLeft]
      left = b - golden * (b - a)
      atLeft = f(left)
    } else {
      a = left
      ;[left, atLeft] = [right, atRight]
      right = a + golden * (b - a)
      atRight = f(right)
    }
  }
  return (a + b) / 2
}
