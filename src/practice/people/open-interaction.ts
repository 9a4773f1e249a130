// Opens an interaction for a person and sends it to the bot, with everything a real one carries.
// Source: Discord's documentation, "Receiving and Responding", interaction object.
import { randomBytes } from 'node:crypto'
import type { InteractionType, Opened } from '../interactions/opened.ts'
import type { Room } from '../room.ts'
import { appPermissions, channelForInteraction, installersOf, memberWithRights, userJson } from '../world/describe.ts'
import { messageJson } from '../world/message-json.ts'
import type { Json } from '../world/raw.ts'
import { sees } from '../world/rights.ts'
import { botIsIn, type Channel, contextOf, homeOf, isThread, type Message, type World } from '../world/world.ts'
import { CannotDo } from './cannot.ts'

/** Interactions remembered; the oldest are forgotten past this, long after their tokens died. */
const mostInteractions = 20_000

export type Opening = {
  readonly type: InteractionType
  readonly personId: string
  readonly channel: Channel
  readonly data: Json
  readonly source?: Message | null
  /** The command's name, id and kind for what messages say of their origin. */
  readonly command?: { readonly id: string; readonly name: string; readonly type: number }
  readonly targetId?: string
  readonly focusedType?: number
}

/** Opens the interaction without sending it yet, so that a waiter can be put in place first. */
export function openInteraction(room: Room, opening: Opening): { opened: Opened; send(): void } {
  const { world } = room
  const { type, personId, channel, data, source = null } = opening
  const person = world.people.get(personId)
  if (person === undefined) throw new CannotDo(`There is no person ${personId} in the scenario.`)
  if (!sees(world, personId, channel)) throw new CannotDo(`${person.name} does not see the channel ${channel.name}.`)
  if (isThread(channel) && channel.archived) throw new CannotDo(`The thread ${channel.name} is archived.`)
  const context = contextOf(channel)
  const id = world.newId()
  const home = homeOf(world, channel)
  const owners = ownersOf(world, channel, personId)
  const opened: Opened = {
    id,
    token: `${id}.${randomBytes(48).toString('base64url')}`,
    type,
    personId,
    channelId: channel.id,
    at: room.clock.now(),
    sourceId: source?.id ?? null,
    focusedType: opening.focusedType ?? null,
    metadata: metadataOf(room, opening, id, owners),
    messageType: opening.command === undefined ? 0 : opening.command.type === 1 ? 20 : 23,
    answered: null,
    originalId: null,
    followUps: new Set(),
    refusals: [],
    watchers: new Set(),
  }
  room.interactions.set(id, opened)
  if (room.interactions.size > mostInteractions) room.interactions.delete(room.interactions.keys().next().value ?? '')
  const payload = {
    id,
    application_id: world.scenario.application.id,
    type,
    data,
    ...(context !== 0
      ? { user: userJson(world, personId) }
      : {
          guild_id: home?.id,
          guild: { id: home?.id, locale: home?.locale, features: ['COMMUNITY'] },
          guild_locale: home?.locale,
          member: memberWithRights(world, personId, channel),
        }),
    channel: channelForInteraction(world, channel, personId),
    channel_id: channel.id,
    token: opened.token,
    version: 1,
    app_permissions: appPermissions(world, channel),
    locale: person.locale,
    entitlements: [],
    entitlement_sku_ids: [],
    authorizing_integration_owners: owners,
    context,
    attachment_size_limit: 10 * 1024 * 1024,
    ...(source === null ? {} : { message: messageJson(world, source) }),
  }
  return {
    opened,
    send() {
      // From memory: what comes from where the bot is no member arrives at the first shard, as direct messages do.
      const shardOf = botIsIn(world, channel) ? channel.serverId : null
      const bring = () =>
        room.endpoint.url === null
          ? room.gateway.send('INTERACTION_CREATE', payload, 0, shardOf)
          : room.endpoint.bring(payload)
      bring()
      if (room.faults.twice) bring()
    },
  }
}

/**
 * Who has installed the bot, as far as it matters here. Source: Discord's documentation, "Authorizing Integration Owners Object":
 * under "0" the server it is installed on ("0" in its direct messages), under "1" the person who has installed it for themselves.
 */
function ownersOf(world: World, channel: Channel, personId: string): Json {
  const own = installersOf(world).includes(personId) ? { '1': personId } : {}
  if (channel.personId !== null) return { '0': '0', ...own }
  const home = homeOf(world, channel)
  return home === null || home.install === 'none' ? own : { '0': home.id, ...own }
}

function metadataOf(room: Room, opening: Opening, id: string, owners: Json): Json {
  const { type, command, source } = opening
  const target = opening.targetId
  return {
    id,
    type: type === 4 ? 2 : type,
    user: userJson(room.world, opening.personId),
    authorizing_integration_owners: owners,
    ...(command === undefined ? {} : { name: command.name, command_type: command.type }),
    ...(command?.type === 2 && target !== undefined ? { target_user: userJson(room.world, target) } : {}),
    ...(command?.type === 3 && target !== undefined ? { target_message_id: target } : {}),
    ...(type === 3 && source ? { interacted_message_id: source.id } : {}),
    ...(type === 5 && source
      ? {
          triggering_interaction_metadata: {
            ...source.metadata,
            id,
            type: 3,
            user: userJson(room.world, opening.personId),
            authorizing_integration_owners: owners,
          },
        }
      : {}),
  }
}
