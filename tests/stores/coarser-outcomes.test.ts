// Outcomes keep no answer that fewer than five of a server's checks gave, on both databases, and those of earlier versions do neither.
import { readFileSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { SqliteAdapter, sql } from 'kysely'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { waitingBody } from '../../src/stores/bodies/waiting-outcome.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { noLongerKept } from '../../src/stores/coarser-outcomes-migration.ts'
import { openEpochKeys } from '../../src/stores/epoch-keys.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openSeal } from '../../src/stores/seal.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import { base } from '../trends/base-outcome.ts'
import { databases, type Opened } from './databases.ts'
import { pausedCheck } from './paused-check.ts'
import { testCodes, testSeal } from './test-seal.ts'

/** So many that those who wait join at once; of another family, and with no answer. */
const others = (server: string, week: string): Outcome[] =>
  [1, 2, 3, 4].map(n => {
    const reporter = (Number(week.slice(6)) * 100 + n).toString(16).padStart(64, 'f')
    return { ...base, server, family: 'other', reporter, options: {} }
  })
const person = (n: number): string => n.toString(16).padStart(64, '0')

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let folder: string
    let admit: (week: string, outcomes: readonly Outcome[]) => Promise<void>
    beforeEach(async () => {
      opened = await kind.open()
      folder = await mkdtemp(join(tmpdir(), 'cellwary-coarse-'))
      const seal = openSeal(openEpochKeys(folder))
      const [checks, log] = [openCheckStore(opened.db, seal), openOutcomeLog(opened.db, seal, testCodes)]
      let n = 0
      admit = async (week, outcomes) => {
        const servers = new Set(outcomes.map(one => one.server))
        for (const outcome of [...outcomes, ...[...servers].flatMap(server => others(server, week))]) {
          const check = pausedCheck(`c${n++}`, { server: outcome.server, phase: { is: 'done' } })
          await checks.create(check, `opens ${check.id}`)
          const closed = { ...check, revision: 1, phase: { is: 'closed' } } as const
          await checks.save(closed, 0, `closes ${check.id}`, { ...outcome, week })
        }
        await log.admit(week)
      }
    })
    afterEach(async () => {
      await opened?.close()
      await rm(folder, { recursive: true, force: true })
    })
    const stored = async () =>
      (
        await opened.db
          .selectFrom('outcomes')
          .select(['week', 'options'])
          .where('family', '!=', 'other')
          .orderBy('week')
          .execute()
      )
        .sort((a, b) => (a.week === b.week ? a.options.length - b.options.length : 0))
        .map(one => JSON.parse(one.options) as Outcome['options'])
    const by = (n: number, legs: string, more: Partial<Outcome> = {}): Outcome => ({
      ...base,
      reporter: person(n),
      options: { legs, dimples: 'none' },
      ...more,
    })

    test('an answer stands in none until five have given it, then in all from then on', async () => {
      await admit(
        '2026-W10',
        [1, 2, 3, 4].map(n => by(n, 'four')),
      )
      expect(await stored()).toEqual([{}, {}, {}, {}])
      await admit('2026-W11', [by(5, 'four')])
      expect(await stored()).toEqual([{}, {}, {}, {}, { dimples: 'none', legs: 'four' }])
      await admit('2026-W12', [by(6, 'three'), by(7, 'four')])
      expect((await stored()).slice(5)).toEqual([{ dimples: 'none' }, { dimples: 'none', legs: 'four' }])
    })

    test('another server’s five are not this one’s', async () => {
      await admit(
        '2026-W10',
        [1, 2, 3, 4, 5].map(n => by(n, 'four', { server: 'there' })),
      )
      await admit('2026-W11', [by(6, 'four')])
      expect((await stored())[5]).toEqual({})
    })

    test('somebody who checks many cells of one kind counts once', async () => {
      await admit(
        '2026-W10',
        Array.from({ length: 9 }, () => by(1, 'four')),
      )
      await admit(
        '2026-W11',
        Array.from({ length: 9 }, () => by(1, 'four')),
      )
      expect(await stored()).toEqual([{}])
      const counts = await opened.db.selectFrom('answer_counts').select(['question', 'given']).execute()
      expect(counts.map(one => `${one.question} ${one.given}`).sort()).toEqual(['dimples 1', 'legs 1'])
    })

    test('somebody who checks cells of five kinds has given an answer once', async () => {
      await admit(
        '2026-W10',
        ['a', 'b', 'c', 'd', 'e'].map(family => by(1, 'four', { family })),
      )
      expect(await stored()).toEqual([{}, {}, {}, {}, {}])
      const counts = await opened.db.selectFrom('answer_counts').select(['question', 'given']).execute()
      expect(counts.map(one => `${one.question} ${one.given}`).sort()).toEqual(['dimples 1', 'legs 1'])
    })

    test('what failed and where it was bought is counted all the same', async () => {
      await admit('2026-W10', [by(1, 'four')])
      const counts = await openOutcomeLog(opened.db, testSeal, testCodes).weekCounts(
        { kind: 'server', server: 'here' },
        '2026-W10',
        '2026-W10',
      )
      const theirs = counts.filter(one => one.family !== 'other')
      expect(theirs.map(one => `${one.facet} ${one.value}`).sort()).toEqual([
        'all ',
        'bought market',
        'rule four-legs',
        'rule too-light',
        'verdict ruled-out',
      ])
    })

    test('a database of version 0.1.0 is coarsened: no figure, no answer that few gave, in the order of pseudonyms', async () => {
      const dump = readFileSync(join(import.meta.dirname, 'version-0.1.0', kind.dump), 'utf8')
      const earlier = await kind.open(dump)
      const { rows } = await sql<Record<string, string>>`select * from outcomes`.execute(earlier.db)
      expect(rows.length).toBeGreaterThan(100)
      const given = new Map<string, number>()
      for (const { rest, server, options } of rows) {
        expect(rest).toBeUndefined()
        for (const pair of Object.entries(JSON.parse(options ?? '') as Outcome['options'])) {
          expect(noLongerKept).not.toContain(pair[0])
          const name = [server, ...pair].join(' ')
          given.set(name, (given.get(name) ?? 0) + 1)
        }
      }
      expect(given.size).toBeGreaterThan(5)
      expect(Math.min(...given.values())).toBeGreaterThanOrEqual(5)
      const counts = await earlier.db.selectFrom('answer_counts').selectAll().execute()
      // What was rare then is counted, and joins the others once it is not.
      for (const { server, question, option, given: count } of counts)
        expect(count >= 5, `${question}=${option}`).toBe(given.has([server, question, option].join(' ')))
      if (!(earlier.db.getExecutor().adapter instanceof SqliteAdapter)) {
        const { rows: lying } = await sql<{ at: string }>`
          select epoch || reporter || family || server as at from outcomes order by ctid`.execute(earlier.db)
        // PostgreSQL puts a short row into what a page has left; beside that they lie as they were written.
        const steps = lying.filter((one, i) => i > 0 && one.at < (lying[i - 1]?.at ?? ''))
        expect(steps.length).toBeLessThan(lying.length / 20)
      }
      await earlier.close()
    })
  })

test('one that has waited since before is read without what is kept no longer', () => {
  const old = {
    ...base,
    options: { ...base.options, format: '18650', smell: 'sweet', price: 'low' },
    ...{
      format: '18650',
      readings: [{ question: 'm', quantity: 'mass', from: 1, to: 2 }],
      claims: [],
      cantTell: ['x'],
    },
    cells: '2-4',
  }
  expect(waitingBody.read(JSON.stringify(old))).toEqual({ ...base, options: { ...base.options, format: '18650' } })
})
