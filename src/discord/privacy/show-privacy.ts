// What a person is told about what is kept of them, and what they are asked before it is deleted.
import { ButtonStyle } from 'discord.js'
import { encodePrivacy } from '../../custom-ids/privacy-id.ts'
import { encodeTrends } from '../../custom-ids/trends-id.ts'
import { keptParts } from '../../words/policy-words.ts'
import type { Say } from '../../words/say.ts'
import { sayMissing } from '../../words/say-missing.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../message/parts.ts'
import { sayCounted } from '../trends/show/counting.ts'

/** `out`: none of the person's checks are counted, `noHelp`: nor is their help; `moderates`: their checks on this server are not, in any case. */
export type Counting = { readonly out: boolean; readonly noHelp: boolean; readonly moderates: boolean }

/** `note` stands above. What is kept of whoever helps or moderates is a page of its own: together they fill more than one message. */
export function showPrivacy(
  say: Say,
  { out, noHelp, moderates }: Counting,
  note?: string,
  page: keyof typeof keptParts = 'everybody',
): ShownMessage {
  const choice = out ? 'in' : 'out'
  const help = noHelp ? 'help-in' : 'help-out'
  const kept = keptParts[page].map(one => `- **${say(`privacy.${one}.name`)}** ${say(`privacy.${one}`)}`)
  const other = page === 'everybody' ? 'helping' : 'everybody'
  const missing = sayMissing(say)
  return message([
    ...(note ? [text(note)] : []),
    text(`### ${say('privacy.title')}\n${say('privacy.short')}\n**${sayCounted(say, out, moderates)}**`),
    ...rows([
      pressButton(encodePrivacy({ is: 'show' }), say('privacy.show'), ButtonStyle.Primary),
      pressButton(encodeTrends({ is: 'counting', choice }), say(`counting.${choice}`)),
      ...(page === 'helping' ? [pressButton(encodePrivacy({ is: help }), say(`privacy.${help}`))] : []),
      pressButton(encodePrivacy({ is: other === 'helping' ? 'helping' : 'see' }), say(`privacy.page.${other}`)),
      pressButton(encodePrivacy({ is: 'delete' }), say('privacy.delete'), ButtonStyle.Danger),
    ]),
    text(kept.join('\n')),
    small(`${say('caution.line')}${missing ? `\n${missing}` : ''}`),
  ])
}

export function askBeforeDeleting(say: Say): ShownMessage {
  return message([
    text(`### ${say('privacy.sure.title')}\n${say('privacy.sure')}\n\n${say('privacy.stays')}`),
    ...rows([
      pressButton(encodePrivacy({ is: 'deleted' }), say('privacy.sure.yes'), ButtonStyle.Danger),
      pressButton(encodePrivacy({ is: 'see' }), say('privacy.sure.no')),
    ]),
    small(say('caution.line')),
  ])
}
