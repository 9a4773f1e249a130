// The demo outcomes tell the story they are made for: the planted pattern is named, and the family that only grows is left alone.
import { expect, test } from 'vitest'
import { demoOutcomes, demoWeeks, plantedFrom } from '../../src/trends/demo.ts'
import { epochOf } from '../../src/trends/epoch.ts'
import { readOutcome } from '../../src/trends/read-outcome.ts'
import { readRelease } from '../../src/trends/release/freeze-week.ts'
import type { Release } from '../../src/trends/release/release.ts'
import { closeDue } from './close-due.ts'
import { demoCast } from './demo-cast.ts'
import { openMemoryOutcomes, openMemoryReleases } from './memory-log.ts'

const last = '2026-W30'
const scope = { kind: 'server', server: demoCast.server } as const

async function releasesOf(seed: number): Promise<Release[]> {
  const outcomes = openMemoryOutcomes()
  for (const outcome of demoOutcomes(seed, demoCast, last)) await outcomes.record(outcome)
  const releases = openMemoryReleases()
  const weeks = await closeDue(outcomes, releases, scope, last)
  return Promise.all(
    weeks.map(async week => {
      const read = readRelease((await releases.bytes(scope, week)) ?? '')
      if (!read.ok) throw new Error(read.refusal.code)
      return read.release
    }),
  )
}

test('sixty weeks of outcomes that a store would take, nobody twice', () => {
  const outcomes = demoOutcomes(7, demoCast, last)
  const keys = outcomes.map(o => `${o.reporter} ${epochOf(o.week)} ${o.family}`)
  expect(new Set(keys).size).toBe(keys.length)
  expect(new Set(outcomes.map(o => o.week)).size).toBe(demoWeeks)
  expect(outcomes.every(o => readOutcome(o).ok)).toBe(true)
  expect(demoOutcomes(7, demoCast, last)).toEqual(outcomes)
})

test('the planted pattern is named by its shortest set and the growing family never accused', async () => {
  const releases = await releasesOf(7)
  const planted = releases.slice(plantedFrom - 1)
  const named = planted.flatMap(r => r.patterns).filter(p => p.family === 'brant-40')
  console.log(
    releases
      .filter(r => r.rises.length + r.spikes.length)
      .map(r => [r.week, JSON.stringify(r.rises), JSON.stringify(r.spikes), JSON.stringify(r.patterns)].join('\n'))
      .join('\n'),
  )
  console.log(JSON.stringify(releases.at(-1), null, 1))
  expect(named.length).toBeGreaterThan(0)
  expect(releases.flatMap(r => r.rises).filter(r => r.family === 'harrow-30')).toEqual([])
})
