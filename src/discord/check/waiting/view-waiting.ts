// One page of the queue of the server an interaction came from, for those who may help there.
import { type BaseInteraction, ButtonStyle } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import type { Actor } from '../../../check/custody.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import { reopensAt } from '../../../check/desk.ts'
import { handledFor, type QueueFilter, standingStill, waitingFor } from '../../../check/waiting.ts'
import type { Program } from '../../../engine/compile.ts'
import { inLanguage } from '../../../engine/in-language.ts'
import { type HelpCounted, helpersOver, shownHelp } from '../../../server/helper-log.ts'
import { weekOf, weekPlus } from '../../../trends/week.ts'
import { sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { sayHandledRequest, sayStill, sayWaiting } from '../../../words/say-queue.ts'
import { familiesOfChecks } from '../../families/families-of-checks.ts'
import { helpsUnder, moderatesUnder, rolesOf, serverOf } from '../../interaction/rights.ts'
import type { ShownMessage } from '../../message/parts.ts'
import { linkTo } from '../../posts/link-to.ts'
import type { Services } from '../../services.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'
import { type QueueEntry, showWaiting } from './show-waiting.ts'

const aPage = 5

/** Undefined for everybody who may not help, and outside servers. */
export async function viewWaiting(
  services: Services,
  interaction: BaseInteraction,
  say: Say,
  filter: QueueFilter,
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
  const all = listed(await services.checks.handedIn(server, now), actor, filter, now)
  const pages = Math.max(1, Math.ceil(all.length / aPage))
  const page = Math.min(wanted, pages - 1)
  const shown = all.slice(page * aPage, (page + 1) * aPage)
  const family = await familiesOfChecks(
    services,
    shown.map(one => one.check),
  )
  const entries = await Promise.all(
    shown.map(one => entryOf(services, say, server, one, actor, sayWhat(say, family(one.check)))),
  )
  const help = filter === 'handled' && actor.moderator ? { help: await helpOn(services, server, now) } : {}
  return showWaiting(say, { filter, page, pages, count: all.length, entries, ...help })
}

/** Over the weeks that are over: what was counted this week is shown once it is. */
async function helpOn({ helpers }: Services, server: string, now: number): Promise<readonly HelpCounted[]> {
  const week = weekOf(now)
  return shownHelp(await helpers.sums(server, weekPlus(week, -helpersOver), weekPlus(week, -1)))
}

type Listed =
  | ReturnType<typeof waitingFor>[number]
  | (ReturnType<typeof handledFor>[number] & { readonly for: 'nobody' })
  | { readonly check: Check; readonly for: 'holder' }

function listed(checks: readonly Check[], actor: Actor, filter: QueueFilter, now: number): Listed[] {
  if (filter === 'still') return standingStill(checks, actor, now).map(check => ({ check, for: 'holder' }))
  if (filter === 'handled') return handledFor(checks, actor).map(one => ({ ...one, for: 'nobody' }))
  return waitingFor(checks, actor, filter, now)
}

async function entryOf(
  services: Services,
  say: Say,
  server: string,
  one: Listed,
  actor: Actor,
  what: string,
): Promise<QueueEntry> {
  const { check } = one
  const see = handButton(check, one.for === 'help' ? 'help' : 'progress', say('queue.look'), ButtonStyle.Primary)
  if (one.for === 'holder') {
    const ask = handButton(check, 'ask-closing', say('desk.ask-closing'), ButtonStyle.Primary)
    return { lines: sayStill(say, check, what), press: custodyOf(check).closing ? see : ask }
  }
  const program = await programOf(services, say, check)
  if (one.for === 'nobody') {
    const again = check.phase.is === 'done' && reopensAt(check, actor) === one.question
    const reopen = handButton(check, 'reopen', say('desk.reopen'))
    return { lines: sayHandledRequest(say, one, what, program), press: again || !actor.moderator ? reopen : see }
  }
  const kind = one.for === 'help' ? 'help-request' : 'panel'
  const notice = (await services.notices.of(check.id)).find(({ kind: is }) => is === kind)
  const ask = one.for === 'help' ? program?.questions.get(one.question)?.ask : undefined
  const link = notice ? [`[${say('queue.to-message')}](${linkTo(server, notice)})`] : []
  return { lines: [...sayWaiting(say, one, what, ask), ...link], press: see }
}

async function programOf(services: Services, say: Say, check: Check): Promise<Program | undefined> {
  const program = await services.families.programOf(check)
  return program && inLanguage(program, say.locale)
}
