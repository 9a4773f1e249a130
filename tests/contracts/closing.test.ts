// A check and its outcome: closed together or not at all, once, whoever else closes or settles it at the same time.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Check, lifetime } from '../../src/check/check.ts'
import type { CheckStore } from '../../src/check/store.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import type { OutcomeLog } from '../../src/trends/outcome-log.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { base } from '../trends/base-outcome.ts'

const now = Date.UTC(2026, 10, 25)
const check = (id: string, more: Partial<Check> = {}): Check => ({
  id,
  revision: 0,
  server: 's1',
  holder: 'p1',
  mode: 'full',
  cells: 1,
  family: null,
  packs: [],
  day: '2026-11-25',
  answers: {},
  trail: [],
  consents: {},
  phase: { is: 'done' },
  startedAt: now,
  expiresAt: now + lifetime,
  ...more,
})
const closed = (id: string): Check => check(id, { revision: 1, phase: { is: 'closed' } })
const person = (n: number): string => n.toString(16).padStart(64, '0')

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let store: CheckStore<Outcome>
    let outcomes: OutcomeLog
    beforeAll(async () => {
      opened = await kind.open()
      store = openCheckStore(opened.db)
      outcomes = openOutcomeLog(opened.db)
    })
    afterAll(() => opened?.close())
    const counted = async (server: string, kindOf: 'server' | 'pool' = 'server') => {
      const scope = kindOf === 'pool' ? ({ kind: 'pool' } as const) : ({ kind: 'server', server } as const)
      const counts = await outcomes.weekCounts(scope, '2026-W01', '2026-W53')
      return counts.filter(one => one.facet === 'all').reduce((sum, one) => sum + one.reporters, 0)
    }

    test('a closing save leaves its outcome, whole, and nothing of it in the check', async () => {
      const outcome = { ...base, server: 'a' }
      await store.create(check('a1'), 'i-a0')
      expect(await store.save(closed('a1'), 0, 'i-a1', outcome)).toBe('saved')
      const [kept] = await outcomes.judgedOtherwise('any-cell', '9.9.9', 10)
      expect(kept?.outcome).toEqual(outcome)
      const row = await opened.db.selectFrom('checks').selectAll().where('id', '=', 'a1').executeTakeFirstOrThrow()
      expect(row).toMatchObject({ outcome: null, settled: 1, phase: 'closed' })
      expect(JSON.stringify(row)).not.toContain(outcome.reporter)
    })

    test('a save that does not go through leaves none', async () => {
      const outcome = { ...base, server: 'b' }
      await store.create(check('b1'), 'i-b0')
      expect(await store.save(closed('b1'), 5, 'i-b1', outcome)).toBe('stale')
      expect(await store.save(closed('b1'), 0, 'i-b0', outcome)).toBe('seen')
      expect(await counted('b')).toBe(0)
    })

    test('of many processes that close a check one leaves its outcome', async () => {
      await store.create(check('c1'), 'i-c0')
      const others = [store, openCheckStore(await opened.again()), openCheckStore(await opened.again())]
      const saved = await Promise.all(
        Array.from({ length: 12 }, (_, i) =>
          (others[i % 3] as CheckStore<Outcome>).save(closed('c1'), 0, `i-c${i + 1}`, {
            ...base,
            server: 'c',
            reporter: person(i),
          }),
        ),
      )
      expect(saved.filter(one => one === 'saved')).toHaveLength(1)
      expect(await counted('c')).toBe(1)
    })

    test('a person counts once for a family and epoch, though each of their checks closes', async () => {
      for (const id of ['d1', 'd2']) {
        await store.create(check(id), `i-${id}`)
        expect(await store.save(closed(id), 0, `i-${id}-close`, { ...base, server: 'd' })).toBe('saved')
      }
      expect(await counted('d')).toBe(1)
    })

    test('the pool counts them once, the second server still does', async () => {
      for (const server of ['e', 'f']) {
        await store.create(check(server), `i-${server}`)
        await store.save(closed(server), 0, `i-${server}-close`, { ...base, server, pooled: person(99) })
      }
      expect([await counted('e'), await counted('f'), await counted('', 'pool')]).toEqual([1, 1, 1])
    })

    test('what stands finished for long enough is settled, once; its person can still go on with it', async () => {
      const early = { expiresAt: now + 10 }
      await store.create(check('g1', early), 'i-g1')
      await store.create(check('g2', { expiresAt: now + 20 }), 'i-g2')
      await store.create(check('g3', { ...early, phase: { is: 'paused' } }), 'i-g3')
      expect((await store.finished(now + 10, 10)).map(one => one.id)).toEqual(['g1'])
      expect((await store.finished(now + 20, 10)).map(one => one.id)).toEqual(['g1', 'g2'])
      const outcome = { ...base, server: 'g' }
      const other = openCheckStore(await opened.again())
      const settled = await Promise.all([store, other, store].map(one => one.settle(check('g1', early), outcome)))
      expect(settled.filter(Boolean)).toHaveLength(1)
      expect(await store.settle(check('g2'), null)).toBe(true)
      expect(await store.finished(now + 20, 10)).toEqual([])
      expect(await counted('g')).toBe(1)
      // Closed later, in another epoch, as somebody else for all the pseudonym says: it has left its outcome.
      expect(
        await store.save(closed('g1'), 0, 'i-g1-close', { ...outcome, reporter: person(7), week: '2026-W50' }),
      ).toBe('saved')
      expect(await counted('g')).toBe(1)
    })

    test('a check that has moved on is not settled', async () => {
      await store.create(check('h1'), 'i-h0')
      await store.save(check('h1', { revision: 1, phase: { is: 'paused' } }), 0, 'i-h1')
      expect(await store.settle(check('h1'), { ...base, server: 'h' })).toBe(false)
      expect(await counted('h')).toBe(0)
    })
  })
