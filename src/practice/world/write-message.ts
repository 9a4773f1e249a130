// Makes and changes messages from the bodies a bot sends: text, embeds, components, files.

import type { RawComponent, RawMedia } from '../wire.ts'
import { dropFile, fileOfLink, keepFile, type Upload } from './files.ts'
import { nobodyPinged } from './mentions.ts'
import { type Json, messageFlag, walk } from './raw.ts'
import { type Attachment, type Channel, type Message, type Pinged, tell, type World } from './world.ts'

/** A file of a multipart body: `field` is the n of `files[n]`. */
export type SentFile = Upload & {
  readonly field: string
}

export type Draft = {
  /** A forum post's first message carries the post's own id. */
  readonly id?: string
  readonly channel: Channel
  readonly author: string
  readonly body: Json
  readonly files?: readonly SentFile[]
  readonly type?: number
  readonly onlyFor?: string | null
  readonly metadata?: Json | null
  readonly flags?: number
  readonly pinged?: Pinged
  readonly replyTo?: string | null
}

/** Writes a new message into a channel, or into one person's sight when `onlyFor` is set. */
export function addMessage(world: World, draft: Draft): Message {
  const { channel, body } = draft
  const nonce = body['nonce']
  const message: Message = {
    id: draft.id ?? world.newId(),
    channelId: channel.id,
    author: draft.author,
    type: draft.type ?? 0,
    content: '',
    embeds: [],
    components: [],
    attachments: [],
    flags: draft.flags ?? 0,
    at: world.clock.now(),
    editedAt: null,
    pinned: false,
    nonce: typeof nonce === 'string' || typeof nonce === 'number' ? nonce : null,
    onlyFor: draft.onlyFor ?? null,
    metadata: draft.metadata ?? null,
    replyTo: draft.replyTo ?? null,
    pinged: draft.pinged ?? nobodyPinged,
    threadId: null,
    reactions: new Map(),
  }
  fill(world, message, body, draft.files ?? [])
  world.messages.set(message.id, message)
  if (message.onlyFor === null) channel.messageIds.push(message.id)
  tell(world, { kind: 'message', message })
  return message
}

/** Changes a message; what the body does not name stays, as Discord's edits do. */
export function editMessage(world: World, message: Message, body: Json, files: readonly SentFile[]): void {
  const waiting = (message.flags & messageFlag.loading) !== 0
  fill(world, message, body, files)
  message.flags &= ~messageFlag.loading
  // The edit that fills a deferred answer is its first content, not a change.
  if (!waiting) message.editedAt = world.clock.now()
  tell(world, { kind: 'message-edited', message })
}

/** Takes a message away for everyone. */
export function removeMessage(world: World, message: Message): void {
  world.messages.delete(message.id)
  const ids = world.channels.get(message.channelId)?.messageIds
  const at = ids?.indexOf(message.id) ?? -1
  if (at >= 0) ids?.splice(at, 1)
  for (const { file } of message.attachments) dropFile(world, file)
  tell(world, { kind: 'message-gone', message })
}

function fill(world: World, message: Message, body: Json, files: readonly SentFile[]): void {
  const before = message.attachments
  message.attachments = attachmentsAfter(world, message, body, files)
  for (const one of before) if (!message.attachments.includes(one)) dropFile(world, one.file)
  if (body['content'] !== undefined) message.content = (body['content'] as string | null) ?? ''
  if (body['embeds'] !== undefined) {
    message.embeds = ((body['embeds'] as Json[] | null) ?? []).map(embed => resolveEmbed(world, message, embed))
  }
  if (body['components'] !== undefined) {
    const sent = structuredClone((body['components'] as RawComponent[] | null) ?? [])
    numberParts(sent)
    for (const part of walk(sent)) resolvePart(world, message, part)
    message.components = sent
  }
  const flags = typeof body['flags'] === 'number' ? body['flags'] : 0
  message.flags |= flags & (messageFlag.v2 | messageFlag.suppressEmbeds | messageFlag.silent)
}

function attachmentsAfter(world: World, message: Message, body: Json, files: readonly SentFile[]): Attachment[] {
  const named = body['attachments'] as
    | { id: string; filename?: string; description?: string; title?: string }[]
    | undefined
  const old =
    named === undefined || named === null
      ? message.attachments
      : message.attachments.filter(({ file }) => named.some(one => String(one.id) === file.id))
  const fresh = files.map(file => {
    const said = named?.find(one => String(one.id) === file.field)
    const folder = message.onlyFor === null ? 'attachments' : 'ephemeral-attachments'
    const upload = said?.filename === undefined ? file : { ...file, name: said.filename }
    return {
      file: keepFile(world, message.channelId, folder, upload),
      description: said?.description ?? null,
      title: said?.title ?? null,
    }
  })
  return [...old, ...fresh]
}

/** Gives each component without an id the next free one, as Discord does. */
export function numberParts(components: readonly RawComponent[]): void {
  const taken = new Set<number>()
  for (const part of walk(components)) if (part.id !== undefined && part.id !== 0) taken.add(part.id)
  let next = 1
  for (const part of walk(components)) {
    if (part.id !== undefined && part.id !== 0) continue
    while (taken.has(next)) next += 1
    part.id = next
    taken.add(next)
  }
}

function resolveMedia(world: World, message: Message, media: RawMedia): RawMedia {
  const file = media.url.startsWith('attachment://')
    ? message.attachments.find(one => one.file.name === media.url.slice('attachment://'.length))?.file
    : fileOfLink(world, media.url)
  return file === undefined || file === null ? { url: media.url } : { url: media.url, attachment_id: file.id }
}

function resolvePart(world: World, message: Message, part: RawComponent): void {
  if (part.media) part.media = resolveMedia(world, message, part.media)
  if (part.file) part.file = resolveMedia(world, message, part.file)
  for (const item of part.items ?? []) item.media = resolveMedia(world, message, item.media)
}

function resolveEmbed(world: World, message: Message, embed: Json): Json {
  const copy: Json = { type: 'rich', ...embed }
  for (const place of ['image', 'thumbnail']) {
    const picture = copy[place] as RawMedia | undefined
    if (!picture?.url.startsWith('attachment://')) continue
    const file = resolveMedia(world, message, picture)
    const stored = file.attachment_id === undefined ? undefined : world.files.get(file.attachment_id)
    if (stored === undefined) continue
    const url = `${world.origin}/cdn/${stored.folder}/${stored.channelId}/${stored.id}/${encodeURIComponent(stored.name)}`
    copy[place] = { ...picture, url, proxy_url: url }
  }
  return copy
}
