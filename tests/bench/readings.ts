// Bench of reading logs: full analysis of 1,000,000 rows against bare csv-parse of the same bytes, memory, and doubling.
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { createReadStream, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parse } from 'csv-parse'
import { openLog } from '../../src/readings/open-log.ts'
import { discharge, styles, usualCell, writeLog } from '../readings/generate-log.ts'
import { usually } from './effort.ts'
import { compared, type Line, ms, quantile } from './table.ts'

const rows = usually(1_000_000, 200_000)
const passes = usually(5, 3)

/** What one child process measured. */
interface Measured {
  readonly ms: readonly number[]
  readonly idleBytes: number
  readonly peakBytes: number
  readonly result: string
}

/**
 * Processor time and growth, each the median of five passes in a process of its own; memory of one pass in another. Time on the
 * clock would be that of whoever else is on the machine, too: doubling took 1.9 to 3 times as long by it.
 */
export async function benchReadings(): Promise<Line[]> {
  const folder = mkdtempSync(join(tmpdir(), 'cellwary-bench-'))
  try {
    const [one, two] = [join(folder, 'one.csv'), join(folder, 'two.csv')]
    writeFileSync(one, longLog(rows))
    writeFileSync(two, longLog(2 * rows))
    const bare = await measure('bare', one)
    const ours = await measure('ours', one)
    const doubled = await measure('ours', two)
    const once = await measure('ours', one, 1)
    if (!ours.result.startsWith('read')) throw new Error(ours.result)
    const [bareMs, oursMs, doubledMs] = [bare, ours, doubled].map(each => quantile(each.ms, 0.5)) as [
      number,
      number,
      number,
    ]
    const megabytes = (once.peakBytes - once.idleBytes) / 1024 / 1024
    console.log(`  one log: ${ours.result}; bare csv-parse: ${bare.result}`)
    return [
      {
        what: `${rows.toLocaleString('en')} rows, full analysis`,
        ours: ms(oursMs),
        baseline: `${ms(bareMs)} csv-parse`,
        ...compared(ours.ms, bare.ms),
        atMost: 0.5,
      },
      {
        what: 'peak memory above idle, in 150 MB',
        ours: `${megabytes.toFixed(0)} MB`,
        baseline: '150 MB',
        ratio: megabytes / 150,
        atMost: 1,
      },
      {
        what: 'twice as many rows',
        ours: ms(doubledMs),
        baseline: ms(oursMs),
        ...compared(doubled.ms, ours.ms),
        atMost: 2.2,
      },
    ]
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** The generator's discharge, sampled as finely as it takes to fill the rows. */
export function longLog(count: number): Uint8Array {
  const every_s = 10_340 / count
  const samples = discharge({ ...usualCell, every_s }, count)
  return writeLog({ ...styles[0]!, cells: [s => s.t.toFixed(4), ...styles[0]!.cells.slice(1)] }, samples)
}

async function measure(what: 'bare' | 'ours', file: string, times = passes): Promise<Measured> {
  const child = fork(import.meta.filename, [what, file, String(times)], { execArgv: ['--expose-gc'] })
  const [message] = (await once(child, 'message')) as [Measured]
  return message
}

async function readBare(file: string): Promise<string> {
  let records = 0
  const parser = createReadStream(file).pipe(parse())
  parser.on('data', () => records++)
  await once(parser, 'end')
  return `${records} records`
}

async function readOurs(file: string): Promise<string> {
  const log = openLog({ instrument: { kind: 'hobby-load' }, cutoff_V: 2.8, claimed_mAh: 3000 })
  for await (const chunk of createReadStream(file)) if (log.push(chunk) === 'enough') break
  const reading = log.end()
  if (!reading.ok) return JSON.stringify(reading)
  const { capacity } = reading.runs[0].figures
  return `read ${reading.found.rows} rows, ${capacity.value?.toFixed(1)} mAh, u ${capacity.u.toFixed(1)}`
}

/** The most this process has had, in bytes. What `resourceUsage` says begins with what its parent had when it was started. */
const peakBytes = (): number =>
  Number(/^VmHWM:\s*(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))?.[1] ?? Number.NaN) * 1024

async function child(what: string, file: string, count: number): Promise<void> {
  globalThis.gc?.()
  const idleBytes = process.memoryUsage.rss()
  const times: number[] = []
  let result = ''
  for (let pass = 0; pass < count; pass++) {
    const started = process.cpuUsage()
    result = await (what === 'bare' ? readBare(file) : readOurs(file))
    const { user, system } = process.cpuUsage(started)
    times.push((user + system) / 1000)
  }
  const measured: Measured = { ms: times, idleBytes, peakBytes: peakBytes(), result }
  process.send?.(measured)
  process.disconnect()
}

const [what, file, count] = process.argv.slice(2)
if (import.meta.main && what && file) await child(what, file, Number(count))
else if (import.meta.main) {
  const { printTable } = await import('./table.ts')
  process.exitCode = printTable('Reading logs', await benchReadings()) ? 0 : 1
}
