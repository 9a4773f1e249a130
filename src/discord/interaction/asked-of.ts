// What an interaction asks for, as fair use counts it, and what it costs; undefined for what is always let through.
import type { Interaction } from 'discord.js'
import type { Asked } from '../../services/fair-use/open-fair-use.ts'

export type Charge = { readonly asked: Asked; readonly tokens: number }

/** So many characters are read for one token, and no text costs more than so many tokens. */
const perToken = 40
const mostTokens = 40

/** A press costs one token, whatever it shows; text that has to be read or searched costs by its length. */
export const tokensFor = (characters: number): number =>
  Math.min(mostTokens, Math.max(1, Math.ceil(characters / perToken)))

export function chargeOf(interaction: Interaction): Charge | undefined {
  if (interaction.isAutocomplete())
    return { asked: 'suggestions', tokens: tokensFor(String(interaction.options.getFocused()).length) }
  if (interaction.isChatInputCommand()) {
    const file = interaction.options.resolved?.attachments?.size
    return file ? { asked: 'file', tokens: 1 } : { asked: 'act', tokens: tokensFor(typedIn(interaction.options.data)) }
  }
  if (interaction.isMessageContextMenuCommand())
    return { asked: 'act', tokens: tokensFor(interaction.targetMessage.content.length) }
  // What a person has typed is never turned away for haste: the click that opened the form was counted.
  if (interaction.isModalSubmit())
    return interaction.fields.resolved?.attachments?.size ? { asked: 'file', tokens: 1 } : undefined
  return { asked: 'act', tokens: 1 }
}

type Typed = { readonly value?: unknown; readonly options?: readonly Typed[] }

/** How many characters stand in the options of a command. */
const typedIn = (options: readonly Typed[] = []): number =>
  options.reduce(
    (sum, { value, options: inner }) => sum + (typeof value === 'string' ? value.length : 0) + typedIn(inner ?? []),
    0,
  )
