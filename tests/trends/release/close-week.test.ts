// A closed week: what moves, what waits, and that neither order, repetition nor deletion moves anything else.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { WeekCount } from '../../../src/trends/counts.ts'
import { minimumReporters } from '../../../src/trends/fives.ts'
import { type Outcome, unknownFamily } from '../../../src/trends/outcome.ts'
import { closeWeek } from '../../../src/trends/release/close-week.ts'
import { freezeWeek, readRelease } from '../../../src/trends/release/freeze-week.ts'
import type { Release } from '../../../src/trends/release/release.ts'
import type { ReleaseState } from '../../../src/trends/release/state.ts'
import { type Week, weekPlus } from '../../../src/trends/week.ts'
import { base } from '../base-outcome.ts'
import { countOutcomes } from '../memory-log.ts'

const first = '2026-W14'
let people = 0
const checks = (count: number, week: Week, odd: Partial<Outcome> = {}): Outcome[] =>
  Array.from({ length: count }, () => ({ ...base, ...odd, week, reporter: (people++).toString(16).padStart(64, '0') }))

function close(week: Week, state: ReleaseState | null, counts: readonly WeekCount[]) {
  const closed = closeWeek({ scope: 'server', week, state, first, counts })
  if (!closed.ok) throw new Error(closed.refusal.code)
  return freezeWeek(closed, new Map())
}

/** Closes the weeks of some outcomes one after another. */
function closeAll(outcomes: readonly Outcome[], weeks: number) {
  const frozen: ReturnType<typeof freezeWeek>[] = []
  for (let w = 0; w < weeks; w++)
    frozen.push(close(weekPlus(first, w), frozen[w - 1]?.state ?? null, countOutcomes(outcomes)))
  return frozen
}
const shown = (release: Release, verdict: string) =>
  release.families[0]?.verdicts.find(v => v.verdict === verdict)?.checks ?? 0

test('four checks leave nothing, the fifth shows five', () => {
  const four = checks(4, first)
  const empty = { checks: 0, families: [], rules: [], verdicts: [], bought: [] }
  expect(closeAll(four, 1)[0]!.release).toMatchObject(empty)
  const five = closeAll([...four, ...checks(1, weekPlus(first, 1))], 2)
  expect(five[0]!.release).toMatchObject(empty)
  expect(five[1]!.release).toMatchObject({
    checks: 5,
    more: 5,
    families: [{ family: 'harrow-30', checks: 5, rules: [{ rule: 'four-legs', checks: 5 }, { rule: 'too-light' }] }],
  })
})

// Handbook on SDC, chapter 5 (differencing): seven, then eight, both over the threshold, tell one person's week.
test('seven, then eight: the second release repeats the first', () => {
  const [seven, eight] = closeAll([...checks(7, first), ...checks(1, weekPlus(first, 1))], 2)
  expect([shown(seven!.release, 'ruled-out'), shown(eight!.release, 'ruled-out')]).toEqual([5, 5])
})

test('a cell moves only once five came since it last moved, though its rounded count would sooner', () => {
  const later = (n: number) => weekPlus(first, n)
  const open = (week: Week) => checks(6, week, { verdict: 'open', fired: [] })
  const weeks = closeAll(
    [...checks(9, first), ...checks(1, later(1)), ...open(later(1)), ...checks(4, later(2)), ...open(later(2))],
    3,
  )
  // 9, 10, 14 ruled out: rounded 5, 10, 10.
  expect(weeks.map(w => shown(w.release, 'ruled-out'))).toEqual([5, 5, 10])
})

test('a family stands still until five new people came to it', () => {
  const week = (n: number) => weekPlus(first, n)
  const odd = { verdict: 'open', fired: [] } as const
  const outcomes = [
    ...checks(5, week(0)),
    ...checks(4, week(0), odd),
    ...checks(1, week(1), odd),
    ...checks(4, week(2)),
  ]
  // In week 1 the fifth open check is there, but it came alone; in week 2 it is five people in all.
  expect(closeAll(outcomes, 3).map(w => shown(w.release, 'open'))).toEqual([0, 0, 5])
})

