// Bench of trends: the watch against EARS C1 and C2 on simulated weeks, and mining against node-fpgrowth on the same rows.
import { FPGrowth } from 'node-fpgrowth'
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { WeekCount } from '../../src/trends/counts.ts'
import { sortCounts } from '../../src/trends/counts.ts'
import { detect } from '../../src/trends/detect.ts'
import { frequentSets, tableOf } from '../../src/trends/patterns/frequent-sets.ts'
import { type JudgedWeek, judgeWeek } from '../../src/trends/rises/judge-week.ts'
import { weekPlus } from '../../src/trends/week.ts'
import { usually } from './effort.ts'
import { compared, type Line, ms, printTable, quantile } from './table.ts'

type Random = ReturnType<typeof xoroshiro128plus>
/** Checks and failures week by week. */
type Weeks = { readonly checks: readonly number[]; readonly failed: readonly number[] }
type Method = { readonly name: string; alarms(weeks: Weeks): readonly number[] }

const runs = usually(4000, 300)
/** The least with which every method has its whole baseline from the first week that counts. */
const history = 28
const year = 52
const soon = 8
const checksAWeek = 20
/** Normal quantile of 0.999: the level EARS is used at. */
const z = 3.0902

const ours = (name: string, method: 'lr-cusum' | 'spike'): Method => ({
  name,
  alarms({ checks, failed }) {
    const found = detect({ method, observed: failed, checks })
    if (!found.ok) throw new Error(found.refusal.code)
    return found.detected.alarms
  },
})

/** The whole way a release goes: scatter test, five surely different people, everything by the week's checks. */
const asReleased: Method = {
  name: 'the watch',
  alarms({ checks, failed }) {
    const first = '2025-W01'
    const counts = sortCounts(
      failed.flatMap((x, t): WeekCount[] => {
        const of = { week: weekPlus(first, t), family: 'harrow-30' }
        const some: WeekCount = { ...of, facet: 'verdict', value: 'ruled-out', reporters: x }
        return [{ ...of, facet: 'all', value: '', reporters: Math.max(checks[t]!, x) }, ...(x > 0 ? [some] : [])]
      }),
    )
    let series: JudgedWeek['series'] = {}
    return failed.flatMap((_, t) => {
      const judged = judgeWeek(counts, weekPlus(first, t), first, series)
      series = judged.series
      return judged.rises.length > 0 ? [t + 1] : []
    })
  },
}

/** C1 looks at the seven weeks before, C2 at the seven that end three back; an alarm is strict (help page of `earsC`, R surveillance). */
const ears = (name: string, back: number, leastSigma: number): Method => ({
  name: `${name} with sigma ≥ ${leastSigma}`,
  alarms: ({ failed }) =>
    failed.flatMap((x, t) => {
      const before = failed.slice(Math.max(0, t - back - 6), Math.max(0, t - back + 1))
      if (before.length < 7) return []
      const mean = before.reduce((a, b) => a + b) / 7
      const sigma = Math.sqrt(before.reduce((sum, y) => sum + (y - mean) ** 2, 0) / 6)
      return x > mean + z * Math.max(sigma, leastSigma) ? [t + 1] : []
    }),
})

/** A server: how failures scatter, and how many times as large it is in a week. One failure a week at size 1. */
type Server = { readonly name: string; readonly clustered: boolean; readonly size: (week: number) => number }
const steady: Server = { name: '', clustered: false, size: () => 1 }
/** Variance μ + 0.5·μ². */
const clustering: Server = { name: 'clustered weeks, ', clustered: true, size: () => 1 }
const growing: Server = {
  name: 'server grows fivefold in a year, ',
  clustered: false,
  size: t => 1 + (4 * t) / (history + year),
}

/** Simulated weeks; from `raisedFrom` on (counted from 0) the rate is tripled. */
function weeksOf(random: Random, weeks: number, raisedFrom: number, { clustered, size }: Server): Weeks {
  const failed = Array.from({ length: weeks }, (_, t) => {
    // Poisson by Knuth's product of uniform numbers; a gamma rate of shape 2 is half the sum of two exponential ones.
    const rate = clustered ? -(Math.log(1 - uniformFloat64(random)) + Math.log(1 - uniformFloat64(random))) / 2 : 1
    const limit = Math.exp(-rate * size(t) * (t >= raisedFrom ? 3 : 1))
    let count = -1
    for (let product = 1; product > limit; count++) product *= uniformFloat64(random)
    return count
  })
  return { failed, checks: failed.map((_, t) => Math.round(checksAWeek * size(t))) }
}

