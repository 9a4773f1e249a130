// What was erased after a back-up was taken is erased again once the back-up is put back: of people, of servers and of what was counted.
import { mkdtemp, readdir, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Keyv from 'keyv'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { eraseAgain, forgetCounted } from '../../src/bin/erase-again.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { unsettled } from '../../src/server/settings.ts'
import { draftsNamespace, KeptValues } from '../../src/stores/cache-adapter.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openErasures, remembered } from '../../src/stores/erasures.ts'
import { openHelperLog } from '../../src/stores/helper-log.ts'
import { namedIn } from '../../src/stores/named-in.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testCodes, testSeal } from '../stores/test-seal.ts'
import { base } from '../trends/base-outcome.ts'

const [ada, bela] = ['900000000000000401', '900000000000000402']
const [cleo, dora] = ['900000000000000403', '900000000000000404']
const [shed, barn] = ['900000000000000101', '900000000000000102']
const bears = { reporter: 'a'.repeat(64), pooled: 'b'.repeat(64) }

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    /** The database as it runs, and the back-up of it that is put back later. */
    let running: Opened
    let restored: Opened
    let folder: string
    let now = Date.UTC(2026, 10, 25)
    beforeAll(async () => {
      folder = await mkdtemp(join(tmpdir(), 'cellwary-erasures-'))
      running = await kind.open()
      restored = await kind.open()
      for (const one of [running, restored]) await fill(one)
    })
    afterAll(async () => {
      await running?.close()
      await restored?.close()
      await rm(folder, { recursive: true, force: true })
    })

    const over = ({ db }: Opened) => ({
      checks: openCheckStore(db, testSeal),
      drafts: new Keyv({ store: new KeptValues(db, draftsNamespace) }),
      outcomes: openOutcomeLog(db, testSeal, testCodes),
      servers: openSettingsStore(db),
      traces: openTraces(db, testSeal),
      erasures: openErasures(folder, new KeptValues(db, 'erased', () => now), () => now),
    })
    async function fill(one: Opened): Promise<void> {
      const { checks, drafts, outcomes, servers } = over(one)
      for (const [i, holder] of [ada, bela].entries())
        for (const server of [shed, barn])
          await checks.create(pausedCheck(`c${i}${server}`, { holder, server }), `i${i}${server}`)
      await drafts.set('d1', { is: 'log', person: ada }, 1e12)
      for (const server of [shed, barn]) await servers.save({ ...unsettled(server), revision: 1 })
      await outcomes.record({ ...base, server: barn, ...bears })
      await outcomes.record({ ...base, server: barn, reporter: 'c'.repeat(64), pooled: null })
    }
    const start = (one: Opened) => {
      const { erasures, traces, outcomes } = over(one)
      return eraseAgain(erasures, () => namedIn(one.db, testSeal, testCodes), traces, outcomes, openLog('silent'))
    }
    const left = async (one: Opened) => ({
      checks: (await one.db.selectFrom('checks').select('id').orderBy('id').execute()).map(row => row.id),
      servers: (await one.db.selectFrom('servers').select('id').execute()).map(row => row.id),
      reporters: (await one.db.selectFrom('outcomes').select('reporter').execute()).map(row => row.reporter[0]),
      drafts: (await over(one).traces.of(ada)).drafts.length,
    })

    test('nothing is owed at first, and no id stands in the list of what was erased', async () => {
      await start(running)
      const { erasures, traces, outcomes } = over(running)
      now += 1000
      await erasures.noting([{ is: 'person', word: ada }], () => traces.forgetPerson(ada))
      await erasures.noting([{ is: 'server', word: shed }], () => traces.forgetServer(shed))
      expect(await forgetCounted(outcomes, erasures)([bears.reporter, 'd'.repeat(64)])).toBe(1)
      const names = (await readdir(folder)).filter(name => name !== 'key')
      expect(names).toHaveLength(3)
      expect(names.join()).not.toMatch(new RegExp([ada, shed, bears.reporter].join('|')))
    })

    test('the database that erased it owes nothing: who came back stays', async () => {
      const { checks } = over(running)
      await checks.create(pausedCheck('again', { holder: ada, server: barn }), 'i-again')
      now += 1000
      await start(running)
      expect(await left(running)).toEqual({
        checks: ['again', `c1${barn}`],
        servers: [barn],
        reporters: ['c'],
        drafts: 0,
      })
    })

    test('the one that was put back has all of it erased again, once, and everything else stays', async () => {
      expect((await left(restored)).checks).toHaveLength(4)
      now += 1000
      await start(restored)
      expect(await left(restored)).toEqual({ checks: [`c1${barn}`], servers: [barn], reporters: ['c'], drafts: 0 })
      await over(restored).checks.create(pausedCheck('later', { holder: ada, server: barn }), 'i-later')
      await start(restored)
      expect((await left(restored)).checks).toEqual([`c1${barn}`, 'later'])
    })

    test('one that is erased a second time is owed again by what is older', async () => {
      now += 1000
      const { erasures, traces } = over(running)
      await erasures.noting([{ is: 'person', word: ada }], () => traces.forgetPerson(ada))
      await start(restored)
      expect((await left(restored)).checks).toEqual([`c1${barn}`])
    })

    test('an erasure that was cut off is done at the next start', async () => {
      now += 1000
      const { erasures } = over(running)
      const cut = erasures.noting([{ is: 'person', word: bela }], () => Promise.reject(new Error('cut off')))
      await expect(cut).rejects.toThrow('cut off')
      await start(running)
      expect((await left(running)).checks).toEqual([])
    })

    test('a clock that was set back changes nothing: who came back stays', async () => {
      now -= 3600_000
      const { erasures, traces, checks } = over(running)
      await erasures.noting([{ is: 'person', word: ada }], () => traces.forgetPerson(ada))
      await checks.create(pausedCheck('back', { holder: ada, server: barn }), 'i-back')
      await start(running)
      expect((await left(running)).checks).toEqual(['back'])
      now += 3600_000
    })

    test('whoever stands only in a count of help, or in what was changed about a server, is found, too', async () => {
      for (const { db } of [running, restored]) {
        await openHelperLog(db).count(barn, cleo, '2026-W47')
        const servers = openSettingsStore(db)
        const { revision, ...rest } = await servers.load(barn)
        const changed = { ...rest, language: rest.language === 'de' ? 'es' : 'de', revision: revision + 1 }
        expect(await servers.save(changed, { by: dora, at: now })).toBe('saved')
      }
      const { erasures, traces } = over(running)
      now += 1000
      for (const word of [cleo, dora]) await erasures.noting([{ is: 'person', word }], () => traces.forgetPerson(word))
      const before = over(restored).traces
      expect([(await before.of(cleo)).helped.length, (await before.of(dora)).settings.length]).toEqual([1, 1])
      await start(restored)
      expect([(await before.of(cleo)).helped.length, (await before.of(dora)).settings.length]).toEqual([0, 0])
    })

    test.each([
      ['in its check', 'c'.repeat(64), false],
      ['among those for which there are too few', 'd'.repeat(64), true],
    ])('what waits to be counted, %s, is found, too', async (_, reporter, moved) => {
      for (const one of [running, restored]) {
        const { checks, outcomes } = over(one)
        const id = `waits${reporter[0]}`
        await checks.create(pausedCheck(id, { holder: cleo, server: barn, phase: { is: 'done' } }), `i-${id}`)
        const done = pausedCheck(id, { holder: cleo, server: barn, phase: { is: 'done' } })
        await checks.settle(done, { ...base, server: barn, family: null, reporter, pooled: null })
        if (moved) await outcomes.admit(base.week)
      }
      const { erasures, outcomes } = over(running)
      now += 1000
      const counted = (await outcomes.of([reporter])).length
      expect(await forgetCounted(outcomes, erasures)([reporter])).toBe(counted)
      const before = over(restored).outcomes
      expect(await before.of([reporter])).toHaveLength(counted)
      await start(restored)
      expect(await before.of([reporter])).toEqual([])
    })

    test('what was counted, under a code of its family, when it was erased is found where it still waits', async () => {
      const theirs = { ...base, server: barn, family: 'harrow-35', pooled: 'f'.repeat(64) }
      for (const one of [running, restored]) {
        const { checks } = over(one)
        for (const n of [1, 2, 3, 4, 5]) {
          const done = pausedCheck(`f${n}`, { holder: `f${n}`, server: barn, phase: { is: 'done' } })
          await checks.create(done, `i-f${n}`)
          await checks.settle(done, { ...theirs, reporter: `${n}f`.repeat(32), pooled: n === 1 ? theirs.pooled : null })
        }
      }
      const { erasures, outcomes } = over(running)
      expect(await outcomes.admit(base.week)).toBe(5)
      const first = { ...theirs, reporter: '1f'.repeat(32) }
      now += 1000
      expect(await forgetCounted(outcomes, erasures)(await outcomes.codesOf('2026-E1', [first]))).toBe(1)
      const before = over(restored).outcomes
      expect(await before.of([first.reporter])).toHaveLength(1)
      await start(restored)
      expect(await before.of([first.reporter, first.pooled])).toEqual([])
      expect(await before.of(['2f'.repeat(32)])).toHaveLength(1)
    })

    test('after ninety days nothing of it is left in the list', async () => {
      now += remembered + 1
      await start(running)
      expect((await readdir(folder)).filter(name => name !== 'key')).toEqual([])
    })
  })
