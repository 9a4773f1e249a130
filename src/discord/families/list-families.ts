// /family list: every model of a server; for moderators, what waits for them stands first, with a button that leads to it.
import { ApplicationCommandOptionType } from 'discord.js'
import { familyStartIds } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import type { ServerFamily } from '../../families/family.ts'
import { bare, plain } from '../../words/plain.ts'
import { type Say, sayIn } from '../../words/say.ts'
import type { Subcommand } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { cut, message, pressButton, rows, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { idFor, menu } from './show/menus.ts'
import { sayState } from './show/show-page.ts'

/** So many reviews that wait are named; the rest comes up once these are done. */
const mostWaiting = 5

export const listFamilies: Subcommand = {
  name: 'list',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'list',
    description: say('command.family.list'),
  }),
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const server = serverOf(interaction)
    const moderator = (await moderating(services, interaction)) !== undefined
    const all = server === null ? [] : await services.families.store.heads(server)
    const heads = all.filter(one => moderator || one.head > 0)
    if (heads.length === 0)
      return replyPrivately(interaction, message([text(say('families.list.none')), small(say('caution.line'))]))
    const usable = new Set((await services.families.candidates(server)).map(one => one.pack.id))
    const lines = heads.slice(0, 25).map(one => {
      const broken = one.state === 'in-force' && !usable.has(one.id)
      const state = broken ? say('families.list.unusable') : sayState(say, { ...one, draft: null })
      return say('families.list.line', { name: plain(one.name), format: one.format, state })
    })
    const rest = heads.length - lines.length
    const waits = moderator && server !== null ? await waitingOf(services, say, server, interaction.user.id) : []
    const choosing = familyStartIds.write({ act: 'look', opening: newOpening(services.newId) })
    await replyPrivately(
      interaction,
      message([
        ...waits.map(one => text(one.line)),
        ...rows(waits.map(one => one.button)),
        text(
          cut(
            [say('families.list.title'), ...lines, ...(rest > 0 ? [say('list.rest', { count: rest })] : [])].join('\n'),
            2500,
          ),
        ),
        menu(
          choosing,
          say('families.list.choose'),
          heads.map(one => ({ value: one.id, label: cut(bare(one.name), 100) })),
        ),
        small(say('caution.line')),
      ]),
    )
  },
}

/** What waits for whoever asks, before what waits for others. */
async function waitingOf(services: Services, say: Say, server: string, person: string) {
  const waiting = (await services.families.store.waiting(server)).flatMap(family =>
    family.review ? [{ family, by: family.review.by }] : [],
  )
  const [mine, others] = [waiting.filter(one => one.by === person), waiting.filter(one => one.by !== person)]
  return [...others, ...mine].slice(0, mostWaiting).map(({ family, by }) => ({
    line: lineOf(say, family, by, person),
    button: pressButton(
      idFor(family.id, family.revision)({ is: 'waiting' }),
      say('families.button.waits', { name: bare(nameOf(family)) }),
    ),
  }))
}

const nameOf = (family: ServerFamily): string => family.draft?.identity.name ?? family.id

const lineOf = (say: Say, family: ServerFamily, by: string, person: string): string => {
  const name = plain(nameOf(family))
  return by === person
    ? say('families.list.waits-mine', { name })
    : say('families.list.waits', { name, who: `<@${by}>` })
}
