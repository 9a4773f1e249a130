// Messages the bot posts, reads, edits and deletes in channels with its own token.
import type { Room } from '../room.ts'
import { issue } from '../rules/issue.ts'
import { pingedBy } from '../world/mentions.ts'
import { messageJson } from '../world/message-json.ts'
import { rights } from '../world/permissions.ts'
import type { Json } from '../world/raw.ts'
import { botMay, maySpeak } from '../world/rights.ts'
import { type Channel, channelKind, isThread, type Message, tell } from '../world/world.ts'
import { addMessage, editMessage, removeMessage, type SentFile } from '../world/write-message.ts'
import { type Answer, badBody, noContent, notFound, ok, refusals } from './answer.ts'
import { autoModRefusal } from './auto-mod.ts'
import { type Asked, type Route, route } from './route.ts'

/** Minutes in which a repeated nonce gives the first message back. The figure is from memory ("a few minutes"). */
const nonceMs = 5 * 60_000

type Reached = { ok: true; channel: Channel; bits: bigint } | { ok: false; answer: Answer }

/** The channel of the path, if the bot can see it. */
export function reachChannel(room: Room, id: string): Reached {
  const channel = room.world.channels.get(id)
  if (channel === undefined) return { ok: false, answer: notFound.channel }
  const bits = botMay(room.world, channel)
  if ((bits & rights.view) === 0n) return { ok: false, answer: refusals.access }
  return { ok: true, channel, bits }
}

/** Posts a bot's message into a channel it may speak in; used for plain messages and a forum's first post. */
export function postByBot(
  room: Room,
  channel: Channel,
  bits: bigint,
  json: Json,
  files: readonly SentFile[],
): Answer | Message {
  const person = channel.personId === null ? undefined : room.world.people.get(channel.personId)
  if (person?.dmClosed) return refusals.closedDirect
  if (!maySpeak(bits, channel)) return refusals.permissions
  if (files.length > 0 && (bits & rights.attach) === 0n) return refusals.permissions
  if (channel.archived && channel.locked) return refusals.archived
  const wrong = room.rules.message(json, files)
  if (wrong.length > 0) return badBody(wrong)
  if (room.rules.isEmpty(json, files)) return refusals.empty
  const reference = json['message_reference'] as { message_id?: string; fail_if_not_exists?: boolean } | undefined
  const replied = reference?.message_id === undefined ? undefined : room.world.messages.get(reference.message_id)
  if (reference?.message_id !== undefined && replied === undefined && reference.fail_if_not_exists !== false) {
    // From memory: how Discord words a reply to a message that is gone.
    return badBody([issue(['message_reference'], 'REPLIES_UNKNOWN_MESSAGE', 'Unknown message')])
  }
  const blocked = autoModRefusal(room, json)
  if (blocked !== null) return blocked
  wake(room, channel)
  return addMessage(room.world, {
    channel,
    author: 'bot',
    body: json,
    files,
    type: replied === undefined ? 0 : 19,
    replyTo: replied?.id ?? null,
    pinged: pingedBy(room.world, json, channel, { viaInteraction: false, botBits: bits, repliedTo: replied?.author }),
  })
}

/** A message in an archived, unlocked thread opens it again. */
function wake(room: Room, channel: Channel): void {
  if (!channel.archived) return
  channel.archived = false
  tell(room.world, { kind: 'channel-changed', channel })
}

/** Whether a result is an answer rather than a message. */
export function isAnswer(result: Answer | Message): result is Answer {
  return 'status' in result
}

function sameNonce(room: Room, channel: Channel, json: Json): Message | null {
  if (json['enforce_nonce'] !== true || json['nonce'] === undefined) return null
  const since = room.clock.now() - nonceMs
  for (let at = channel.messageIds.length - 1; at >= 0; at -= 1) {
    const message = room.world.messages.get(channel.messageIds[at] ?? '')
    if (message === undefined || message.at < since) return null
    if (message.author === 'bot' && String(message.nonce) === String(json['nonce'])) return message
  }
  return null
}

