// Mutated logs by the thousand: none may throw, hang, eat memory or give a figure that is no number.
// Alone: node tests/fuzz/logs.ts 100000 [seed]
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'
import { evidenceOf } from '../../src/readings/discharge/evidence.ts'
import type { Figure } from '../../src/readings/figure.ts'
import { type LogReading, openLog } from '../../src/readings/open-log.ts'
import { weighDischarge } from '../../src/readings/weigh-discharge.ts'
import { uniformFrom } from '../readings/chance.ts'
import { charge, discharge, styles, usualCell, writeLog } from '../readings/generate-log.ts'

export interface FuzzReport {
  readonly logs: number
  /** How many ended in each code; "read" is a reading. */
  readonly outcomes: Readonly<Record<string, number>>
  readonly slowestMs: number
  readonly peakMegabytes: number
  /** Empty, or what went wrong with the seed of the log that did it. */
  readonly failures: readonly string[]
}

/** Of this process' own work, in ms: what others do on the machine is not counted. */
const slowest = 2000
/** Of the whole process, with the generator and the garbage of thousands of logs. */
const mostMegabytes = 512
const samples = [
  discharge({ ...usualCell, every_s: 300 }),
  discharge({ ...usualCell, every_s: 120, current_A: 3 }),
  [...discharge({ ...usualCell, every_s: 300 }), ...charge(20_000, 120)],
]
const seeds: readonly Uint8Array[] = styles.flatMap(style => samples.map(each => writeLog(style, each)))

const oddities = [
  '"',
  '""',
  ',',
  ';',
  '\t',
  '\n',
  '\r',
  '\r\n',
  '\0',
  '=',
  '=1+1',
  'NaN',
  'inf',
  '1e999',
  '-',
  '.',
  ':',
  '99:99',
  '€',
  '\ufeff',
  '0'.repeat(300),
  '1.234.567,8',
  '12/31/2025',
  '-0',
  '1e-320',
  '9007199254740993',
  'Time (s)',
  'mV',
  '@everyone',
  '𝟙',
]

/** Reads `count` mutated logs; the same seed gives the same logs. */
export function fuzzLogs(count: number, seed: number, onProgress?: (done: number) => void): FuzzReport {
  const outcomes: Record<string, number> = {}
  const failures: string[] = []
  let slowestMs = 0
  let peak = 0
  for (let log = 0; log < count && failures.length < 20; log++) {
    const chance = chanceOf(seed + log)
    const bytes = mutated(chance)
    const before = process.cpuUsage()
    try {
      const reading = read(bytes, chance)
      const wrong = whatIsWrong(reading)
      if (wrong) failures.push(`${seed + log}: ${wrong}`)
      const code = codeOf(reading)
      outcomes[code] = (outcomes[code] ?? 0) + 1
    } catch (error) {
      failures.push(`${seed + log}: threw ${error instanceof Error ? error.stack : String(error)}`)
    }
    const took = process.cpuUsage(before).user / 1000
    if (took > slowest) failures.push(`${seed + log}: took ${took.toFixed(0)} ms of work`)
    slowestMs = Math.max(slowestMs, took)
    if (log % 500 === 0) {
      peak = Math.max(peak, process.memoryUsage.rss())
      onProgress?.(log)
    }
  }
  const peakMegabytes = peak / 1024 / 1024
  if (peakMegabytes > mostMegabytes) failures.push(`the process grew to ${peakMegabytes.toFixed(0)} MB`)
  return { logs: count, outcomes, slowestMs, peakMegabytes, failures }
}

/** Neighbouring seeds begin alike, so the first numbers of each are left out. */
function chanceOf(seed: number): RandomGenerator {
  const chance = xoroshiro128plus(seed)
  for (let skip = 0; skip < 16; skip++) chance.next()
  return chance
}

const pick = <T>(chance: RandomGenerator, from: readonly T[]): T =>
  from[Math.floor(uniformFrom(chance, 0, from.length))]!
const below = (chance: RandomGenerator, limit: number) => Math.floor(uniformFrom(chance, 0, limit))

function mutated(chance: RandomGenerator): Uint8Array {
  let bytes = Buffer.from(pick(chance, seeds))
  for (let turn = 1 + below(chance, 3); turn > 0; turn--) bytes = mutate(bytes, chance)
  return new Uint8Array(bytes)
}

