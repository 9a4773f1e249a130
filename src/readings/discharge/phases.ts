// Cuts a trace into stretches of rest, load and charge, and these into runs of one discharge each.
import { quantile, type Rows, type Trace } from './trace.ts'

export type Phase = Rows & {
  readonly kind: 'rest' | 'load' | 'charge'
}

/** One discharge with the rest before and after it. */
export type Run = Rows & {
  /** The stretches under load, in order; at least one. */
  readonly loads: readonly [Rows, ...Rows[]]
}

/** Current below which a cell counts as resting, in A: 2 % of the usual load, but within 5 to 50 mA. */
function restThreshold(trace: Trace): number {
  const usual = quantile(trace.rows, row => Math.abs(trace.current_A[row]!) || Number.NaN, 0.9)
  return Math.min(0.05, Math.max(0.005, 0.02 * (usual || 0)))
}

/** Stretches of one kind, in order, covering all rows; a break in time (`restarts`) always starts a new one. */
export function phasesOf(trace: Trace, restarts: readonly number[]): Phase[] {
  const threshold = restThreshold(trace)
  const phases: Phase[] = []
  let from = 0
  let nextRestart = 0
  const kindAt = (row: number): Phase['kind'] => {
    const current = trace.current_A[row]!
    return current > threshold ? 'load' : current < -threshold ? 'charge' : 'rest'
  }
  if (trace.rows === 0) return phases
  let kind = kindAt(0)
  for (let row = 1; row < trace.rows; row++) {
    const next = kindAt(row)
    const restarted = restarts[nextRestart] === row
    if (restarted) nextRestart++
    if (next === kind && !restarted) continue
    phases.push({ kind, from, to: row - 1 })
    from = row
    kind = next
  }
  phases.push({ kind, from, to: trace.rows - 1 })
  return phases
}

/** Runs, in order: a charge, or a restart of the clock, ends one. Stretches without any load belong to none. */
export function runsOf(phases: readonly Phase[], restarts: readonly number[]): Run[] {
  const runs: Run[] = []
  let open: { from: number; to: number; loads: Rows[] } | undefined
  const close = () => {
    const [first, ...others] = open?.loads ?? []
    if (open && first) runs.push({ from: open.from, to: open.to, loads: [first, ...others] })
    open = undefined
  }
  const breaks = new Set(restarts)
  for (const phase of phases) {
    if (phase.kind === 'charge') {
      close()
      continue
    }
    if (breaks.has(phase.from)) close()
    open ??= { from: phase.from, to: phase.to, loads: [] }
    open.to = phase.to
    if (phase.kind === 'load') open.loads.push({ from: phase.from, to: phase.to })
  }
  close()
  return runs
}
