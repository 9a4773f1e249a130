// Figures of R 4.2.2 with surveillance 1.20.3: bayes(st, control = list(range =, b = 0, w =, actY = TRUE, alpha =)).

export const observed = [0, 1, 0, 2, 1, 0, 1, 3, 0, 1, 2, 1, 0, 0, 1, 4, 2, 5, 6, 1, 0, 1, 0, 2, 0, 1, 3, 1, 0, 0]
export const zerosThenSmall = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 0, 2, 3]

/** Bounds from week `from` (counted from 1) on, each by the `w` weeks before; alarms are the weeks above their bound. */
export const bounds = [
  {
    series: 'observed',
    w: 6,
    alpha: 0.05,
    from: 7,
    upperbound: [3, 3, 4, 4, 3, 4, 4, 4, 3, 3, 4, 4, 5, 7, 7, 7, 6, 5, 4, 3, 3, 4, 4, 4],
    alarms: [16, 18, 19],
  },
  {
    series: 'observed',
    w: 6,
    alpha: 0.01,
    from: 7,
    upperbound: [4, 4, 5, 5, 5, 5, 5, 5, 4, 4, 5, 5, 7, 8, 9, 8, 7, 7, 6, 4, 4, 5, 5, 5],
    alarms: [],
  },
  {
    series: 'observed',
    w: 12,
    alpha: 0.05,
    from: 13,
    upperbound: [3, 3, 3, 3, 3, 3, 4, 5, 5, 5, 5, 4, 4, 4, 5, 5, 4, 4],
    alarms: [16, 18, 19],
  },
  {
    series: 'observed',
    w: 12,
    alpha: 0.01,
    from: 13,
    upperbound: [4, 4, 4, 4, 5, 5, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6],
    alarms: [],
  },
  {
    series: 'zerosThenSmall',
    w: 6,
    alpha: 0.05,
    from: 7,
    upperbound: [1, 1, 1, 1, 1, 1, 1, 1, 1, 2],
    alarms: [15, 16],
  },
] as const
