// What a click or a sent form of a hand-over means; nothing for those that only show something.
import type { Taker } from '../../../check/custody.ts'
import type { HandOverEvent } from '../../../check/hand-over.ts'
import type { HandOverCommand } from '../../../custom-ids/hand-over-id.ts'
import type { Refusal } from '../../interaction/refusal.ts'
import type { Clicked } from '../../interaction/reply.ts'
import { takerField, whyField } from './show/forms.ts'
import { takerOf } from './taker-of.ts'

export type HandOverIntent =
  | { readonly ok: true; readonly event: HandOverEvent }
  | { readonly ok: false; readonly refusal: Refusal }

export function meantBy(interaction: Clicked, does: HandOverCommand): HandOverIntent | undefined {
  const event = (one: HandOverEvent): HandOverIntent => ({ ok: true, event: one })
  switch (does) {
    case 'take':
    case 'withdraw':
    case 'unask':
    case 'claim':
    case 'let-go':
    case 'ask-closing':
    case 'keep-open':
    case 'reopen':
      return event({ is: does })
    case 'share':
    case 'keep':
      return event({ is: 'share', shares: does === 'share' })
    case 'pair':
    case 'no-pair':
      return event({ is: 'pair', wanted: does === 'pair' })
    case 'redirected':
      return chosenIn(interaction, to => ({ is: 'redirect', to, why: whyOf(interaction) }))
    case 'offered':
      return chosenIn(interaction, to => ({ is: 'offer', to, why: whyOf(interaction) }))
    case 'passed-on':
      return chosenIn(interaction, to => ({ is: 'pass-on', to }))
    case 'declined':
      return event({ is: 'decline', why: whyOf(interaction) })
    case 'gave-back':
      return event({ is: 'give-back', why: whyOf(interaction) })
    case 'sent-back':
      return event({ is: 'send-back', why: whyOf(interaction) })
    case 'took-over':
      return event({ is: 'take-over', why: whyOf(interaction) })
    default:
      return undefined
  }
}

const whyOf = (interaction: Clicked): string =>
  interaction.isModalSubmit() ? interaction.fields.getTextInputValue(whyField) : ''

function chosenIn(interaction: Clicked, event: (to: Taker) => HandOverEvent): HandOverIntent {
  const chosen = interaction.isModalSubmit() ? interaction.fields.getSelectedMentionables(takerField) : null
  const user = chosen?.users.first()
  const isHere = user !== undefined && chosen?.members.has(user.id) === true
  const choosing = takerOf({ user, isHere, role: chosen?.roles.first() }, interaction.guildId)
  if (!choosing.ok) return choosing
  return { ok: true, event: event(choosing.taker) }
}
