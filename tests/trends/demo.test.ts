// The demo outcomes tell the story they are made for: the planted pattern is named, and the family that only grows is left alone.
import { expect, test } from 'vitest'
import { demoOutcomes, demoWeeks, plantedFrom } from '../../src/trends/demo.ts'
import { epochOf } from '../../src/trends/epoch.ts'
import { readOutcome } from '../../src/trends/outcome.ts'
import { readRelease } from '../../src/trends/release/freeze-week.ts'
import type { Release } from '../../src/trends/release/release.ts'
import { weekPlus } from '../../src/trends/week.ts'
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

test('sixty weeks of outcomes that a store would take, and no code twice: not of one family, and not of two', () => {
  const outcomes = demoOutcomes(7, demoCast, last)
  expect(new Set(outcomes.map(o => o.reporter)).size).toBe(outcomes.length)
  expect(new Set(outcomes.map(o => o.week)).size).toBe(demoWeeks)
  expect(outcomes.every(o => readOutcome(o).ok)).toBe(true)
  expect(demoOutcomes(7, demoCast, last)).toEqual(outcomes)
})

test('from so many checks a week the server grows evenly to so many', () => {
  const outcomes = demoOutcomes(7, demoCast, last, 10, 10 + demoWeeks - 1)
  const counts = Array.from(
    { length: demoWeeks },
    (_, w) => outcomes.filter(o => o.week === weekPlus(last, w - demoWeeks + 1)).length,
  )
  expect(counts).toEqual(Array.from({ length: demoWeeks }, (_, w) => 10 + w))
})

test('the new counterfeit is bought where it comes from, seven times of ten, and everything else anywhere', () => {
  const outcomes = demoOutcomes(7, demoCast, last, 200, 200)
  const { course, bought } = demoCast.planted
  const share = (some: readonly { readonly bought: string }[]) =>
    some.filter(one => one.bought === bought).length / some.length
  const isPlanted = ({ fired }: { readonly fired: readonly string[] }) =>
    [...fired].sort().join() === [...course.fired].sort().join()
  const planted = outcomes.filter(isPlanted)
  const elsewhere = demoCast.bought.includes(bought) ? 1 / demoCast.bought.length : 0
  // Of some hundred, within three standard errors.
  const error = 3 * Math.sqrt(0.21 / planted.length)
  expect(Math.abs(share(planted) - (0.7 + 0.3 * elsewhere))).toBeLessThan(error)
  expect(Math.abs(share(outcomes.filter(one => !isPlanted(one))) - elsewhere)).toBeLessThan(0.03)
})

test.each([7, 1, 2, 3])(
  'seed %i: the planted pattern is named with both its faults, the growing family never accused',
  async seed => {
    const releases = await releasesOf(seed)
    const harrow = releases.map(r => r.families.find(f => f.family === 'harrow-30')?.more ?? 0)
    expect(harrow.slice(-20).reduce((a, b) => a + b)).toBeGreaterThan(2 * harrow.slice(0, 20).reduce((a, b) => a + b))
    const before = releases.slice(0, plantedFrom - 1)
    expect(before.flatMap(r => [...r.rises, ...r.patterns])).toEqual([])
    const accused = releases.flatMap(r => [...r.rises, ...r.patterns]).map(one => one.family)
    expect(new Set(accused)).toEqual(new Set(['brant-40']))
    // Both rules always come together, so either alone picks the rows out, and the other is told of as well.
    const named = releases.slice(plantedFrom - 1).flatMap(r => r.patterns)
    expect(named.map(p => p.items.join())).toContain('rule:four-legs,rule:box-code-on-can')
    const risen = releases.flatMap(r => r.rises).map(rise => rise.rule)
    expect(new Set(risen)).toEqual(new Set([null, 'box-code-on-can', 'four-legs']))
  },
)

test('a family has the same part of all checks every week, and the same share of it fails', () => {
  const outcomes = demoOutcomes(7, demoCast, last)
  for (let w = 0; w < demoWeeks; w++) {
    const week = outcomes.filter(o => o.week === weekPlus(last, w - demoWeeks + 1))
    const harrow = week.filter(o => o.family === 'harrow-30')
    expect(Math.abs(harrow.length - (week.length * 4) / 9)).toBeLessThanOrEqual(2)
    expect(Math.abs(harrow.filter(o => o.fired.length > 0).length - harrow.length / 4)).toBeLessThanOrEqual(2)
  }
})

test('families and what is wrong with them are dealt evenly: after every check each has had its part, to one or two', () => {
  for (const seed of [7, 8, 9]) {
    const outcomes = demoOutcomes(seed, demoCast, last)
    const whole = demoCast.families.reduce((sum, one) => sum + one.part, 0)
    const had = new Map<string, number>()
    const count = (key: string) => {
      had.set(key, (had.get(key) ?? 0) + 1)
      return had.get(key) as number
    }
    for (const [i, { family, fired }] of outcomes.entries()) {
      const { part, failing, faults } = demoCast.families.find(one => one.family === family) ?? expect.unreachable()
      const ofFamily = count(`${family}`)
      expect(Math.abs(ofFamily - ((i + 1) * part) / whole)).toBeLessThan(2)
      if (family === demoCast.planted.family || fired.length === 0) continue
      const ofFault = count(`${family} ${fired}`)
      expect(Math.abs(ofFault - (ofFamily * failing) / faults.length)).toBeLessThan(2)
    }
    for (const { family, failing, faults } of demoCast.families)
      if (family !== demoCast.planted.family)
        for (const { fired } of faults)
          expect(had.get(`${family} ${fired}`)).toBeCloseTo((had.get(`${family}`)! * failing) / faults.length, -0.6)
  }
})

test('the new counterfeit begins in its week and is its share of what is then checked of its family', () => {
  const { course, share, family } = demoCast.planted
  const outcomes = demoOutcomes(7, demoCast, last)
  const begins = weekPlus(last, plantedFrom - demoWeeks)
  const isPlanted = ({ fired }: { readonly fired: readonly string[] }) =>
    fired.join() === [...course.fired].sort().join()
  const planted = outcomes.filter(isPlanted)
  expect(planted.every(one => one.week >= begins && one.family === family)).toBe(true)
  expect(planted.some(one => one.week === begins)).toBe(true)
  const since = outcomes.filter(one => one.family === family && one.week >= begins)
  expect(Math.abs(planted.length - since.length * share)).toBeLessThan(2)
})

test('each person has a name of an epoch and no other; other seeds invent other people', () => {
  const people = (seed: number) => new Set(demoOutcomes(seed, demoCast, last).map(one => one.reporter))
  const [one, other] = [people(7), people(8)]
  for (const name of one) expect(name).toMatch(/^[0-9a-f]{64}$/)
  expect([...one].filter(name => other.has(name))).toEqual([])
  const epochs = new Map<string, Set<string>>()
  for (const { reporter, week } of demoOutcomes(7, demoCast, last))
    epochs.set(reporter, (epochs.get(reporter) ?? new Set()).add(epochOf(week)))
  expect([...epochs.values()].every(seen => seen.size === 1)).toBe(true)
})
