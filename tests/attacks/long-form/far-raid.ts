// A raid as other servers feel it: of many servers over several processes one is raided; how long others wait, against their quiet median.
import { setTimeout as after } from 'node:timers/promises'
import { begin, openFleet, somebody, unsureOf } from './fleet.ts'
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
  let waits: number[] = []
  let over = false
  /** Somebody elsewhere: those of even numbers have their server in the process of the raided one. */
  const reading = async (n: number) => {
    const who = somebody(fleet.servers[n + 1] as string, 500_000 + n)
    let screen = await begin(fleet.hands, who)
    while (!over) {
      await after(readsFor)
      const unsure = unsureOf(screen)
      const sent = performance.now()
      screen = await (unsure === undefined ? begin(fleet.hands, who) : fleet.hands.press(who, unsure))
      if (unsure !== undefined) waits.push(performance.now() - sent)
    }
  }
  const raider = async (n: number) => {
    const who = somebody(raided, n)
    let screen = await begin(fleet.hands, who)
    for (let i = 0; i < pressesEach; i++) {
      const unsure = unsureOf(screen)
      if (unsure === undefined) return
      screen = await fleet.hands.press(who, unsure)
    }
  }
  try {
    const readers = Array.from({ length: others }, (_, n) => reading(n))
    await after(3_000)
    waits = []
    await after(quietS * 1000)
    const quiet = median(waits)
    waits = []
    await Promise.all(Array.from({ length: people }, (_, n) => raider(n)))
    const during = waits
    over = true
    await Promise.all(readers)
    const ratio = median(during) / quiet
    if (during.length < 5) tell(`only ${during.length} clicks of others fell into the raid`)
    if (!(ratio <= mostRatio)) tell(`others waited ${ratio.toFixed(2)} times their quiet median`)
    return {
      what: `members raid one of ${servers.toLocaleString('en')} servers over ${processes} processes`,
      done: people,
      wrong,
      figures: `others' clicks ${median(during).toFixed(0)} ms (${during.length} of them), quiet ${quiet.toFixed(0)} ms: ${ratio.toFixed(2)} times`,
      took: performance.now() - begun,
    }
  } finally {
    over = true
    await fleet.close()
  }
}
