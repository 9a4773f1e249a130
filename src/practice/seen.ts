// What a person sees of a message, and finders that pick text, buttons, menus and pictures out of it.
import type { RawOption, WireMessage } from './wire.ts'
import { linkOf } from './world/files.ts'
import { componentJson } from './world/message-json.ts'
import { type Json, messageFlag, partType, walk } from './world/raw.ts'
import type { Message, World } from './world/world.ts'

export type SeenMessage = WireMessage

export type SeenButton = {
  readonly customId: string | null
  readonly label: string
  readonly disabled: boolean
  readonly style: number
  readonly url: string | null
}

export type SeenMenu = {
  readonly customId: string
  readonly kind: 'text' | 'person' | 'role' | 'mentionable' | 'channel'
  readonly options: readonly RawOption[]
  /** Ids chosen beforehand in a menu of people, roles or channels. */
  readonly chosen: readonly string[]
  readonly placeholder: string
  readonly min: number
  readonly max: number
  readonly disabled: boolean
}

/** A copy of the message as it stands now. */
export function see(world: World, message: Message): SeenMessage {
  const { application } = world.scenario
  const bot = message.author === 'bot'
  return {
    id: message.id,
    channelId: message.channelId,
    author: bot
      ? { id: application.id, name: application.name, bot }
      : { id: message.author, name: world.people.get(message.author)?.name ?? '', bot },
    content: message.content,
    embeds: structuredClone(message.embeds),
    components: message.components.map(one => structuredClone(componentJson(world, one))),
    attachments: message.attachments.map(({ file, description }) => ({
      id: file.id,
      name: file.name,
      url: linkOf(world, file),
      size: file.bytes.length,
      contentType: file.contentType,
      description,
    })),
    flags: message.flags,
    private: message.onlyFor !== null,
    onlyFor: message.onlyFor,
    loading: (message.flags & messageFlag.loading) !== 0,
    at: message.at,
    editedAt: message.editedAt,
    pinned: message.pinned,
    pinged: message.pinged,
    replyTo: message.replyTo,
    threadId: message.threadId,
    reactions: [...message.reactions].map(([emoji, by]) => ({ emoji, by: [...by] })),
  }
}

type Shown = Pick<SeenMessage, 'content' | 'embeds' | 'components'>

/** All text a person reads in the message: content, embeds and text displays, one a line; not labels of buttons. */
export function text(message: Shown): string {
  const lines = [message.content]
  for (const embed of message.embeds) lines.push(...embedLines(embed))
  for (const part of walk(message.components)) if (part.type === partType.text) lines.push(part.content ?? '')
  return lines.filter(line => line !== '').join('\n')
}

function embedLines(embed: Json): string[] {
  const named = (key: string, inner: string) => ((embed[key] as Json | undefined)?.[inner] as string | undefined) ?? ''
  const fields = (embed['fields'] as { name: string; value: string }[] | undefined) ?? []
  return [
    named('author', 'name'),
    (embed['title'] as string | undefined) ?? '',
    (embed['description'] as string | undefined) ?? '',
    ...fields.flatMap(field => [field.name, field.value]),
    named('footer', 'text'),
  ]
}

/** Every button, in reading order. */
export function buttons(message: Pick<SeenMessage, 'components'>): SeenButton[] {
  return [...walk(message.components)]
    .filter(part => part.type === partType.button)
    .map(part => ({
      customId: part.custom_id ?? null,
      label: part.label ?? part.emoji?.name ?? '',
      disabled: part.disabled ?? false,
      style: part.style ?? 2,
      url: part.url ?? null,
    }))
}

const menuKinds: Record<number, SeenMenu['kind']> = {
  [partType.stringSelect]: 'text',
  [partType.userSelect]: 'person',
  [partType.roleSelect]: 'role',
  [partType.mentionableSelect]: 'mentionable',
  [partType.channelSelect]: 'channel',
}

/** What a component is as a menu; null if it is none. */
export function menuKind(type: number): SeenMenu['kind'] | null {
  return menuKinds[type] ?? null
}

/** Every menu, in reading order. */
export function menus(message: Pick<SeenMessage, 'components'>): SeenMenu[] {
  return [...walk(message.components)].flatMap(part => {
    const kind = menuKind(part.type)
    if (kind === null) return []
    return [
      {
        customId: part.custom_id ?? '',
        kind,
        options: part.options ?? [],
        chosen: (part.default_values ?? []).map(one => one.id),
        placeholder: part.placeholder ?? '',
        min: part.min_values ?? 1,
        max: part.max_values ?? 1,
        disabled: part.disabled ?? false,
      },
    ]
  })
}

/** Every picture: galleries, thumbnails, embeds' pictures, then attached pictures of a message without displays. */
export function pictures(message: SeenMessage): { url: string; alt: string }[] {
  const found: { url: string; alt: string }[] = []
  for (const part of walk(message.components)) {
    for (const item of part.items ?? []) found.push({ url: item.media.url, alt: item.description ?? '' })
    if (part.media) found.push({ url: part.media.url, alt: part.description ?? '' })
  }
  for (const embed of message.embeds) {
    for (const key of ['image', 'thumbnail']) {
      const url = (embed[key] as { url?: string } | undefined)?.url
      if (url !== undefined) found.push({ url, alt: '' })
    }
  }
  if ((message.flags & messageFlag.v2) === 0) {
    for (const file of message.attachments) {
      if (file.contentType.startsWith('image/')) found.push({ url: file.url, alt: file.description ?? '' })
    }
  }
  return found
}
