// /check list: a person's checks, open and finished, those they started and others hold, and those offered to them.
import { ApplicationCommandOptionType, type ChatInputCommandInteraction } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { custodyOf, isFor } from '../../../check/custody-of.ts'
import { judge } from '../../../engine/judge.ts'
import { sayWhat } from '../../../words/describe.ts'
import { type Say, sayIn } from '../../../words/say.ts'
import { familiesOfChecks } from '../../families/families-of-checks.ts'
import type { Runs, Subcommand } from '../../interaction/command.ts'
import { replyPrivately } from '../../interaction/reply.ts'
import { serverOf } from '../../interaction/rights.ts'
import type { Services } from '../../services.ts'
import { actorOf } from '../hand-over/turn.ts'
import { fitCheck } from '../load-check.ts'
import { type FinishedEntry, showCheckList } from '../show/check-list.ts'

/** Of one's own, and of those that have to do with others; more would not fit into one message. */
const most = { own: 10, others: 8 }

const runs: Runs = {
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const now = services.now()
    const own = (await services.checks.heldBy(interaction.user.id, now)).slice(0, most.own)
    const others = (await services.checks.startedBy(interaction.user.id, now)).slice(0, most.others)
    const offered = (await offeredTo(services, interaction)).slice(0, most.others)
    const family = await familiesOfChecks(services, [...own, ...others, ...offered])
    const results = await Promise.all(own.filter(isFinished).map(check => resultOf(services, say, check)))
    const finished = results.filter(one => one !== undefined)
    const open = own.filter(one => !finished.some(({ check }) => check.id === one.id))
    const lists = { open, finished, offered, others }
    await replyPrivately(
      interaction,
      showCheckList(say, lists, check => sayWhat(say, family(check)), now),
    )
  },
}

export const checkList: Subcommand = {
  name: 'list',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'list',
    description: say('command.check.list'),
  }),
  load: async () => runs,
}

const isFinished = ({ phase, custody }: Check): boolean => phase.is === 'done' && !custody?.offer

/** What a finished check came to; undefined where today's packs have something left to ask of it. */
async function resultOf(services: Services, say: Say, check: Check): Promise<FinishedEntry | undefined> {
  const fitted = await fitCheck(services, say, check)
  if (!fitted) return { check, verdict: null }
  return isFinished(fitted.check) ? { check, verdict: judge(fitted.judging, fitted.check.answers).verdict } : undefined
}

/** Checks of this server that wait for this very person, whose panel may be gone. */
async function offeredTo(services: Services, interaction: ChatInputCommandInteraction): Promise<Check[]> {
  const server = serverOf(interaction)
  if (server === null) return []
  const [first, ...rest] = (await services.checks.handedIn(server, services.now())).filter(
    check => custodyOf(check).offer !== undefined && check.holder !== interaction.user.id,
  )
  if (!first) return []
  const actor = await actorOf(services, interaction, first)
  return [first, ...rest].filter(check => {
    const { offer } = custodyOf(check)
    return offer !== undefined && offer.to.to !== 'anyone' && offer.until > services.now() && isFor(offer.to, actor)
  })
}
