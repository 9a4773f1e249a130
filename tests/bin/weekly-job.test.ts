// The weekly job: once among many processes, after downtime too, never by a wrong clock, and nothing is kept past its time.
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Pack } from '../../src/engine/pack/pack.ts'
import { leaseMs, lookForWork, rejudgeOnce } from '../../src/jobs/weekly-job.ts'
import { installedPacks } from '../../src/packs/installed-packs.ts'
import type { Scope } from '../../src/trends/outcome-log.ts'
import { type Week, weekPlus, weekStart } from '../../src/trends/week.ts'
import { databases } from '../stores/databases.ts'
import { base } from '../trends/base-outcome.ts'
import { openJob, type TestJob, useJob } from './open-job.ts'

const here: Scope = { kind: 'server', server: 'here' }
const pool: Scope = { kind: 'pool' }
const person = (n: number): string => n.toString(16).padStart(64, '0')
/** Five hours into a week. */
const in_ = (week: Week): number => weekStart(week) + 5 * 3600_000

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    const it = useJob(kind, 'here')
    const record = async (week: Week, people: readonly number[], server = 'here', pooled = false) => {
      for (const n of people)
        await it().job.services.trends.outcomes.record({
          ...base,
          server,
          week,
          reporter: person(n),
          pooled: pooled ? person(n + 1000) : null,
        })
    }
    const weeks = (scope: Scope) => it().job.services.trends.releases.weeks(scope)

    test('of many processes one closes each week, after downtime all that were missed, in order', async () => {
      await record('2026-W10', [1, 2, 3, 4, 5])
      await record('2026-W12', [6, 7, 8, 9, 10])
      it().at(in_('2026-W14'))
      const jobs = [it().job, await it().another(), await it().another(), await it().another()]
      const looks = await Promise.all([...jobs, ...jobs].map(lookForWork))
      const frozen = looks.flatMap(look => (look.is === 'done' ? look.frozen.map(one => one.week) : []))
      expect(frozen.sort()).toEqual(['2026-W10', '2026-W11', '2026-W12', '2026-W13'])
      expect(await weeks(here)).toEqual(frozen)
      expect(await lookForWork(it().job)).toEqual({ is: 'done', frozen: [] })
    })

    test('what is frozen stays as it is, whatever comes in late or is deleted', async () => {
      await record('2026-W10', [1, 2, 3, 4, 5, 6])
      it().at(in_('2026-W11'))
      await lookForWork(it().job)
      const bytes = await it().job.services.trends.releases.bytes(here, '2026-W10')
      expect(JSON.parse(bytes ?? '')).toMatchObject({ checks: 5, more: 5 })
      await it().job.services.trends.outcomes.forget([1, 2, 3].map(person))
      await record('2026-W10', [20, 21, 22, 23, 24, 25])
      it().at(in_('2026-W12'))
      await lookForWork(it().job)
      expect(await it().job.services.trends.releases.bytes(here, '2026-W10')).toBe(bytes)
    })

    test('somebody with four accounts sees when one more person comes: the fifth makes the first number', async () => {
      const shown = async (week: Week) =>
        JSON.parse((await it().job.services.trends.releases.bytes(here, week)) ?? '{}')
      await record('2026-W10', [1, 2, 3, 4])
      it().at(in_('2026-W11'))
      await lookForWork(it().job)
      expect(await shown('2026-W10')).toMatchObject({ checks: 0 })
      await record('2026-W11', [5])
      it().at(in_('2026-W12'))
      await lookForWork(it().job)
      expect(await shown('2026-W11')).toMatchObject({ checks: 5 })
    })

    test('a week in which nobody checked is closed like any other', async () => {
      await record('2026-W10', [1, 2, 3, 4, 5])
      it().at(in_('2026-W12'))
      await lookForWork(it().job)
      expect(JSON.parse((await it().job.services.trends.releases.bytes(here, '2026-W11')) ?? '')).toMatchObject({
        checks: 5,
        more: 0,
      })
    })

    test('a process that died at it is waited for, then another takes over', async () => {
      await record('2026-W10', [1])
      it().at(in_('2026-W11'))
      const now = in_('2026-W11')
      await it().job.leases.take('weekly', 'somebody who died', now, now + leaseMs)
      expect(await lookForWork(it().job)).toEqual({ is: 'busy' })
      it().at(now + leaseMs)
      expect(await lookForWork(it().job)).toMatchObject({ is: 'done', frozen: [{ week: '2026-W10' }] })
    })

    const pooled = async (week: Week) => JSON.parse((await it().job.services.trends.releases.bytes(pool, week)) ?? '{}')

    test('the pool counts over all servers and names none', async () => {
      for (const [i, server] of ['here', 'there', 'yonder'].entries()) {
        await it().server(server)
        await record(
          '2026-W10',
          [1, 2, 3, 4, 5].map(n => n + 5 * i),
          server,
          true,
        )
      }
      // Somebody who checks on two servers is one person in the pool.
      await record('2026-W10', [15], 'there', true)
      it().at(in_('2026-W11'))
      await lookForWork(it().job)
      expect(await pooled('2026-W10')).toMatchObject({ scope: 'pool', checks: 15 })
      expect(JSON.stringify(await pooled('2026-W10'))).not.toMatch(/here|there|yonder/)
      expect(JSON.parse((await it().job.services.trends.releases.bytes(here, '2026-W10')) ?? '')).toMatchObject({
        checks: 5,
      })
    })

    test('what one server has brought, or one with two that hardly brought anything, the pool does not tell; it counts later', async () => {
      for (const server of ['there', 'yonder', 'empty']) await it().server(server)
      const people = (first: number, count: number) => Array.from({ length: count }, (_, i) => first + i)
      await record('2026-W10', people(1, 40), 'here', true)
      it().at(in_('2026-W11'))
      await lookForWork(it().job)
      expect(await pooled('2026-W10')).toMatchObject({ checks: 0, families: [], rises: [], patterns: [] })
      // Four people of a server are fewer than any number may stand for.
      await record('2026-W11', people(100, 5), 'there', true)
      await record('2026-W11', people(200, 4), 'yonder', true)
      it().at(in_('2026-W12'))
      await lookForWork(it().job)
      expect(await pooled('2026-W11')).toMatchObject({ checks: 0, families: [] })
      await record('2026-W12', people(204, 1), 'yonder', true)
      it().at(in_('2026-W13'))
      await lookForWork(it().job)
      expect(await pooled('2026-W12')).toMatchObject({ checks: 50 })
      // From here on as well: what one of them brings alone does not move it.
      await record('2026-W13', people(300, 20), 'here', true)
      it().at(in_('2026-W14'))
      await lookForWork(it().job)
      expect(await pooled('2026-W13')).toMatchObject({ checks: 50, more: 0 })
    })

    test('a clock that jumped closes nothing and deletes nothing, and the log says what to do', async () => {
      await record('2026-W10', [1, 2, 3, 4, 5])
      it().at(in_('2026-W11'))
      await lookForWork(it().job)
      await it().job.keys.keyOf('2026-E1')
      for (const [week, words] of [
        [weekPlus('2026-W10', 60), /59 weeks after the last closed one.*cellwary trends close/],
        ['2026-W09', /week 2026-W10 is closed already.*Set this machine's clock right/],
      ] as const) {
        it().log.length = 0
        it().at(in_(week))
        expect(await lookForWork(it().job)).toEqual({ is: 'done', frozen: [] })
        expect(it().log.join()).toMatch(words)
      }
      expect(await weeks(here)).toEqual(['2026-W10'])
      it().at(in_('2026-W12'))
      expect(await lookForWork(it().job)).toMatchObject({ frozen: [{ week: '2026-W11' }] })
      expect(await it().job.keys.destroyBefore('2026-E2')).toBe(1)
    })

    test('what is past its time goes: outcomes by what their server keeps, keys with their epoch', async () => {
      await it().server('there', 26)
      await record('2026-W10', [1, 2], 'here')
      await record('2026-W10', [3], 'there')
      await record('2026-W40', [4], 'there')
      await it().job.keys.keyOf('2026-E1')
      await it().job.keys.keyOf('2026-E4')
      it().at(in_('2026-W41'))
      await lookForWork(it().job)
      const left = await it().job.services.trends.outcomes.judgedOtherwise('any-cell', '0.0.0', 10)
      expect(left.map(one => `${one.outcome.server} ${one.outcome.week}`)).toEqual([
        'here 2026-W10',
        'here 2026-W10',
        'there 2026-W40',
      ])
      expect(await it().job.keys.destroyBefore('2026-E4')).toBe(0)
    })

    test('a damaged state stops its own server and no other, keys are let go all the same, and the log says so', async () => {
      await it().server('there')
      await record('2026-W10', [1, 2, 3, 4, 5])
      await record('2026-W10', [6, 7, 8, 9, 10], 'there')
      await it().job.keys.keyOf('2025-E4')
      it().at(in_('2026-W11'))
      await lookForWork(it().job)
      await it().db.updateTable('releases').set({ state: '{"first":' }).where('scope', '=', 'server:here').execute()
      await it().job.keys.keyOf('2025-E4')
      it().at(in_('2026-W12'))
      const frozen = [{ scope: { kind: 'server', server: 'there' }, week: '2026-W11' }]
      expect(await lookForWork(it().job)).toEqual({ is: 'done', frozen })
      expect(it().log.join()).toMatch(/release of week 2026-W10 was counted from is damaged.*Restore the database/)
      expect(await it().job.keys.destroyBefore('2026-E1')).toBe(0)
    })

    test('damaged rows count nowhere, the rest is counted, and the log says so', async () => {
      await record('2026-W10', [1, 2, 3, 4, 5, 6, 7])
      const damage = (n: number, change: object) =>
        it().db.updateTable('outcomes').set(change).where('reporter', '=', person(n)).execute()
      await damage(6, { fired: '["four-legs' })
      await damage(7, { verdict: 'perhaps' })
      it().at(in_('2026-W11'))
      await lookForWork(it().job)
      expect(JSON.parse((await it().job.services.trends.releases.bytes(here, '2026-W10')) ?? '')).toMatchObject({
        checks: 5,
      })
      expect(it().log.join()).toMatch(/"rows":2.*damaged outcomes are left out/)
      await damage(5, { options: 'x', packs: '[{"id":"any-cell",' })
      const rows = await it().job.services.trends.outcomes.failedChecks(here, 'harrow-30', '2026-W01', '2026-W20')
      expect(rows).toHaveLength(5)
      expect(await it().job.services.trends.outcomes.judgedOtherwise('any-cell', '0.0.0', 20)).toHaveLength(4)
    })
  })

