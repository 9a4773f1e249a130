// A raid as other servers feel it: of many servers over several processes one is raided; how long others wait, against their quiet median.
import { setTimeout as after } from 'node:timers/promises'
import { begin, openFleet, somebody, unsureOf } from './fleet.ts'
import { inTime } from './in-time.ts'
import { openWrongs, type Result } from './result.ts'

/** People on other servers, who read what they are asked. */
const others = 12
const readsFor = 400
const pressesEach = 3
const mostRatio = 1.5

const median = (all: readonly number[]): number => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? 0

export async function farRaid(people: number, processes: number, servers: number, quietS: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const fleet = await openFleet(processes, servers)
  const raided = fleet.servers[0] as string
  /** In the process of the raided server, and elsewhere. */
  let waits: { readonly near: number[]; readonly far: number[] } = { near: [], far: [] }
  const anew = () => {
    const before = waits
    waits = { near: [], far: [] }
    return before
  }
  let over = false
  const reading = async (n: number) => {
    const isNear = (n + 1) % processes === 0
    const server = fleet.servers[n + 1] as string
    // Nobody may begin as many checks a day as would be needed: each is somebody else's.
    for (let number = 500_000 + n; !over; number += others) {
      const who = somebody(server, number)
      let unsure = unsureOf(await begin(fleet.hands, who))
      while (unsure !== undefined && !over) {
        await after(readsFor)
        const sent = performance.now()
        unsure = unsureOf(await fleet.hands.press(who, unsure))
        waits[isNear ? 'near' : 'far'].push(performance.now() - sent)
      }
    }
  }
  const raider = async (n: number) => {
    const who = somebody(raided, n)
    let screen = await inTime(begin(fleet.hands, who))
    for (let i = 0; i < pressesEach; i++) {
      const unsure = screen && unsureOf(screen)
      if (unsure === undefined) return
      screen = await inTime(fleet.hands.press(who, unsure))
    }
  }
  try {
    const readers = Array.from({ length: others }, (_, n) => reading(n))
    await after(3_000)
    anew()
    await after(quietS * 1000)
    const quiet = anew()
    await Promise.all(Array.from({ length: people }, (_, n) => raider(n)))
    const during = anew()
    over = true
    await Promise.all(readers)
    const told = (['near', 'far'] as const).map(where => {
      const [before, now] = [median(quiet[where]), median(during[where])]
      const ratio = now / before
      const they = where === 'near' ? 'in the same process' : 'in others'
      if (during[where].length < 5) tell(`only ${during[where].length} clicks ${they} fell into the raid`)
      if (!(ratio <= mostRatio)) tell(`${they}, clicks took ${ratio.toFixed(2)} times their quiet median`)
      return `${they} ${now.toFixed(0)} ms for ${before.toFixed(0)} (${ratio.toFixed(2)} times)`
    })
    return {
      what: `members raid one of ${servers.toLocaleString('en')} servers over ${processes} processes`,
      done: people,
      wrong,
      figures: `median of other servers' clicks, raided for quiet: ${told.join(', ')}`,
      took: performance.now() - begun,
    }
  } finally {
    over = true
    await fleet.close()
  }
}
