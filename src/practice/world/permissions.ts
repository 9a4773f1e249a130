// What a person or the bot may do in a channel: roles, then the channel's overwrites, in Discord's order.
// Source: Discord's documentation, Permissions, "Permission Hierarchy" and "Permission Overwrites".
import type { Forbid, Forbidden, ScenarioChannel, ScenarioRole } from '../scenario.ts'

export const rights = {
  administrator: 1n << 3n,
  manageServer: 1n << 5n,
  react: 1n << 6n,
  view: 1n << 10n,
  send: 1n << 11n,
  manageMessages: 1n << 13n,
  embed: 1n << 14n,
  attach: 1n << 15n,
  history: 1n << 16n,
  mentionEveryone: 1n << 17n,
  externalEmoji: 1n << 18n,
  commands: 1n << 31n,
  manageThreads: 1n << 34n,
  publicThreads: 1n << 35n,
  privateThreads: 1n << 36n,
  sendInThreads: 1n << 38n,
} as const

const everyRight = (1n << 53n) - 1n

/** What everyone may do when the scenario has no role with the server's id. */
export const everyoneDefault =
  rights.react |
  rights.view |
  rights.send |
  rights.embed |
  rights.attach |
  rights.history |
  rights.commands |
  rights.publicThreads |
  rights.sendInThreads

/** What the bot's own role may do when the scenario says nothing. */
export const botDefault = everyoneDefault | rights.externalEmoji | rights.manageThreads | rights.privateThreads

const bitsTaken: Record<Forbidden, bigint> = {
  view: rights.view,
  send: rights.send,
  'send-in-threads': rights.sendInThreads,
  attach: rights.attach,
  embed: rights.embed,
  threads: rights.publicThreads | rights.privateThreads,
  commands: rights.commands,
}

/** What permissions need to know of a server. */
export type Ruled = {
  readonly id: string
  readonly roles: readonly ScenarioRole[]
}

export type Overwrite = {
  readonly id: string
  readonly type: 0 | 1
  readonly deny: bigint
  readonly allow: bigint
}

/** A scenario channel's `forbid` and `permit` as Discord's permission overwrites, one for each role or member. */
export function overwritesOf(
  botId: string,
  server: Ruled,
  channel: Pick<ScenarioChannel, 'forbid' | 'permit'>,
): Overwrite[] {
  const bitsFor = (list: readonly Forbid[] | undefined, who: string) =>
    (list ?? [])
      .filter(one => one.who === who)
      .flatMap(one => one.what)
      .reduce((bits, one) => bits | bitsTaken[one], 0n)
  const named = new Set([...(channel.forbid ?? []), ...(channel.permit ?? [])].map(one => one.who))
  return [...named].map(who => ({
    id: who === 'bot' ? botId : who,
    type: who === server.id || server.roles.some(role => role.id === who) ? 0 : 1,
    deny: bitsFor(channel.forbid, who),
    allow: bitsFor(channel.permit, who),
  }))
}

/** The permissions everyone on the server starts with. */
function everyoneBits(server: Ruled): bigint {
  const role = server.roles.find(one => one.id === server.id)
  return role?.permissions === undefined ? everyoneDefault : BigInt(role.permissions)
}

/** Permissions of a member with these roles and extra bits in a channel with these overwrites. */
export function permissionsOf(
  server: Ruled,
  member: { readonly id: string; readonly roles: readonly string[]; readonly extra?: bigint },
  overwrites: readonly Overwrite[],
): bigint {
  let bits = everyoneBits(server) | (member.extra ?? 0n)
  for (const role of server.roles) if (member.roles.includes(role.id)) bits |= BigInt(role.permissions ?? '0')
  if ((bits & rights.administrator) !== 0n) return everyRight
  const everyone = (one: Overwrite) => one.type === 0 && one.id === server.id
  const roles = (one: Overwrite) => one.type === 0 && !everyone(one) && member.roles.includes(one.id)
  const alone = (one: Overwrite) => one.type === 1 && one.id === member.id
  for (const level of [everyone, roles, alone]) {
    const those = overwrites.filter(level)
    bits &= ~those.reduce((sum, one) => sum | one.deny, 0n)
    bits |= those.reduce((sum, one) => sum | one.allow, 0n)
  }
  return (bits & rights.view) === 0n ? 0n : bits
}
