// /check list: a person's open checks, those they started and others hold, and those offered to them.
import { ApplicationCommandOptionType, ButtonStyle, type ChatInputCommandInteraction } from 'discord.js'
import type { Check } from '../../check/check.ts'
import { custodyOf, isFor } from '../../check/custody.ts'
import { findFamily } from '../../engine/programs.ts'
import { replyPrivately } from '../answer.ts'
import type { Desk } from '../desk.ts'
import { actorOf } from '../hands/turn.ts'
import { serverOf } from '../rights.ts'
import { handButton } from '../show/hands.ts'
import { button, message, rows, small, text } from '../show/parts.ts'
import { sayExpiry, sayWhat } from '../words/describe.ts'
import { sayIn } from '../words/say.ts'
import { sayPerson } from '../words/say-custody.ts'
import type { Subcommand } from './command.ts'

/** Of each kind; more would not fit into one message. */
const most = 10

export const checkList: Subcommand = {
  name: 'list',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'list',
    description: say('command.check.list'),
  }),
  async run(desk, interaction) {
    const say = sayIn(interaction.locale)
    const own = (await desk.checks.heldBy(interaction.user.id, desk.now())).slice(0, most)
    const others = (await desk.checks.startedBy(interaction.user.id, desk.now())).slice(0, most)
    const offered = (await offeredTo(desk, interaction)).slice(0, most)
    if (own.length + others.length + offered.length === 0)
      return replyPrivately(interaction, message([text(say('list.none')), small(say('caution.line'))]))
    const what = (check: Check) => sayWhat(say, findFamily(desk.programs, check.family))
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
async function offeredTo(desk: Desk, interaction: ChatInputCommandInteraction): Promise<Check[]> {
  const server = serverOf(interaction)
  if (server === null) return []
  const [first, ...rest] = (await desk.checks.handedIn(server, desk.now())).filter(
    check => custodyOf(check).offer !== undefined && check.holder !== interaction.user.id,
  )
  if (!first) return []
  const actor = await actorOf(desk, interaction, first)
  return [first, ...rest].filter(check => {
    const { offer } = custodyOf(check)
    return offer !== undefined && offer.to.to !== 'anyone' && offer.until > desk.now() && isFor(offer.to, actor)
  })
}
