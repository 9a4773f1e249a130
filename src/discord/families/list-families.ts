// /family list: every model of a server; for moderators, what waits for them stands first, with a button that leads to it.
import { familyStartIds } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { bare, plain } from '../../words/plain.ts'
import { sayIn } from '../../words/say.ts'
import type { Runs } from '../interaction/command.ts'
import { replyPrivately } from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { cut, message, small, text } from '../message/parts.ts'
import { menu } from './show/menus.ts'
import { sayState } from './show/show-page.ts'
import { showWaitingFirst, waitingFor } from './waiting-families.ts'

export const runList: Runs = {
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const server = serverOf(interaction)
    const settings = await moderating(services, interaction)
    const moderator = settings !== undefined
    const all = server === null ? [] : await services.families.store.heads(server)
    const heads = all.filter(one => moderator || one.head > 0)
    if (heads.length === 0)
      return replyPrivately(interaction, message([text(say('families.list.none')), small(say('caution.line'))]))
    const usable = new Set((await services.families.candidates(server)).map(one => one.pack.id))
    const shown = heads.slice(0, 25).map(one => {
      const broken = one.state === 'in-force' && !usable.has(one.id)
      const state = broken ? say('families.list.unusable') : sayState(say, { ...one, draft: null })
      return { id: one.id, name: one.name, format: one.format, state }
    })
    const lines = [
      say('families.list.title'),
      ...shown.map(({ name, format, state }) => say('families.list.line', { name: plain(name), format, state })),
      ...(heads.length > shown.length ? [say('list.rest', { count: heads.length - shown.length })] : []),
    ]
    const person = interaction.user.id
    const waits = settings ? await waitingFor(services, settings, person) : []
    // Whoever has something to agree to came for that: the rest is in the menu.
    const mine = waits.some(one => one.mine)
    const choosing = familyStartIds.write({ act: 'look', opening: newOpening(services.newId) })
    await replyPrivately(
      interaction,
      message([
        ...showWaitingFirst(say, waits, person),
        ...(mine ? [] : [text(cut(lines.join('\n'), 2500))]),
        menu(
          choosing,
          say(mine ? 'families.list.all' : 'families.list.choose'),
          shown.map(({ id, name, format, state }) => ({
            value: id,
            label: cut(bare(name), 100),
            description: cut(say('families.list.option', { format, state }), 100),
          })),
        ),
        small(say('caution.line')),
      ]),
    )
  },
}
