// The CSV of a release reads back whole, and no field can be taken for a formula.
import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Item } from '../../../src/trends/outcome.ts'
import type { Release } from '../../../src/trends/release/release.ts'
import { columns, harmless, toCsv } from '../../../src/trends/release/to-csv.ts'

const release = (family: string, items: readonly Item[]): Release => ({
  format: 1,
  scope: 'server',
  week: '2026-W20',
  checks: 25,
  more: 5,
  verdicts: [{ verdict: 'ruled-out', checks: 10, more: 5, share: { of: 25, share: 0.4, low: 0.234, high: 0.593 } }],
  rules: [],
  bought: [],
  families: [
    { family, checks: 25, more: 5, verdicts: [], rules: [{ rule: 'four-legs', checks: 10, more: 0 }], bought: [] },
  ],
  judged: true,
  rises: [{ family, rule: null, week: '2026-W18', standsOut: true }],
  spikes: [],
  patterns: [{ family, items, recent: 10, recentOf: 15, earlier: 0, earlierOf: 60, growth: 7 }],
})

test('a line for each number, columns named', () => {
  const rows = parse(toCsv([release('harrow-30', ['rule:four-legs', 'answer:code=box'])]), { columns: true })
  expect(rows).toHaveLength(7)
  expect(rows[0]).toMatchObject({ week: '2026-W20', what: 'all', checks: '25', more: '5' })
  expect(rows[1]).toMatchObject({ what: 'verdict', name: 'ruled-out', share: '0.4', low: '0.234', of: '25' })
  expect(rows[4]).toMatchObject({
    what: 'rise',
    family: 'harrow-30',
    name: '',
    noticed: '2026-W18',
    'stands-out': 'yes',
  })
  expect(rows[5]).toMatchObject({
    what: 'pattern-recent',
    name: 'rule:four-legs & answer:code=box',
    checks: '10',
    of: '15',
  })
})

test('many weeks are one table, each line with its week, oldest first as they are given', () => {
  const weeks = ['2026-W19', '2026-W20'].map(week => ({ ...release('harrow-30', ['rule:x']), week }))
  const rows = parse(toCsv(weeks), { columns: true }) as Record<string, string>[]
  expect(rows.map(row => row['week'])).toEqual([...Array(7).fill('2026-W19'), ...Array(7).fill('2026-W20')])
  expect(Object.keys(rows[0] ?? {})).toEqual([...columns])
})

test('whatever a name is, its cell is text to a spreadsheet and nothing is lost', () => {
  const name = fc.oneof(fc.string(), fc.constantFrom('=1+1', '+cmd', '-2', '@SUM(A1)', '\t=1', '"=1"', 'a,b\r\nc'))
  fc.assert(
    fc.property(name, family => {
      const rows = parse(toCsv([release(family, ['rule:x'])]), { columns: true }) as Record<string, string>[]
      const cell = rows[2]!['family']!
      expect(cell).not.toMatch(/^[=+\-@\t\r\n]/)
      expect(cell.replace(/^'(?=[=+\-@\t\r\n])/, '')).toBe(family)
    }),
  )
  expect(harmless('12')).toBe('12')
})

test('every part of a release has its lines, in the order of the release, each figure in its column', () => {
  const share = { of: 25, share: 0.4, low: 0.2, high: 0.6 }
  const full: Release = {
    ...release('rook', ['rule:a']),
    rules: [{ rule: 'legs', checks: 15, more: 5, share }],
    bought: [{ bought: 'market', checks: 20, more: 10 }],
    families: [
      {
        ...{ family: 'rook', checks: 25, more: 5 },
        verdicts: [{ verdict: 'danger', checks: 5, more: 0 }],
        rules: [{ rule: 'code', checks: 10, more: 0 }],
        bought: [{ bought: 'shop, or so', checks: 15, more: 5 }],
      },
    ],
    rises: [{ family: 'rook', rule: 'code', week: '2026-W19', standsOut: false }],
    spikes: [{ family: 'rook', rule: null, week: '2026-W20', standsOut: true }],
  }
  expect(toCsv([full]).split('\r\n')).toEqual([
    'week,what,family,name,checks,more,of,share,low,high,noticed,stands-out',
    '2026-W20,all,,,25,5,,,,,,',
    '2026-W20,verdict,,ruled-out,10,5,25,0.4,0.234,0.593,,',
    '2026-W20,rule,,legs,15,5,25,0.4,0.2,0.6,,',
    '2026-W20,bought,,market,20,10,,,,,,',
    '2026-W20,family,rook,,25,5,,,,,,',
    '2026-W20,verdict,rook,danger,5,0,,,,,,',
    '2026-W20,rule,rook,code,10,0,,,,,,',
    '2026-W20,bought,rook,"shop, or so",15,5,,,,,,',
    '2026-W20,rise,rook,code,,,,,,,2026-W19,no',
    '2026-W20,spike,rook,,,,,,,,2026-W20,yes',
    '2026-W20,pattern-recent,rook,rule:a,10,,15,,,,,',
    '2026-W20,pattern-earlier,rook,rule:a,0,,60,,,,,',
    '',
  ])
})
