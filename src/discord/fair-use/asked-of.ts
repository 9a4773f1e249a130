// What an interaction asks for, as fair use counts it; undefined for what is always let through.
import type { Interaction } from 'discord.js'
import type { Asked } from './open-fair-use.ts'

export function askedOf(interaction: Interaction): Asked | undefined {
  if (interaction.isAutocomplete()) return 'suggestions'
  if (interaction.isChatInputCommand()) return interaction.options.resolved?.attachments?.size ? 'file' : 'act'
  // What a person has typed is never turned away for haste: the click that opened the form was counted.
  if (interaction.isModalSubmit()) return interaction.fields.resolved?.attachments?.size ? 'file' : undefined
  return 'act'
}
