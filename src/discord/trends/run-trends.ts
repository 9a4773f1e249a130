// /trends as it runs: for the server's moderators.
import { sayIn } from '../../words/say.ts'
import { noteWaiting } from '../families/waiting-families.ts'
import type { Runs } from '../interaction/command.ts'
import { refusalParts, replyPrivately } from '../interaction/reply.ts'
import { message } from '../message/parts.ts'
import { findRelease } from './find-release.ts'
import { viewRelease } from './release-click.ts'

export const runTrends: Runs = {
  async run(services, interaction) {
    const say = sayIn(interaction.locale)
    const found = await findRelease(services, interaction)
    const above = await noteWaiting(services, interaction, say)
    const shown = found.ok
      ? await viewRelease(services, say, found, 'overview', above)
      : message([...above, ...refusalParts(say, found.refusal)])
    await replyPrivately(interaction, shown)
  },
}
