// Threads and forum posts: opening them, and who is in them.
import type { Room } from '../room.ts'
import { channelJson } from '../world/describe.ts'
import { messageJson } from '../world/message-json.ts'
import { rights } from '../world/permissions.ts'
import type { Json } from '../world/raw.ts'
import { addChannel, type Channel, channelKind, tell } from '../world/world.ts'
import { addMessage } from '../world/write-message.ts'
import { type Answer, badBody, noContent, notFound, ok, refusals } from './answer.ts'
import { isAnswer, postByBot, reachChannel } from './message-routes.ts'
import { type Asked, type Route, route } from './route.ts'

function openThread(room: Room, parent: Channel, json: Json, type: number, id = room.world.newId()): Channel {
  const botId = room.world.scenario.application.id
  return addChannel(room.world, {
    id,
    type,
    name: String(json['name']),
    parentId: parent.id,
    ownerId: botId,
    members: new Set([botId]),
    autoArchive: Number(json['auto_archive_duration'] ?? 4320),
    appliedTags: (json['applied_tags'] as string[] | undefined) ?? [],
  })
}

function fromMessage({ room, params, json }: Asked): Answer {
  const reached = reachChannel(room, params['channel'] ?? '')
  if (!reached.ok) return reached.answer
  const message = room.world.messages.get(params['message'] ?? '')
  if (message === undefined || message.channelId !== reached.channel.id || message.onlyFor !== null)
    return notFound.message
  if ((reached.bits & rights.publicThreads) === 0n) return refusals.permissions
  if (message.threadId !== null) return refusals.threadExists
  const wrong = room.rules.thread(json, true)
  if (wrong.length > 0) return badBody(wrong)
  // A thread made from a message carries that message's id.
  const thread = openThread(room, reached.channel, json, channelKind.publicThread, message.id)
  message.threadId = thread.id
  tell(room.world, { kind: 'channel', channel: thread })
  tell(room.world, { kind: 'message-edited', message })
  return { status: 201, body: channelJson(room.world, thread) }
}

function alone(asked: Asked): Answer {
  const { room, params, json } = asked
  const reached = reachChannel(room, params['channel'] ?? '')
  if (!reached.ok) return reached.answer
  const { channel, bits } = reached
  if (channel.type === channelKind.forum) return forumPost(asked, channel, bits)
  const type = Number(json['type'] ?? channelKind.privateThread)
  const needed = type === channelKind.privateThread ? rights.privateThreads : rights.publicThreads
  if ((bits & needed) === 0n) return refusals.permissions
  const wrong = room.rules.thread(json, false)
  if (wrong.length > 0) return badBody(wrong)
  const thread = openThread(room, channel, json, type)
  tell(room.world, { kind: 'channel', channel: thread })
  if (type === channelKind.publicThread) {
    addMessage(room.world, { channel, author: 'bot', type: 18, body: { content: thread.name } })
  }
  return { status: 201, body: channelJson(room.world, thread) }
}

function forumPost({ room, json, files }: Asked, forum: Channel, bits: bigint): Answer {
  if ((bits & rights.send) === 0n) return refusals.permissions
  const wrong = room.rules.forumPost(json, files)
  if (wrong.length > 0) return badBody(wrong)
  const thread = openThread(room, forum, json, channelKind.publicThread)
  const message = postByBot(
    room,
    thread,
    bits | rights.sendInThreads,
    (json['message'] as Json | undefined) ?? {},
    files,
  )
  if (isAnswer(message)) {
    room.world.channels.delete(thread.id)
    return message
  }
  tell(room.world, { kind: 'channel', channel: thread })
  return { status: 201, body: { ...channelJson(room.world, thread), message: messageJson(room.world, message) } }
}

function membership(adding: boolean): (asked: Asked) => Answer {
  return ({ room, params }) => {
    const reached = reachChannel(room, params['channel'] ?? '')
    if (!reached.ok) return reached.answer
    const { channel } = reached
    if (channel.archived) return refusals.archived
    const given = params['user'] ?? ''
    const id = given === '@me' ? room.world.scenario.application.id : given
    if (id !== room.world.scenario.application.id && !room.world.people.has(id)) return notFound.user
    const joins = adding && id === room.world.scenario.application.id && !channel.members.has(id)
    if (adding) channel.members.add(id)
    else channel.members.delete(id)
    tell(room.world, { kind: joins ? 'thread-joined' : 'channel-changed', channel })
    return noContent
  }
}

const memberOf = (channel: Channel, user: string): Json => ({
  id: channel.id,
  user_id: user,
  join_timestamp: new Date(channel.madeAt).toISOString(),
  flags: 0,
})

export const threadRoutes: readonly Route[] = [
  route('POST /channels/:channel/messages/:message/threads', fromMessage),
  route('POST /channels/:channel/threads', alone),
  route('PUT /channels/:channel/thread-members/:user', membership(true)),
  route('DELETE /channels/:channel/thread-members/:user', membership(false)),
  route('GET /channels/:channel/thread-members', ({ room, params }) => {
    const reached = reachChannel(room, params['channel'] ?? '')
    if (!reached.ok) return reached.answer
    return ok([...reached.channel.members].map(user => memberOf(reached.channel, user)))
  }),
  route('GET /guilds/:server/threads/active', ({ room, params }) => {
    const server = room.world.servers.get(params['server'] ?? '')
    if (server?.install !== 'bot') return notFound.server
    const threads = [...room.world.channels.values()].filter(one => one.parentId !== null && one.serverId === server.id)
    const open = threads.filter(one => !one.archived)
    const botId = room.world.scenario.application.id
    return ok({
      threads: open.map(one => channelJson(room.world, one)),
      members: open.filter(one => one.members.has(botId)).map(one => memberOf(one, botId)),
    })
  }),
]
