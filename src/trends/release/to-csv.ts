// Releases as CSV: one line a week and thing, for spreadsheets that must not run what they open.
import type { Item } from '../outcome.ts'
import type { Rise } from '../rises/judge-week.ts'
import type { Release, Shown } from './release.ts'

export const columns = [
  'week',
  'what',
  'family',
  'name',
  'checks',
  'more',
  'of',
  'share',
  'low',
  'high',
  'noticed',
  'stands-out',
] as const
type Line = Readonly<Partial<Record<(typeof columns)[number], string | number | null>>>

/** RFC 4180 with CRLF; codes as they are in the releases, no words, in their order. Every field goes through `harmless`. */
export function toCsv(releases: readonly Release[]): string {
  const lines = releases.flatMap(release => linesOf(release).map(line => ({ ...line, week: release.week })))
  return [columns, ...lines.map(line => columns.map(column => line[column] ?? ''))]
    .map(fields => `${fields.map(field => quoted(harmless(String(field)))).join(',')}\r\n`)
    .join('')
}

function linesOf(release: Release): Line[] {
  return [
    { what: 'all', checks: release.checks, more: release.more },
    ...release.verdicts.map(v => ({ what: 'verdict', name: v.verdict, ...counts(v) })),
    ...release.rules.map(r => ({ what: 'rule', name: r.rule, ...counts(r) })),
    ...release.bought.map(b => ({ what: 'bought', name: b.bought, ...counts(b) })),
    ...release.families.flatMap(({ family, verdicts, rules, bought, ...all }): Line[] => [
      { what: 'family', family, ...counts(all) },
      ...verdicts.map(v => ({ what: 'verdict', family, name: v.verdict, ...counts(v) })),
      ...rules.map(r => ({ what: 'rule', family, name: r.rule, ...counts(r) })),
      ...bought.map(b => ({ what: 'bought', family, name: b.bought, ...counts(b) })),
    ]),
    ...release.rises.map(rise => ({ what: 'rise', ...noticed(rise) })),
    ...release.spikes.map(rise => ({ what: 'spike', ...noticed(rise) })),
    ...release.patterns.flatMap(({ family, items, recent, recentOf, earlier, earlierOf }): Line[] => [
      { what: 'pattern-recent', family, name: joined(items), checks: recent, of: recentOf },
      { what: 'pattern-earlier', family, name: joined(items), checks: earlier, of: earlierOf },
    ]),
  ]
}

const noticed = ({ family, rule, week, standsOut }: Rise): Line => ({
  family,
  name: rule,
  noticed: week,
  'stands-out': standsOut ? 'yes' : 'no',
})

/**
 * A field that a spreadsheet takes for text: one that begins with = + - @, a tab or a line end gets an apostrophe before it
 * (OWASP, CSV Injection; from memory). Plain numbers stay numbers.
 */
export const harmless = (field: string): string => (/^[=+\-@\t\r\n]/.test(field) ? `'${field}` : field)

const quoted = (field: string): string => (/[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field)
const joined = (items: readonly Item[]): string => items.join(' & ')
const counts = ({ checks, more, share }: Shown): Line => ({ checks, more, ...(share ?? {}) })
