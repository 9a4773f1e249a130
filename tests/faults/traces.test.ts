// After ten thousand checks of known people, no byte of the database, the keys, the log or an export tells whose they were.
import { randomBytes } from 'node:crypto'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readConfig } from '../../src/bin/config.ts'
import { type OpenedServices, openServices } from '../../src/bin/open-services.ts'
import { type Check, lifetime } from '../../src/check/check.ts'
import { type Stepping, start, step } from '../../src/check/step.ts'
import { outcomeFor } from '../../src/discord/check/leave-outcome.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { cantTell, option, reading } from '../../src/engine/answers.ts'
import { closeWeeks } from '../../src/jobs/close-weeks.ts'
import { unsettled } from '../../src/server/settings.ts'
import { readRelease } from '../../src/trends/release/freeze-week.ts'
import { toCsv } from '../../src/trends/release/to-csv.ts'
import { noPosts } from '../flows/no-posts.ts'
import { everyByte } from './every-byte.ts'

const checks = 10_000
const server = '700000000000000001'
/** As Discord writes ids: eighteen digits. */
const snowflake = () =>
  String(100_000_000_000_000_000n + (BigInt(`0x${randomBytes(7).toString('hex')}`) % 800_000_000_000_000_000n))
const people = Array.from({ length: 2000 }, snowflake)
let data: string
let opened: OpenedServices
let now = Date.now()
const log: string[] = []
const known = new Set<string>()
beforeAll(async () => {
  data = await mkdtemp(join(tmpdir(), 'cellwary-traces-'))
  const read = readConfig({ CELLWARY_DATA: data, CELLWARY_PICTURES: 'off' })
  if (!read.ok) throw new Error(read.sentences.join())
  opened = await openServices(read.config, openLog('trace', { write: line => void log.push(line) }), noPosts)
})
afterAll(async () => {
  await opened?.close()
  await rm(data, { recursive: true, force: true })
})

const taken = (stepping: Stepping): Check => {
  if (!stepping.ok) throw new Error(stepping.refusal.code)
  return stepping.check
}

/** The known ids that stand anywhere in the text: every run of eighteen digits and of twenty hex digits is looked up. */
function tracesIn(text: string): string[] {
  const found = new Set<string>()
  for (const shape of [/(?=(\d{18}))/g, /(?=([0-9a-f]{20}))/g])
    for (const [, run = ''] of text.matchAll(shape)) if (known.has(run)) found.add(run)
  return [...found]
}

test('ten thousand checks, closed, counted and expired, leave nothing of their people', async () => {
  const services = { ...opened.services, now: () => now }
  await services.servers.save({ ...unsettled(server), revision: 1, outcomes: true })
  const program = services.programs.programFor('brindlewick-rook', new Date(now).toISOString().slice(0, 10))
  if (!program) throw new Error('no program')
  const kinds = [option('can'), option('wrap'), cantTell].map(place => {
    const known = { 'claimed-capacity': reading(2500), 'code-place': place, legs: option('three') }
    return taken(
      start(program, { id: '', holder: '', server, mode: 'full', cells: 1, family: 'brindlewick-rook', known }, now),
    )
  })
  for (let i = 0; i < checks; i++) {
    const holder = people[i % people.length] as string
    const [id, opening, closing] = [services.newId(), snowflake(), snowflake()]
    for (const trace of [holder, id, opening, closing]) known.add(trace)
    // One contribution a person, family and epoch: most of these are not counted, which leaves no trace either.
    const check: Check = { ...(kinds[i % kinds.length] as Check), id, holder, leaves: 'outcome' }
    await services.checks.create(check, opening)
    const closed = taken(step(program, check, { is: 'close' }, now))
    await services.checks.save(closed, check.revision, closing, await outcomeFor(services, program, check))
  }
  const during = await everyByte(data)
  // While checks live, their people are known, or this search would find nothing whatever happened.
  expect(tracesIn(during).length).toBeGreaterThan(checks)

  now += lifetime + 8 * 24 * 3600_000
  // What nobody has counted yet is not deleted with its check.
  expect(await services.checks.purge(now)).toBe(0)
  const scope = { kind: 'server', server } as const
  const closing = await closeWeeks(services.trends, scope, now)
  expect(await services.checks.purge(now)).toBe(checks)
  expect(closing.frozen.length).toBeGreaterThan(0)
  const bytes = (await services.trends.releases.bytes(scope, closing.frozen[0] ?? '')) ?? ''
  const release = readRelease(bytes)
  if (!release.ok) throw new Error('no release')
  expect(release.release.checks).toBeGreaterThan(100)

  const after = [await everyByte(data), log.join('\n'), bytes, toCsv([release.release])].join('\n')
  expect(tracesIn(after)).toEqual([])
}, 240_000)
