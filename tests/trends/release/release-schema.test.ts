// Every release that is frozen is what the schema says, and the schema says what every field of it means.
import { expect, test } from 'vitest'
import { demoOutcomes } from '../../../src/trends/demo.ts'
import { isRelease, releaseSchema } from '../../../src/trends/release/release-schema.ts'
import { closeDue } from '../close-due.ts'
import { demoCast } from '../demo-cast.ts'
import { openMemoryOutcomes, openMemoryReleases } from '../memory-log.ts'

const scope = { kind: 'server', server: demoCast.server } as const

test('sixty weeks of releases are each a release by the schema; one with a field more, or a number out of step, is none', async () => {
  const outcomes = openMemoryOutcomes()
  const last = '2026-W30'
  for (const outcome of demoOutcomes(5, demoCast, last)) await outcomes.record(outcome)
  const releases = openMemoryReleases()
  const weeks = await closeDue(outcomes, releases, scope, last)
  expect(weeks.length).toBe(60)
  for (const week of weeks) expect(isRelease(JSON.parse((await releases.bytes(scope, week)) ?? ''))).toBe(true)
  const one = JSON.parse((await releases.bytes(scope, weeks.at(-1) ?? '')) ?? '')
  expect(isRelease({ ...one, reporter: 'somebody' })).toBe(false)
  expect(isRelease({ ...one, checks: one.checks + 1 })).toBe(false)
  expect(isRelease({ ...one, week: '2026-W60' })).toBe(false)
})

test('it is JSON Schema that names every field at the top and allows no other', () => {
  const schema = JSON.parse(releaseSchema())
  expect(schema.$schema).toContain('json-schema.org')
  expect(schema.additionalProperties).toBe(false)
  expect(schema.required).toEqual(expect.arrayContaining(['week', 'families', 'rises', 'patterns']))
  expect(schema.properties.rises.items.properties.standsOut.description).toMatch(/stands out/)
})
