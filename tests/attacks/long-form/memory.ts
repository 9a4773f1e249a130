// Memory over many interactions: what a process has taken after the first quarter of them is about what it has at the end.
import { many, openFleet, somebody, wholeCheck } from './fleet.ts'
import { openWrongs, type Result } from './result.ts'

const servers = 64
/** How much more than after a quarter; it takes so many interactions until the collector has found its stride and this is judged. */
const most = 0.15
const judgedFrom = 20_000

export async function memoryOver(interactions: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const fleet = await openFleet(1, servers)
  const at: number[] = []
  let done = 0
  let who = 0
  try {
    const start = await fleet.memory()
    for (let quarter = 1; quarter <= 4; quarter++) {
      while (done < (interactions * quarter) / 4)
        await many(40, 4, async () => {
          const n = who++
          // Added afterwards: what is read before the wait would forget what others have done meanwhile.
          const made = await wholeCheck(fleet.hands, somebody(fleet.servers[n % servers] as string, n))
          done += made
        })
      at.push(await fleet.memory())
    }
    const [first = 0, , , last = 0] = at
    if (interactions >= judgedFrom && last > first * (1 + most))
      tell(`${last.toFixed(0)} MB at the end, and ${first.toFixed(0)} MB after a quarter`)
    const said = [start, ...at].map(one => one.toFixed(0)).join(', ')
    return {
      what: 'interactions in one process, PostgreSQL',
      done,
      wrong,
      figures: `memory in MB at the start and after each quarter: ${said}`,
      took: performance.now() - begun,
    }
  } finally {
    await fleet.close()
  }
}
