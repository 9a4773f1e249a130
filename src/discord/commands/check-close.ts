// /check close: ends a check without going on.
import { ApplicationCommandOptionType } from 'discord.js'
import { act } from '../../check/act.ts'
import { refuse, replyPrivately } from '../answer.ts'
import { tellOthers } from '../hands/tell-others.ts'
import { holderOf } from '../hands/turn.ts'
import { saveStep } from '../save-step.ts'
import { sayInPublic } from '../say-in-public.ts'
import { showScreen } from '../show/screen.ts'
import { sayIn } from '../words/say.ts'
import type { Subcommand } from './command.ts'
import { ownCheck, suggestChecks, whichOption } from './which-check.ts'

export const checkClose: Subcommand = {
  name: 'close',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'close',
    description: say('command.check.close'),
    options: [whichOption(say)],
  }),
  suggest: suggestChecks,
  async run(desk, interaction) {
    const say = sayIn(interaction.locale)
    const own = await ownCheck(desk, interaction, say)
    if (!own) return
    const { check, program } = own
    const closed = act(program, check, holderOf(check), { is: 'close' }, desk.now())
    if (!closed.ok) return refuse(interaction, say, closed.refusal)
    const { saving } = await saveStep(desk, interaction, program, check, closed)
    if (saving === 'seen') return
    if (saving === 'stale') return refuse(interaction, say, { code: 'not-now', event: 'close', phase: check.phase.is })
    await replyPrivately(interaction, await showScreen(say, program, closed.screen, desk.pictures))
    if (check.custody)
      await tellOthers(desk, await sayInPublic(desk, check.server, interaction.guildLocale), closed.check)
  },
}
