// Writes a message the way Discord's API writes it, for the bot.

import type { RawComponent } from '../wire.ts'
import { memberJson, userJson } from './describe.ts'
import { linkOf } from './files.ts'
import type { Json } from './raw.ts'
import { type Attachment, homeOf, type Message, type StoredFile, type World } from './world.ts'

/** An attachment object. */
export function attachmentJson(world: World, { file, description, title }: Attachment): Json {
  const url = linkOf(world, file)
  return {
    id: file.id,
    filename: file.name,
    size: file.bytes.length,
    url,
    proxy_url: url,
    content_type: file.contentType,
    ...(file.width === undefined ? {} : { width: file.width, height: file.height }),
    ...(description === null ? {} : { description }),
    ...(title === null ? {} : { title }),
    ...(file.folder === 'ephemeral-attachments' ? { ephemeral: true } : {}),
  }
}

/** A message object; `forGateway` adds what only events carry. */
export function messageJson(world: World, message: Message, forGateway = false): Json {
  const { application } = world.scenario
  const authorId = message.author === 'bot' ? application.id : message.author
  const channel = world.channels.get(message.channelId)
  const home = channel === undefined ? null : homeOf(world, channel)
  const replied = message.replyTo === null ? undefined : world.messages.get(message.replyTo)
  return {
    id: message.id,
    channel_id: message.channelId,
    type: message.type,
    author: userJson(world, authorId),
    content: message.content,
    timestamp: new Date(message.at).toISOString(),
    edited_timestamp: message.editedAt === null ? null : new Date(message.editedAt).toISOString(),
    tts: false,
    mention_everyone: message.pinged.everyone,
    mentions: message.pinged.people.map(id => userJson(world, id)).filter(user => user !== null),
    mention_roles: message.pinged.roles,
    attachments: message.attachments.map(one => attachmentJson(world, one)),
    embeds: message.embeds,
    components: message.components.map(one => componentJson(world, one)),
    flags: message.flags,
    pinned: message.pinned,
    ...(message.nonce === null ? {} : { nonce: message.nonce }),
    ...(message.metadata === null
      ? {}
      : { interaction_metadata: message.metadata, application_id: application.id, webhook_id: application.id }),
    ...(message.replyTo === null
      ? {}
      : {
          message_reference: {
            type: 0,
            message_id: message.replyTo,
            channel_id: message.channelId,
            ...(home === null ? {} : { guild_id: home.id }),
          },
          referenced_message: replied === undefined ? null : messageJson(world, { ...replied, replyTo: null }),
        }),
    ...(message.reactions.size === 0 ? {} : { reactions: reactionsJson(world, message) }),
    ...(forGateway && home !== null ? { guild_id: home.id, member: memberJson(world, home, authorId) } : {}),
  }
}

function reactionsJson(world: World, message: Message): Json[] {
  return [...message.reactions].map(([name, by]) => ({
    emoji: { id: null, name },
    count: by.size,
    count_details: { burst: 0, normal: by.size },
    me: by.has(world.scenario.application.id),
    me_burst: false,
    burst_colors: [],
  }))
}

/** A component as Discord gives it back: own files carry a fresh link, size and kind. */
export function componentJson(world: World, component: RawComponent): RawComponent {
  const copy: RawComponent = { ...component }
  if (copy.components) copy.components = copy.components.map(one => componentJson(world, one))
  if (copy.component) copy.component = componentJson(world, copy.component)
  if (copy.accessory) copy.accessory = componentJson(world, copy.accessory)
  if (copy.items) copy.items = copy.items.map(item => ({ ...item, media: mediaJson(world, item.media) }))
  if (copy.media) copy.media = mediaJson(world, copy.media)
  if (copy.file) {
    const stored = storedFile(world, copy.file)
    copy.file = mediaJson(world, copy.file)
    if (stored) Object.assign(copy, { name: stored.name, size: stored.bytes.length })
  }
  return copy
}

function storedFile(world: World, media: { attachment_id?: string }): StoredFile | undefined {
  return media.attachment_id === undefined ? undefined : world.files.get(media.attachment_id)
}

function mediaJson(world: World, media: { url: string; attachment_id?: string }): { url: string } & Json {
  const file = storedFile(world, media)
  const url = file === undefined ? media.url : linkOf(world, file)
  return {
    ...media,
    url,
    proxy_url: url,
    width: file?.width ?? null,
    height: file?.height ?? null,
    ...(file === undefined ? {} : { content_type: file.contentType }),
  }
}
