// What was typed and chosen in a form, by the field; empty where the form has no such field.
import { ComponentType, type ModalSubmitInteraction } from 'discord.js'

export const typedIn = (interaction: ModalSubmitInteraction, name: string): string =>
  interaction.fields.fields.has(name) ? interaction.fields.getTextInputValue(name).trim() : ''
/** The line that was pressed in a group; a form that was opened before there were groups has a menu in its place. */
export function pressedIn(interaction: ModalSubmitInteraction, name: string): string | undefined {
  const field = interaction.fields.fields.get(name)
  if (field?.type === ComponentType.RadioGroup) return field.value ?? undefined
  return field?.type === ComponentType.StringSelect ? field.values[0] : undefined
}
export const chosenIn = (interaction: ModalSubmitInteraction, name: string): readonly string[] =>
  interaction.fields.fields.has(name) ? interaction.fields.getStringSelectValues(name) : []
