// The check store's contract, held against every database the project can use.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Check, lifetime } from '../../src/check/check.ts'
import type { CheckStore } from '../../src/check/store.ts'
import { option } from '../../src/engine/answers.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { rememberChecks } from '../../src/stores/remembering-checks.ts'
import { databases, type Kind, type Opened } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testSeal } from '../stores/test-seal.ts'

const now = Date.UTC(2026, 10, 25)
const check = (id: string, more: Partial<Check> = {}) =>
  pausedCheck(id, {
    ...{
      server: 's1',
      holder: 'p1',
      phase: { is: 'asking', question: 'wrap' },
      startedAt: now,
      expiresAt: now + lifetime,
    },
    ...more,
  })

const stores: readonly (Kind & { readonly wrap: (store: CheckStore) => CheckStore })[] = [
  ...databases.map(kind => ({ ...kind, wrap: (store: CheckStore) => store })),
  ...databases.map(kind => ({ ...kind, name: `${kind.name}, remembering`, wrap: rememberChecks })),
]

for (const kind of stores) {
  describe.skipIf(kind.missing)(
    `a check store on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`,
    () => {
      let opened: Opened
      let store: CheckStore
      beforeAll(async () => {
        opened = await kind.open()
        store = kind.wrap(openCheckStore(opened.db, testSeal))
      })
      afterAll(() => opened.close())

      test('gives back what was created, word for word', async () => {
        const one = check('a1', { answers: { mass: { kind: 'reading', value: 44.7, u: 0.1 } }, family: 'f' })
        expect(await store.create(one, 'i-a1')).toBe('saved')
        expect(await store.load('a1')).toEqual({ check: one, changedBy: 'i-a1' })
        expect(await store.load('none')).toBeUndefined()
      })

      test('creates nothing for an interaction that was counted before', async () => {
        await store.create(check('b1'), 'i-b')
        expect(await store.create(check('b2'), 'i-b')).toBe('seen')
        expect(await store.load('b2')).toBeUndefined()
      })

      test('saves on the expected revision only, and a stale save claims nothing', async () => {
        await store.create(check('c1'), 'i-c0')
        expect(await store.save(check('c1', { revision: 1 }), 0, 'i-c1')).toBe('saved')
        expect(await store.save(check('c1', { revision: 1, holder: 'thief' }), 0, 'i-c2')).toBe('stale')
        expect((await store.load('c1'))?.check.holder).toBe('p1')
        expect(await store.save(check('c1', { revision: 2 }), 1, 'i-c2')).toBe('saved')
      })

      test('is found by what it has become, whichever part of it a save has changed', async () => {
        const custody = { starter: 'c2-starter', history: [], shares: false }
        const steps: Partial<Check>[] = [
          {},
          { cells: 2 },
          { holder: 'c2-holder' },
          { cells: 3 },
          { custody },
          { server: 'c2-server' },
          { phase: { is: 'done' } },
          { expiresAt: now + 2 * lifetime },
        ]
        let stands: Partial<Check> = {}
        await store.create(check('c2'), 'i-c2-0')
        for (const [i, step] of steps.entries()) {
          stands = { ...stands, ...step }
          expect(await store.save(check('c2', { ...stands, revision: i + 1 }), i, `i-c2-${i + 1}`)).toBe('saved')
          const last = check('c2', { ...stands, revision: i + 1 })
          // From the database itself: the next save shall find it remembered.
          const row = await opened.db.selectFrom('checks').selectAll().where('id', '=', 'c2').executeTakeFirstOrThrow()
          expect(row).toMatchObject({ holder: last.holder, server: last.server, phase: last.phase.is })
          expect([row.starter, Number(row.expires_at)]).toEqual([last.custody?.starter ?? null, last.expiresAt])
        }
        expect((await store.load('c2'))?.check).toEqual(check('c2', { ...stands, revision: steps.length }))
      })

      test('the same interaction delivered again changes nothing, whatever the revision', async () => {
        await store.create(check('d1'), 'i-d0')
        await store.save(check('d1', { revision: 1 }), 0, 'i-d1')
        expect(await store.save(check('d1', { revision: 2 }), 1, 'i-d1')).toBe('seen')
        expect((await store.load('d1'))?.check.revision).toBe(1)
      })

      test('whoever expects a revision gets no older one, though another process has saved meanwhile', async () => {
        await store.create(check('k1'), 'i-k0')
        const other = kind.wrap(openCheckStore(await opened.again(), testSeal))
        expect((await other.load('k1', 0))?.check.revision).toBe(0)
        expect(await other.save(check('k1', { revision: 1, cells: 7 }), 0, 'i-k1')).toBe('saved')
        expect((await store.load('k1', 1))?.check.cells).toBe(7)
        expect((await store.load('k1'))?.check.revision).toBe(1)
        expect(await store.save(check('k1', { revision: 1 }), 0, 'i-k2')).toBe('stale')
        expect((await store.load('k1', 0))?.check.revision).toBe(1)
      })

      test('of many processes saving the same revision exactly one wins', async () => {
        await store.create(check('e1'), 'i-e')
        const others = [
          store,
          kind.wrap(openCheckStore(await opened.again(), testSeal)),
          kind.wrap(openCheckStore(await opened.again(), testSeal)),
        ]
        const outcomes = await Promise.all(
          Array.from({ length: 30 }, (_, i) =>
            (others[i % others.length] as CheckStore).save(check('e1', { revision: 1, cells: i + 1 }), 0, `i-e${i}`),
          ),
        )
        expect(outcomes.filter(outcome => outcome === 'saved')).toHaveLength(1)
        expect(outcomes.filter(outcome => outcome === 'stale')).toHaveLength(29)
      })

      test('gives a person no more than their number of open checks, however many processes do so at once', async () => {
        const others = [store, kind.wrap(openCheckStore(await opened.again(), testSeal))]
        for (let i = 0; i < 8; i++) await store.create(check(`o${i}`, { holder: 'offers' }), `i-o${i}`)
        const take = (i: number, by = `i-t${i}`) =>
          (others[i % 2] as CheckStore).pass(check(`o${i}`, { holder: 'takes', revision: 1 }), 0, by, now, 3)
        const takes = await Promise.all(Array.from({ length: 8 }, (_, i) => take(i)))
        expect(takes.toSorted()).toEqual([...Array(5).fill('full'), ...Array(3).fill('saved')])
        expect(await store.heldBy('takes', now)).toHaveLength(3)
        const [first = 0] = takes.flatMap((one, i) => (one === 'saved' ? [i] : []))
        expect([await take(first), await take(first, 'i-late')]).toEqual(['seen', 'stale'])
      })

      test('of one interaction delivered to many processes exactly one counts', async () => {
        const others = [store, kind.wrap(openCheckStore(await opened.again(), testSeal))]
        const outcomes = await Promise.all(
          Array.from({ length: 20 }, (_, i) => (others[i % 2] as CheckStore).create(check(`f${i}`), 'i-f')),
        )
        expect(outcomes.filter(outcome => outcome === 'saved')).toHaveLength(1)
      })

      test('lists what a person holds, newest first, without closed and expired checks', async () => {
        await store.create(check('g1', { holder: 'g', startedAt: now - 2 }), 'i-g1')
        await store.create(check('g2', { holder: 'g', startedAt: now - 1 }), 'i-g2')
        await store.create(check('g3', { holder: 'g', phase: { is: 'closed' } }), 'i-g3')
        await store.create(check('g4', { holder: 'g', expiresAt: now }), 'i-g4')
        expect((await store.heldBy('g', now)).map(one => one.id)).toEqual(['g2', 'g1'])
      })

      test('lists what a person started and others hold, and what is handed over in a server', async () => {
        const custody = { starter: 'j', shares: false, history: [] }
        const of = (id: string, more: Partial<Check>) => store.create(check(id, { server: 'sj', ...more }), `i-${id}`)
        await of('j1', { holder: 'k', custody, startedAt: now - 2 })
        await of('j2', { holder: 'j', custody, startedAt: now - 1 })
        await of('j3', { holder: 'k', custody, phase: { is: 'closed' } })
        await of('j4', { holder: 'k', custody, expiresAt: now })
        await of('j5', { holder: 'k' })
        expect((await store.startedBy('j', now)).map(one => one.id)).toEqual(['j1'])
        expect((await store.handedIn('sj', now)).map(one => one.id)).toEqual(['j1', 'j2'])
        await store.save(check('j5', { server: 'sj', holder: 'm', custody, revision: 1 }), 0, 'i-j5b')
        expect((await store.heldBy('m', now)).map(one => one.id)).toEqual(['j5'])
        expect((await store.startedBy('j', now)).map(one => one.id)).toEqual(['j5', 'j1'])
      })

      test('knows which interactions have counted, for their own person', async () => {
        await store.create(check('i1', { holder: 'i' }), 'i-i0')
        await store.save(check('i1', { holder: 'i', revision: 1 }), 0, 'i-i1')
        expect(await store.counted('i', 'i-i0')).toBe(true)
        expect(await store.counted('i', 'i-i1')).toBe(true)
        expect(await store.counted('i', 'i-i2')).toBe(false)
        expect(await store.counted('other', 'i-i1')).toBe(false)
      })

      test('counts what a person has started since, closed or not', async () => {
        for (const [id, startedAt] of [
          ['s1', now - 3],
          ['s2', now - 2],
          ['s3', now - 1],
        ] as const)
          await store.create(check(id, { holder: 's', startedAt }), `i-${id}`)
        await store.save(check('s3', { holder: 's', revision: 1, phase: { is: 'closed' } }), 0, 'i-s3-close')
        expect(await store.startedSince('s', now - 2)).toBe(2)
        expect(await store.startedSince('t', 0)).toBe(0)
      })

      test('a closed check is small, and gone a day after its last step', async () => {
        const answers = Object.fromEntries(Array.from({ length: 60 }, (_, i) => [`question-${i}`, option('yes')]))
        const open = check('q1', { answers, trail: Object.keys(answers) })
        await store.create(open, 'i-q1')
        await store.save({ ...open, revision: 1, phase: { is: 'closed' } }, 0, 'i-q2')
        const row = await opened.db.selectFrom('checks').select('body').where('id', '=', 'q1').executeTakeFirstOrThrow()
        expect(row.body.length).toBeLessThan(400)
        const fromNow = 24 * 3600_000
        await store.purge(now + fromNow - 1)
        expect(await store.load('q1')).toMatchObject({ check: { phase: { is: 'closed' } } })
        await store.purge(now + fromNow)
        expect(await store.load('q1')).toBeUndefined()
      })

      test('purges expired checks, and nothing else', async () => {
        const later = now + 1000
        await store.create(check('h1', { expiresAt: later + 1 }), 'i-h1')
        await store.create(check('h2', { expiresAt: later }), 'i-h2')
        expect(await store.purge(later)).toBeGreaterThan(0)
        expect(await store.load('h1')).toBeDefined()
        expect(await store.load('h2')).toBeUndefined()
      })
    },
  )
}
