// Opens a practice room: a local stand-in of Discord on 127.0.0.1 that a real bot connects to, and its people.
import { randomBytes } from 'node:crypto'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { openAccess, type SessionLimits } from './access.ts'
import { openClock } from './clock.ts'
import { type Faults, openFaults } from './faults.ts'
import { announce } from './gateway/announce.ts'
import { openGateway } from './gateway/gateway.ts'
import { openEndpoint } from './interactions/endpoint.ts'
import { firstAnswerMs } from './interactions/opened.ts'
import { type Exchange, openJournal } from './journal.ts'
import { type Keeper, keepIn } from './keep.ts'
import { CannotDo } from './people/cannot.ts'
import { type Person, personOf } from './people/person.ts'
import type { Patience } from './people/reply.ts'
import { handle } from './rest/handle.ts'
import { openRateLimits } from './rest/rate-limits.ts'
import type { Room } from './room.ts'
import { loadRules, type Validation } from './rules/rules.ts'
import type { Scenario, ScenarioChannel } from './scenario.ts'
import { type SeenMessage, see } from './seen.ts'
import {
  changeRights,
  changeThread,
  joinServer,
  leaveServer,
  reachServer,
  removeBotFrom,
  removeChannel,
  removeRole,
} from './world/rebuild.ts'
import { maySpeak, personMay } from './world/rights.ts'
import { createWorld, directChannel } from './world/world.ts'
import { addMessage } from './world/write-message.ts'

export type StandInOptions = {
  readonly scenario: Scenario
  /** 0, the default, takes any free port. */
  readonly port?: number
  /** Milliseconds since 1970, for the three-second and fifteen-minute limits; the machine's clock when left out. */
  readonly now?: () => number
  /** `true`, the default, refuses bad bodies as Discord does; `'deferred'` only notes them in `complaints`; `false` does not look. */
  readonly validate?: Validation
  /** How many sessions the bot may still begin, and how fast; a thousand, and as fast as it likes, when left out. */
  readonly sessions?: SessionLimits
  /** Real milliseconds to wait for the edit after a deferred answer (5000) or an acknowledgement (1500). */
  readonly patience?: Partial<Patience>
  /** Milliseconds the bot has for its first answer; Discord's three thousand when left out. */
  readonly firstAnswerMs?: number
}

export type StandIn = {
  /** For the bot: `new Client({ rest: { api: standIn.apiUrl } })`. */
  readonly apiUrl: string
  /** The page where a person acts as the members of the server. */
  readonly pageUrl: string
  readonly botToken: string
  /** A person by id or name. */
  as(person: string): Person
  /** An ordinary message by a person; `'direct'` is their conversation with the bot. */
  say(person: string, channelId: string, text: string): SeenMessage
  /** What stands in a channel for everyone, oldest first. */
  messages(channelId: string): SeenMessage[]
  /** Resolves once so many messages stand in a channel. */
  holds(channelId: string, messages: number): Promise<void>
  /** A message as it stands now, private ones too; null when it is gone. */
  message(id: string): SeenMessage | null
  /** The conversation between the bot and a person, by the channel's id. */
  directId(person: string): string
  /** What the server's owner does meanwhile: a role or a channel goes, a channel's rights become others. */
  removeRole(id: string): void
  removeChannel(id: string): void
  changeRights(channelId: string, rights: Pick<ScenarioChannel, 'forbid' | 'permit'>): void
  changeThread(id: string, state: { readonly archived?: boolean; readonly locked?: boolean }): void
  /** Somebody removes the bot from a server (the first when none is named), as an administrator can. */
  removeBot(serverId?: string): void
  /** A person leaves a server (the first when none is named), or joins it, or comes back. */
  leave(person: string, serverId?: string): void
  join(person: string, serverId?: string): void
  /** A server that READY has named as unavailable comes at last. */
  arrive(serverId: string): void
  /** Brings back what the folder holds of an earlier room, and keeps there what is said from now on. */
  keepIn(folder: string): Promise<Keeper['found']>
  /** Brings interactions to this URL from now on, once it has passed Discord's trial; null: over the gateway again. */
  bringTo(url: string | null): Promise<void>
  readonly faults: Faults
  readonly journal: readonly Exchange[]
  readonly complaints: readonly Exchange[]
  /** How many connections of the bot are open. */
  connections(): number
  /** Resolves once a bot is connected; with a number, once that many are. */
  connected(count?: number): Promise<void>
  /** Resolves once a bot is connected and has written its commands. */
  ready(): Promise<void>
  close(): Promise<void>
}