function mutate(bytes: Buffer<ArrayBuffer>, chance: RandomGenerator): Buffer<ArrayBuffer> {
  const at = below(chance, bytes.length + 1)
  const length = 1 + below(chance, pick(chance, [4, 40, 400, 4000]))
  const [before, after] = [bytes.subarray(0, at), bytes.subarray(at)]
  switch (below(chance, 9)) {
    case 0: {
      const flipped = Buffer.from(bytes)
      for (let n = 0; n < length && flipped.length > 0; n++) flipped[below(chance, flipped.length)] = below(chance, 256)
      return flipped
    }
    case 1:
      return Buffer.concat([before, after.subarray(length)])
    case 2:
      return Buffer.concat([before, after.subarray(0, length), after])
    case 3:
      return Buffer.concat([before, Buffer.from(pick(chance, oddities)), after])
    case 4:
      return Buffer.from(before)
    case 5: {
      const lines = bytes.toString('latin1').split('\n')
      const [a, b] = [below(chance, lines.length), below(chance, lines.length)]
      ;[lines[a], lines[b]] = [lines[b]!, lines[a]!]
      return Buffer.from(lines.join('\n'), 'latin1')
    }
    case 6: {
      const [from, to] = [pick(chance, [',', ';', '.', '\t', '\n', '0', '4', ' ']), pick(chance, oddities)]
      return Buffer.from(
        bytes.toString('latin1').replaceAll(from, below(chance, 3) > 0 ? from : to.slice(0, 12)),
        'latin1',
      )
    }
    case 7: {
      // One cell of one column in many rows becomes something else.
      const odd = pick(chance, oddities)
      const column = below(chance, 5)
      const every = 1 + below(chance, 40)
      const rows = bytes.toString('latin1').split('\n')
      const changed = rows.map((row, n) =>
        n % every
          ? row
          : row
              .split(/([,;\t|])/)
              .map((cell, c) => (c === 2 * column ? odd : cell))
              .join(''),
      )
      return Buffer.from(changed.join('\n'))
    }
    default:
      return Buffer.concat([bytes, Buffer.from(pick(chance, seeds)).subarray(0, 60_000)])
  }
}

function read(bytes: Uint8Array, chance: RandomGenerator): LogReading {
  const log = openLog({
    instrument: { kind: 'hobby-load' },
    claimed_mAh: 9900,
    ...(below(chance, 2) ? { cutoff_V: 2.8 } : {}),
  })
  const piece = 1 + below(chance, pick(chance, [50, 5000, 100_000]))
  for (let at = 0; at < bytes.length; at += piece) if (log.push(bytes.subarray(at, at + piece)) === 'enough') break
  return log.end()
}

function codeOf(reading: LogReading): string {
  return reading.ok ? 'read' : 'refusal' in reading ? reading.refusal.code : `asks ${reading.question.code}`
}

/** Figures must be numbers, uncertainties not negative, intervals in order, curves short; findings must come of it. */
function whatIsWrong(reading: LogReading): string | null {
  if (!reading.ok) return JSON.stringify(reading).length > 20_000 ? 'a refusal of more than 20,000 characters' : null
  for (const run of reading.runs) {
    for (const [name, figure] of Object.entries(run.figures) as [string, Figure | null][]) {
      if (!figure) continue
      const { value, u, interval } = figure
      if (value === null ? interval === null : !Number.isFinite(value)) return `${name} is ${value}`
      if (!(u >= 0 && Number.isFinite(u))) return `u of ${name} is ${u}`
      if (interval && !(Number.isFinite(interval.from) && (interval.to === null || interval.to >= interval.from))) {
        return `${name} lies in ${JSON.stringify(interval)}`
      }
    }
    if (run.curve.length > 400 || run.curve.some(point => !Number.isFinite(point.capacity_mAh + point.voltage_V)))
      return 'curve'
    weighDischarge(evidenceOf(run), {
      label_mAh: 3000,
      continuous_A: 1,
      minimum: { capacity_mAh: 2800, current_A: 1, cutoff_V: 2.8 },
    })
  }
  return null
}

if (import.meta.main) {
  const [count = '100000', seed = '1'] = process.argv.slice(2)
  const started = performance.now()
  const report = fuzzLogs(Number(count), Number(seed), done => {
    if (done % 10_000 === 0) console.log(`${done} logs, ${((performance.now() - started) / 1000).toFixed(0)} s`)
  })
  console.log(report)
  process.exitCode = report.failures.length === 0 ? 0 : 1
}
