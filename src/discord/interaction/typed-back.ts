// What somebody typed into a form that was not taken: shown to them, so that it can be copied into the form again.
import { type APITextDisplayComponent, ComponentType, type Interaction } from 'discord.js'
import { fenced } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { cut, text } from '../message/parts.ts'

/** So much is given back at most, in characters; every form of ours takes less. */
const most = 3000

export function typedBack(say: Say, interaction: Interaction): APITextDisplayComponent[] {
  if (!interaction.isModalSubmit()) return []
  const typed = [...interaction.fields.fields.values()].flatMap(one =>
    one.type === ComponentType.TextInput && one.value !== '' ? [one.value] : [],
  )
  return typed.length === 0 ? [] : [text(`${say('links.typed')}\n${fenced(cut(typed.join('\n'), most))}`)]
}
