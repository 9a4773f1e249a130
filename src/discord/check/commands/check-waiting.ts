// /check waiting: for moderators, the checks of their server that wait for somebody or are in other hands than their starter's.
import { ApplicationCommandOptionType } from 'discord.js'
import type { Check } from '../../../check/check.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import { sayWhat } from '../../../words/describe.ts'
import { type Say, sayIn } from '../../../words/say.ts'
import { sayPerson, sayTaker } from '../../../words/say-custody.ts'
import { familiesOfChecks } from '../../families/families-of-checks.ts'
import type { Subcommand } from '../../interaction/command.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import { moderating, refusalOf } from '../../interaction/rights.ts'
import { message, rows, small, text } from '../../message/parts.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'

/** As many as a message has room for; those that wait come first, and the longest waiting of them. */
const most = 10

export const checkWaiting: Subcommand = {
  name: 'waiting',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'waiting',
    description: say('command.check.waiting'),
  }),
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const settings = await moderating(services, interaction)
    if (!settings) return refuse(interaction, say, refusalOf(interaction, 'not-moderator'))
    const all = await services.checks.handedIn(settings.server, services.now())
    const shown = [isStuck, isOffered, isHeld].flatMap(kind => all.filter(kind)).slice(0, most)
    if (shown.length === 0)
      return replyPrivately(interaction, message([text(say('waiting.none')), small(say('caution.line'))]))
    const family = await familiesOfChecks(services, shown)
    const lines = shown.map((check, i) => {
      const what = sayWhat(say, family(check))
      const state = stateOf(say, check)
      return `${i + 1}. ${say('waiting.entry', { what, holder: sayPerson(check.holder), state })}`
    })
    const rest = all.length - shown.length
    await replyPrivately(
      interaction,
      message([
        text(
          [`### ${say('waiting.title')}`, ...lines, ...(rest > 0 ? [say('list.rest', { count: rest })] : [])].join(
            '\n',
          ),
        ),
        ...rows(
          shown.map((check, i) =>
            handButton(check, isStuck(check) ? 'help' : 'progress', say('waiting.look', { number: i + 1 })),
          ),
        ),
        small(say('caution.line')),
      ]),
    )
  },
}

const isStuck = (check: Check): boolean => custodyOf(check).plea !== undefined
const isOffered = (check: Check): boolean => custodyOf(check).offer !== undefined
const isHeld = (check: Check): boolean => !isStuck(check) && !isOffered(check)

function stateOf(say: Say, check: Check): string {
  const { plea, offer } = custodyOf(check)
  if (plea) return say('waiting.asked')
  return offer ? say('waiting.offered', { taker: sayTaker(say, offer.to) }) : say('waiting.held')
}
