// Whoever reads all of a busy month's database cannot tell from which check an outcome came: not by a number of a transaction, a place,
// the log or what either of them holds.
import { execFile } from 'node:child_process'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { SqliteAdapter, sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Check, lifetime } from '../../src/check/check.ts'
import { option } from '../../src/engine/answers.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openEpochKeys } from '../../src/stores/epoch-keys.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openSeal } from '../../src/stores/seal.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { weekOf } from '../../src/trends/week.ts'
import { base } from '../trends/base-outcome.ts'
import { databases, type Opened, postgresUrl } from './databases.ts'
import { ownPostgres } from './own-postgres.ts'
import { codeOf, testCodes } from './test-seal.ts'

const servers = ['alder', 'birch', 'cedar']
const monday = Date.UTC(2026, 10, 2)
const day = 24 * 3600_000
/** Invented, but the same each time. */
const drawn = (n: number): number => ((n + 1) * 2_654_435_761) % 4_294_967_296
const people = Array.from({ length: 28 * 12 }, (_, n) => {
  const at = monday + Math.floor(n / 12) * day + n
  const server = servers[n % 3] as string
  // Each given by many, so that outcomes keep it; one answer of the check is its person's alone, and kept nowhere else.
  const marks = { legs: `legs-${drawn(n) % 4}`, dimples: `dimples-${drawn(n + 1000) % 3}` }
  const own = `own-${drawn(n + 2000)}`
  const outcome: Outcome = {
    ...base,
    server,
    week: weekOf(at),
    // As an HMAC would: no order that anybody without the key could know.
    reporter: drawn(n).toString(16).padStart(8, '0').repeat(8),
    options: marks,
  }
  const check: Check = {
    id: `check${String(n).padStart(4, '0')}`,
    revision: 0,
    server,
    holder: `person ${n}`,
    mode: 'full',
    cells: 3,
    family: 'harrow-30',
    packs: [],
    day: '2026-11-25',
    answers: { legs: option(marks.legs), dimples: option(marks.dimples), batch: option(own) },
    trail: ['legs', 'dimples', 'batch'],
    consents: {},
    phase: { is: 'done' },
    startedAt: at,
    expiresAt: at + lifetime,
  }
  return { check, outcome, at, own, code: codeOf(outcome) }
})

