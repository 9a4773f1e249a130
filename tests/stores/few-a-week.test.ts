// On a server with one, two or three checks a week, whoever reads all of the database each week never meets an outcome that fewer than
// five people can have left: not by a week, a number of a transaction, what is new since the last time, or what any column holds.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { SqliteAdapter, sql } from 'kysely'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type Check, lifetime } from '../../src/check/check.ts'
import { closeWeeks } from '../../src/jobs/close-weeks.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openEpochKeys } from '../../src/stores/epoch-keys.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { openSeal } from '../../src/stores/seal.ts'
import { epochOf } from '../../src/trends/epoch.ts'
import { minimumReporters } from '../../src/trends/fives.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { weekOf, weekPlus, weekStart, weeksUpTo } from '../../src/trends/week.ts'
import { base } from '../trends/base-outcome.ts'
import { databases, type Opened } from './databases.ts'
import { ownPostgres } from './own-postgres.ts'
import { pausedCheck } from './paused-check.ts'
import { codeOf, testCodes } from './test-seal.ts'

const server = 'quiet'
const here = { kind: 'server', server } as const
/** The weeks of a quarter. */
const weeks = weeksUpTo('2026-W39', 13)
const day = 24 * 3600_000
/** Invented, but the same each time. */
const drawn = (n: number): number => ((n + 1) * 2_654_435_761) % 4_294_967_296
const reporter = (n: number): string => drawn(n).toString(16).padStart(8, '0').repeat(8)
const code = (n: number): string => codeOf({ ...base, reporter: reporter(n) })

