// One page of what waits on the server an interaction came from, for those who may help there.
import type { BaseInteraction } from 'discord.js'
import { type Waiting, type WaitingFilter, waitingFor } from '../../../check/waiting.ts'
import { inLanguage } from '../../../engine/in-language.ts'
import { sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { familiesOfChecks } from '../../families/families-of-checks.ts'
import { helpsUnder, moderatesUnder, rolesOf, serverOf } from '../../interaction/rights.ts'
import type { ShownMessage } from '../../message/parts.ts'
import type { Services } from '../../services.ts'
import { showWaiting, type WaitingEntry } from './show-waiting.ts'

const aPage = 5

/** Undefined for everybody who may not help, and outside servers. */
export async function viewWaiting(
  services: Services,
  interaction: BaseInteraction,
  say: Say,
  filter: WaitingFilter,
  wanted: number,
): Promise<ShownMessage | undefined> {
  const server = serverOf(interaction)
  if (server === null || interaction.member === null) return undefined
  const settings = await services.servers.load(server)
  if (!helpsUnder(settings, interaction)) return undefined
  const actor = {
    person: interaction.user.id,
    here: true,
    roles: rolesOf(interaction.member),
    moderator: moderatesUnder(settings, interaction),
    helper: true,
  }
  const now = services.now()
  const all = waitingFor(await services.checks.handedIn(server, now), actor, filter, now)
  const pages = Math.max(1, Math.ceil(all.length / aPage))
  const page = Math.min(wanted, pages - 1)
  const shown = all.slice(page * aPage, (page + 1) * aPage)
  const family = await familiesOfChecks(
    services,
    shown.map(one => one.check),
  )
  const entries = await Promise.all(
    shown.map(async waiting => ({
      waiting,
      what: sayWhat(say, family(waiting.check)),
      ...(await lookUp(services, say, waiting)),
    })),
  )
  return showWaiting(say, server, { filter, page, pages, count: all.length, entries })
}

async function lookUp(
  services: Services,
  say: Say,
  waiting: Waiting,
): Promise<Pick<WaitingEntry, 'question' | 'notice'>> {
  const kind = waiting.for === 'help' ? 'help-request' : 'panel'
  const notice = (await services.notices.of(waiting.check.id)).find(one => one.kind === kind)
  if (waiting.for === 'taker') return { question: undefined, notice }
  const program = await services.families.programOf(waiting.check)
  const question = program && inLanguage(program, say.locale).questions.get(waiting.question)?.ask
  return { question, notice }
}
