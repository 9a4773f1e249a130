// /check resume: shows an open check where it stands, in whatever channel the person is now.
import { ApplicationCommandOptionType } from 'discord.js'
import { act } from '../../../check/act.ts'
import { screenOf } from '../../../check/screen.ts'
import { sayIn } from '../../../words/say.ts'
import type { Runs, Subcommand } from '../../interaction/command.ts'
import { refuse, replyPrivately } from '../../interaction/reply.ts'
import { holderOf } from '../hand-over/turn.ts'
import { loadStillHeld } from '../load-check.ts'
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
    if (check.phase.is !== 'paused' || check.custody?.offer)
      return replyPrivately(interaction, await showScreen(say, program, screenOf(program, check), services))
    const resumed = act(program, check, holderOf(check), { is: 'resume' }, services.now())
    if (!resumed.ok) return refuse(interaction, say, resumed.refusal)
    const saved = await saveStep(services, interaction, program, check, resumed)
    if (saved.saving === 'seen') return
    if (saved.saving === 'saved')
      return replyPrivately(interaction, await showScreen(say, program, saved.screen, services))
    const latest = await loadStillHeld(services, say, check)
    if (typeof latest === 'string') return refuse(interaction, say, { code: latest })
    const now = screenOf(latest.program, latest.check)
    await replyPrivately(interaction, await showScreen(say, latest.program, now, services))
  },
}

export const checkResume: Subcommand = {
  name: 'resume',
  describe: say => ({
    type: ApplicationCommandOptionType.Subcommand,
    name: 'resume',
    description: say('command.check.resume'),
    options: [whichOption(say)],
  }),
  load: async () => runs,
}
