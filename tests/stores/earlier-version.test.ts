// Databases of earlier versions, opened with the code of today: nothing is lost, every check goes on; and one of a later version is left alone.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { SqliteAdapter, sql } from 'kysely'
import { afterEach, describe, expect, test } from 'vitest'
import manifest from '../../package.json' with { type: 'json' }
import { act } from '../../src/check/act.ts'
import type { Check } from '../../src/check/check.ts'
import type { CheckEvent } from '../../src/check/events.ts'
import type { HandOverEvent } from '../../src/check/hand-over.ts'
import type { NoticeKind } from '../../src/check/notice-store.ts'
import { refit } from '../../src/check/refit.ts'
import { type Screen, screenOf } from '../../src/check/screen.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { closeWeeks } from '../../src/jobs/close-weeks.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { offersOfEarlier } from '../../src/server/settings.ts'
import { draftsNamespace, KeptValues } from '../../src/stores/cache-adapter.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openFindingLog } from '../../src/stores/finding-log.ts'
import { openLeases } from '../../src/stores/lease.ts'
import { openOfferClaims } from '../../src/stores/offer-claims.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { decide } from '../../src/trends/findings/decide.ts'
import { weekOf, weekPlus } from '../../src/trends/week.ts'
import { base } from '../trends/base-outcome.ts'
import { databases, type Opened } from './databases.ts'
import { testCodes, testSeal } from './test-seal.ts'
import { type CheckInIt, type LookFor, type WhatIsIn, whatIsIn } from './what-is-in.ts'

/**
 * What stands otherwise in a check today, since the rules have changed: by version, and by what the check is there for. Only what
 * somebody has looked at and found right stands here.
 */
const otherwise: Readonly<Record<string, Readonly<Record<string, Partial<CheckInIt>>>>> = {
  // What counts as enough has grown by questions that were not asked then: the check is open again until they are.
  '0.1.0': { finished: { screen: { kind: 'verdict', shows: 'open' } } },
}

/** What a notice is called today. */
const renamed: Readonly<Record<string, NoticeKind>> = { plea: 'help-request', word: 'note' }

const { packs } = await loadPacks(shippedRules, { cases: false })
const programs = openPrograms(packs.map(one => one.pack))
const day = 24 * 3600_000

type Earlier = { readonly version: string; readonly look: LookFor; readonly holds: WhatIsIn }
const versions = readdirSync(import.meta.dirname)
  .filter(name => name.startsWith('version-'))
  .map(folder => {
    const text = (name: string) => readFileSync(join(import.meta.dirname, folder, name), 'utf8')
    return { ...(JSON.parse(text('what-is-in-it.json')) as Earlier), text }
  })

let opened: Opened | undefined
afterEach(async () => {
  await opened?.close()
  opened = undefined
})

/** In this week version 0.1.0 told in the pool what one server had brought. */
const ofOneServer = '2026-W47'

