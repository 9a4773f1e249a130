// Bench of trends: the watch against EARS C1 and C2 on simulated weeks, and mining against node-fpgrowth on the same rows.
import { FPGrowth } from 'node-fpgrowth'
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import { detect } from '../../src/trends/detect.ts'
import { frequentSets, tableOf } from '../../src/trends/patterns/frequent-sets.ts'
import { type Line, ms, printTable, quantile } from './table.ts'

const runs = 4000
/** The least with which every method has its whole baseline from the first week that counts. */
const history = 28
const year = 52
const soon = 8
const checksAWeek = 20
/** Normal quantile of 0.999: the level EARS is used at. */
const z = 3.0902

type Method = { readonly name: string; alarms(observed: readonly number[]): readonly number[] }

const ours = (name: string, method: 'lr-cusum' | 'spike'): Method => ({
  name,
  alarms(observed) {
    const found = detect({ method, observed, checks: observed.map(() => checksAWeek) })
    if (!found.ok) throw new Error(found.refusal.code)
    return found.detected.alarms
  },
})

/** C1 looks at the seven weeks before, C2 at the seven that end three back; an alarm is strict (help page of `earsC`, R surveillance). */
const ears = (name: string, back: number, leastSigma: number): Method => ({
  name: `${name}, least sigma ${leastSigma}`,
  alarms: observed =>
    observed.flatMap((x, t) => {
      const before = observed.slice(Math.max(0, t - back - 6), Math.max(0, t - back + 1))
      if (before.length < 7) return []
      const mean = before.reduce((a, b) => a + b) / 7
      const sigma = Math.sqrt(before.reduce((sum, y) => sum + (y - mean) ** 2, 0) / 6)
      return x > mean + z * Math.max(sigma, leastSigma) ? [t + 1] : []
    }),
})

/** Counts of failures: one a week, three from `raisedFrom` on (counted from 0). */
function weeksOf(random: ReturnType<typeof xoroshiro128plus>, weeks: number, raisedFrom: number): number[] {
  return Array.from({ length: weeks }, (_, t) => {
    // Poisson by Knuth's product of uniform numbers.
    const limit = Math.exp(t >= raisedFrom ? -3 : -1)
    let count = -1
    for (let product = 1; product > limit; count++) product *= uniformFloat64(random)
    return count
  })
}

function simulate(method: Method): { readonly falseAYear: number; readonly found: number } {
  const random = xoroshiro128plus(20_261_125)
  let falseAlarms = 0
  let found = 0
  for (let run = 0; run < runs; run++) {
    const calm = method.alarms(weeksOf(random, history + year, Number.POSITIVE_INFINITY))
    falseAlarms += calm.filter(week => week > history).length
    const raised = method.alarms(weeksOf(random, history + soon, history))
    if (raised.some(week => week > history)) found++
  }
  return { falseAYear: falseAlarms / runs, found: found / runs }
}

function watching(): Line[] {
  const watch = simulate(ours('watch', 'lr-cusum'))
  const compare = (method: Method, held: boolean): Line[] => {
    const other = simulate(method)
    return [
      {
        what: `false alarms a year, against ${method.name}`,
        ours: watch.falseAYear.toFixed(3),
        baseline: other.falseAYear.toFixed(3),
        ratio: watch.falseAYear / other.falseAYear,
        ...(held ? { atMost: 1 } : {}),
      },
      {
        what: `tripled rate found within ${soon} weeks, against ${method.name}`,
        ours: watch.found.toFixed(3),
        baseline: other.found.toFixed(3),
        ratio: watch.found / other.found,
        ...(held ? { atLeast: 1 } : {}),
      },
    ]
  }
  const earsMethods = [ears('C1', 1, 0), ears('C1', 1, 1), ears('C2', 3, 0), ears('C2', 3, 1)]
  return [
    ...earsMethods.flatMap(method => compare(method, true)),
    ...compare(ours('our own spike view', 'spike'), false),
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
      ratio: other / mined,
      atLeast: 10,
    },
  ]
}

export const benchTrends = async (): Promise<Line[]> => [...watching(), ...(await mining())]

if (import.meta.main) process.exitCode = printTable('Trends', await benchTrends()) ? 0 : 1