/** Opens the room; fails only when the port is taken. */
export async function openStandIn(options: StandInOptions): Promise<StandIn> {
  const { scenario, validate = true } = options
  const clock = openClock(options.now)
  const world = createWorld(scenario, clock)
  const journal = openJournal()
  const botToken = [
    Buffer.from(scenario.application.id).toString('base64url'),
    randomBytes(4).toString('hex'),
    randomBytes(24).toString('base64url'),
  ].join('.')
  const patience: Patience = { deferred: 5000, acknowledged: 1500, ...options.patience }
  const rules = await loadRules(validate, (body, issues) =>
    journal.complain({
      at: clock.now(),
      method: 'LATER',
      path: '',
      body,
      files: [],
      status: 400,
      code: 50035,
      message: 'Invalid Form Body',
      issues,
      byFault: false,
    }),
  )
  const server = createServer({ keepAliveTimeout: 60_000 })
  const access = openAccess(botToken, options.sessions ?? {}, clock.now)
  const gateway = openGateway(server, world, access)
  const rateLimits = openRateLimits(clock.now)
  const faults = openFaults({ world, gateway, access, rateLimits })
  const room: Room = {
    world,
    clock,
    gateway,
    faults,
    journal,
    rules,
    access,
    rateLimits,
    endpoint: openEndpoint(clock.now),
    interactions: new Map(),
    modals: new Map(),
    firstAnswerMs: options.firstAnswerMs ?? firstAnswerMs,
  }
  announce(world, gateway)
  server.on('request', handle(room, patience))
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject)
    server.listen(options.port ?? 0, '127.0.0.1', resolve)
  })
  const { port } = server.address() as AddressInfo
  world.origin = `http://127.0.0.1:${port}`

  const until = (reached: () => boolean) =>
    new Promise<void>(resolve => {
      const look = () => {
        if (!reached()) return
        gateway.listeners.delete(look)
        world.listeners.delete(look)
        resolve()
      }
      gateway.listeners.add(look)
      world.listeners.add(look)
      look()
    })

  const channelOf = (id: string) => {
    const channel = world.channels.get(id)
    if (channel === undefined) throw new CannotDo(`There is no channel ${id}.`)
    return channel
  }

  let keeper: Keeper | undefined
  const serverOf = (id = scenario.server.id) => {
    const found = world.servers.get(id)
    if (found === undefined) throw new CannotDo(`There is no server ${id}.`)
    return found
  }

  return {
    apiUrl: `${world.origin}/api`,
    pageUrl: `${world.origin}/`,
    botToken,
    faults,
    journal: journal.exchanges,
    complaints: journal.complaints,
    as: person => personOf(room, person, patience),
    say(person, channelId, text) {
      const { id, name } = personOf(room, person, patience)
      const channel = channelId === 'direct' ? directChannel(world, id) : channelOf(channelId)
      if (!maySpeak(personMay(world, id, channel), channel))
        throw new CannotDo(`${name} may not write in ${channel.name}.`)
      return see(world, addMessage(world, { channel, author: id, body: { content: text } }))
    },
    messages: channelId =>
      (world.channels.get(channelId)?.messageIds ?? []).flatMap(id => {
        const message = world.messages.get(id)
        return message === undefined ? [] : [see(world, message)]
      }),
    holds: (channelId, messages) => until(() => (world.channels.get(channelId)?.messageIds.length ?? 0) >= messages),
    message(id) {
      const message = world.messages.get(id)
      return message === undefined ? null : see(world, message)
    },
    directId: person => directChannel(world, personOf(room, person, patience).id).id,
    removeBot: id => removeBotFrom(world, serverOf(id)),
    leave: (person, id) => leaveServer(world, serverOf(id), personOf(room, person, patience).id),
    join: (person, id) => joinServer(world, serverOf(id), personOf(room, person, patience).id),
    arrive: id => reachServer(world, serverOf(id), true),
    bringTo: url => room.endpoint.set(url),
    removeRole: id => removeRole(world, id),
    removeChannel: id => removeChannel(world, channelOf(id)),
    changeRights: (id, rights) => changeRights(world, channelOf(id), rights),
    changeThread: (id, state) => changeThread(world, channelOf(id), state),
    connections: () => gateway.live(),
    connected: (count = 1) => until(() => gateway.live() >= count),
    ready: () => until(() => gateway.live() > 0 && world.commandsWritten),
    async keepIn(folder) {
      keeper = await keepIn(folder, world)
      return keeper.found
    },
    async close() {
      await keeper?.close()
      clock.close()
      gateway.close()
      server.closeAllConnections()
      await new Promise<void>(resolve => server.close(() => resolve()))
    },
  }
}
