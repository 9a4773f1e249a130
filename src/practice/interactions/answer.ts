// Applies the bot's first answer to an interaction: the callback types and what each may answer.
// Source: Discord's documentation, "Receiving and Responding", interaction callback types.
import { type Answer, badBody, noContent, notFound, ok, refusals } from '../rest/answer.ts'
import { autoModRefusal } from '../rest/auto-mod.ts'
import type { Room } from '../room.ts'
import { type Issue, issue } from '../rules/issue.ts'
import type { RawComponent } from '../wire.ts'
import { pingedBy } from '../world/mentions.ts'
import { messageJson } from '../world/message-json.ts'
import { type Json, messageFlag } from '../world/raw.ts'
import { botMay } from '../world/rights.ts'
import type { Message } from '../world/world.ts'
import { addMessage, editMessage, type SentFile } from '../world/write-message.ts'
import { type Choice, happen, type Opened } from './opened.ts'

type Callback = {
  readonly type: number
  readonly data: Json
  readonly files: readonly SentFile[]
}

/** Answers `POST /interactions/:id/:token/callback`. */
export function firstAnswer(
  room: Room,
  id: string,
  token: string,
  body: Json,
  files: readonly SentFile[],
  withResponse: boolean,
): Answer {
  const opened = room.interactions.get(id)
  if (opened === undefined || opened.token !== token) return notFound.interaction
  if (opened.answered !== null) return refusals.answered
  if (room.clock.now() >= opened.at + room.firstAnswerMs) return notFound.interaction
  const type = Number(body['type'])
  const wrong = [...kindIssues(room, opened, type), ...room.rules.callback(body, files, context(room, opened))]
  if (wrong.length > 0) {
    opened.refusals.push(...wrong)
    happen(opened, { kind: 'refused', issues: wrong })
    return badBody(wrong)
  }
  const blocked = blockedAnswer(room, opened, type, body)
  if (blocked !== null) return blocked
  opened.answered = type
  const made = apply(room, opened, { type, data: (body['data'] as Json | undefined) ?? {}, files })
  return withResponse ? ok(resource(room, opened, type, made)) : noContent
}

/** Only what everybody sees is looked at. */
function blockedAnswer(room: Room, opened: Opened, type: number, body: Json): Answer | null {
  const data = (body['data'] ?? {}) as Json
  const source = room.world.messages.get(opened.sourceId ?? '')
  const hidden = type === 7 ? source?.onlyFor !== null : (Number(data['flags'] ?? 0) & messageFlag.ephemeral) !== 0
  return hidden || (type !== 4 && type !== 7) ? null : autoModRefusal(room, data)
}

function context(room: Room, opened: Opened) {
  const source = opened.sourceId === null ? undefined : room.world.messages.get(opened.sourceId)
  return { editing: source ?? null, focusedType: opened.focusedType }
}

function kindIssues(room: Room, opened: Opened, type: number): Issue[] {
  const no = (message: string) => [issue(['type'], 'INTERACTION_CALLBACK_TYPE_INVALID', message)]
  if (![4, 5, 6, 7, 8, 9].includes(type)) return no('This is not a callback type a bot may use here.')
  const autocomplete = opened.type === 4
  if (autocomplete !== (type === 8)) {
    return no(autocomplete ? 'Autocomplete is answered with choices only.' : 'Choices answer autocomplete only.')
  }
  if (type === 9 && opened.type === 5) return no('A modal cannot answer a modal.')
  if (type === 6 || type === 7) {
    const source = opened.sourceId === null ? undefined : room.world.messages.get(opened.sourceId)
    const fits = (opened.type === 3 || opened.type === 5) && opened.sourceId !== null
    if (!fits) return no('There is no message this interaction came from.')
    if (type === 7 && source === undefined) return no('The message this interaction came from is gone.')
  }
  return []
}

function apply(room: Room, opened: Opened, { type, data, files }: Callback): Message | null {
  if (type === 8) {
    happen(opened, { kind: 'choices', choices: (data['choices'] as Choice[] | undefined) ?? [] })
    return null
  }
  if (type === 9) {
    const components = (data['components'] as RawComponent[] | undefined) ?? []
    const modal = { customId: String(data['custom_id']), title: String(data['title']), components }
    happen(opened, { kind: 'modal', modal })
    return null
  }
  if (type === 6 || type === 7) {
    opened.originalId = opened.sourceId
    const message = room.world.messages.get(opened.sourceId ?? '')
    if (type === 6 || message === undefined) {
      happen(opened, { kind: 'acknowledged' })
      return null
    }
    editMessage(room.world, message, data, files)
    happen(opened, { kind: 'updated', message })
    return message
  }
  const deferred = type === 5
  const message = postFor(
    room,
    opened,
    deferred ? { flags: data['flags'] } : data,
    files,
    deferred ? messageFlag.loading : 0,
  )
  opened.originalId = message.id
  happen(opened, { kind: deferred ? 'deferred' : 'message', message })
  return message
}

/** Writes a message on behalf of an interaction; private when its flags say so. */
export function postFor(room: Room, opened: Opened, body: Json, files: readonly SentFile[], flags = 0): Message {
  const channel = room.world.channels.get(opened.channelId)
  if (channel === undefined) throw new Error(`The channel ${opened.channelId} of an interaction is gone`)
  const hidden = (Number(body['flags'] ?? 0) & messageFlag.ephemeral) !== 0
  return addMessage(room.world, {
    channel,
    author: 'bot',
    body,
    files,
    type: opened.messageType,
    onlyFor: hidden ? opened.personId : null,
    flags: flags | (hidden ? messageFlag.ephemeral : 0),
    metadata: opened.metadata,
    pinged: pingedBy(room.world, body, channel, { viaInteraction: true, botBits: botMay(room.world, channel) }),
  })
}

function resource(room: Room, opened: Opened, type: number, message: Message | null): Json {
  const id = message?.id ?? (type === 6 ? opened.originalId : null)
  const shown = message !== null && (type === 4 || type === 7)
  return {
    interaction: {
      id: opened.id,
      type: opened.type,
      ...(id === null
        ? {}
        : {
            response_message_id: id,
            response_message_loading: type === 5,
            response_message_ephemeral: message?.onlyFor !== null && message !== null,
          }),
    },
    ...(type === 8 ? {} : { resource: { type, ...(shown ? { message: messageJson(room.world, message) } : {}) } }),
  }
}
