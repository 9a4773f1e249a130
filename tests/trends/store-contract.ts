// What any store of outcomes and releases must do, as a suite to run over each of them.
import { describe, expect, test } from 'vitest'
import type { WeekCount } from '../../src/trends/counts.ts'
import { itemsOf } from '../../src/trends/outcome.ts'
import type { OutcomeLog, ReleaseLog, Scope } from '../../src/trends/outcome-log.ts'
import type { ReleaseState } from '../../src/trends/release/state.ts'
import { base } from './base-outcome.ts'

export type OpenStore = () => Promise<{ outcomes: OutcomeLog; releases: ReleaseLog; close: () => Promise<void> }>

const here: Scope = { kind: 'server', server: 'here' }
const pool: Scope = { kind: 'pool' }
const person = (n: number): string => n.toString(16).padStart(64, '0')

const sorted = (counts: readonly WeekCount[]): string[] =>
  counts.map(c => `${c.week} ${c.family} ${c.facet} ${c.value} ${c.reporters}`).sort()
const state: ReleaseState = { first: '2026-W10', families: {}, series: {}, rises: [] }

/** Runs the suite; `open` gives an empty store each time. `missing` says why it cannot, and skips. */
export function storeContract(name: string, open: OpenStore, missing?: string): void {
  const named = missing === undefined ? name : `${name} (skipped: ${missing})`
  const withStore = (run: (store: { outcomes: OutcomeLog; releases: ReleaseLog }) => Promise<void>) => async () => {
    const store = await open()
    try {
      await run(store)
    } finally {
      await store.close()
    }
  }

  describe.skipIf(missing)(`${named}: outcomes`, () => {
    test(
      'one contribution per person, family and epoch',
      withStore(async ({ outcomes }) => {
        expect(await outcomes.record(base)).toBe('recorded')
        expect(await outcomes.record({ ...base, week: '2026-W13', verdict: 'open' })).toBe('already-contributed')
        expect(await outcomes.record({ ...base, week: '2026-W14' })).toBe('recorded')
        expect(await outcomes.record({ ...base, family: null })).toBe('recorded')
        expect(await outcomes.record({ ...base, family: null, week: '2026-W11' })).toBe('already-contributed')
        expect(await outcomes.record({ ...base, server: 'there' })).toBe('recorded')
        expect(await outcomes.record({ ...base, reporter: person(2) })).toBe('recorded')
      }),
    )

    test(
      'two at once are one',
      withStore(async ({ outcomes }) => {
        const answers = await Promise.all(Array.from({ length: 8 }, () => outcomes.record(base)))
        expect(answers.filter(a => a === 'recorded')).toHaveLength(1)
      }),
    )

    test(
      'counts by week, family and cell, of the asked scope and weeks only',
      withStore(async ({ outcomes }) => {
        await outcomes.record(base)
        await outcomes.record({ ...base, reporter: person(2), fired: ['four-legs'], bought: 'shop' })
        await outcomes.record({ ...base, reporter: person(3), family: null, verdict: 'open', fired: [] })
        await outcomes.record({ ...base, reporter: person(4), week: '2026-W09' })
        await outcomes.record({ ...base, reporter: person(5), server: 'there' })
        expect(await outcomes.firstWeek(here)).toBe('2026-W09')
        expect(await outcomes.firstWeek(pool)).toBeNull()
        expect(sorted(await outcomes.weekCounts(here, '2026-W10', '2026-W10'))).toEqual([
          '2026-W10 harrow-30 all  2',
          '2026-W10 harrow-30 bought market 1',
          '2026-W10 harrow-30 bought shop 1',
          '2026-W10 harrow-30 rule four-legs 2',
          '2026-W10 harrow-30 rule too-light 1',
          '2026-W10 harrow-30 verdict ruled-out 2',
          '2026-W10 unknown all  1',
          '2026-W10 unknown bought market 1',
          '2026-W10 unknown verdict open 1',
        ])
      }),
    )

    test(
      'the pool counts a person once, whichever server it was on',
      withStore(async ({ outcomes }) => {
        await outcomes.record({ ...base, pooled: person(100) })
        await outcomes.record({ ...base, server: 'there', week: '2026-W11', pooled: person(100) })
        await outcomes.record({ ...base, server: 'there', reporter: person(2), week: '2026-W11', pooled: person(101) })
        await outcomes.record({ ...base, reporter: person(3), pooled: null })
        const all = (await outcomes.weekCounts(pool, '2026-W01', '2026-W20')).filter(c => c.facet === 'all')
        expect(sorted(all)).toEqual(['2026-W10 harrow-30 all  1', '2026-W11 harrow-30 all  1'])
        expect(await outcomes.failedChecks(pool, 'harrow-30', '2026-W01', '2026-W20')).toHaveLength(2)
      }),
    )

    test(
      'on which servers the pool counts a family, and how many people of each',
      withStore(async ({ outcomes }) => {
        await outcomes.record({ ...base, pooled: person(100) })
        await outcomes.record({ ...base, reporter: person(2), pooled: person(101) })
        await outcomes.record({ ...base, server: 'there', week: '2026-W11', pooled: person(100) })
        await outcomes.record({ ...base, server: 'there', reporter: person(3), week: '2026-W11', pooled: person(102) })
        await outcomes.record({ ...base, server: 'there', reporter: person(4), family: null, pooled: null })
        await outcomes.record({ ...base, server: 'there', reporter: person(5), week: '2026-W20', pooled: person(103) })
        const found = await outcomes.poolContributions('2026-W05', '2026-W12')
        expect(found.map(one => `${one.week} ${one.family} ${one.server} ${one.reporters}`).sort()).toEqual([
          '2026-W10 harrow-30 here 2',
          '2026-W11 harrow-30 there 1',
        ])
      }),
    )

    test(
      'the failed checks of a family, as items',
      withStore(async ({ outcomes }) => {
        await outcomes.record(base)
        await outcomes.record({ ...base, family: null })
        await outcomes.record({ ...base, reporter: person(2), fired: [], verdict: 'open' })
        await outcomes.record({ ...base, reporter: person(3), week: '2025-W52' })
        const failed = (family: string, from: string, to: string) => outcomes.failedChecks(here, family, from, to)
        expect(await failed('harrow-30', '2026-W10', '2026-W10')).toEqual([{ week: '2026-W10', items: itemsOf(base) }])
        expect(await failed('harrow-30', '2025-W40', '2026-W10')).toHaveLength(2)
        expect(await failed('unknown', '2026-W10', '2026-W10')).toHaveLength(1)
        expect(await failed('harrow-30', '2026-W11', '2026-W20')).toEqual([])
      }),
    )

    test(
      'judged again by a newer pack, whole and nothing but the judgement',
      withStore(async ({ outcomes }) => {
        await outcomes.record(base)
        const [old] = await outcomes.judgedOtherwise('any-cell', '1.1.0', 10)
        expect(old?.outcome).toEqual(base)
        const packs = [{ id: 'any-cell', version: '1.1.0', digest: 'b'.repeat(64) }]
        await outcomes.rejudge(old!.id, { ...base, verdict: 'open', fired: [], packs, bought: 'shop' })
        expect(await outcomes.judgedOtherwise('any-cell', '1.1.0', 10)).toEqual([])
        expect(sorted(await outcomes.weekCounts(here, '2026-W10', '2026-W10'))).toEqual([
          '2026-W10 harrow-30 all  1',
          '2026-W10 harrow-30 bought market 1',
          '2026-W10 harrow-30 verdict open 1',
        ])
      }),
    )

    test(
      'what cannot be judged again is passed by, each once',
      withStore(async ({ outcomes }) => {
        await outcomes.record({ ...base, reporter: person(2), week: '2026-W11' })
        await outcomes.record({ ...base, reporter: person(3), week: '2026-W10' })
        await outcomes.record({
          ...base,
          reporter: person(4),
          week: '2026-W12',
          packs: [{ ...base.packs[0]!, id: 'any' }],
        })
        const [first] = await outcomes.judgedOtherwise('any-cell', '1.1.0', 1)
        const others = await outcomes.judgedOtherwise('any-cell', '1.1.0', 10, first?.id)
        expect([first, ...others].map(one => one?.outcome.week).sort()).toEqual(['2026-W10', '2026-W11'])
        expect(await outcomes.judgedOtherwise('any-cell', '1.1.0', 10, others[0]?.id)).toEqual([])
      }),
    )

    test(
      'forgets a person by either pseudonym, and weeks past their time',
      withStore(async ({ outcomes }) => {
        await outcomes.record(base)
        await outcomes.record({ ...base, reporter: person(2), pooled: person(100) })
        await outcomes.record({ ...base, reporter: person(3), week: '2026-W02' })
        const theirs = await outcomes.of([person(1), person(100)])
        expect(theirs.map(one => one.reporter).sort()).toEqual([person(1), person(2)])
        expect(await outcomes.of([])).toEqual([])
        expect(await outcomes.forget([person(1), person(100)])).toBe(2)
        expect(await outcomes.of([person(1), person(100)])).toEqual([])
        await outcomes.record({ ...base, reporter: person(3), week: '2026-W02', server: 'there' })
        expect(await outcomes.purgeBefore('2026-W03', 'here')).toBe(1)
        expect(await outcomes.purgeBefore('2026-W03')).toBe(1)
        expect(await outcomes.weekCounts(here, '2026-W01', '2026-W20')).toEqual([])
        expect(await outcomes.firstWeek(here)).toBeNull()
      }),
    )
  })

  describe.skipIf(missing)(`${named}: releases`, () => {
    test(
      'kept as frozen, once, one week after the other',
      withStore(async ({ releases }) => {
        expect(await releases.latest(here)).toBeNull()
        expect(await releases.freeze(here, '2026-W10', '{"a":1}', state)).toBe('frozen')
        expect(await releases.freeze(here, '2026-W10', '{"a":2}', state)).toBe('already-frozen')
        expect(await releases.freeze(here, '2026-W12', '{"a":3}', state)).toBe('already-frozen')
        expect(await releases.freeze(here, '2026-W11', '{"a":4}', { ...state, first: '2026-W09' })).toBe('frozen')
        expect(await releases.freeze(pool, '2026-W30', '{"a":5}', state)).toBe('frozen')
        expect(await releases.bytes(here, '2026-W10')).toBe('{"a":1}')
        expect(await releases.bytes(here, '2026-W12')).toBeNull()
        expect(await releases.weeks(here)).toEqual(['2026-W10', '2026-W11'])
        expect(await releases.latest(here)).toEqual({ week: '2026-W11', state: { ...state, first: '2026-W09' } })
      }),
    )

    test(
      'of two processes one freezes',
      withStore(async ({ releases }) => {
        const answers = await Promise.all(
          Array.from({ length: 8 }, (_, i) => releases.freeze(here, '2026-W10', `{"a":${i}}`, state)),
        )
        expect(answers.filter(a => a === 'frozen')).toHaveLength(1)
      }),
    )
  })
}