for (const kind of databases)
  for (const { version, look, holds, text } of versions)
    describe.skipIf(kind.missing)(
      `a database of version ${version} on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`,
      () => {
        const { now } = look
        const open = async () => {
          opened = await kind.open(text(kind.dump))
          return opened.db
        }

        test('holds everything that version left in it', async () => {
          const found = await whatIsIn(await open(), programs, look)
          const checks = holds.checks.map(one => ({
            ...one,
            // What is given by the kind of cell may be more today.
            answers: expect.toSatisfy((count: number) => count >= one.answers),
            notices: one.notices.map(notice => ({ ...notice, kind: renamed[notice.kind] ?? notice.kind })),
            ...otherwise[version]?.[one.about],
          }))
          // There were offers in one forum under one tag.
          const settings = holds.settings.map(one => ({ ...one, forumOffers: offersOfEarlier(one.forumOffers) }))
          const releases = holds.releases.map(({ scope, weeks }) => {
            const { [ofOneServer]: pooled, ...others } = weeks
            return { scope, weeks: scope === 'pool' ? others : weeks }
          })
          // A later version may know more of each, never less.
          expect(found).toMatchObject({ ...holds, checks, settings, releases })
        })

        test('has the tables, indexes and triggers of a new database', async () => {
          const mine = await built(await open())
          const other = await kind.open()
          expect(mine).toEqual(await built(other.db))
          await other.close()
        })

        test('every check that is open takes its next step, once, from the revision it stands at', async () => {
          const store = openCheckStore(await open(), testSeal)
          const going = holds.checks.filter(one => one.status !== 'closed')
          expect(going.length).toBeGreaterThan(20)
          for (const { about, id, revision } of going) {
            const check = (await store.load(id))?.check
            const program = check && programs.programFor(check.family, check.day)
            if (!program) throw new Error(`${about} is gone`)
            const fitted = refit(program, check)
            const holder = { person: fitted.holder, here: true, roles: [], moderator: false }
            const stepped = act(program, fitted, holder, nextOf(screenOf(program, fitted)), now)
            if (!stepped.ok) throw new Error(`${about}: ${stepped.refusal.code}`)
            expect(await store.save(stepped.check, revision, `click on ${id}`), about).toBe('saved')
            expect(await store.save(stepped.check, revision, `click on ${id}`), about).toBe('seen')
            expect(await store.save(stepped.check, revision, `late click on ${id}`), about).toBe('stale')
            expect((await store.load(id))?.check, about).toEqual(stepped.check)
          }
        })

        test('a finished check leaves its outcome as it closes, unless it was counted before', async () => {
          const db = await open()
          const store = openCheckStore(db, testSeal)
          const server = 'a server of its own'
          const close = async (about: string) => {
            const { id } = named(holds.checks, about)
            const check = (await store.load(id))?.check as Check
            const closed: Check = { ...check, phase: { is: 'closed' }, revision: check.revision + 1 }
            await store.save(closed, check.revision, `closes ${id}`, { ...base, server })
            const outcomes = openOutcomeLog(db, testSeal, testCodes)
            expect(await outcomes.admit(base.week)).toBe(0)
            // It waits for others, and its own person is told of it.
            return (await outcomes.of([base.reporter])).filter(one => one.server === server).length
          }
          expect(await close('finished and counted')).toBe(0)
          expect(await close('finished')).toBe(1)
        })

        test('of what the pool told before it counted its servers nothing is found by its week, and the next goes on', async () => {
          const db = await open()
          const logs = { outcomes: openOutcomeLog(db, testSeal, testCodes), releases: openReleaseLog(db) }
          const pool = { kind: 'pool' } as const
          expect(text(kind.dump)).toContain(`"week":"${ofOneServer}"`)
          expect(await logs.releases.bytes(pool, ofOneServer)).toBeNull()
          const weeks = await logs.releases.weeks(pool)
          expect(weeks).not.toContain(ofOneServer)
          expect(weeks).toContain(weekPlus(ofOneServer, -1))
          expect((await logs.releases.latest(pool))?.week).toBe(ofOneServer)
          const all = await db.selectFrom('releases').select('bytes').where('scope', '=', 'pool').execute()
          for (const { bytes } of all) expect(JSON.parse(bytes || '{}').families ?? []).toEqual([])
          const week = weekOf(now)
          expect(await closeWeeks(logs, pool, now + 7 * day)).toEqual({ ok: true, frozen: [week] })
          const next = JSON.parse((await logs.releases.bytes(pool, week)) ?? '')
          expect(next).toMatchObject({ checks: 0, families: [], rises: [] })
          // Nor does what was counted for it come back once others have come: a family opens by what is new.
          const state = (await logs.releases.latest(pool))?.state
          expect(Object.values(state?.families ?? {}).map(one => one.opened)).toContain(ofOneServer)
        })

        test('the next week is closed after the last one, on every server and in the pool', async () => {
          const db = await open()
          const logs = { outcomes: openOutcomeLog(db, testSeal, testCodes), releases: openReleaseLog(db) }
          for (const { scope, weeks } of holds.releases) {
            const of = scope === 'pool' ? ({ kind: 'pool' } as const) : ({ kind: 'server', server: scope } as const)
            const week = weekOf(now)
            expect(Object.keys(weeks).at(-1)).toBe(weekPlus(week, -1))
            expect(await closeWeeks(logs, of, now + 7 * day)).toEqual({ ok: true, frozen: [week] })
          }
        })

        test('what moderators decide and set goes on from the revision it stands at', async () => {
          const db = await open()
          const findings = openFindingLog(db)
          const [told] = holds.findings.filter(one => one.state === 'told')
          const finding = await findings.load(told?.id ?? '')
          const next = finding && decide(finding, { is: 'dismiss', by: 'somebody', why: 'seen before' }, now)
          if (!next) throw new Error('no finding waits for a decision')
          expect(await findings.save(next)).toBe('saved')
          expect(await findings.save(next)).toBe('stale')
          const servers = openSettingsStore(db)
          for (const settings of await servers.all()) {
            const changed = { ...settings, revision: settings.revision + 1, reportsChannel: null }
            expect(await servers.save(changed)).toBe('saved')
            expect(await servers.save(changed)).toBe('stale')
            expect(await servers.load(settings.server)).toEqual(changed)
          }
        })

        test('what was claimed, lent or typed is still so', async () => {
          const db = await open()
          const [server = ''] = holds.settings.map(one => one.server)
          const offers = openOfferClaims(db)
          expect(await offers.claim(server, '940000000000000000', now)).toBe(false)
          expect(await offers.purge(now + day)).toBe(3)
          const leases = openLeases(db)
          expect(await leases.take('weekly', 'this process', now, now + day)).toBe(false)
          expect(await leases.take('weekly', 'this process', now + day, now + 2 * day)).toBe(true)
          for (const draft of holds.drafts.map(one => one.value.value as { person: string }))
            expect((await openTraces(db, testSeal).of(draft.person)).drafts).toEqual([draft])
          expect(await new KeptValues(db, draftsNamespace, () => now + day).purge()).toBe(holds.drafts.length)
        })
      },
    )