function create({ room, params, json, files }: Asked): Answer {
  const reached = reachChannel(room, params['channel'] ?? '')
  if (!reached.ok) return reached.answer
  const { channel, bits } = reached
  if (channel.type === channelKind.forum) return refusals.noText
  const before = sameNonce(room, channel, json)
  if (before !== null) return ok(messageJson(room.world, before))
  const made = postByBot(room, channel, bits, json, files)
  return isAnswer(made) ? made : ok(messageJson(room.world, made))
}

function withMessage(asked: Asked, act: (message: Message, channel: Channel, bits: bigint) => Answer): Answer {
  const reached = reachChannel(asked.room, asked.params['channel'] ?? '')
  if (!reached.ok) return reached.answer
  const message = asked.room.world.messages.get(asked.params['message'] ?? '')
  // Private replies cannot be reached with the bot's token.
  if (message === undefined || message.channelId !== reached.channel.id || message.onlyFor !== null)
    return notFound.message
  return act(message, reached.channel, reached.bits)
}

function edit(asked: Asked): Answer {
  return withMessage(asked, (message, channel) => {
    const { room, json, files } = asked
    if (message.author !== 'bot') return refusals.otherAuthor
    if (isThread(channel) && channel.archived) return refusals.archived
    const wrong = room.rules.channelEdit(json, files, message)
    const blocked = autoModRefusal(room, json)
    if (wrong.length > 0 || blocked !== null) return blocked ?? badBody(wrong)
    editMessage(room.world, message, json, files)
    return ok(messageJson(room.world, message))
  })
}

function remove(asked: Asked): Answer {
  return withMessage(asked, (message, _, bits) => {
    if (message.author !== 'bot' && (bits & rights.manageMessages) === 0n) return refusals.permissions
    removeMessage(asked.room.world, message)
    return noContent
  })
}

function list({ room, params, query }: Asked): Answer {
  const reached = reachChannel(room, params['channel'] ?? '')
  if (!reached.ok) return reached.answer
  if ((reached.bits & rights.history) === 0n) return ok([])
  const before = query.get('before')
  const after = query.get('after')
  const most = Math.min(100, Number(query.get('limit') ?? 50))
  let ids = [...reached.channel.messageIds]
  if (before !== null) ids = ids.filter(id => BigInt(id) < BigInt(before))
  if (after !== null) ids = ids.filter(id => BigInt(id) > BigInt(after)).slice(0, most)
  const found = ids.slice(-most).reverse()
  return ok(found.flatMap(id => room.world.messages.get(id) ?? []).map(one => messageJson(room.world, one)))
}

function pin(pinned: boolean): (asked: Asked) => Answer {
  return asked =>
    withMessage(asked, message => {
      message.pinned = pinned
      tell(asked.room.world, { kind: 'message-edited', message })
      return noContent
    })
}

function react(adding: boolean): (asked: Asked) => Answer {
  return asked =>
    withMessage(asked, (message, _, bits) => {
      if (adding && (bits & rights.react) === 0n) return refusals.permissions
      const emoji = asked.params['emoji'] ?? ''
      const by = message.reactions.get(emoji) ?? new Set()
      if (adding) by.add(asked.room.world.scenario.application.id)
      else by.delete(asked.room.world.scenario.application.id)
      if (by.size > 0) message.reactions.set(emoji, by)
      else message.reactions.delete(emoji)
      tell(asked.room.world, { kind: 'message-edited', message })
      return noContent
    })
}

export const messageRoutes: readonly Route[] = [
  route('POST /channels/:channel/messages', create),
  route('GET /channels/:channel/messages', list),
  route('GET /channels/:channel/messages/:message', asked =>
    withMessage(asked, message => ok(messageJson(asked.room.world, message))),
  ),
  route('PATCH /channels/:channel/messages/:message', edit),
  route('DELETE /channels/:channel/messages/:message', remove),
  route('PUT /channels/:channel/pins/:message', pin(true)),
  route('DELETE /channels/:channel/pins/:message', pin(false)),
  route('PUT /channels/:channel/messages/pins/:message', pin(true)),
  route('DELETE /channels/:channel/messages/pins/:message', pin(false)),
  route('PUT /channels/:channel/messages/:message/reactions/:emoji/@me', react(true)),
  route('DELETE /channels/:channel/messages/:message/reactions/:emoji/@me', react(false)),
]
