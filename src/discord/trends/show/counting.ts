// What a person is told about the counts, and what they can decide about their own checks.
import { ButtonStyle } from 'discord.js'
import { encodeTrends } from '../../../custom-ids/trends-id.ts'
import type { Say } from '../../../words/say.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'

/** Whether a person's checks are counted, just now and just here. */
export function sayCounted(say: Say, out: boolean, moderates: boolean): string {
  const now = say(`counting.now.${out ? 'in' : 'out'}`)
  return moderates ? `${say('counting.now.moderator')} ${now}` : now
}

/** `out`: none of the person's checks are counted; `moderates`: those on this server are not, in any case; `note` stands above. */
export function showCounting(say: Say, out: boolean, moderates: boolean, note?: string): ShownMessage {
  const choice = out ? 'in' : 'out'
  return message([
    ...(note ? [text(note)] : []),
    text(`### ${say('counting.title')}\n${say('counting.what')}\n\n**${sayCounted(say, out, moderates)}**`),
    ...rows([
      pressButton(encodeTrends({ is: 'counting', choice }), say(`counting.${choice}`), ButtonStyle.Primary),
      pressButton(encodeTrends({ is: 'counting', choice: 'forget' }), say('counting.forget'), ButtonStyle.Danger),
    ]),
    small(`${say('counting.published')}\n${say('caution.line')}`),
  ])
}
