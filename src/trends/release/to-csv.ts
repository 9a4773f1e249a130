// A release as CSV: one line a number, for spreadsheets that must not run what they open.
import type { Item } from '../outcome.ts'
import type { Release, Shown } from './release.ts'

const columns = ['week', 'what', 'family', 'name', 'checks', 'more', 'of', 'share', 'low', 'high', 'note'] as const
type Line = Readonly<Partial<Record<(typeof columns)[number], string | number | null>>>

/** RFC 4180 with CRLF; codes as they are in the release, no words. Every field goes through `harmless`. */
export function toCsv(release: Release): string {
  const { week } = release
  const lines: Line[] = [
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
    ...release.rises.map(r => ({
      what: 'rise',
      family: r.family,
      name: r.rule,
      note: `${r.week}${r.standsOut ? ' stands-out' : ''}`,
    })),
    ...release.spikes.map(r => ({
      what: 'spike',
      family: r.family,
      name: r.rule,
      note: r.standsOut ? 'stands-out' : '',
    })),
    ...release.patterns.flatMap(({ family, items, recent, recentOf, earlier, earlierOf }): Line[] => [
      { what: 'pattern-recent', family, name: joined(items), checks: recent, of: recentOf },
      { what: 'pattern-earlier', family, name: joined(items), checks: earlier, of: earlierOf },
    ]),
  ]
  return [columns, ...lines.map(line => columns.map(c => (c === 'week' ? week : (line[c] ?? ''))))]
    .map(fields => `${fields.map(field => quoted(harmless(String(field)))).join(',')}\r\n`)
    .join('')
}

/**
 * A field that a spreadsheet takes for text: one that begins with = + - @, a tab or a line end gets an apostrophe before it
 * (OWASP, CSV Injection; from memory). Plain numbers stay numbers.
 */
export const harmless = (field: string): string => (/^[=+\-@\t\r\n]/.test(field) ? `'${field}` : field)

const quoted = (field: string): string => (/[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field)
const joined = (items: readonly Item[]): string => items.join(' & ')
const counts = ({ checks, more, share }: Shown): Line => ({ checks, more, ...(share ?? {}) })
