// /check close: ends a check without going on.
import { ApplicationCommandOptionType } from 'discord.js'
import { act } from '../../../check/act.ts'
import { sayIn } from '../../../words/say.ts'
import type { Runs, Subcommand } from '../../interaction/command.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import { sayInPublic } from '../../posts/say-in-public.ts'
import { tellOthers } from '../hand-over/tell-others.ts'
import { holderOf } from '../hand-over/turn.ts'
import { saveStep } from '../save-step.ts'
import { showScreen } from '../show/screen.ts'
import { ownCheck, suggestChecks, whichOption } from './which-check.ts'

const runs: Runs = {
  suggest: suggestChecks,
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const own = await ownCheck(services, interaction, say)
    if (!own) return
    const { check, program } = own
    const closed = act(program, check, holderOf(check), { is: 'close' }, services.now())
    if (!closed.ok) return refuse(interaction, say, closed.refusal)
    const { saving } = await saveStep(services, interaction, program, check, closed)
    if (saving === 'seen') return
    if (saving === 'stale') return refuse(interaction, say, { code: 'not-now', event: 'close', phase: check.phase.is })
    await replyPrivately(interaction, await showScreen(say, program, closed.screen, services))
    if (check.custody)
      await tellOthers(services, await sayInPublic(services, check.server, interaction.guildLocale), closed.check)
  },
}

export const checkClose: Subcommand = {
  name: 'close',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'close',
    description: say('command.check.close'),
    options: [whichOption(say)],
  }),
  load: async () => runs,
}
