// /check: start, resume, list and close checks, and see those in other hands.
import { ApplicationCommandType, ApplicationIntegrationType, InteractionContextType } from 'discord.js'
import { checkClose } from './check-close.ts'
import { checkCounting } from './check-counting.ts'
import { checkList } from './check-list.ts'
import { checkResume } from './check-resume.ts'
import { checkStart } from './check-start.ts'
import { checkWaiting } from './check-waiting.ts'
import type { Command } from './command.ts'

const subcommands = [checkStart, checkResume, checkList, checkClose, checkWaiting, checkCounting]

export const checkCommand: Command = {
  name: 'check',
  subcommands,
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'check',
    description: say('command.check'),
    contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
    integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
    options: subcommands.map(one => one.describe(say)),
  }),
}