test('nine people of two epochs may be five: only people of one epoch are surely different', () => {
  const outcomes = [...checks(4, '2026-W26'), ...checks(4, '2026-W27')]
  expect(closeAll(outcomes, 14)[13]!.release.checks).toBe(0)
  expect(closeAll([...outcomes, ...checks(1, '2026-W28')], 15)[14]!.release.checks).toBe(5)
})

// Nine records in classes of 3, 2, 3 and 1 (Sweeney 2002 would call it k = 1): nothing of it may be shown.
test('records that are 1-anonymous leave an empty release', () => {
  const sound = { verdict: 'nothing-found', fired: [] } as const
  const b = { family: 'brant-40' }
  const outcomes = [
    ...checks(3, first),
    ...checks(1, weekPlus(first, 1)),
    ...checks(1, weekPlus(first, 1), sound),
    ...checks(2, first, { ...b, ...sound }),
    ...checks(1, first, b),
    ...checks(1, weekPlus(first, 1), { ...b, ...sound }),
  ]
  for (const { release } of closeAll(outcomes, 2)) expect(release.families).toEqual([])
})

test('no table shows more than the verdicts do together', () => {
  const mixed = (['danger', 'ruled-out', 'doubtful', 'open'] as const).flatMap(verdict => checks(4, first, { verdict }))
  expect(closeAll(mixed, 1)[0]!.release).toMatchObject({ checks: 0, rules: [], bought: [] })
  const more = closeAll([...mixed, ...checks(5, weekPlus(first, 1))], 2)[1]!.release
  expect(more.checks).toBe(5)
  // 21 by the same rule, of which 16 have a verdict that is withheld: it waits rather than say so.
  expect(more.rules).toEqual([])
})

test('shares with intervals from twenty checks on, and only where two verdicts are shown', () => {
  const sound = (n: number) => checks(n, first, { verdict: 'open', fired: [] })
  expect(closeAll([...checks(25, first)], 1)[0]!.release.verdicts[0]).not.toHaveProperty('share')
  expect(closeAll([...checks(5, first), ...sound(10)], 1)[0]!.release.verdicts[0]).not.toHaveProperty('share')
  const [verdict] = closeAll([...checks(5, first), ...sound(15)], 1)[0]!.release.verdicts
  // Wilson for 5 of 20: R 4.2.2 prop.test(5, 20, correct = FALSE) gives 0.1118617 to 0.4687020 (from memory).
  expect(verdict).toMatchObject({ verdict: 'ruled-out', share: { of: 20, share: 0.25, low: 0.1119, high: 0.4687 } })
})

const outcomesOf = fc.array(
  fc.record({
    week: fc.nat(5),
    family: fc.constantFrom('harrow-30', 'brant-40', null),
    verdict: fc.constantFrom('ruled-out' as const, 'open' as const, 'nothing-found' as const),
    fired: fc.subarray(['four-legs', 'too-light', 'weld-marks']),
    bought: fc.constantFrom('market', 'shop'),
    times: fc.integer({ min: 1, max: 7 }),
  }),
  { maxLength: 25 },
)
const made = (list: readonly { week: number; times: number }[]) =>
  list.flatMap(({ week, times, ...odd }) => checks(times, weekPlus(first, week), odd))

test('the order of the outcomes, and what comes later, change no byte', () => {
  fc.assert(
    fc.property(outcomesOf, fc.infiniteStream(fc.nat()), (list, numbers) => {
      const outcomes = made(list)
      const keys = new Map(outcomes.map(o => [o, numbers.next().value as number]))
      const shuffled = [...outcomes].sort((a, b) => keys.get(a)! - keys.get(b)!)
      const bytes = closeAll(outcomes, 6).map(w => w.bytes)
      expect(closeAll(shuffled, 6).map(w => w.bytes)).toEqual(bytes)
      const known = (w: number) => outcomes.filter(o => o.week <= weekPlus(first, w))
      expect([0, 1, 2, 3, 4, 5].map(w => closeAll(known(w), w + 1)[w]!.bytes)).toEqual(bytes)
    }),
    { numRuns: 60 },
  )
})

