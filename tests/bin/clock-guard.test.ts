// A clock that jumps, ahead or behind, deletes no check, no outcome and no key; the log says what to do, and in time all goes on.
import Keyv from 'keyv'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { lifetime } from '../../src/check/check.ts'
import type { Services } from '../../src/discord/services.ts'
import type { Clock } from '../../src/jobs/clock-guard.ts'
import { sweep } from '../../src/jobs/sweep.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { draftsNamespace, KeptValues } from '../../src/stores/cache-adapter.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { databaseTime } from '../../src/stores/database-time.ts'
import { openHelperLog } from '../../src/stores/helper-log.ts'
import { openNoticeStore } from '../../src/stores/notice-store.ts'
import { openOfferClaims } from '../../src/stores/offer-claims.ts'
import { epochOf } from '../../src/trends/epoch.ts'
import { weekOf } from '../../src/trends/week.ts'
import { databases } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testSeal } from '../stores/test-seal.ts'
import { base } from '../trends/base-outcome.ts'
import { openJob, type TestJob } from './open-job.ts'

const day = 24 * 3600_000
const begun = Date.UTC(2026, 10, 25)
const check = (id: string, at: number) => pausedCheck(id, { startedAt: at, expiresAt: at + lifetime })

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let it: TestJob
    let clock: Clock
    let services: Services
    let now = begun
    let theirs: number | null = null
    beforeEach(async () => {
      it = await openJob(kind)
      await it.server('here')
      theirs = null
      const { db, job } = it
      clock = { memory: new Keyv({ store: new KeptValues(db, 'clock') }), databaseTime: async () => theirs }
      const checks = openCheckStore(db, testSeal)
      const more = {
        checks,
        offers: openOfferClaims(db),
        notices: openNoticeStore(db),
        helpers: openHelperLog(db),
        now: () => now,
      }
      services = { ...job.services, ...more } as unknown as Services
      now = begun
      await steady(20)
    })
    afterEach(() => it.close())

    /** What the bot does by itself at this time. */
    const look = async () => {
      it.at(now)
      await sweep(services, new KeptValues(it.db, undefined, () => now), clock)
      await lookForWork({ ...it.job, clock })
    }
    /** Days on which the bot runs and the clock is right. */
    async function steady(days: number): Promise<void> {
      for (let i = 0; i < 2 * days; i++) {
        await look()
        now += day / 2
      }
    }
    const there = async (id: string) => (await services.checks.load(id)) !== undefined
    const keyStays = async (at: number) => (await it.job.keys.find(epochOf(weekOf(at)))) !== undefined

    test('while it is right, what is past its time goes', async () => {
      await services.checks.create(check('a', now), 'i-a')
      await steady(13)
      expect(await there('a')).toBe(true)
      await steady(2)
      expect(await there('a')).toBe(false)
      expect(it.log.join()).not.toMatch(/clock/)
    })

    test.each([15, 400])(
      '%i days ahead deletes no check and destroys no running key, nor once it is right again',
      async ahead => {
        await services.checks.create(check('a', now), 'i-a')
        await it.job.keys.keyOf(epochOf(weekOf(now)))
        const outcome = { ...base, server: 'here', week: weekOf(now) }
        await services.trends.outcomes.record(outcome)
        const right = now
        now += ahead * day
        await look()
        now += 3600_000
        await look()
        expect(await there('a')).toBe(true)
        expect(await keyStays(right)).toBe(true)
        expect(it.log.join()).toMatch(
          /Nothing is deleted for two weeks\. If it is wrong, set this machine's clock right/,
        )
        now = right + 3 * 3600_000
        await look()
        await steady(5)
        expect(await there('a')).toBe(true)
        expect(await keyStays(right)).toBe(true)
        expect(await services.trends.outcomes.firstWeek({ kind: 'server', server: 'here' })).toBe(outcome.week)
      },
    )

    test('a step taken under a clock that was behind is kept for its two weeks', async () => {
      const right = now
      now -= 20 * day
      await look()
      await services.checks.create(check('a', now), 'i-a')
      now = right + 3600_000
      await look()
      expect(await there('a')).toBe(true)
      await steady(13)
      expect(await there('a')).toBe(true)
      // And goes then: a jump is not for ever.
      await steady(3)
      expect(await there('a')).toBe(false)
    })

    test('a bot that was away for a week deletes nothing at once, and goes on', async () => {
      await services.checks.create(check('a', now), 'i-a')
      now += 16 * day
      await look()
      expect(await there('a')).toBe(true)
      expect(it.log.join()).toMatch(/if the bot was away meanwhile, there is nothing to do/)
      await steady(15)
      expect(await there('a')).toBe(false)
    })

    test('what somebody typed goes by its own time, also while the clock may delete nothing else', async () => {
      const kept = (namespace: string) => new KeptValues(it.db, namespace, () => now)
      await kept(draftsNamespace).set('typed', '"words"', now + 6 * 3600_000)
      await kept('pictures').set('drawn', '"lines"', now + 6 * 3600_000)
      now += 200 * day
      await look()
      const left = (await it.db.selectFrom('kept').select('key').execute()).map(one => one.key)
      expect(left).not.toContain('drafts:typed')
      expect(left).toContain('pictures:drawn')
    })

    test('where the database has a clock of its own, the two have to agree', async () => {
      await services.checks.create(check('a', now), 'i-a')
      await steady(13)
      now += 1.5 * day
      theirs = now - 1.5 * day
      await look()
      expect(await there('a')).toBe(true)
      expect(it.log.join()).toMatch(/the database's says .*Nothing is deleted until they agree/)
      theirs = now
      await look()
      expect(await there('a')).toBe(false)
    })

    test('the database’s clock is asked where it has one', async () => {
      const asked = await databaseTime(it.db)
      if (kind.name === 'SQLite') expect(asked).toBeNull()
      else expect(Math.abs((asked ?? 0) - Date.now())).toBeLessThan(60_000)
    })
  })
