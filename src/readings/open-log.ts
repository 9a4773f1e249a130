// Reads a discharge log handed in piece by piece, and says what its discharges amount to.
import { integrate } from './discharge/integrate.ts'
import type { MeasureOptions } from './discharge/measure-options.ts'
import { measureRun, type RunReading } from './discharge/measure-run.ts'
import { phasesOf, type Run, runsOf } from './discharge/phases.ts'
import type { Trace } from './discharge/trace.ts'
import type { ColumnChoice, LogAnswers, LogQuestion, LogRefusal, Role } from './log/answers.ts'
import { dropImpossible } from './log/drop-impossible.ts'
import { lookSwapped } from './log/look-swapped.ts'
import { type Body, openBody } from './log/open-body.ts'
import { putInOrder, type Sign } from './log/put-in-order.ts'
import { type Scales, scalesOf } from './log/scales.ts'
import type { Encoding } from './log/sniff.ts'
import { choiceOf } from './log/table-shape.ts'
import type { TimeKind } from './log/time-cell.ts'

export type LogOptions = MeasureOptions & {
  readonly answers?: LogAnswers
  /** Rows accepted at most; 3,000,000 if not given (some 50 bytes of memory each while reading). */
  readonly mostRows?: number
}

/** How the file turned out to be written. */
export type FoundOut = {
  readonly encoding: Encoding
  readonly delimiter: string
  readonly decimalMark: '.' | ','
  readonly preambleRows: number
  readonly hasHeader: boolean
  readonly columns: Readonly<Partial<Record<Role, ColumnChoice>>>
  readonly timeKind: TimeKind
  readonly units: Scales['units']
  readonly newestFirst: boolean
  /** The sign the file gives the discharge current. */
  readonly sign: Sign
  readonly rows: number
  readonly brokenRows: number
}

export type LogReading =
  | {
      readonly ok: true
      readonly found: FoundOut
      /** In the order of the file; runs with less than 2 % of the largest one's charge are left out. */
      readonly runs: readonly [RunReading, ...RunReading[]]
      /** Index of the run with the most charge. */
      readonly largest: number
    }
  | { readonly ok: false; readonly refusal: LogRefusal }
  | { readonly ok: false; readonly question: LogQuestion }

export type OpenLog = {
  /** Takes the next bytes. "enough" means that more would change nothing: the answer is a refusal or a question. */
  push(chunk: Uint8Array): 'more' | 'enough'
  /** Ends the file and gives the reading; to be called once. */
  end(): LogReading
}

const leastRows = 5
const mostRuns = 24

/**
 * Opens a log for reading. The caller owns the file: it pushes bytes as they come and calls `end`.
 *
 * Found out by itself: encoding, delimiter, decimal mark, header and its language, units, how time is written, column
 * order, sign of the current, pre-amble, several runs. What cannot be found out comes back as a question with the first
 * rows; the answer goes into `options.answers` of another pass over the same file.
 */
export function openLog(options: LogOptions): OpenLog {
  const answers = options.answers ?? {}
  const body = openBody(answers, options.mostRows ?? 3_000_000)
  return {
    push: chunk => body.push(chunk),
    end: () => {
      const read = body.end()
      return 'table' in read ? readTable(read, options, answers) : read
    },
  }
}

function readTable(body: Body, options: LogOptions, answers: LogAnswers): LogReading {
  const { table, raw, broken, restarts, counted_mAh } = body
  const { shape, columns, split, timeKind, twoPartClock } = table
  if (raw.time.length < leastRows) {
    return refuse({ code: 'too-few-rows', rows: raw.time.length, least: leastRows })
  }
  const swapped = answers.columnsAreRight ? null : lookSwapped(raw, shape, columns)
  if (swapped) return { ok: false, question: swapped }
  const scaled = scalesOf({ raw, shape, columns, mark: split.mark, timeKind, twoPartClock, answers, counted_mAh })
  if (!scaled.ok) return scaled
  const kept = dropImpossible(raw, scaled.scales, restarts)
  const brokenRows = broken.broken + kept.dropped + kept.empty
  if (kept.dropped > 0.05 * raw.time.length) {
    const broke = broken.broken + kept.dropped
    return refuse({ code: 'broken-rows', broken: broke, rows: raw.time.length + broken.broken, first: null })
  }
  if (kept.raw.time.length < leastRows) {
    return refuse({ code: 'too-few-rows', rows: kept.raw.time.length, least: leastRows })
  }
  const ordered = putInOrder(kept.raw, scaled.scales, kept.restarts, columns.temperature !== undefined)
  if (!ordered.ok) return ordered
  const { trace } = ordered
  const runs = weightyRuns(trace, runsOf(phasesOf(trace, ordered.restarts), ordered.restarts))
  const [first, ...others] = runs.map(({ run }) =>
    measureRun(trace, run, { ...options, counterFactor: scaled.scales.counterFactor }),
  )
  if (!first) return refuse({ code: 'charge-only' })
  const charges = runs.map(({ charge_As }) => charge_As)
  const choices = (Object.entries(columns) as [Role, number][]).map(([role, column]) => [role, choiceOf(shape, column)])
  return {
    ok: true,
    found: {
      encoding: body.encoding,
      delimiter: split.delimiter,
      decimalMark: split.mark,
      preambleRows: shape.preamble,
      hasHeader: shape.hasHeader,
      columns: Object.fromEntries(choices),
      timeKind,
      units: scaled.scales.units,
      newestFirst: ordered.newestFirst,
      sign: ordered.sign,
      rows: trace.rows,
      brokenRows,
    },
    runs: [first, ...others],
    largest: charges.indexOf(Math.max(...charges)),
  }
}

/** The runs that matter, with their charge between samples; at most two dozen of the largest, in order. */
function weightyRuns(trace: Trace, runs: readonly Run[]): { readonly run: Run; readonly charge_As: number }[] {
  const weighed = runs.map(run => ({
    run,
    charge_As: run.loads.reduce((sum, load) => sum + integrate(trace, load).charge_As, 0),
  }))
  const most = weighed.reduce((best, { charge_As }) => Math.max(best, charge_As), 0)
  const worth = weighed.filter(({ charge_As }) => charge_As >= 0.02 * most)
  const least = worth.map(({ charge_As }) => charge_As).sort((a, b) => b - a)[mostRuns - 1] ?? 0
  return worth.filter(({ charge_As }) => charge_As >= least).slice(0, mostRuns)
}

function refuse(refusal: LogRefusal): LogReading {
  return { ok: false, refusal }
}
