// A check and its outcome: closed together or not at all, once, whoever else closes or settles it at the same time.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Check, lifetime } from '../../src/check/check.ts'
import type { CheckStore } from '../../src/check/store.ts'
import { option } from '../../src/engine/answers.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { openEpochKeys } from '../../src/stores/epoch-keys.ts'
import { openOutcomeLog } from '../../src/stores/outcome-log.ts'
import { openSeal } from '../../src/stores/seal.ts'
import type { Outcome } from '../../src/trends/outcome.ts'
import type { OutcomeLog } from '../../src/trends/outcome-log.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { codeOf, testCodes, testSeal } from '../stores/test-seal.ts'
import { base } from '../trends/base-outcome.ts'

const now = Date.UTC(2026, 10, 25)
const check = (id: string, more: Partial<Check> = {}) =>
  pausedCheck(id, {
    ...{ server: id.slice(0, 1), holder: 'p1', phase: { is: 'done' }, startedAt: now, expiresAt: now + lifetime },
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
      store = openCheckStore(opened.db, testSeal)
      outcomes = openOutcomeLog(opened.db, testSeal, testCodes)
    })
    afterAll(() => opened?.close())
    /** Four others close theirs, in the same week and of another family, so that there are enough to join. */
    const joinedBy = async (server: string, into = store) => {
      for (const n of [81, 82, 83, 84]) {
        const id = `${server}-${n}`
        const theirs = { ...base, server, family: 'other', reporter: person(n), options: {} }
        await into.create(check(id), `i-${id}`)
        await into.save(closed(id), 0, `i-${id}-close`, theirs)
      }
    }
    const counted = async (server: string, kindOf: 'server' | 'pool' = 'server') => {
      if (kindOf === 'server') await joinedBy(server)
      await outcomes.admit('2026-W53')
      const scope = kindOf === 'pool' ? ({ kind: 'pool' } as const) : ({ kind: 'server', server } as const)
      const counts = await outcomes.weekCounts(scope, '2026-W01', '2026-W53')
      return counts
        .filter(one => one.facet === 'all' && one.family !== 'other')
        .reduce((sum, one) => sum + one.reporters, 0)
    }

    test('a closing save leaves its outcome, whole and sealed, and nothing of what was answered in the check', async () => {
      const outcome = { ...base, server: 'a' }
      const answers = { legs: option('four') }
      await store.create(check('a1', { answers }), 'i-a0')
      expect(await store.save({ ...closed('a1'), answers, trail: ['legs'] }, 0, 'i-a1', outcome)).toBe('saved')
      const row = await opened.db.selectFrom('checks').selectAll().where('id', '=', 'a1').executeTakeFirstOrThrow()
      expect(row).toMatchObject({ settled: 1, phase: 'closed', outcome: expect.stringMatching(/^sealed1\.2026-W10\./) })
      for (const word of [outcome.reporter, 'legs', 'four']) expect(JSON.stringify(row), word).not.toContain(word)
      // Its own person is told of it and can delete it, before and after it is counted among the others.
      expect(await outcomes.of([outcome.reporter])).toEqual([outcome])
      expect(await outcomes.judgedOtherwise('any-cell', '9.9.9', 10)).toEqual([])
      expect(await outcomes.admit('2026-W09')).toBe(0)
      expect(await outcomes.admit('2026-W10')).toBe(0)
      expect(await outcomes.of([outcome.reporter])).toEqual([outcome])
      await joinedBy('a')
      expect(await outcomes.admit('2026-W10')).toBe(5)
      // Nobody else has given that answer yet.
      const joined = { ...outcome, options: {}, reporter: codeOf(outcome) }
      const all = (await outcomes.judgedOtherwise('any-cell', '9.9.9', 10)).map(one => one.outcome)
      expect(all).toHaveLength(5)
      expect(all).toContainEqual(joined)
      const names = await outcomes.codesOf('2026-E1', [outcome])
      expect(names).toContain(joined.reporter)
      expect(await outcomes.of(names)).toEqual([joined])
      expect(await opened.db.selectFrom('checks').select('outcome').where('id', '=', 'a1').execute()).toEqual([
        { outcome: null },
      ])
      expect(await outcomes.forget(names)).toBe(1)
    })

    test('what waits is deleted for its person, and does not join the others afterwards', async () => {
      for (const [id, n] of [
        ['z1', 51],
        ['z2', 52],
      ] as const) {
        await store.create(check(id), `i-${id}`)
        await store.save(closed(id), 0, `i-${id}-close`, { ...base, server: 'z', reporter: person(n) })
      }
      expect(await outcomes.forget([person(51)])).toBe(1)
      expect(await outcomes.of([person(51)])).toEqual([])
      expect(await counted('z')).toBe(1)
    })

    test('what cannot be opened here stays, is told of, and is counted where its key is', async () => {
      const folder = await mkdtemp(join(tmpdir(), 'cellwary-seal-'))
      const other = openSeal(openEpochKeys(folder))
      await store.create(check('y1'), 'i-y0')
      const sealing = openCheckStore(opened.db, other)
      expect(await sealing.save(closed('y1'), 0, 'i-y1', { ...base, server: 'y' })).toBe('saved')
      const lost: number[] = []
      await joinedBy('y', sealing)
      expect(
        await openOutcomeLog(opened.db, testSeal, testCodes, undefined, rows => lost.push(rows)).admit('2026-W53'),
      ).toBe(0)
      expect(lost).toEqual([5])
      expect(await openOutcomeLog(opened.db, other, testCodes).admit('2026-W53')).toBe(5)
      await rm(folder, { recursive: true })
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
      const others = [
        store,
        openCheckStore(await opened.again(), testSeal),
        openCheckStore(await opened.again(), testSeal),
      ]
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
      const other = openCheckStore(await opened.again(), testSeal)
      const settled = await Promise.all([store, other, store].map(one => one.settle(check('g1', early), outcome)))
      expect(settled.filter(Boolean)).toHaveLength(1)
      expect(await store.settle(check('g2'), null)).toBe(true)
      expect(await store.finished(now + 20, 10)).toEqual([])
      expect(await counted('g')).toBe(1)
      // Its person sees it as it stood; whoever reads the tables does not.
      const again = (await store.load('g1'))?.check as Check
      expect(again).toEqual({ ...check('g1', early), settled: true })
      const { body } = await opened.db
        .selectFrom('checks')
        .select('body')
        .where('id', '=', 'g1')
        .executeTakeFirstOrThrow()
      expect(body).not.toContain('answers')
      const left = opened.db.selectFrom('checks').select(['body', 'outcome']).where('id', '=', 'g2')
      expect(await left.executeTakeFirst()).toEqual({ body: expect.stringMatching(/^sealed1\./), outcome: null })
      // Whoever has the key as well can open it.
      expect(await testSeal.open(body)).toContain('answers')
      // A process that remembers it from before is told that somebody was faster.
      expect(await store.save(closed('g1'), 0, 'i-g1-early', outcome)).toBe('stale')
      // Closed later, in another epoch, as somebody else for all the pseudonym says: it has left its outcome.
      const late = { ...outcome, reporter: person(7), week: '2026-W50' }
      const open = { ...again, revision: 1, cells: 9 }
      expect(await store.save(open, 0, 'i-g1-open')).toBe('saved')
      expect(await store.load('g1')).toMatchObject({ check: { cells: 9, settled: true } })
      expect(await store.save({ ...open, revision: 2, phase: { is: 'closed' } }, 1, 'i-g1-close', late)).toBe('saved')
      expect(await counted('g')).toBe(1)
    })

    test('a check that has moved on is not settled', async () => {
      await store.create(check('h1'), 'i-h0')
      await store.save(check('h1', { revision: 1, phase: { is: 'paused' } }), 0, 'i-h1')
      expect(await store.settle(check('h1'), { ...base, server: 'h' })).toBe(false)
      expect(await counted('h')).toBe(0)
    })
  })
