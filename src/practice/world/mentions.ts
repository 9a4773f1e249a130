// Works out whom a message really pings: what its text mentions and what `allowed_mentions` lets through.
// Source: Discord's documentation, Message Resource, "Allowed Mentions Object"; without one, an ordinary message pings
// users, roles and everyone, an interaction's message users only.

import type { RawComponent } from '../wire.ts'
import { rights } from './permissions.ts'
import type { Json } from './raw.ts'
import { partType, walk } from './raw.ts'
import { type Channel, homeOf, type Pinged, type World } from './world.ts'

export const nobodyPinged: Pinged = { people: [], roles: [], everyone: false }

type Allowed = {
  parse?: string[]
  users?: string[]
  roles?: string[]
  replied_user?: boolean
}

/** Whom the message pings; `botBits` are the bot's permissions in the channel. */
export function pingedBy(
  world: World,
  body: Json,
  channel: Channel,
  how: { readonly viaInteraction: boolean; readonly botBits: bigint; readonly repliedTo?: string | undefined },
): Pinged {
  const content = typeof body['content'] === 'string' ? body['content'] : ''
  const parts = [content]
  for (const part of walk(body['components'] as RawComponent[] | undefined)) {
    if (part.type === partType.text) parts.push(part.content ?? '')
  }
  const text = parts.join('\n').replace(/```[\s\S]*?```|`[^`\n]+`/g, '')
  const allowed = (body['allowed_mentions'] ?? null) as Allowed | null
  const parse =
    allowed === null ? (how.viaInteraction ? ['users'] : ['users', 'roles', 'everyone']) : (allowed.parse ?? [])
  const let_ = (kind: 'users' | 'roles', id: string) => parse.includes(kind) || (allowed?.[kind] ?? []).includes(id)
  const ids = (pattern: RegExp) => [...new Set([...text.matchAll(pattern)].map(match => match[1] ?? ''))]
  const people = ids(/<@!?(\d+)>/g).filter(id => world.people.has(id) && let_('users', id))
  const replied = how.repliedTo
  if (replied !== undefined && world.people.has(replied) && (allowed?.replied_user ?? allowed === null)) {
    if (!people.includes(replied)) people.push(replied)
  }
  const known = new Set(homeOf(world, channel)?.roles.map(role => role.id))
  const mayAll = (how.botBits & rights.mentionEveryone) !== 0n
  return {
    people,
    roles: mayAll ? ids(/<@&(\d+)>/g).filter(id => known.has(id) && let_('roles', id)) : [],
    everyone: mayAll && /@(everyone|here)\b/.test(text) && parse.includes('everyone'),
  }
}
