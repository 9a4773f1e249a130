// What a raid of one server leaves to others on the same loop, in a time of its own: exact, whatever else the machine does.
import { describe, expect, test } from 'vitest'
import { type LaneRules, openServerLanes } from '../../src/services/fair-use/server-lanes.ts'
import { openOneLoop } from './one-loop.ts'

/** A press, as measured: five slices of half a millisecond, and between them the database or Discord for a millisecond and a half. */
const press = { slices: 5, ms: 0.5, elsewhere: 1.5 }
/** What it costs to read one interaction off the wire. */
const arriving = 0.1
const readers = 12
const readsFor = 400

const median = (all: readonly number[]) => all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? 0

/** How long a press of other servers takes, in ms, and how many of the raid's were served, while it is raided by so many at once. */
async function raided(raiders: number, rules: LaneRules = {}, ms = 3_000) {
  const loop = openOneLoop()
  const lanes = openServerLanes({ ...rules, after: loop.wait })
  const waits: number[] = []
  let served = 0
  const serve = async (server: string, person: string) => {
    await loop.work(arriving)
    await lanes.run(server, person, async () => {
      for (let n = 0; n < press.slices; n++) {
        if (n > 0) await loop.wait(press.elsewhere)
        await loop.work(press.ms)
      }
    })
  }
  const reader = async (n: number) => {
    await loop.wait((n * readsFor) / readers)
    for (;;) {
      await loop.wait(readsFor)
      const sent = loop.now()
      await serve(`server ${n}`, `reader ${n}`)
      waits.push(loop.now() - sent)
    }
  }
  const raider = async (n: number) => {
    for (;;) {
      await serve('raided', `raider ${n}`)
      served++
    }
  }
  for (let n = 0; n < readers; n++) void reader(n)
  for (let n = 0; n < raiders; n++) void raider(n)
  await loop.runUntil(ms)
  return { median: median(waits), served }
}

describe('a raid of one server that never lets up', () => {
  test('of two thousand: others wait no more than a fifth longer than when it is quiet', async () => {
    const quiet = await raided(0)
    const during = await raided(2_000)
    expect(during.median / quiet.median).toBeLessThanOrEqual(1.2)
    // And the raid is served, too.
    expect(during.served).toBeGreaterThan(200)
  })

  test('where each is served as it comes, ten of them make others wait three times as long', async () => {
    const quiet = await raided(0)
    const during = await raided(10, { places: 1_000, yieldMs: 0 })
    expect(during.median / quiet.median).toBeGreaterThan(3)
  })
})

test('where everybody else is always being served, a crowd is served all the same', async () => {
  const loop = openOneLoop()
  const lanes = openServerLanes({ after: loop.wait })
  let served = 0
  const forever = async () => {
    for (;;) await lanes.run('busy', 'busy', () => loop.wait(1_000))
  }
  void forever()
  for (let n = 0; n < 40; n++) void lanes.run('raided', `r${n}`, () => loop.wait(1)).then(() => served++)
  await loop.runUntil(2_000)
  expect(served).toBe(40)
})
