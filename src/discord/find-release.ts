// A release of the server an interaction came from, for moderators only: what every view and export of it begins with.
import type { BaseInteraction } from 'discord.js'
import type { ServerSettings } from '../server/settings.ts'
import { readRelease } from '../trends/release/freeze-week.ts'
import type { Release } from '../trends/release/release.ts'
import type { Week } from '../trends/week.ts'
import type { Desk } from './desk.ts'
import type { Refusal } from './refusal.ts'
import { moderating } from './rights.ts'

export type FoundRelease =
  | { readonly ok: true; readonly release: Release; readonly bytes: string; readonly settings: ServerSettings }
  | { readonly ok: false; readonly refusal: Refusal }

/** `week`: the one that was asked for, or the latest. The bytes are the frozen ones. */
export async function findRelease(desk: Desk, interaction: BaseInteraction, week?: Week): Promise<FoundRelease> {
  const settings = await moderating(desk, interaction)
  if (!settings) return { ok: false, refusal: { code: 'not-moderator' } }
  const scope = { kind: 'server', server: settings.server } as const
  const { releases } = desk.trends
  const wanted = week ?? (await releases.weeks(scope)).at(-1)
  const bytes = wanted === undefined ? null : await releases.bytes(scope, wanted)
  if (bytes === null) return { ok: false, refusal: { code: settings.outcomes ? 'no-release' : 'nothing-counted' } }
  const read = readRelease(bytes)
  if (!read.ok) {
    desk.log.error({ server: settings.server, week: wanted }, 'a damaged release')
    return { ok: false, refusal: { code: 'damaged-release' } }
  }
  return { ok: true, release: read.release, bytes, settings }
}