for (const kind of [...databases, ownPostgres])
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let folder: string
    let slot: string | undefined
    const onSqlite = () => opened.db.getExecutor().adapter instanceof SqliteAdapter
    beforeAll(async () => {
      opened = await kind.open()
      folder = await mkdtemp(join(tmpdir(), 'cellwary-joined-'))
      const { db } = opened
      // So that the whole of its log can be read.
      if (onSqlite()) await sql`pragma wal_autocheckpoint = 0`.execute(db)
      else {
        const level = await sql<{ wal_level: string }>`show wal_level`.execute(db)
        if (level.rows[0]?.wal_level === 'logical') {
          slot = `cellwary_${process.pid}`
          await sql`select pg_create_logical_replication_slot(${slot}, 'test_decoding')`.execute(db)
        }
      }
      const seal = openSeal(openEpochKeys(folder))
      const store = openCheckStore(db, seal)
      const outcomes = openOutcomeLog(db, seal, testCodes)
      let week = weekOf(monday)
      for (const { check, outcome, at } of people) {
        if (weekOf(at) !== week) {
          await outcomes.admit(week)
          week = weekOf(at)
        }
        await store.create(check, `opens ${check.id}`)
        // Some close theirs; what the others have left open is counted as it stands.
        if (at % 3 === 0) await store.settle(check, outcome)
        else await store.save({ ...check, revision: 1, phase: { is: 'closed' } }, 0, `closes ${check.id}`, outcome)
      }
      await outcomes.admit(week)
    })
    afterAll(async () => {
      if (slot !== undefined) await sql`select pg_drop_replication_slot(${slot})`.execute(opened.db)
      await opened?.close()
      await rm(folder, { recursive: true, force: true })
    })

    test('all are counted, with the answers that many gave and nothing that one alone did', async () => {
      const rows = await opened.db.selectFrom('outcomes').selectAll().execute()
      expect(rows).toHaveLength(people.length)
      const text = JSON.stringify(rows)
      for (const { outcome, own } of people) {
        for (const mark of Object.values(outcome.options)) expect(text).toContain(mark)
        expect(text).not.toContain(own)
      }
    })

    test('nothing that a check still holds is an answer of an outcome', async () => {
      const rows = await opened.db.selectFrom('checks').selectAll().execute()
      expect(rows).toHaveLength(people.length)
      const text = JSON.stringify(rows)
      for (const { outcome, own, code } of people)
        for (const mark of [outcome.reporter, code, own, ...Object.values(outcome.options)])
          expect(text).not.toContain(mark)
      // Sealed bodies are told apart by no length either: that of the longest answers is that of the shortest.
      const lengths = rows.filter(row => row.phase === 'done').map(row => row.body.length)
      expect(new Set(lengths).size).toBe(1)
    })

    test('the order in which outcomes lie is that of their pseudonyms, and not that in which people came', async () => {
      const place = onSqlite() ? sql`1` : sql`ctid`
      const { rows } = await sql<Outcome>`select server, week, reporter from outcomes order by ${place}`.execute(
        opened.db,
      )
      const found = Map.groupBy(rows, ({ server, week }) => `${server} ${week}`)
      expect(found.size).toBe(3 * 4)
      for (const [batch, lying] of found) {
        const reporters = lying.map(one => one.reporter)
        expect(reporters, batch).toEqual(reporters.toSorted())
        const came = people.filter(one => `${one.outcome.server} ${one.outcome.week}` === batch)
        expect(reporters, batch).not.toEqual(came.map(one => one.code))
      }
      // Nor is there a number of a row on SQLite, which would say it.
      if (onSqlite()) await expect(sql`select rowid from outcomes`.execute(opened.db)).rejects.toThrow(/rowid/)
    })

    test('a transaction’s number says no more than the server and week, which stand in the outcome', async () => {
      if (onSqlite()) return
      const { rows } = await sql<{ checks: number; outcomes: number }>`
        select count(*) filter (where kind = 'check') as checks, count(*) filter (where kind = 'outcome') as outcomes
        from (select xmin::text as x, 'check' as kind from checks union all select xmin::text, 'outcome' from outcomes) as mixed
        group by x having count(*) filter (where kind = 'outcome') > 0`.execute(opened.db)
      expect(rows).toHaveLength(3 * 4)
      for (const { checks, outcomes } of rows) {
        expect(outcomes).toBe(28)
        expect([0, 28]).toContain(checks)
      }
    })

    test('in the log of changes no transaction holds one check and what it came to', async ctx => {
      if (onSqlite()) return
      if (slot === undefined) return ctx.skip('wal_level is not logical here; it is in a PostgreSQL of its own')
      const { rows } = await sql<{ xid: string; data: string }>`
        select xid::text as xid, data from pg_logical_slot_get_changes(${slot}, null, null)`.execute(opened.db)
      const perTransaction = Map.groupBy(rows, row => row.xid)
      let seen = 0
      for (const changes of perTransaction.values()) {
        const text = changes.map(one => one.data).join('\n')
        const told = people.filter(one => text.includes(one.code))
        const checks = people.filter(one => text.includes(one.check.id))
        if (told.length === 0) continue
        seen += told.length
        expect(told.length).toBe(28)
        expect([0, 28]).toContain(checks.length)
        // The order of both: neither is that in which people came, and the checks' says nothing of the outcomes'.
        const order = (list: readonly string[]) => list.toSorted((a, b) => text.indexOf(a) - text.indexOf(b))
        const reporters = order(told.map(one => one.code))
        expect(reporters).toEqual(reporters.toSorted())
      }
      expect(seen).toBe(people.length)
    })

    test('in SQLite’s log no transaction brings fewer outcomes than a server has in a week', async () => {
      if (!onSqlite()) return
      const { rows } = await sql<{ file: string }>`pragma database_list`.execute(opened.db)
      const log = await readFile(`${rows[0]?.file}-wal`)
      const page = log.readUInt32BE(8)
      const seen = new Set<string>()
      let [text, transactions] = ['', 0]
      // https://sqlite.org/fileformat2.html#the_write_ahead_log: frames of a page each; the last one of a transaction says the size.
      for (let at = 32; at + 24 + page <= log.length; at += 24 + page) {
        text += log.toString('latin1', at + 24, at + 24 + page)
        if (log.readUInt32BE(at + 4) === 0) continue
        const brought = people.filter(one => !seen.has(one.code) && text.includes(one.code))
        if (brought.length > 0) expect(brought.length).toBe(28)
        for (const one of brought) seen.add(one.code)
        transactions++
        text = ''
      }
      expect(seen.size).toBe(people.length)
      expect(transactions).toBeGreaterThan(people.length)
    })

    test('a back-up holds no answer of a counted check', async () => {
      if (!onSqlite()) return
      const copy = join(folder, 'copy.db')
      await sql`vacuum into ${copy}`.execute(opened.db)
      const { DatabaseSync } = await import('node:sqlite')
      const database = new DatabaseSync(copy)
      const text = JSON.stringify(database.prepare('select * from checks').all())
      database.close()
      expect(text).toContain('person 7')
      for (const { outcome, own } of people)
        for (const mark of [own, ...Object.values(outcome.options)]) expect(text).not.toContain(mark)
    })

    test('nor does a dump, whose lines of outcomes stand in an order that says nothing', async ctx => {
      if (onSqlite() || kind === ownPostgres) return
      const { rows } = await sql<{ here: string }>`select current_schema() as here`.execute(opened.db)
      const dumped = await promisify(execFile)('pg_dump', ['--schema', rows[0]?.here ?? '', postgresUrl], {
        maxBuffer: 100_000_000,
      }).catch(() => undefined)
      if (dumped === undefined) return ctx.skip('pg_dump is missing, or of another version than the server')
      const part = (table: string) =>
        new RegExp(`^COPY \\S+\\.${table} .*\\n([\\s\\S]*?)^\\\\\\.$`, 'm').exec(dumped.stdout)?.[1] ?? ''
      expect(part('checks')).toContain('person 7')
      expect(part('outcomes')).toContain('legs-1')
      for (const { outcome, own, code } of people)
        for (const mark of [own, outcome.reporter, code, ...Object.values(outcome.options)])
          expect(part('checks')).not.toContain(mark)
      const reporters = part('outcomes')
        .split('\n')
        .flatMap(line => (line.startsWith('alder\t') ? (line.split('\t')[3] ?? []) : []))
      expect(reporters).toHaveLength(people.length / 3)
      const weeks = people.filter(one => one.outcome.server === 'alder')
      // Within each week in the order of the pseudonyms; which week it was stands in the outcome anyway.
      for (const group of Map.groupBy(weeks, one => one.outcome.week).values()) {
        const theirs = reporters.filter(one => group.some(each => each.code === one))
        expect(theirs).toEqual(theirs.toSorted())
      }
    })
  })
