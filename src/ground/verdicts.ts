// The five verdicts, worst first, and how findings add up to one of them.

/** Worst first: every verdict is at least as bad as those behind it. */
export const verdicts = ['danger', 'ruled-out', 'doubtful', 'open', 'nothing-found'] as const
export type Verdict = (typeof verdicts)[number]

/** A check with one of these counts as failed. */
export const failing = ['danger', 'ruled-out', 'doubtful'] as const satisfies readonly Verdict[]
export type Failing = (typeof failing)[number]
export const isFailing = (verdict: Verdict): verdict is Failing => (failing as readonly Verdict[]).includes(verdict)

/** What a sign counts, and from which sum the signs against a cell make it doubtful. */
export const signWeight = { weak: 1, moderate: 2, strong: 4 } as const
export const doubtfulFrom = 4

/**
 * How severe a verdict is: 3 danger, 2 ruled out, 1 doubtful, 0 open or nothing found. The last two are equally mild: both
 * leave the cell unproven.
 */
export const severity = { danger: 3, 'ruled-out': 2, doubtful: 1, open: 0, 'nothing-found': 0 } as const
