// Shows the weekly note: what kind of week it was, its numbers, what waits for a decision, and which links want looking at.

import { encodeLinks } from '../../../custom-ids/links-id.ts'
import { encodeTrends } from '../../../custom-ids/trends-id.ts'
import type { KindOfWeek } from '../../../trends/kind-of-week.ts'
import type { Week } from '../../../trends/week.ts'
import type { WeeklyNote } from '../../../trends/weekly-note.ts'
import { sayWeek } from '../../../words/dates.ts'
import { sayKindOfWeek } from '../../../words/kind-of-week-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import type { TrendNames } from '../../../words/trend-names.ts'
import { sayChecks, sayVerdicts } from '../../../words/trend-words.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'

export type BesideNote = {
  readonly week: Week
  readonly kind: KindOfWeek | undefined
  /** Families whose draft waits, by name. */
  readonly reviews: readonly string[]
  /** Links that nobody has looked at for half a year. */
  readonly links: number
}

/** More names are counted, not said. */
const mostNames = 5

export function showWeek(
  say: Say,
  trendNames: TrendNames,
  { counts, open, watching }: WeeklyNote,
  { week, kind, reviews, links }: BesideNote,
): ShownMessage {
  const names = reviews.slice(0, mostNames).map(name => plain(cut(name, 60)))
  const list = new Intl.ListFormat(say.locale, { type: 'conjunction' }).format(names)
  const lines = [
    `### ${say('note.title', { week: sayWeek(say, week) })}`,
    ...(counts
      ? [
          ...sayKindOfWeek(say, trendNames, kind).map(one => `**${one.label}** ${one.text}`),
          sayChecks(say, counts),
          ...sayVerdicts(say, counts).map(one => `- ${one}`),
        ]
      : [say('note.no-counts')]),
    `**${say('note.findings.label')}** ${say('note.findings', { open, watching })}`,
    `**${say('note.reviews.label')}** ${say('note.reviews', { count: reviews.length, names: list, more: reviews.length - names.length })}`,
    `**${say('note.links.label')}** ${say('note.links', { count: links })}`,
  ]
  return message([
    text(lines.join('\n')),
    ...rows([
      ...(open + watching > 0
        ? [pressButton(encodeTrends({ is: 'findings', filter: 'open', page: 0 }), say('finding.to-list'))]
        : []),
      ...(links > 0 ? [pressButton(encodeLinks({ is: 'manage' }), say('links.manage'))] : []),
    ]),
    small(`${say('trends.fives')}\n${say('caution.line')}`),
  ])
}
