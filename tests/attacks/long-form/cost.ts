// What a thousand checks cost in processor time of the bot, with one to four processes: the same.
import { many, openFleet, somebody, wholeCheck } from './fleet.ts'
import { openWrongs, type Result } from './result.ts'

const servers = 64
/** So many checks a process does before it runs in its stride: compiling what is hot is paid once a process, not by the check. */
const warming = 150
/** How far a number of processes may lie from the mean of all. */
const within = 0.15

export async function costs(checks: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const seconds: number[] = []
  for (let processes = 1; processes <= 4; processes++) {
    const fleet = await openFleet(processes, servers)
    try {
      const check = (n: number) =>
        wholeCheck(fleet.hands, somebody(fleet.servers[n % servers] as string, processes * 1_000_000 + n))
      await many(warming * processes, 4, check)
      const before = await fleet.cpu()
      await many(checks, 4, n => check(100_000 + n))
      seconds.push((((await fleet.cpu()) - before) / checks) * 1000)
    } finally {
      await fleet.close()
    }
  }
  const mean = seconds.reduce((a, b) => a + b, 0) / seconds.length
  for (const [i, one] of seconds.entries())
    if (Math.abs(one / mean - 1) > within)
      tell(`${i + 1} processes take ${one.toFixed(1)} s, and the mean of all is ${mean.toFixed(1)} s`)
  const said = seconds.map((one, i) => `${i + 1}: ${one.toFixed(1)} s`).join(', ')
  return {
    what: 'checks for each of one to four processes, PostgreSQL',
    done: checks,
    wrong,
    figures: `processor time of the bot for 1,000 checks by processes: ${said}`,
    took: performance.now() - begun,
  }
}
