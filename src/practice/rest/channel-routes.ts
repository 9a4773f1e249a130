// Channels themselves: reading, changing and closing them, and opening direct conversations.
import { channelJson } from '../world/describe.ts'
import { rights } from '../world/permissions.ts'
import { removeChannel } from '../world/rebuild.ts'
import { maySpeak } from '../world/rights.ts'
import { directChannel, isThread, tell } from '../world/world.ts'
import { type Answer, badBody, noContent, notFound, ok, refusals } from './answer.ts'
import { reachChannel } from './message-routes.ts'
import { type Asked, type Route, route } from './route.ts'

function change({ room, params, json }: Asked): Answer {
  const reached = reachChannel(room, params['channel'] ?? '')
  if (!reached.ok) return reached.answer
  const { channel, bits } = reached
  const own = channel.ownerId === room.world.scenario.application.id
  if (!isThread(channel) || (!own && (bits & rights.manageThreads) === 0n)) return refusals.permissions
  const opening = json['archived'] === false
  if (channel.archived && !opening) return refusals.archived
  const wrong = room.rules.threadChange(json)
  if (wrong.length > 0) return badBody(wrong)
  if (typeof json['name'] === 'string') channel.name = json['name']
  if (typeof json['archived'] === 'boolean') channel.archived = json['archived']
  if (typeof json['locked'] === 'boolean') channel.locked = json['locked']
  if (typeof json['auto_archive_duration'] === 'number') channel.autoArchive = json['auto_archive_duration']
  if (Array.isArray(json['applied_tags'])) channel.appliedTags = json['applied_tags'] as string[]
  tell(room.world, { kind: 'channel-changed', channel })
  return ok(channelJson(room.world, channel))
}

function close({ room, params }: Asked): Answer {
  const reached = reachChannel(room, params['channel'] ?? '')
  if (!reached.ok) return reached.answer
  const { channel, bits } = reached
  if (channel.personId !== null) return ok(channelJson(room.world, channel))
  if (!isThread(channel) || (bits & rights.manageThreads) === 0n) return refusals.permissions
  const told = channelJson(room.world, channel)
  removeChannel(room.world, channel)
  return ok(told)
}

function openDirect({ room, json }: Asked): Answer {
  const personId = String(json['recipient_id'] ?? '')
  if (!room.world.people.has(personId)) return notFound.user
  // Discord opens the conversation even with a person whose direct messages are closed; only the message is refused.
  return ok(channelJson(room.world, directChannel(room.world, personId)))
}

export const channelRoutes: readonly Route[] = [
  route('GET /channels/:channel', ({ room, params }) => {
    const reached = reachChannel(room, params['channel'] ?? '')
    return reached.ok ? ok(channelJson(room.world, reached.channel)) : reached.answer
  }),
  route('PATCH /channels/:channel', change),
  route('DELETE /channels/:channel', close),
  route('POST /channels/:channel/typing', ({ room, params }) => {
    const reached = reachChannel(room, params['channel'] ?? '')
    if (!reached.ok) return reached.answer
    // From memory: who may not write may not be seen typing.
    return maySpeak(reached.bits, reached.channel) ? noContent : refusals.permissions
  }),
  route('POST /users/@me/channels', openDirect),
]
