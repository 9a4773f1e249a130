// Shows moderators that somebody has waited for long: how many, and the way to the first of them. It names nobody who waits.
import type { Waiting } from '../../../check/waiting.ts'
import type { Say } from '../../../words/say.ts'
import { sayReminder } from '../../../words/say-queue.ts'
import { message, type ShownMessage, small, text } from '../../message/parts.ts'

/** `role`: the one that is pinged, `gone` where it is there no more. */
export type Reminding = {
  readonly count: number
  readonly hours: number
  readonly role: string | 'gone' | null
  readonly entries: readonly { readonly waiting: Waiting; readonly what: string; readonly link: string | undefined }[]
}

export const showReminder = (say: Say, { role, entries, ...values }: Reminding): ShownMessage =>
  message([
    text(
      [
        `### ${say('reminder.title')}`,
        ...(role === null || role === 'gone' ? [] : [`<@&${role}>`]),
        say('reminder.text', values),
        ...entries.map(({ waiting, what, link }) => sayReminder(say, waiting, what, link)),
        ...(role === 'gone' ? [say('reminder.role-gone')] : []),
      ].join('\n'),
    ),
    small(say('caution.line')),
  ])
