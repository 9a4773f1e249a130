// The invented server as it stands: channels, threads, direct conversations, messages, commands and files.
import type { Clock } from '../clock.ts'
import type { Elsewhere, Scenario, ScenarioPerson, ScenarioRole } from '../scenario.ts'
import { snowflakes } from '../snowflake.ts'
import type { RawComponent } from '../wire.ts'
import { type Overwrite, overwritesOf, rights } from './permissions.ts'
import type { Json } from './raw.ts'

/** Discord's channel types, as far as the stand-in has them. */
export const channelKind = { text: 0, direct: 1, group: 3, publicThread: 11, privateThread: 12, forum: 15 } as const

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
  /** The server it is on; null for conversations. */
  readonly serverId: string | null
  /** The people of a conversation among themselves, without the bot; empty for the others. */
  readonly among: readonly string[]
  readonly members: Set<string>
  archived: boolean
  locked: boolean
  autoArchive: number
  appliedTags: string[]
  readonly madeAt: number
}

/** A server as it stands; the roles of its members are by person. */
export type Server = {
  readonly id: string
  readonly name: string
  readonly locale: string
  roles: readonly ScenarioRole[]
  readonly members: Map<string, readonly string[]>
  /** `none`: only people who have installed the bot for themselves bring it along. */
  install: 'bot' | 'commands' | 'none'
  /** The bot has been told of it, and it is not out of reach. */
  available: boolean
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
  | { readonly kind: 'role-gone'; readonly roleId: string; readonly server: Server }
  | { readonly kind: 'person-left' | 'person-came'; readonly personId: string; readonly server: Server }
  | { readonly kind: 'server-arrived' | 'server-unavailable' | 'bot-removed'; readonly server: Server }
  | { readonly kind: 'person-changed'; readonly personId: string }
  /** What was kept from before a restart is there again. */
  | { readonly kind: 'commands' | 'restored' }

export type World = {
  readonly scenario: Scenario
  /** The scenario's own server first. */
  readonly servers: Map<string, Server>
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
    servers: new Map(serversOf(scenario).map(server => [server.id, server])),
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
  const own = { ...scenario.server, roles: scenario.roles, channels: scenario.channels }
  for (const server of [own, ...(scenario.servers ?? [])])
    for (const channel of server.channels)
      addChannel(world, {
        id: channel.id,
        type: channel.kind === 'forum' ? channelKind.forum : channelKind.text,
        name: channel.name,
        topic: channel.topic ?? null,
        overwrites: overwritesOf(scenario.application.id, server, channel),
        // The same after a restart: what the bot has noted of a tag holds.
        tags: (channel.tags ?? []).map((name, at) => ({
          id: (BigInt(channel.id) * 100n + BigInt(at)).toString(),
          name,
        })),
        serverId: server.id,
      })
  const { elsewhere, conversations = [] } = scenario
  if (elsewhere) addChannel(world, { ...elsewhere.channel, type: channelKind.text, serverId: elsewhere.id })
  for (const { id, name, people } of conversations)
    addChannel(world, { id, name, among: people, type: people.length > 2 ? channelKind.group : channelKind.direct })
  return world
}

function serversOf({ server, roles, people, elsewhere, servers = [] }: Scenario): Server[] {
  const own: Server = {
    ...server,
    roles,
    members: new Map(people.map(person => [person.id, person.roles])),
    install: 'bot',
    available: true,
  }
  const further = servers.map(({ id, name, locale, roles, members, install, late = false }) => ({
    ...{ id, name, locale, roles, install },
    members: new Map(Object.entries(members)),
    available: !late,
  }))
  return [own, ...further, ...(elsewhere ? [serverElsewhere(elsewhere)] : [])]
}

function serverElsewhere({ id, name, locale, people, managers }: Elsewhere): Server {
  const managing = { id: (BigInt(id) - 1n).toString(), name: 'managing', permissions: rights.manageServer.toString() }
  const members = new Map(people.map(one => [one, managers.includes(one) ? [managing.id] : []]))
  return { id, name, locale, roles: [managing], members, install: 'none', available: true }
}

/** The server a channel belongs to; null for conversations. */
export function homeOf(world: World, channel: Channel): Server | null {
  return world.servers.get(channel.serverId ?? '') ?? null
}

/** Where Discord says an interaction happens: 0 on a server, 1 in the bot's own conversation, 2 among people. */
export function contextOf(channel: Channel): 0 | 1 | 2 {
  if (channel.personId !== null) return 1
  return channel.among.length > 0 ? 2 : 0
}

/** Whether the bot is where the channel is: on its server, or in its own conversation with a person. */
export function botIsIn(world: World, channel: Channel): boolean {
  return channel.personId !== null || homeOf(world, channel)?.install === 'bot'
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
    serverId: world.channels.get(given.parentId ?? '')?.serverId ?? null,
    among: [],
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
