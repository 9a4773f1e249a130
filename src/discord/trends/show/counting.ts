// What a person is told about the counts, and what they can decide about their own checks.
import { ButtonStyle } from 'discord.js'
import type { Say } from '../../../words/say.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { encodeTrends } from '../trends-id.ts'

/** `out`: none of the person's checks are counted; `note` stands above. */
export function showCounting(say: Say, out: boolean, note?: string): ShownMessage {
  const choice = out ? 'in' : 'out'
  return message([
    ...(note ? [text(note)] : []),
    text(`### ${say('counting.title')}\n${say('counting.what')}\n\n**${say(`counting.now.${choice}`)}**`),
    ...rows([
      pressButton(encodeTrends({ is: 'counting', choice }), say(`counting.${choice}`), ButtonStyle.Primary),
      pressButton(encodeTrends({ is: 'counting', choice: 'forget' }), say('counting.forget'), ButtonStyle.Danger),
    ]),
    small(`${say('counting.published')}\n${say('caution.line')}`),
  ])
}
