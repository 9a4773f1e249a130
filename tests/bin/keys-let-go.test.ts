// The weekly job lets go of keys as soon as nothing is read by them, and of what nobody can read any more.
import { describe, expect, test } from 'vitest'
import { lifetime } from '../../src/check/check.ts'
import { lookForWork } from '../../src/jobs/weekly-job.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openSeal } from '../../src/stores/seal.ts'
import { type Week, weekPlus, weekStart } from '../../src/trends/week.ts'
import { databases } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { base } from '../trends/base-outcome.ts'
import { useJob } from './open-job.ts'

const hour = 3600_000

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    const it = useJob(kind, 'here')

    /** Five people finish a check in the last hour of a week. */
    async function finishIn(week: Week): Promise<void> {
      const store = openCheckStore(it().db, openSeal(it().job.sealKeys))
      for (const user of ['1', '2', '3', '4', '5']) {
        const at = weekStart(weekPlus(week, 1)) - hour
        const more = {
          server: 'here',
          holder: user,
          phase: { is: 'done' },
          startedAt: at,
          expiresAt: at + lifetime,
        } as const
        const by = await it().job.services.trends.reporterOf({ server: 'here', user, week, pooling: false })
        await store.create(pausedCheck(`c${user}`, more), `i${user}`)
        await store.settle(pausedCheck(`c${user}`, more), { ...base, ...by, week })
      }
    }
    test.each([1, 5])(
      'a closed check is gone within eight days, where %i people have left something, too',
      async each => {
        const store = openCheckStore(it().db, openSeal(it().job.sealKeys))
        const at = weekStart('2026-W20')
        for (let n = 0; n < each; n++) {
          const check = pausedCheck(`c${n}`, {
            server: 'here',
            holder: `${n}`,
            startedAt: at,
            expiresAt: at + lifetime,
          })
          const by = await it().job.services.trends.reporterOf({
            server: 'here',
            user: `${n}`,
            week: '2026-W20',
            pooling: false,
          })
          await store.create(check, `i${n}`)
          const closed = { ...check, revision: 1, phase: { is: 'closed' } } as const
          expect(await store.save(closed, 0, `i${n}-close`, { ...base, ...by, week: '2026-W20' })).toBe('saved')
        }
        const end = at + 8 * 24 * hour
        it().at(end - hour)
        await lookForWork(it().job)
        await store.purge(end)
        expect(await it().db.selectFrom('checks').select('id').execute()).toEqual([])
      },
    )

    const counted = async () => (await it().db.selectFrom('outcomes').select('week').execute()).map(one => one.week)

    test('the key of a quarter is there until its last week is counted, and no longer', async () => {
      await finishIn('2026-W13')
      it().at(weekStart('2026-W14') + hour / 2)
      await lookForWork(it().job)
      expect(await counted()).toEqual([])
      expect(await it().job.keys.find('2026-E1')).toBeDefined()
      it().at(weekStart('2026-W14') + 2 * hour)
      await lookForWork(it().job)
      expect(await counted()).toEqual(Array(5).fill('2026-W13'))
      expect(await it().job.keys.find('2026-E1')).toBeUndefined()
    })

    test('the key of a seal is there for as long as a check lives, and no longer', async () => {
      await finishIn('2026-W20')
      const body = async () => (await it().db.selectFrom('checks').select('body').limit(1).execute())[0]?.body ?? ''
      it().at(weekStart('2026-W23') - hour - 1)
      await lookForWork(it().job)
      expect(await openSeal(it().job.sealKeys).open(await body())).toContain('answers')
      it().at(weekStart('2026-W23'))
      await lookForWork(it().job)
      expect(await openSeal(it().job.sealKeys).open(await body())).toBeUndefined()
    })

    test('what waits under keys that were lost goes with their time, and holds no check back', async () => {
      await finishIn('2026-W20')
      await it().job.sealKeys.destroyBefore('2026-W30')
      const store = openCheckStore(it().db, openSeal(it().job.sealKeys))
      it().at(weekStart('2026-W23') - hour)
      await lookForWork(it().job)
      expect(await store.purge(weekStart('2026-W23') - hour)).toBe(0)
      it().at(weekStart('2026-W23'))
      await lookForWork(it().job)
      expect(await store.purge(weekStart('2026-W23'))).toBe(5)
      expect(await counted()).toEqual([])
    })
  })
