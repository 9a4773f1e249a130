// Whoever reads the database cannot tell which outcomes of different families are one person's; that person still counts once a family,
// and has all of theirs deleted.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type OpenedTrends, openTrends } from '../../src/bin/open-trends.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { countedOf, forgetCountedOf } from '../../src/discord/trends/counted-of.ts'
import { unsettled } from '../../src/server/settings.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import { epochOf } from '../../src/trends/epoch.ts'
import { minimumReporters } from '../../src/trends/fives.ts'
import type { Reporter } from '../../src/trends/make-outcome.ts'
import { type Week, weekPlus, weekStart, weeksUpTo } from '../../src/trends/week.ts'
import { base } from '../trends/base-outcome.ts'
import { databases, type Opened } from './databases.ts'
import { pausedCheck } from './paused-check.ts'

const families = ['harrow-30', 'harrow-35', null]
const servers = ['alder', 'birch']
const weeks = weeksUpTo('2026-W09', 6)
const people = Array.from({ length: 6 }, (_, n) => `90000000000000040${n}`)

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let trends: OpenedTrends
    let folder: string
    const lines: string[] = []
    let checks = 0
    beforeEach(async () => {
      opened = await kind.open()
      folder = await mkdtemp(join(tmpdir(), 'cellwary-apart-'))
      lines.length = 0
      for (const server of servers)
        await openSettingsStore(opened.db).save({ ...unsettled(server), outcomes: true, pooling: true, revision: 1 })
      trends = openTrends(opened.db, folder, openLog('info', { write: line => lines.push(line) }))
    })
    afterEach(async () => {
      await opened?.close()
      await rm(folder, { recursive: true, force: true })
    })
    const who = (user: string, server: string, week: Week): Promise<Reporter> =>
      trends.services.reporterOf({ server, user, week, pooling: true })

    async function finish(user: string, server: string, family: string | null, week: Week): Promise<void> {
      const check = pausedCheck(`check${checks++}`, { server, holder: user, phase: { is: 'done' } })
      const store = openCheckStore(opened.db, trends.seal)
      await store.create(check, `opens ${check.id}`)
      await store.settle(check, { ...base, ...(await who(user, server, week)), family, week })
    }
    const rows = () => opened.db.selectFrom('outcomes').select(['server', 'family', 'reporter', 'pooled']).execute()
    /** Everybody checks a cell of each family on both servers, in weeks of their own; twice where `again`. */
    async function quarter(again = false): Promise<void> {
      for (const [w, week] of weeks.entries()) {
        for (const [n, user] of people.entries())
          for (const [f, family] of families.entries())
            for (const [s, server] of servers.entries())
              for (let i = 0; i < (again ? 2 : 1); i++)
                if ((n + f * 2 + s) % weeks.length === w) await finish(user, server, family, week)
        await trends.services.outcomes.admit(week)
      }
      await trends.services.outcomes.admit(weekPlus(weeks.at(-1) as Week, 1))
    }
    const counts = () => ({
      now: () => weekStart('2026-W11'),
      servers: openSettingsStore(opened.db),
      trends: trends.services,
    })

    test('no code stands in two outcomes, and no pseudonym in any', async () => {
      await quarter()
      const found = await rows()
      expect(found).toHaveLength(people.length * families.length * servers.length)
      const codes = found.flatMap(one => [one.reporter, one.pooled ?? []].flat())
      expect(new Set(codes).size).toBe(codes.length)
      for (const user of people)
        for (const server of servers) {
          const { reporter, pooled } = await who(user, server, weeks[0] as Week)
          expect(codes).not.toContain(reporter)
          expect(codes).not.toContain(pooled)
        }
    })

    test('who checks twice is counted once a family on a server, and once in the pool', async () => {
      await quarter(true)
      const { outcomes } = trends.services
      const counted = async (scope: Parameters<typeof outcomes.weekCounts>[0]) =>
        (await outcomes.weekCounts(scope, '2026-W01', '2026-W20'))
          .filter(one => one.facet === 'all')
          .reduce((sum, one) => sum + one.reporters, 0)
      for (const server of servers)
        expect(await counted({ kind: 'server', server })).toBe(people.length * families.length)
      expect(await counted({ kind: 'pool' })).toBe(people.length * families.length)
      await finish(people[0] as string, 'alder', 'harrow-30', '2026-W11')
      await trends.services.outcomes.admit('2026-W11')
      expect(await counted({ kind: 'server', server: 'alder' })).toBe(people.length * families.length)
    })

    test('who is counted for a family already is no fifth for those who wait', async () => {
      const [again = '', ...others] = people
      for (const user of people) await finish(user, 'alder', 'harrow-30', '2026-W09')
      expect(await trends.services.outcomes.admit('2026-W09')).toBe(people.length)
      await finish(again, 'alder', 'harrow-30', '2026-W10')
      for (const user of others.slice(0, minimumReporters - 1)) await finish(user, 'alder', 'harrow-35', '2026-W10')
      expect(await trends.services.outcomes.admit('2026-W10')).toBe(0)
      expect(await rows()).toHaveLength(people.length)
      await finish(again, 'alder', 'harrow-35', '2026-W11')
      expect(await trends.services.outcomes.admit('2026-W11')).toBe(minimumReporters)
    })

    test('a person finds and deletes all of theirs, of every family and server, and nobody else’s', async () => {
      await quarter()
      const [mine, others] = [people[2] as string, people.filter((_, n) => n !== 2)]
      await finish(mine, 'alder', 'a-family-nobody-has', '2026-W11')
      const all = families.length * servers.length + 1
      expect(await countedOf(counts(), mine)).toHaveLength(all)
      expect(await forgetCountedOf(counts(), mine)).toBe(all)
      expect(await countedOf(counts(), mine)).toEqual([])
      for (const user of others) expect(await countedOf(counts(), user)).toHaveLength(all - 1)
      expect(await rows()).toHaveLength(others.length * (all - 1))
    })

    test('what joins the others while a person has theirs deleted goes as well', async () => {
      for (const user of people) await finish(user, 'alder', 'harrow-30', '2026-W10')
      const { outcomes } = trends.services
      const meanwhile = async (codes: readonly string[]) => {
        await outcomes.admit('2026-W10')
        return outcomes.forget(codes)
      }
      const services = { ...counts(), trends: { ...trends.services, outcomes: { ...outcomes, forget: meanwhile } } }
      expect(await forgetCountedOf(services, people[3] as string)).toBe(1)
      expect(await rows()).toHaveLength(people.length - 1)
      expect(await countedOf(counts(), people[3] as string)).toEqual([])
    })

    test('whom version 0.1.0 counted under one pseudonym is neither counted again nor missed when they want it gone', async () => {
      const user = people[0] as string
      const before = { ...base, ...(await who(user, 'alder', '2026-W10')) }
      await trends.services.outcomes.record(before)
      for (const one of people) await finish(one, 'alder', 'harrow-30', '2026-W10')
      for (const one of people) await finish(one, 'birch', 'harrow-30', '2026-W10')
      await trends.services.outcomes.admit('2026-W10')
      const pool = await trends.services.outcomes.weekCounts({ kind: 'pool' }, '2026-W10', '2026-W10')
      const there = await rows()
      expect(there.filter(one => one.server === 'alder')).toHaveLength(people.length)
      expect(there.filter(one => one.server === 'birch')).toHaveLength(people.length)
      expect(pool.find(one => one.facet === 'all')?.reporters).toBe(people.length)
      expect(await forgetCountedOf(counts(), user)).toBe(2)
    })

    test('what waits when the key of its quarter is gone joins nobody, and the log says so', async () => {
      for (const user of people) await finish(user, 'alder', 'harrow-30', '2026-W13')
      await trends.keys.destroyBefore(epochOf('2026-W14'))
      expect(await trends.services.outcomes.admit('2026-W14')).toBe(0)
      expect(await rows()).toEqual([])
      expect(people.length).toBeGreaterThanOrEqual(minimumReporters)
      expect(lines.join()).toContain('cannot be opened')
    })
  })
