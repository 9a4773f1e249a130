// /check list: a person's open checks, those they started and others hold, and those offered to them.
import { ApplicationCommandOptionType, ButtonStyle, type ChatInputCommandInteraction } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { custodyOf, isFor } from '../../../check/custody-of.ts'
import { sayExpiry, sayWhat } from '../../../words/describe.ts'
import { sayIn } from '../../../words/say.ts'
import { sayPerson } from '../../../words/say-custody.ts'
import { familiesOfChecks } from '../../families/families-of-checks.ts'
import type { Subcommand } from '../../interaction/command.ts'
import { replyPrivately } from '../../interaction/reply.ts'
import { serverOf } from '../../interaction/rights.ts'
import { message, rows, small, text } from '../../message/parts.ts'
import type { Services } from '../../services.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'
import { actorOf } from '../hand-over/turn.ts'
import { button } from '../show/check-buttons.ts'

/** Of each kind; more would not fit into one message. */
const most = 10

export const checkList: Subcommand = {
  name: 'list',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'list',
    description: say('command.check.list'),
  }),
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const own = (await services.checks.heldBy(interaction.user.id, services.now())).slice(0, most)
    const others = (await services.checks.startedBy(interaction.user.id, services.now())).slice(0, most)
    const offered = (await offeredTo(services, interaction)).slice(0, most)
    if (own.length + others.length + offered.length === 0)
      return replyPrivately(interaction, message([text(say('list.none')), small(say('caution.line'))]))
    const family = await familiesOfChecks(services, [...own, ...others, ...offered])
    const what = (check: Check) => sayWhat(say, family(check))
    const entry = (check: Check) =>
      say('list.entry', { what: what(check), count: check.trail.length, date: sayExpiry(check) })
    const held = (check: Check) =>
      say('waiting.entry', { what: what(check), holder: sayPerson(check.holder), state: say('waiting.held') })
    const part = (title: string, from: number, lines: readonly string[]) =>
      lines.length === 0
        ? []
        : [text([`### ${title}`, ...lines.map((line, i) => `${from + i + 1}. ${line}`)].join('\n'))]
    const before = own.length + offered.length
    await replyPrivately(
      interaction,
      message([
        ...part(say('list.title'), 0, own.map(entry)),
        ...rows(
          own.map((check, i) =>
            button(check, { is: 'show' }, say('list.resume', { number: i + 1 }), ButtonStyle.Primary),
          ),
        ),
        ...part(say('list.offered'), own.length, offered.map(what)),
        ...rows(
          offered.map((check, i) => handButton(check, 'progress', say('waiting.look', { number: own.length + i + 1 }))),
        ),
        ...part(say('list.others'), before, others.map(held)),
        ...rows(
          others.map((check, i) => handButton(check, 'progress', say('waiting.look', { number: before + i + 1 }))),
        ),
        small(say('caution.line')),
      ]),
    )
  },
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