describe('judging again', () => {
  const [sqlite] = databases
  let packs: readonly Pack[]
  let opened: TestJob
  const it = () => opened
  beforeEach(async () => {
    packs = (await installedPacks(undefined)).packs
    opened = await openJob(sqlite!, packs)
    opened.at(in_('2026-W48'))
  })
  afterEach(() => opened.close())
  const stamp = (id: string) => ({ id, version: '0.9.0', digest: 'a'.repeat(64) })
  const all = async () =>
    (await it().job.services.trends.outcomes.judgedOtherwise('any-cell', '0.0.0', 10)).map(o => o.outcome)

  test('a renewed pack judges the stored answers; who and when it was stays as it was', async () => {
    const old = {
      ...base,
      week: '2026-W40',
      family: null,
      verdict: 'ruled-out' as const,
      // A figure was behind the first of them, which is not kept; the second is in no pack any more.
      fired: ['capacity-impossible-18650', 'no-longer-asked'],
      options: { format: '18650', print: 'poor' },
      packs: [stamp('any-cell')],
    }
    await it().job.services.trends.outcomes.record(old)
    expect(await rejudgeOnce(it().job)).toBe(1)
    const [outcome] = await all()
    expect(outcome).toEqual({
      ...old,
      fired: ['capacity-impossible-18650', 'poor-print'],
      packs: it().job.services.programs.packs.filter(pack => pack.id === 'any-cell'),
    })
    expect(await rejudgeOnce(it().job)).toBe(0)
  })

  test('whoever clicks meanwhile is not kept waiting for all of them', async () => {
    for (let n = 0; n < 200; n++)
      await it().job.services.trends.outcomes.record({
        ...base,
        reporter: person(n),
        family: null,
        packs: [stamp('any-cell')],
      })
    let turns = 0
    let going = true
    const turning = () => {
      turns++
      if (going) setImmediate(turning)
    }
    setImmediate(turning)
    expect(await rejudgeOnce(it().job)).toBe(200)
    going = false
    expect(turns).toBeGreaterThan(4)
  })

  test('outcomes of a pack that is no longer installed stay as they were judged', async () => {
    const gone = { ...base, week: '2026-W40', packs: [stamp('any-cell'), stamp('taken-away')] }
    await it().job.services.trends.outcomes.record(gone)
    expect(await rejudgeOnce(it().job)).toBe(0)
    expect(await all()).toEqual([gone])
  })
})