for (const kind of [...databases, ownPostgres])
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let folder: string
    beforeEach(async () => {
      opened = await kind.open()
      folder = await mkdtemp(join(tmpdir(), 'cellwary-few-'))
    })
    afterEach(async () => {
      await opened?.close()
      await rm(folder, { recursive: true, force: true })
    })
    const stores = () => {
      const keys = openEpochKeys(folder)
      const seal = openSeal(keys)
      const { db } = opened
      return { keys, db, checks: openCheckStore(db, seal), outcomes: openOutcomeLog(db, seal, testCodes) }
    }
    const onSqlite = () => opened.db.getExecutor().adapter instanceof SqliteAdapter
    const visible = () => opened.db.selectFrom('outcomes').select(['week', 'reporter']).execute()

    /** Person `n` finishes a check in a week: half of them close theirs, the others let it lie. */
    async function finish(n: number, at: number): Promise<void> {
      const { checks } = stores()
      const check: Check = pausedCheck(`check${String(n).padStart(3, '0')}`, {
        ...{ server, holder: `person ${n}`, phase: { is: 'done' }, startedAt: at, expiresAt: at + lifetime },
      })
      const outcome: Outcome = { ...base, server, week: weekOf(at), reporter: reporter(n) }
      await checks.create(check, `opens ${check.id}`)
      if (n % 2 === 0) await checks.settle(check, outcome)
      else await checks.save({ ...check, revision: 1, phase: { is: 'closed' } }, 0, `closes ${check.id}`, outcome)
    }

    test.each([1, 2, 3])('with %i a week', async each => {
      const { db, keys, checks, outcomes } = stores()
      const readable = kind === ownPostgres
      if (readable) await sql`select pg_create_logical_replication_slot('few', 'test_decoding')`.execute(db)
      let [n, seen] = [0, new Set<string>()]
      for (const week of weeks) {
        for (let i = 0; i < each; i++) await finish(n++, weekStart(week) + ((i * 2 + 1) % 7) * day)
        const over = weekStart(weekPlus(week, 1)) + 2 * 3600_000
        await outcomes.admit(week)
        await checks.purge(over)
        // As the weekly job does: what was sealed earlier cannot be opened any more.
        await keys.destroyBefore(weekPlus(weekOf(over), -2))

        const rows = await visible()
        for (const [of, together] of Map.groupBy(rows, one => one.week))
          expect(together.length, of).toBeGreaterThanOrEqual(minimumReporters)
        const late = rows.filter(one => !seen.has(one.reporter))
        expect(late.length === 0 || late.length >= minimumReporters).toBe(true)
        seen = new Set(rows.map(one => one.reporter))
        if (!onSqlite()) {
          const { rows: made } = await sql<{ made: number }>`
            select count(*) as made from outcomes group by xmin::text`.execute(db)
          for (const one of made) expect(Number(one.made)).toBeGreaterThanOrEqual(minimumReporters)
        }
        // What waits says nothing to whoever has no key, and no check stays for longer because of it.
        const waiting = JSON.stringify(await db.selectFrom('waiting_outcomes').selectAll().execute())
        expect(waiting).not.toMatch(/person|check0|legs|"harrow/)
        for (let i = 0; i < n; i++) for (const word of [reporter(i), code(i)]) expect(waiting).not.toContain(word)
        const left = await db.selectFrom('checks').select(['started_at', 'outcome']).execute()
        for (const one of left) {
          expect(one.started_at).toBeGreaterThan(over - lifetime)
          expect(one.outcome).toBeNull()
        }
      }
      if (readable) {
        const { rows } = await sql<{ xid: string; data: string }>`
          select xid::text as xid, data from pg_logical_slot_get_changes('few', null, null)`.execute(db)
        let told = 0
        for (const changes of Map.groupBy(rows, row => row.xid).values()) {
          const text = changes.map(one => one.data).join('\n')
          const joined = Array.from({ length: n }, (_, i) => code(i)).filter(one => text.includes(one))
          told += joined.length
          expect(joined.length === 0 || joined.length >= minimumReporters).toBe(true)
        }
        expect(told).toBe(seen.size)
      }
      const waits = await db.selectFrom('waiting_outcomes').select('id').execute()
      expect(seen.size + waits.length).toBe(n)
      expect(waits.length).toBeLessThan(minimumReporters)
      // Their quarter is over: nobody can join them any more.
      expect(await outcomes.dropWaiting(epochOf(weekPlus(weeks.at(-1) as string, 1)))).toBe(waits.length)
      expect(await db.selectFrom('waiting_outcomes').select('id').execute()).toEqual([])
    })

    test('each is in the release of the week in which it is counted, and only there', async () => {
      const { outcomes } = stores()
      const logs = { outcomes, releases: openReleaseLog(opened.db) }
      const told: number[] = []
      for (const [i, week] of weeks.entries()) {
        for (const n of [2 * i, 2 * i + 1]) await finish(n, weekStart(week) + n * 3600_000)
        await closeWeeks(logs, here, weekStart(weekPlus(week, 1)) + 2 * 3600_000)
        const { more = 0 } = JSON.parse((await logs.releases.bytes(here, week)) ?? '{}')
        told.push(more)
      }
      // Six after three weeks: five of them can be told, the sixth with the next.
      expect(told.reduce((sum, one) => sum + one, 0)).toBe(20)
      expect(told.filter(one => one > 0).length).toBeLessThanOrEqual(4)
      const counts = await outcomes.weekCounts(here, weeks[0] as string, weeks.at(-1) as string)
      expect(counts.filter(one => one.facet === 'all').map(one => one.reporters)).toEqual([6, 6, 6, 6])
    })

    test('their own person has them deleted while they wait; those who are left wait for others', async () => {
      const { outcomes } = stores()
      for (const n of [0, 1, 2, 3]) await finish(n, weekStart('2026-W27') + n * day)
      await outcomes.admit('2026-W27')
      expect(await outcomes.of([reporter(1)])).toMatchObject([{ week: '2026-W27' }])
      expect(await outcomes.forget([reporter(1)])).toBe(1)
      await finish(4, weekStart('2026-W28'))
      expect(await outcomes.admit('2026-W28')).toBe(0)
      await finish(5, weekStart('2026-W29'))
      expect(await outcomes.admit('2026-W29')).toBe(5)
      const rows = await visible()
      expect(rows.map(one => one.week)).toEqual(Array(5).fill('2026-W29'))
      expect(rows.map(one => one.reporter)).not.toContain(code(1))
    })

    test('somebody who checks five cells is one person', async () => {
      const { checks, outcomes } = stores()
      for (let n = 0; n < 6; n++) {
        const check = pausedCheck(`many${n}`, { server, holder: 'person 0', phase: { is: 'done' } })
        await checks.create(check, `opens ${n}`)
        await checks.settle(check, { ...base, server, week: '2026-W27', family: `family-${n}`, reporter: reporter(0) })
      }
      expect(await outcomes.admit('2026-W27')).toBe(0)
      expect(await visible()).toEqual([])
    })

    test('those of two quarters do not join each other: their pseudonyms do not tell whether they are two people', async () => {
      const { outcomes } = stores()
      for (const n of [0, 1, 2]) await finish(n, weekStart('2026-W39') + n * day)
      await outcomes.admit('2026-W39')
      for (const n of [3, 4]) await finish(n, weekStart('2026-W40') + n * day)
      expect(await outcomes.admit('2026-W40')).toBe(0)
      expect(await outcomes.dropWaiting('2026-E4')).toBe(3)
      expect(await opened.db.selectFrom('waiting_outcomes').select('epoch').execute()).toEqual([
        { epoch: '2026-E4' },
        { epoch: '2026-E4' },
      ])
    })

    test('after a long downtime a batch of one week is never a person’s alone', async () => {
      const { outcomes } = stores()
      for (const [i, week] of ['2026-W27', '2026-W28', '2026-W29'].entries())
        for (let k = 0; k < (i === 1 ? 1 : 6); k++) await finish(i * 10 + k, weekStart(week) + k * day)
      expect(await outcomes.admit('2026-W29')).toBe(13)
      const rows = await visible()
      expect([...Map.groupBy(rows, one => one.week)].map(([week, { length }]) => [week, length]).sort()).toEqual([
        ['2026-W27', 6],
        ['2026-W29', 7],
      ])
    })
  })
