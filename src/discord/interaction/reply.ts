// The three ways we answer an interaction: a private reply, redrawing the message that was clicked, or a private refusal.
import {
  type APITextDisplayComponent,
  type ChatInputCommandInteraction,
  ComponentType,
  type MessageComponentInteraction,
  type MessageContextMenuCommandInteraction,
  MessageFlags,
  type ModalSubmitInteraction,
} from 'discord.js'
import type { ShownPicture } from '../../services/pictures/shown-picture.ts'
import type { Say } from '../../words/say.ts'
import { message, type ShownMessage, small, text } from '../message/parts.ts'
import { type Refusal, sayRefusal } from './refusal.ts'

export type Clicked = MessageComponentInteraction | ModalSubmitInteraction
export type Answerable = ChatInputCommandInteraction | MessageContextMenuCommandInteraction | Clicked

const files = (shown: ShownMessage) =>
  shown.pictures.map(({ name, bytes, alt }) => ({
    name,
    attachment: Buffer.from(bytes),
    description: alt.slice(0, 1024),
  }))

/** A new message that only the person sees. */
export async function replyPrivately(interaction: Answerable, shown: ShownMessage): Promise<void> {
  await interaction.reply({
    components: shown.components,
    files: files(shown),
    flags: shown.flags | MessageFlags.Ephemeral,
  })
}

/** The clicked message, redrawn; a form that was not opened from a message is answered with a new private one. */
export async function redraw(interaction: Clicked, shown: ShownMessage): Promise<void> {
  if (interaction.isModalSubmit() && !interaction.isFromMessage()) return replyPrivately(interaction, shown)
  await interaction.update({ components: shown.components, files: files(shown), attachments: [], flags: shown.flags })
}

/** Redraws a message that only the person sees; one that everybody sees stays as it is and is answered privately. */
export async function updateOrReply(interaction: Clicked, shown: ShownMessage): Promise<void> {
  const own = interaction.message?.flags.has(MessageFlags.Ephemeral) ?? false
  return own ? redraw(interaction, shown) : replyPrivately(interaction, shown)
}

export const refusalParts = (say: Say, refusal: Refusal, more: readonly APITextDisplayComponent[] = []) => [
  text(sayRefusal(say, refusal)),
  ...more,
  small(say('caution.line')),
]

/** `more` stands below the sentence. */
export async function refuse(
  interaction: Answerable,
  say: Say,
  refusal: Refusal,
  more: readonly APITextDisplayComponent[] = [],
): Promise<void> {
  await replyPrivately(interaction, message(refusalParts(say, refusal, more)))
}

/** Says that an answer is being worked on; it is then given with `editReply`. A click keeps its message meanwhile. */
export async function defer(interaction: Answerable): Promise<void> {
  // A form that a command has opened stands under no message that could be kept.
  const alone = interaction.isModalSubmit() && !interaction.isFromMessage()
  if (interaction.isCommand() || alone) await interaction.deferReply({ flags: MessageFlags.Ephemeral })
  else await interaction.deferUpdate()
}

/** The answer that `defer` has promised. */
export async function editReply(interaction: Answerable, shown: ShownMessage): Promise<void> {
  await interaction.editReply({
    components: shown.components,
    files: files(shown),
    attachments: [],
    flags: shown.flags,
  })
}

/** A private reply that `view` makes of `needed`: deferred where that is not there yet, as after a start, since Discord waits for three seconds. */
export async function replyWith<Needed>(
  interaction: Answerable,
  needed: Promise<Needed>,
  view: (needed: Needed) => Promise<ShownMessage>,
): Promise<void> {
  const there = needed.then(
    () => true,
    () => true,
  )
  const aMoment = new Promise<boolean>(resolve => setImmediate(resolve, false))
  if (await Promise.race([there, aMoment])) return replyPrivately(interaction, await view(await needed))
  await defer(interaction)
  await editReply(interaction, await view(await needed))
}

/** Something private to say after `defer`, in place of the answer of a command and beside the message of a click. */
export async function followUpPrivately(interaction: Answerable, shown: ShownMessage): Promise<void> {
  if (interaction.isCommand()) return editReply(interaction, shown)
  await interaction.followUp({ components: shown.components, flags: shown.flags | MessageFlags.Ephemeral })
}

type TextFile = { readonly name: string; readonly content: string }

/** A private reply with one text file. */
export async function replyWithFile(interaction: Answerable, says: string, file: TextFile): Promise<void> {
  await interaction.reply(withFile(says, file))
}

/** The same beside what was answered already. */
export async function followWithFile(interaction: Answerable, says: string, file: TextFile): Promise<void> {
  await interaction.followUp(withFile(says, file))
}

/** Discord takes so many files in one message. */
const mostFiles = 10

/** Private replies with files of any kind, in as many messages as they need; `says` stands above the first. */
export async function replyWithFiles(
  interaction: Answerable,
  says: string,
  all: readonly ShownPicture[],
): Promise<void> {
  for (let from = 0; from === 0 || from < all.length; from += mostFiles) {
    const pictures = all.slice(from, from + mostFiles)
    const listed = pictures.map(one => ({
      type: ComponentType.File as const,
      file: { url: `attachment://${one.name}` },
    }))
    const shown = message([...(from === 0 ? [text(says)] : []), ...listed], pictures)
    const body = {
      components: shown.components,
      files: files(shown),
      flags: shown.flags | MessageFlags.Ephemeral,
    } as const
    await (from === 0 ? interaction.reply(body) : interaction.followUp(body))
  }
}

function withFile(says: string, { name, content }: TextFile) {
  const shown = message([text(says), { type: ComponentType.File, file: { url: `attachment://${name}` } }])
  return {
    components: shown.components,
    files: [{ name, attachment: Buffer.from(content) }],
    flags: shown.flags | MessageFlags.Ephemeral,
  } as const
}
