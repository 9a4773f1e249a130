// Shows the weekly note: the week's numbers, what waits for a decision, and which links want looking at.

import { encodeLinks } from '../../../custom-ids/links-id.ts'
import { encodeTrends } from '../../../custom-ids/trends-id.ts'
import type { Week } from '../../../trends/week.ts'
import type { WeeklyNote } from '../../../trends/weekly-note.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { sayChecks, sayDays, sayVerdicts } from '../../../words/trend-words.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'

export type BesideNote = {
  readonly week: Week
  /** Families whose draft waits, by name. */
  readonly reviews: readonly string[]
  /** Links that nobody has looked at for half a year. */
  readonly links: number
}

/** More names are counted, not said. */
const mostNames = 5

export function showWeek(
  say: Say,
  { counts, open, watching }: WeeklyNote,
  { week, reviews, links }: BesideNote,
): ShownMessage {
  const names = reviews.slice(0, mostNames).map(name => plain(cut(name, 60)))
  const list = new Intl.ListFormat(say.locale, { type: 'conjunction' }).format(names)
  const lines = [
    `### ${say('note.title', { days: sayDays(say, week) })}`,
    ...(counts
      ? [sayChecks(say, counts), ...sayVerdicts(say, counts).map(one => `- ${one}`)]
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