test('a deletion never makes a shown number fall, and what is gone before it was counted is never shown', () => {
  let moves = 0
  fc.assert(
    fc.property(outcomesOf, fc.integer({ min: 0, max: 4 }), fc.subarray([0, 1, 2, 3]), (list, after, gone) => {
      const outcomes = made(list)
      const left = outcomes.filter((_, i) => !gone.includes(i % 4))
      let state: ReleaseState | null = null
      let before = new Map<string, number>()
      // Of each cell, from what was published alone: the people counted when it last moved, and the week in which it did.
      const last = new Map<string, { readonly counted: number; readonly week: Week }>()
      for (let w = 0; w < 6; w++) {
        const week = weekPlus(first, w)
        const there = w > after ? left : outcomes
        const frozen = close(week, state, countOutcomes(there))
        state = JSON.parse(JSON.stringify(frozen.state)) as ReleaseState
        const now = numbersOf(frozen.release)
        for (const [name, number] of before) expect(now.get(name) ?? 0).toBeGreaterThanOrEqual(number)
        for (const { name, has } of cellsOf(outcomes)) {
          if ((now.get(name) ?? 0) === (before.get(name) ?? 0)) continue
          const { counted, week: moved } = last.get(name) ?? { counted: 0, week: '' }
          const fresh = there.filter(o => has(o) && o.week > moved && o.week <= week).length
          expect(fresh).toBeGreaterThanOrEqual(minimumReporters)
          expect(now.get(name)).toBeLessThanOrEqual(counted + fresh)
          last.set(name, { counted: counted + fresh, week })
          if (w > after) moves++
        }
        before = now
      }
    }),
    { numRuns: 200 },
  )
  expect(moves).toBeGreaterThan(50)
})

test('what was shown stays although twenty of twenty-five are deleted, and five new ones come on top', () => {
  const old = checks(25, first)
  const { release, state } = close(first, null, countOutcomes(old))
  const next = weekPlus(first, 1)
  const moved = close(next, state, countOutcomes([...old.slice(20), ...checks(5, next)]))
  expect([shown(release, 'ruled-out'), shown(moved.release, 'ruled-out')]).toEqual([25, 30])
})

// Of fifteen from the market ten have a verdict that is shown, so five wait; of eleven none has to.
test('fewer people may show more, since a cell that would tell of a withheld verdict waits', () => {
  const week = (n: number) => weekPlus(first, n)
  const sound = { verdict: 'nothing-found', fired: [] } as const
  const market = (outcomes: readonly Outcome[]) =>
    closeAll(outcomes, 2).map(w => w.release.bought.find(b => b.bought === base.bought)?.checks ?? 0)
  expect(market([...checks(8, week(0)), ...checks(7, week(1), sound)])).toEqual([5, 5])
  expect(market([...checks(5, week(0)), ...checks(6, week(1), sound)])).toEqual([5, 10])
})

test('any two shown numbers of any release are the same or at least five apart', () => {
  fc.assert(
    fc.property(outcomesOf, list => {
      const numbers = closeAll(made(list), 6).flatMap(w => [...numbersOf(w.release).values()])
      for (const a of new Set(numbers))
        for (const b of new Set(numbers)) expect(a === b || Math.abs(a - b) >= minimumReporters).toBe(true)
    }),
    { numRuns: 60 },
  )
})

test('bytes read back to the release, and damaged bytes are refused', () => {
  const { bytes, release } = closeAll(checks(25, first), 1)[0]!
  expect(readRelease(bytes)).toEqual({ ok: true, release })
  for (const damaged of [bytes.slice(1), ` ${bytes}`, bytes.replace('"checks"', '"checkz"').slice(0, -1), '{}', ''])
    expect(readRelease(damaged)).toEqual({ ok: false, refusal: { code: 'damaged-release' } })
})

