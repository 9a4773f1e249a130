// Long work comes in short pieces, and between two of them the loop turns: nobody's click waits for a million rows.
import { type Kysely, type KyselyPlugin, type SqlBool, sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { KeptValues } from '../../src/stores/cache-adapter.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { countOutcomes, piecesOf } from '../../src/stores/count-outcomes.ts'
import { atOnce } from '../../src/stores/in-batches.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { rowOf } from '../../src/stores/outcome-row.ts'
import type { Tables } from '../../src/stores/tables.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { weekPlus } from '../../src/trends/week.ts'
import { base } from '../trends/base-outcome.ts'
import { databases, type Opened } from './databases.ts'
import { testCodes, testSeal } from './test-seal.ts'

const many = 5 * atOnce + 7
const numbers = Array.from({ length: many }, (_, n) => n)
const person = (n: number): string => n.toString(16).padStart(64, '0')

/** How many rows each statement met, and in which turn of the loop. */
function watched(db: Kysely<Tables>) {
  const met: { rows: number; turn: number }[] = []
  let turn = 0
  let counting = true
  const count = () => {
    turn++
    if (counting) setImmediate(count)
  }
  setImmediate(count)
  const plugin: KyselyPlugin = {
    transformQuery: ({ node }) => node,
    async transformResult({ result }) {
      met.push({ rows: Math.max(result.rows.length, Number(result.numAffectedRows ?? 0)), turn })
      return result
    },
  }
  const stop = () => {
    counting = false
  }
  return { db: db.withPlugin(plugin), met, stop }
}

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    beforeAll(async () => {
      opened = await kind.open()
      const { db } = opened
      for (let i = 0; i < many; i += 500) {
        const some = numbers.slice(i, i + 500)
        await db
          .insertInto('checks')
          .values(some.map(n => checkRow(n)))
          .execute()
        await db
          .insertInto('kept')
          .values(some.map(n => ({ key: `k${n}`, value: 'v', expires_at: 5 })))
          .execute()
        for (const [server, week] of [
          ['here', '2026-W10'],
          ['there', '2026-W10'],
          ['there', '2026-W11'],
        ] as const)
          await db
            .insertInto('outcomes')
            .values(
              some.map(n => rowOf({ ...base, server, week, reporter: person(week === '2026-W11' ? n + many : n) })),
            )
            .execute()
      }
    })
    afterAll(() => opened?.close())
    const checkRow = (n: number) => ({
      ...{
        id: `c${String(n).padStart(5, '0')}`,
        revision: 0,
        holder: 'p',
        server: n % 3 ? 'here' : 'there',
        phase: 'paused',
      },
      ...{ expires_at: n % 2 ? 5 : 500, started_at: 1, body: '{}', starter: null, opened_by: `o${n}`, changed_by: 'x' },
      outcome: null,
    })

    /** Runs work on the watched database; no statement met more rows than it may, and two pieces are of two turns. */
    async function inPieces<T>(work: (db: Kysely<Tables>) => Promise<T>): Promise<T> {
      const { db, met, stop } = watched(opened.db)
      const result = await work(db)
      stop()
      expect(Math.max(...met.map(one => one.rows))).toBeLessThanOrEqual(atOnce)
      const full = met.filter(one => one.rows === atOnce)
      expect(full.length).toBeGreaterThan(1)
      // What belongs together, such as finding and deleting, is of one piece.
      const perTurn = Map.groupBy(full, one => one.turn)
      expect(Math.max(...[...perTurn.values()].map(one => one.length))).toBeLessThanOrEqual(2)
      return result
    }

    test('values and checks past their time', async () => {
      expect(await inPieces(db => new KeptValues(db, undefined, () => 10).purge())).toBe(many)
      expect(await inPieces(db => openCheckStore(db, testSeal).purge(10))).toBe(Math.floor(many / 2))
      expect(await opened.db.selectFrom('checks').select('id').where('expires_at', '<=', 10).execute()).toEqual([])
    })

    test('a week is counted in pieces, each row whole and once, where the database counts in this process', async () => {
      const { db } = opened
      const server = 'crowded'
      const looks = (n: number) => ({ family: `family-${n % 7}`, bought: n % 2 ? 'market' : 'not-said' })
      for (let i = 0; i < 6000; i += 500)
        await db
          .insertInto('outcomes')
          .values(numbers.slice(0, 500).map(n => rowOf({ ...base, server, reporter: person(i + n), ...looks(i + n) })))
          .execute()
      const here = sql<SqlBool>`server = ${server} and week = ${base.week}`
      const rows = await Promise.all(
        (await piecesOf(db, here)).map(async piece => {
          const { rows } = await sql<{ n: number }>`select count(*) as n from outcomes where ${piece}`.execute(db)
          return Number(rows[0]?.n)
        }),
      )
      expect(rows.reduce((sum, one) => sum + one, 0)).toBe(6000)
      if (kind.name === 'SQLite') expect(Math.max(...rows)).toBeLessThanOrEqual(3000)
      const counts = await openOutcomeLog(db, testSeal, testCodes).weekCounts(
        { kind: 'server', server },
        base.week,
        base.week,
      )
      const whole = (await countOutcomes(db, here)).counts
      const said = (all: typeof whole) => all.map(one => JSON.stringify(Object.entries(one).sort())).sort()
      expect(said([...counts])).toEqual(said(whole))
      await db.deleteFrom('outcomes').where('server', '=', server).execute()
    })

    test('the failed checks of a family are read in pieces, each once', async () => {
      const found = await inPieces(db =>
        openOutcomeLog(db, testSeal, testCodes).failedChecks(
          { kind: 'server', server: 'there' },
          'harrow-30',
          '2026-W01',
          '2026-W10',
        ),
      )
      expect(found).toHaveLength(many)
    })

    test('a year is counted a week at a time', async () => {
      const { db, met, stop } = watched(opened.db)
      const counts = await openOutcomeLog(db, testSeal, testCodes).weekCounts(
        { kind: 'server', server: 'there' },
        weekPlus('2026-W11', -52),
        '2026-W11',
      )
      stop()
      expect(counts.filter(one => one.facet === 'all').map(one => [one.week, one.reporters])).toEqual([
        ['2026-W10', many],
        ['2026-W11', many],
      ])
      expect(new Set(met.filter(one => one.rows > 1).map(one => one.turn)).size).toBe(2)
    })

    test('outcomes past their time, of one server or of all', async () => {
      const purge = (week: string, server?: string) =>
        inPieces(db => openOutcomeLog(db, testSeal, testCodes).purgeBefore(week, server))
      expect(await purge('2026-W11', 'there')).toBe(many)
      expect(await openOutcomeLog(opened.db, testSeal, testCodes).purgeBefore('2026-W11', 'there')).toBe(0)
      expect(await purge('2026-W12')).toBe(2 * many)
      expect(await opened.db.selectFrom('outcomes').select('week').execute()).toEqual([])
    })

    test('a server that leaves', async () => {
      for (let i = 0; i < many; i += 500)
        await opened.db
          .insertInto('outcomes')
          .values(numbers.slice(i, i + 500).map(n => rowOf({ ...base, server: 'here', reporter: person(n) })))
          .execute()
      await inPieces(db => openTraces(db, testSeal).forgetServer('here'))
      expect(await opened.db.selectFrom('outcomes').select('week').execute()).toEqual([])
      const left = await opened.db.selectFrom('checks').select('server').distinct().execute()
      expect(left).toEqual([{ server: 'there' }])
    })
  })