type Simulated = { readonly falseAYear: number; readonly found: number }

function simulate(method: Method, server: Server): Simulated {
  const random = xoroshiro128plus(20_261_125)
  let falseAlarms = 0
  let found = 0
  for (let run = 0; run < runs; run++) {
    const calm = method.alarms(weeksOf(random, history + year, Number.POSITIVE_INFINITY, server))
    falseAlarms += calm.filter(week => week > history).length
    const raised = method.alarms(weeksOf(random, history + soon, history, server))
    if (raised.some(week => week > history)) found++
  }
  return { falseAYear: falseAlarms / runs, found: found / runs }
}

/** The watch against other methods on the same weeks; `held`: it must be better on both. */
function compare(server: Server, others: readonly Method[], held: boolean): Line[] {
  const watch = simulate(asReleased, server)
  return others.flatMap(method => {
    const other = simulate(method, server)
    return [
      {
        what: `${server.name}false alarms a year, the watch against ${method.name}`,
        ours: watch.falseAYear.toFixed(3),
        baseline: other.falseAYear.toFixed(3),
        ratio: watch.falseAYear / other.falseAYear,
        ...(held ? { atMost: 1 } : {}),
      },
      {
        what: `${server.name}tripled rate found within ${soon} weeks, the watch against ${method.name}`,
        ours: watch.found.toFixed(3),
        baseline: other.found.toFixed(3),
        ratio: watch.found / other.found,
        ...(held ? { atLeast: 1 } : {}),
      },
    ]
  })
}

function watching(): Line[] {
  const c = [ears('C1', 1, 0), ears('C1', 1, 1), ears('C2', 3, 0), ears('C2', 3, 1)]
  const without = [ours('itself without scatter test and five people', 'lr-cusum'), ours('our spike view', 'spike')]
  return [
    ...compare(steady, c, true),
    ...compare(steady, without, false),
    ...compare(clustering, c, false),
    ...compare(growing, c, false),
  ]
}

/** Checks of a family as mining sees them: one option of each of eight questions, a place, and now and then rules that fired. */
function transactionsOf(count: number): string[][] {
  const random = xoroshiro128plus(8)
  const int = (most: number) => uniformInt(random, 0, most)
  return Array.from({ length: count }, () => [
    ...Array.from({ length: 8 }, (_, q) => `answer:q${q}=${Math.min(int(3), int(3))}`),
    `bought:${int(3)}`,
    ...Array.from({ length: 6 }, (_, r) => `rule:${r}`).filter(() => int(6) === 0),
  ])
}

async function mining(): Promise<Line[]> {
  const rows = transactionsOf(1000)
  const least = 40
  const timesOurs: number[] = []
  const timesOther: number[] = []
  let [mine, theirs]: [string[], string[]] = [[], []]
  for (let i = 0; i < 7; i++) {
    let start = performance.now()
    const table = tableOf(rows)
    const sets = frequentSets(table, least, Number.POSITIVE_INFINITY)
    timesOurs.push(performance.now() - start)
    start = performance.now()
    const itemsets = await new FPGrowth<string>(least / rows.length).exec(rows)
    timesOther.push(performance.now() - start)
    mine = sets.map(({ items, support }) => `${items.map(item => table.items[item]).join()}:${support}`)
    theirs = itemsets.map(({ items, support }) => `${[...items].sort().join()}:${support}`)
  }
  const known = new Set(theirs)
  if (mine.length !== theirs.length || !mine.every(set => known.has(set))) throw new Error('not the same frequent sets')
  const [mined, other] = [quantile(timesOurs, 0.5), quantile(timesOther, 0.5)]
  return [
    {
      what: `frequent sets of 1,000 checks, ${mine.length} the same in both`,
      ours: ms(mined),
      baseline: `node-fpgrowth ${ms(other)}`,
      ...compared(timesOther, timesOurs),
      atLeast: 10,
    },
  ]
}

export const benchTrends = async (): Promise<Line[]> => [...watching(), ...(await mining())]

if (import.meta.main) process.exitCode = printTable('Trends', await benchTrends()) ? 0 : 1
