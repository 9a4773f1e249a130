// The picture of a finding says when it begins later than what was found, and is called as the finding is.
import { expect, test } from 'vitest'
import { drawFinding } from '../../src/discord/trends/show/finding-chart.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { begin, type Found } from '../../src/trends/findings/finding.ts'
import type { ReleasedWeek } from '../../src/trends/findings/past.ts'
import type { Release } from '../../src/trends/release/release.ts'
import { type Week, weeksUpTo } from '../../src/trends/week.ts'
import { sayFindingTitle } from '../../src/words/finding-words.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { openTrendNames } from '../../src/words/trend-names.ts'

const weeks = weeksUpTo('2026-W48', 40)
const released: ReleasedWeek[] = weeks.map(week => ({
  week,
  release: {
    week,
    more: 20,
    rises: [],
    families: [{ family: 'rook', verdicts: [], rules: [{ rule: 'legs', checks: 100, more: 5 }] }],
  } as unknown as Release,
}))

test.each(languages)('in %s', language => {
  const say = sayIn(language)
  const names = openTrendNames(say, openPrograms([]), '2026-11-30')
  const drawn = (week: Week) => {
    const parts: Found[] = [{ is: 'rise', rise: { family: 'rook', rule: 'legs', week, standsOut: true } }]
    const finding = begin({ key: 'k', family: 'rook', week, parts }, 'id', 'server')
    const titled = drawFinding(say, names, finding, released)?.about.find(one => one.code === 'chart-title')
    return { title: String(titled?.values?.['title']), finding: sayFindingTitle(say, names, finding, '2026-W49') }
  }
  const [early, late] = [drawn('2026-W12'), drawn('2026-W40')]
  expect(early.title).toContain('W23')
  expect(late.title).not.toContain('W23')
  expect(late.finding).toContain('legs')
  expect(late.title).toContain('legs')
})