describe.each(databases)('on $name', kind => {
  test.skipIf(kind.missing)('a database that a newer version has changed is refused, and left alone', async () => {
    opened = await kind.open()
    const { db, again } = opened
    await sql`insert into kysely_migration values ('9999-later', '2099-01-01T00:00:00.000Z')`.execute(db)
    const before = await built(db)
    const refusal = (version: string) =>
      `The database was written by a newer version: it holds the step "9999-later", which this one, ${manifest.version}, does not know. Start ${version}, or a later one; nothing in the database was changed.`
    await db.updateTable('kept').set({ value: '7.8.9' }).where('key', '=', 'needs-version').execute()
    await expect(again()).rejects.toThrow(refusal('version 7.8.9'))
    await db.deleteFrom('kept').execute()
    await expect(again()).rejects.toThrow(refusal('the version that was used with it last'))
    expect(await built(db)).toEqual(before)
  })

  test.skipIf(kind.missing)('the version that took the last step stands in the database', async () => {
    opened = await kind.open()
    const kept = await opened.db.selectFrom('kept').selectAll().execute()
    expect(kept).toEqual([{ key: 'needs-version', value: manifest.version, expires_at: null }])
  })
})

/** What whoever sees this screen does next. */
function nextOf(screen: Screen): CheckEvent | HandOverEvent {
  switch (screen.kind) {
    case 'question': {
      const { question, again } = screen
      const first = question.answer.kind === 'options' ? question.answer.options[0] : undefined
      const answer = again ?? (first ? { kind: 'option' as const, option: first.id } : { kind: 'cant-tell' as const })
      return { is: 'answer', question: question.id, answer }
    }
    case 'beginning':
      return { is: 'begin', mode: 'quick' }
    case 'offered':
      return { is: 'withdraw' }
    case 'consent':
      return { is: 'consent', to: screen.to, given: false }
    case 'paused':
      return { is: 'resume' }
    case 'verdict':
      return { is: 'back' }
    case 'closed':
      throw new RangeError('a closed check has no next step')
  }
}

/** How the tables, indexes and triggers of a database are made; neither the names of schemas nor the order of making count. */
async function built(db: Opened['db']): Promise<unknown> {
  const onSqlite = 'select name, sql as made from sqlite_schema where sql is not null'
  const onPostgres = `select indexname as name, replace(indexdef, schemaname || '.', '') as made from pg_indexes where schemaname = current_schema()
    union all select proname, prosrc from pg_proc where pronamespace = current_schema()::regnamespace
    union all select tgname, replace(pg_get_triggerdef(pg_trigger.oid), current_schema() || '.', '') from pg_trigger
      join pg_class on pg_class.oid = tgrelid where relnamespace = current_schema()::regnamespace and not tgisinternal
    union all select table_name || '.' || column_name, concat_ws(' ', data_type, is_nullable, column_default)
      from information_schema.columns where table_schema = current_schema()`
  const dialect = db.getExecutor().adapter instanceof SqliteAdapter ? onSqlite : onPostgres
  const { rows } = await sql<{ name: string; made: string }>`${sql.raw(dialect)} order by 1, 2`.execute(db)
  return rows
}

function named<T extends { readonly about: string }>(list: readonly T[], about: string): T {
  const found = list.find(one => one.about === about)
  if (!found) throw new Error(`nothing is called ${about}`)
  return found
}
