// What was typed and chosen in a form, by the field; empty where the form has no such field.
import type { ModalSubmitInteraction } from 'discord.js'

export const typedIn = (interaction: ModalSubmitInteraction, name: string): string =>
  interaction.fields.fields.has(name) ? interaction.fields.getTextInputValue(name).trim() : ''
export const chosenIn = (interaction: ModalSubmitInteraction, name: string): readonly string[] =>
  interaction.fields.fields.has(name) ? interaction.fields.getStringSelectValues(name) : []
