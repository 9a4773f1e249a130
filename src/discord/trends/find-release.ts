// A release for the moderators of the server an interaction came from: what every view and export of it begins with.
import type { BaseInteraction } from 'discord.js'
import type { ServerSettings } from '../../server/settings.ts'
import type { Scope } from '../../trends/outcome-log.ts'
import { readRelease } from '../../trends/release/freeze-week.ts'
import { minimumServers } from '../../trends/release/pool.ts'
import type { Release } from '../../trends/release/release.ts'
import type { Week } from '../../trends/week.ts'
import type { Refusal } from '../interaction/refusal.ts'
import { moderating, refusalOf } from '../interaction/rights.ts'
import type { Services } from '../services.ts'

export type FoundRelease =
  | { readonly ok: true; readonly release: Release; readonly bytes: string; readonly settings: ServerSettings }
  | { readonly ok: false; readonly refusal: Refusal }

/**
 * `week`: the one that was asked for, or the latest. The bytes are the frozen ones. The pool's are for servers that are in it, once it
 * is of three servers or more.
 */
export async function findRelease(
  services: Services,
  interaction: BaseInteraction,
  week?: Week,
  of: Scope['kind'] = 'server',
): Promise<FoundRelease> {
  const settings = await moderating(services, interaction)
  if (!settings) return { ok: false, refusal: refusalOf(interaction, 'not-moderator') }
  if (of === 'pool') {
    if (!settings.pooling) return { ok: false, refusal: { code: 'not-pooling' } }
    const pooling = (await services.servers.all()).filter(one => one.outcomes && one.pooling).length
    if (pooling < minimumServers) return { ok: false, refusal: { code: 'small-pool', least: minimumServers } }
  }
  const scope: Scope = of === 'pool' ? { kind: 'pool' } : { kind: 'server', server: settings.server }
  const { releases } = services.trends
  const wanted = week ?? (await releases.weeks(scope)).at(-1)
  const bytes = wanted === undefined ? null : await releases.bytes(scope, wanted)
  if (bytes === null)
    return { ok: false, refusal: { code: settings.outcomes || of === 'pool' ? 'no-release' : 'nothing-counted' } }
  const read = readRelease(bytes)
  if (!read.ok) {
    services.log.error({ server: settings.server, of, week: wanted }, 'a damaged release')
    return { ok: false, refusal: { code: 'damaged-release' } }
  }
  return { ok: true, release: read.release, bytes, settings }
}
