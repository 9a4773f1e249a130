// The invented server as it stands: channels, threads, direct conversations, messages, commands and files.
import type { Clock } from '../clock.ts'
import type { Scenario, ScenarioPerson } from '../scenario.ts'
import { snowflakes } from '../snowflake.ts'
import type { RawComponent } from '../wire.ts'
import { type Overwrite, overwritesOf } from './permissions.ts'
import type { Json } from './raw.ts'

/** Discord's channel types, as far as the stand-in has them. */
export const channelKind = { text: 0, direct: 1, publicThread: 11, privateThread: 12, forum: 15 } as const

export type Channel = {
  readonly id: string
  readonly type: number
  name: string
  readonly topic: string | null
  overwrites: readonly Overwrite[]
  readonly tags: readonly { readonly id: string; readonly name: string }[]
  /** Message ids, oldest first; private replies are not among them. */
  readonly messageIds: string[]
  /** A thread's parent channel; null for the others. */
  readonly parentId: string | null
  /** The person of a direct conversation; null for the others. */
  readonly personId: string | null
  readonly ownerId: string | null
  /** On the other server, where the bot is no member. */
  readonly elsewhere: boolean
  readonly members: Set<string>
  archived: boolean
  locked: boolean
  autoArchive: number
  appliedTags: string[]
  readonly madeAt: number
}

export type StoredFile = {
  readonly id: string
  readonly channelId: string
  readonly name: string
  readonly contentType: string
  readonly bytes: Uint8Array
  readonly folder: 'attachments' | 'ephemeral-attachments'
  readonly width?: number
  readonly height?: number
}

export type Attachment = {
  readonly file: StoredFile
  readonly description: string | null
  readonly title: string | null
}

export type Pinged = {
  readonly people: readonly string[]
  readonly roles: readonly string[]
  readonly everyone: boolean
}

export type Message = {
  readonly id: string
  readonly channelId: string
  /** `'bot'` or a person's id. */
  readonly author: string
  readonly type: number
  content: string
  embeds: Json[]
  components: RawComponent[]
  attachments: Attachment[]
  flags: number
  readonly at: number
  editedAt: number | null
  pinned: boolean
  readonly nonce: string | number | null
  /** The only person who sees it; null when the channel does. */
  readonly onlyFor: string | null
  readonly metadata: Json | null
  readonly replyTo: string | null
  pinged: Pinged
  threadId: string | null
  readonly reactions: Map<string, Set<string>>
}

export type Command = {
  readonly id: string
  readonly type: number
  readonly name: string
  readonly guildId: string | null
  readonly version: string
  readonly body: Json
}

export type WorldEvent =
  | { readonly kind: 'message' | 'message-edited' | 'message-gone'; readonly message: Message }
  | { readonly kind: 'channel' | 'channel-changed' | 'channel-gone'; readonly channel: Channel }
  /** The bot was brought into a thread that was there before. */
  | { readonly kind: 'thread-joined'; readonly channel: Channel }
  | { readonly kind: 'role-gone'; readonly roleId: string }
  | { readonly kind: 'commands' }

export type World = {
  /** As it stands now: roles can go. */
  scenario: Scenario
  readonly clock: Clock
  newId(): string
  readonly channels: Map<string, Channel>
  readonly messages: Map<string, Message>
  readonly commands: Map<string, Command>
  readonly files: Map<string, StoredFile>
  /** Size of all kept files together. */
  fileBytes: number
  readonly people: Map<string, ScenarioPerson>
  /** Whether the bot has ever written its list of commands. */
  commandsWritten: boolean
  /** The base of every link, such as `http://127.0.0.1:4000`; set once the port is known. */
  origin: string
  readonly listeners: Set<(event: WorldEvent) => void>
}

/** A world with the scenario's channels and nothing said yet. */
export function createWorld(scenario: Scenario, clock: Clock): World {
  const newId = snowflakes(clock.now)
  const world: World = {
    scenario,
    clock,
    newId,
    channels: new Map(),
    messages: new Map(),
    commands: new Map(),
    files: new Map(),
    fileBytes: 0,
    people: new Map(scenario.people.map(person => [person.id, person])),
    commandsWritten: false,
    origin: '',
    listeners: new Set(),
  }
  for (const channel of scenario.channels) {
    addChannel(world, {
      id: channel.id,
      type: channel.kind === 'forum' ? channelKind.forum : channelKind.text,
      name: channel.name,
      topic: channel.topic ?? null,
      overwrites: overwritesOf(scenario, channel),
      tags: (channel.tags ?? []).map(name => ({ id: newId(), name })),
    })
  }
  const { elsewhere } = scenario
  if (elsewhere) addChannel(world, { ...elsewhere.channel, type: channelKind.text, elsewhere: true })
  return world
}

/** The server a channel belongs to; null for direct conversations. */
export function homeOf({ scenario }: World, channel: Channel): { id: string; locale: string } | null {
  if (channel.personId !== null) return null
  return channel.elsewhere && scenario.elsewhere ? scenario.elsewhere : scenario.server
}

/** Adds a channel, thread or direct conversation; what is left out is empty. */
export function addChannel(world: World, given: Pick<Channel, 'id' | 'type' | 'name'> & Partial<Channel>): Channel {
  const channel: Channel = {
    topic: null,
    overwrites: [],
    tags: [],
    messageIds: [],
    parentId: null,
    personId: null,
    ownerId: null,
    elsewhere: false,
    members: new Set(),
    archived: false,
    locked: false,
    autoArchive: 4320,
    appliedTags: [],
    madeAt: world.clock.now(),
    ...given,
  }
  world.channels.set(channel.id, channel)
  return channel
}

/** Tells the gateway and the pages what changed. */
export function tell(world: World, event: WorldEvent): void {
  for (const listener of world.listeners) listener(event)
}

/** The direct conversation with a person, opened on first use. */
export function directChannel(world: World, personId: string): Channel {
  for (const channel of world.channels.values()) if (channel.personId === personId) return channel
  const name = world.people.get(personId)?.name ?? personId
  const channel = addChannel(world, { id: world.newId(), type: channelKind.direct, name, personId })
  tell(world, { kind: 'channel', channel })
  return channel
}

/** Whether the channel is a thread. */
export function isThread(channel: Channel): boolean {
  return channel.type === channelKind.publicThread || channel.type === channelKind.privateThread
}
