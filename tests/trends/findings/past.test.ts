// The chart of a finding: every week in which something of it was noticed is marked, nothing else is, and weeks without a release stay empty.
import { expect, test } from 'vitest'
import type { Found } from '../../../src/trends/findings/finding.ts'
import { pastOf, type ReleasedWeek } from '../../../src/trends/findings/past.ts'
import type { Release } from '../../../src/trends/release/release.ts'
import type { Rise } from '../../../src/trends/rises/judge-week.ts'
import { type Week, weeksUpTo } from '../../../src/trends/week.ts'

const weeks = weeksUpTo('2026-W40', 20)
const rise = (rule: string | null, week: Week, family = 'rook'): Rise => ({ family, rule, week, standsOut: true })
/** As releases are: a rise stays in them for eight weeks, and a later notice takes the place of the earlier. */
const frozen = (week: Week, rises: readonly Rise[]): ReleasedWeek => ({
  week,
  release: { week, more: 20, rises, families: [] } as unknown as Release,
})
const at = (i: number): Week => weeks[i] as Week
const finding = (parts: readonly Found[], first: Week, seen: Week) => ({ family: 'rook', parts, week: first, seen })
const marked = (released: readonly ReleasedWeek[], of: ReturnType<typeof finding>) =>
  pastOf(released, { family: 'rook', rule: null }, of, 26)
    .filter(one => one.noticed)
    .map(one => one.week)

test('a rise that was noticed three times is marked three times, though the last release names its last notice alone', () => {
  const notices = [at(10), at(12), at(15)]
  const released = weeks.map(week => {
    const last = notices.findLast(one => one <= week)
    return frozen(week, last ? [rise('legs', last)] : [])
  })
  const parts: Found[] = [{ is: 'rise', rise: rise('legs', at(15)) }]
  expect(marked(released, finding(parts, at(10), at(15)))).toEqual(notices)
})

test('what rose in another family, or for another reason, is not marked; the family as a whole is where the finding tells of it', () => {
  const released = weeks.map((week, i) => {
    if (i === 4) return frozen(week, [rise('legs', week, 'heron')])
    if (i === 6) return frozen(week, [rise('seam', week)])
    if (i === 8) return frozen(week, [rise(null, week)])
    return frozen(week, [])
  })
  const parts: Found[] = [{ is: 'rise', rise: rise('legs', at(12)) }]
  expect(marked(released, finding(parts, at(3), at(13)))).toEqual([at(3), at(13)])
  const whole: Found[] = [...parts, { is: 'rise', rise: rise(null, at(8)) }]
  expect(marked(released, finding(whole, at(3), at(13)))).toEqual([at(3), at(8), at(13)])
})

test('what is noticed after the week that the sentence calls the last is marked by the finding it belongs to', () => {
  const released = weeks.map((week, i) => frozen(week, i === 6 || i === 15 ? [rise('legs', week)] : []))
  const parts: Found[] = [{ is: 'rise', rise: rise('legs', at(6)) }]
  expect(marked(released, finding(parts, at(5), at(8)))).toEqual([at(5), at(6), at(8)])
})

test('a week without a release is empty, and not marked for what others tell of', () => {
  const released = weeks.map((week, i) => (i === 9 ? { week, release: undefined } : frozen(week, [])))
  const past = pastOf(released, { family: 'rook', rule: null }, finding([], at(2), at(2)), 26)
  expect(past[9]).toMatchObject({ failed: undefined, noticed: false })
})
