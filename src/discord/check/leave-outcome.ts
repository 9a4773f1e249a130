// Whether a check leaves an outcome, and the outcome it leaves.
import type { BaseInteraction } from 'discord.js'
import type { Check, Leaves } from '../../check/check.ts'
import type { Program } from '../../engine/compile.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { isServerFamily } from '../../services/family-desk.ts'
import { finishedCheckOf } from '../../services/finished-check.ts'
import { mayContribute } from '../../trends/contribute.ts'
import { makeOutcome } from '../../trends/make-outcome.ts'
import type { Outcome } from '../../trends/outcome.ts'
import { weekOf } from '../../trends/week.ts'
import { moderatesUnder, serverOf } from '../interaction/rights.ts'
import type { Services } from '../services.ts'

const day = 24 * 3600_000
/** Discord's ids hold the time of their making, in ms since 2015, above 22 other bits. */
const discordEpoch = 1_420_070_400_000
const bornAt = (id: string): number => Number(BigInt(id) >> 22n) + discordEpoch

/** What a check leaves; `settings` where its person's own interaction has just said so, undefined where it stands as it stood. */
type Asked = { readonly leaves: Leaves; readonly settings?: ServerSettings }

/** What the check will leave, as far as its person's last interaction tells; a person's own "no" stays. */
export const leavesOf = async (services: Services, interaction: BaseInteraction, check: Check): Promise<Leaves> =>
  (await ask(services, interaction, check)).leaves

/** The outcome of a check that this interaction closes; null where it leaves none. */
export async function outcomeAtClosing(
  services: Services,
  interaction: BaseInteraction,
  program: Program,
  check: Check,
): Promise<Outcome | null> {
  const { leaves, settings } = await ask(services, interaction, check)
  return outcomeFor(services, program, { ...check, leaves }, settings)
}

async function ask(services: Services, interaction: BaseInteraction, check: Check): Promise<Asked> {
  if (check.leaves === 'declined') return { leaves: 'declined' }
  // Whether its holder moderates can only be seen on the server itself, and from what they do themselves.
  const elsewhere = check.server === null || serverOf(interaction) !== check.server
  if (elsewhere || interaction.user.id !== check.holder) return { leaves: check.leaves ?? 'nothing' }
  const settings = await services.servers.load(check.server)
  const allowed = mayContribute({
    accountDays: (services.now() - bornAt(interaction.user.id)) / day,
    moderator: moderatesUnder(settings, interaction),
    saidNo: await services.trends.optOuts.has(interaction.user.id),
    serverSaidNo: !settings.outcomes,
  })
  return { leaves: allowed.ok ? 'outcome' : 'nothing', settings }
}

/**
 * The outcome of a finished check as of now; null where it leaves none. Never throws: a check ends for its person whether or not it
 * can be counted, and what went wrong is logged without what the check holds. `asked`: the settings under which server and person have
 * just been asked; both are asked here without it.
 */
export async function outcomeFor(
  services: Services,
  program: Program,
  check: Check,
  asked?: ServerSettings,
): Promise<Outcome | null> {
  const { server, holder } = check
  if (check.leaves !== 'outcome' || server === null) return null
  try {
    const now = services.now()
    const settings = asked ?? (await services.servers.load(server))
    if (!asked && (!settings.outcomes || (await services.trends.optOuts.has(holder)))) return null
    const who = { server, user: holder, week: weekOf(now), pooling: settings.pooling && !isServerFamily(check.family) }
    const made = makeOutcome(finishedCheckOf(program, check, now), await services.trends.reporterOf(who))
    if (made.ok) return made.outcome
    services.log.error({ refusal: made.refusal }, 'an outcome was not kept')
  } catch (error) {
    services.log.error({ err: error }, 'an outcome could not be made')
  }
  return null
}
