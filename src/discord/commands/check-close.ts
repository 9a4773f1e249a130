// /check close: ends a check without going on.
import { ApplicationCommandOptionType } from 'discord.js'
import { refit } from '../../check/refit.ts'
import { step } from '../../check/step.ts'
import { refuse, replyPrivately } from '../answer.ts'
import { showScreen } from '../show/screen.ts'
import { sayIn } from '../words/say.ts'
import type { Subcommand } from './command.ts'
import { countedAlready, suggestChecks, whichCheck, whichOption } from './which-check.ts'

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
    const found = await whichCheck(desk, interaction)
    if (await countedAlready(desk, interaction)) return
    if (!found) return refuse(interaction, say, { code: 'no-such-check' })
    const program = desk.programs.programFor(found.family, found.day)
    if (!program) return refuse(interaction, say, { code: 'gone' })
    const closed = step(program, refit(program, found), { is: 'close' }, desk.now())
    if (!closed.ok) return refuse(interaction, say, closed.refusal)
    const saved = await desk.checks.save(closed.check, found.revision, interaction.id)
    if (saved === 'seen') return
    if (saved === 'stale') return refuse(interaction, say, { code: 'not-now', event: 'close', phase: found.phase.is })
    await replyPrivately(interaction, await showScreen(say, program, closed.screen, desk.pictures))
  },
}
