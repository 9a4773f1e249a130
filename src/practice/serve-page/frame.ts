// What one person has before them on the page: people, places, commands, and the messages of the chosen place.

import { listCommands } from '../people/command-listing.ts'
import type { Room } from '../room.ts'
import { see } from '../seen.ts'
import { locales, type WireFrame, type WireMessage, type WirePlace } from '../wire.ts'
import { maySpeak, personMay, sees } from '../world/rights.ts'
import { type Channel, channelKind, directChannel, homeOf, isThread, type Message } from '../world/world.ts'

/** The person of this id, or the first of the scenario. */
export function whoIs(room: Room, id: string | null): string {
  return room.world.people.has(id ?? '') ? (id as string) : (room.world.scenario.people[0]?.id ?? '')
}

/** The channel of this id if the person sees it, or the first they see. */
export function placeOf(room: Room, you: string, id: string | null): Channel {
  const seen = placesOf(room, you)
  return (
    seen.find(one => one.id === id) ?? seen.find(one => one.type === channelKind.text) ?? directChannel(room.world, you)
  )
}

/** Places the person sees: channels with their threads after them, then the direct conversation. */
function placesOf(room: Room, you: string): Channel[] {
  directChannel(room.world, you)
  const all = [...room.world.channels.values()].filter(one => sees(room.world, you, one))
  const top = all.filter(one => !isThread(one) && one.personId === null)
  return [
    ...top.flatMap(one => [one, ...all.filter(thread => thread.parentId === one.id)]),
    ...all.filter(one => one.personId === you),
  ]
}

/** Whether the message is for this person's eyes in this place. */
export function isFor(room: Room, you: string, placeId: string, message: Message): boolean {
  const channel = room.world.channels.get(message.channelId)
  if (channel === undefined || message.channelId !== placeId) return false
  return message.onlyFor === null ? sees(room.world, you, channel) : message.onlyFor === you
}

/** All messages for this person in this place, oldest first; at most the last 200. */
export function messagesFor(room: Room, you: string, placeId: string): WireMessage[] {
  const found: Message[] = []
  for (const message of room.world.messages.values()) if (isFor(room, you, placeId, message)) found.push(message)
  return found.slice(-200).map(one => toWire(room, one))
}

/** A message as the page gets it; links are made relative and do not end, so that an old page still shows its pictures. */
export function toWire(room: Room, message: Message): WireMessage {
  const text = JSON.stringify(see(room.world, message))
  return JSON.parse(
    text.replaceAll(`${room.world.origin}/cdn/`, '/cdn/').replace(/(\/cdn\/[^"?]+)\?ex=[0-9a-f]+/g, '$1'),
  )
}

/** Everything around the messages. */
export function frameFor(room: Room, you: string, place: Channel): WireFrame {
  const { world } = room
  const { application } = world.scenario
  const server = homeOf(world, place)
  return {
    server: server && { id: server.id, name: server.name },
    otherServers: [...world.servers.values()]
      .filter(one => one.install !== 'none' && !one.members.has(you))
      .map(({ id, name }) => ({ id, name })),
    locales: [...locales],
    bot: { id: application.id, name: application.name, connected: room.gateway.live() > 0 },
    you,
    place: place.id,
    people: [...world.people.values()].map(({ id, name, about = '', locale }) => ({
      ...{ id, name, about, locale },
      here: server?.members.has(id) ?? (place.personId === id || place.among.includes(id)),
    })),
    roles: (server?.roles ?? []).filter(role => role.id !== server?.id).map(({ id, name }) => ({ id, name })),
    places: placesOf(room, you).map(one => placeToWire(room, you, one)),
    commands: place.type === channelKind.forum ? [] : listCommands(room, you, place),
  }
}

function placeToWire(room: Room, you: string, channel: Channel): WirePlace {
  const kind =
    channel.personId !== null
      ? 'direct'
      : isThread(channel)
        ? 'thread'
        : channel.type === channelKind.forum
          ? 'forum'
          : 'text'
  return {
    id: channel.id,
    name: kind === 'direct' ? room.world.scenario.application.name : channel.name,
    kind,
    server: homeOf(room.world, channel)?.name ?? null,
    topic: channel.topic,
    mayWrite: maySpeak(personMay(room.world, you, channel), channel),
    tags: channel.tags,
    archived: channel.archived,
    latest: channel.messageIds.at(-1) ?? null,
  }
}