test('a week without checks repeats what was shown', () => {
  const [one, two] = closeAll(checks(25, first), 2)
  const still = JSON.parse(JSON.stringify(one!.release, (key, value) => (key === 'more' ? 0 : value))) as Release
  expect(two!.release).toEqual({ ...still, week: weekPlus(first, 1) })
  expect(closeAll([], 1)[0]!.release).toMatchObject({ checks: 0, families: [], judged: false })
})

/** A year of twenty checks a week, one or two of which fail; twelve in week 30. */
const withRise = Array.from({ length: 52 }, (_, t) => weekPlus(first, t)).flatMap((week, t) => {
  const failed = t === 30 ? 12 : 1 + (t % 2)
  return [...checks(failed, week), ...checks(20 - failed, week, { verdict: 'open', fired: [] })]
})

test('a rise is told of for eight weeks, with the week it was noticed in', () => {
  const frozen = closeAll(withRise, 40)
  const told = frozen.flatMap((w, t) => (w.release.rises.some(r => r.rule === null) ? [t] : []))
  expect(told).toEqual([30, 31, 32, 33, 34, 35, 36, 37])
  expect(new Set(frozen.flatMap(w => w.release.rises.map(r => r.week)))).toEqual(new Set([weekPlus(first, 30)]))
})

test('counts of later weeks and of weeks long past change nothing', () => {
  const before = closeAll(withRise, 30)[29]!.state
  const stray = (week: Week) => Array.from({ length: 3000 }, (_, i) => ({ ...base, family: `later-${i}`, week }))
  const counts = countOutcomes(withRise)
  const plain = close(weekPlus(first, 30), before, counts)
  expect(plain.release.rises.every(r => r.standsOut)).toBe(true)
  for (const week of [weekPlus(first, 31), weekPlus(first, -40)])
    expect(close(weekPlus(first, 30), before, [...counts, ...countOutcomes(stray(week))])).toEqual(plain)
})

test('a damaged count is refused and named', () => {
  const row = { week: '2026-W60', family: 'harrow-30', facet: 'all', value: '', reporters: 3 } as const
  for (const odd of [row, { ...row, week: first, reporters: 0 }, { ...row, week: first, reporters: 1.5 }])
    expect(closeWeek({ scope: 'server', week: first, state: null, first, counts: [odd] })).toEqual({
      ok: false,
      refusal: { code: 'damaged-count', row: odd },
    })
})

function numbersOf(release: Release): Map<string, number> {
  const numbers = new Map<string, number>([['all', release.checks]])
  for (const f of release.families) {
    numbers.set(f.family, f.checks)
    for (const v of f.verdicts) numbers.set(`${f.family} ${v.verdict}`, v.checks)
    for (const r of f.rules) numbers.set(`${f.family} ${r.rule}`, r.checks)
    for (const b of f.bought) numbers.set(`${f.family} ${b.bought}`, b.checks)
  }
  return numbers
}

/** The cells some outcomes fall in, by the names `numbersOf` gives them. */
function cellsOf(outcomes: readonly Outcome[]): { readonly name: string; readonly has: (o: Outcome) => boolean }[] {
  const namesOf = (o: Outcome) =>
    [o.verdict, o.bought, ...o.fired].map(value => `${o.family ?? unknownFamily} ${value}`)
  return [...new Set(outcomes.flatMap(namesOf))].map(name => ({ name, has: o => namesOf(o).includes(name) }))
}

test('a rise that is noticed again stands once, with its latest week, before those of earlier weeks', () => {
  const twice = Array.from({ length: 40 }, (_, t) => weekPlus(first, t)).flatMap((week, t) => {
    const failed = t === 30 ? 12 : t === 35 ? 18 : 1 + (t % 2)
    return [...checks(failed, week), ...checks(20 - failed, week, { verdict: 'open', fired: [] })]
  })
  const release = closeAll(twice, 37)[36]!.release
  const whole = release.rises.filter(one => one.rule === null)
  expect(whole.map(one => one.week)).toEqual([weekPlus(first, 35)])
})
