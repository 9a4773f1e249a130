// Whether a check leaves an outcome, and the outcome it leaves.
import type { BaseInteraction } from 'discord.js'
import type { Check, Leaves } from '../check/check.ts'
import type { Program } from '../engine/compile.ts'
import { mayContribute } from '../trends/contribute.ts'
import { makeOutcome } from '../trends/make-outcome.ts'
import type { Outcome } from '../trends/outcome.ts'
import { weekOf } from '../trends/week.ts'
import type { Desk } from './desk.ts'
import { finishedCheckOf } from './finished-check.ts'
import { moderating, serverOf } from './rights.ts'

const day = 24 * 3600_000
/** Discord's ids hold the time of their making, in ms since 2015, above 22 other bits. */
const discordEpoch = 1_420_070_400_000
export const bornAt = (id: string): number => Number(BigInt(id) >> 22n) + discordEpoch

/** What the check will leave, as far as its person's last interaction tells; a person's own "no" stays. */
export async function leavesOf(desk: Desk, interaction: BaseInteraction, check: Check): Promise<Leaves> {
  if (check.leaves === 'declined') return 'declined'
  // Whether its holder moderates can only be seen on the server itself, and from what they do themselves.
  const elsewhere = check.server === null || serverOf(interaction) !== check.server
  if (elsewhere || interaction.user.id !== check.holder) return check.leaves ?? 'nothing'
  const moderator = (await moderating(desk, interaction)) !== undefined
  const allowed = mayContribute({
    accountDays: (desk.now() - bornAt(interaction.user.id)) / day,
    moderator,
    saidNo: await desk.trends.optOuts.has(interaction.user.id),
    serverSaidNo: !(await desk.servers.load(check.server)).outcomes,
  })
  return allowed.ok ? 'outcome' : 'nothing'
}

/**
 * The outcome of a finished check as of now; null where it leaves none. Never throws: a check ends for its person whether or not it
 * can be counted, and what went wrong is logged without what the check holds.
 */
export async function outcomeFor(desk: Desk, program: Program, check: Check): Promise<Outcome | null> {
  const { server, holder } = check
  if (check.leaves !== 'outcome' || server === null) return null
  try {
    const now = desk.now()
    const settings = await desk.servers.load(server)
    if (!settings.outcomes || (await desk.trends.optOuts.has(holder))) return null
    const who = { server, user: holder, week: weekOf(now), pooling: settings.pooling }
    const made = makeOutcome(finishedCheckOf(program, check, now), await desk.trends.reporterOf(who))
    if (made.ok) return made.outcome
    desk.log.error({ refusal: made.refusal }, 'an outcome was not kept')
  } catch (error) {
    desk.log.error({ err: error }, 'an outcome could not be made')
  }
  return null
}
