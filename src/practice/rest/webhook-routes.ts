// What a bot may do with an interaction's token after its first answer: read, edit, delete, follow up.
// Source: Discord's documentation, "Receiving and Responding", follow-up messages.
import { postFor } from '../interactions/answer.ts'
import { alive, happen, type Opened } from '../interactions/opened.ts'
import type { Room } from '../room.ts'
import { messageJson } from '../world/message-json.ts'
import { messageFlag } from '../world/raw.ts'
import type { Message } from '../world/world.ts'
import { editMessage, removeMessage } from '../world/write-message.ts'
import { type Answer, badBody, noContent, notFound, ok, refusals } from './answer.ts'
import { autoModRefusal } from './auto-mod.ts'
import { type Asked, type Route, route } from './route.ts'

type Found = { ok: true; opened: Opened } | { ok: false; answer: Answer }

/** The interaction behind the token, if it is still good. */
function holder({ room, params }: Asked): Found {
  const no = (answer: Answer): Found => ({ ok: false, answer })
  if (params['app'] !== room.world.scenario.application.id) return no(notFound.webhook)
  const opened = byToken(room, params['token'] ?? '')
  if (opened === null || !alive(opened, room.clock.now())) return no(refusals.webhookToken)
  if (opened.answered === null) return no(notFound.webhook)
  return { ok: true, opened }
}

/** Tokens begin with the id of their interaction. */
function byToken(room: Room, token: string): Opened | null {
  const opened = room.interactions.get(token.split('.')[0] ?? '')
  return opened?.token === token ? opened : null
}

/** A message this token may touch: the original, or one of its own follow-ups. */
function reachable(room: Room, opened: Opened, id: string): Message | null {
  const wanted = id === '@original' ? opened.originalId : id
  if (wanted === null || (wanted !== opened.originalId && !opened.followUps.has(wanted))) return null
  return room.world.messages.get(wanted) ?? null
}

function followUp(asked: Asked): Answer {
  const held = holder(asked)
  if (!held.ok) return held.answer
  const { room, json, files } = asked
  const { opened } = held
  const wrong = room.rules.followUp(json, files)
  if (wrong.length > 0) return badBody(wrong)
  if (room.rules.isEmpty(json, files)) return refusals.empty
  const publicly = (Number(json['flags'] ?? 0) & messageFlag.ephemeral) === 0
  const blocked = publicly ? autoModRefusal(room, json) : null
  if (blocked !== null) return blocked
  const waiting =
    opened.answered === 5 && opened.originalId !== null ? room.world.messages.get(opened.originalId) : null
  if (waiting && (waiting.flags & messageFlag.loading) !== 0) {
    // The first follow-up after a deferred answer becomes that answer.
    editMessage(room.world, waiting, json, files)
    happen(opened, { kind: 'edited', message: waiting })
    return ok(messageJson(room.world, waiting))
  }
  const message = postFor(room, opened, json, files)
  opened.followUps.add(message.id)
  happen(opened, { kind: 'follow-up', message })
  return ok(messageJson(room.world, message))
}

function edit(asked: Asked): Answer {
  const held = holder(asked)
  if (!held.ok) return held.answer
  const { room, params, json, files } = asked
  const message = reachable(room, held.opened, params['message'] ?? '')
  if (message === null) return notFound.message
  const wrong = room.rules.edit(json, files, message)
  if (wrong.length > 0) return badBody(wrong)
  const blocked = message.onlyFor === null ? autoModRefusal(room, json) : null
  if (blocked !== null) return blocked
  editMessage(room.world, message, json, files)
  happen(held.opened, { kind: 'edited', message })
  return ok(messageJson(room.world, message))
}

export const webhookRoutes: readonly Route[] = [
  route('POST /webhooks/:app/:token', followUp, true),
  route(
    'GET /webhooks/:app/:token/messages/:message',
    asked => {
      const held = holder(asked)
      if (!held.ok) return held.answer
      const message = reachable(asked.room, held.opened, asked.params['message'] ?? '')
      return message === null ? notFound.message : ok(messageJson(asked.room.world, message))
    },
    true,
  ),
  route('PATCH /webhooks/:app/:token/messages/:message', edit, true),
  route(
    'DELETE /webhooks/:app/:token/messages/:message',
    asked => {
      const held = holder(asked)
      if (!held.ok) return held.answer
      const message = reachable(asked.room, held.opened, asked.params['message'] ?? '')
      if (message === null) return notFound.message
      removeMessage(asked.room.world, message)
      return noContent
    },
    true,
  ),
]
