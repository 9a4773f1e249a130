// /check: start, resume, list and close checks, see those in other hands, and what is counted of them.
import { ApplicationCommandType } from 'discord.js'
import type { Command } from '../../interaction/command.ts'
import { everywhere } from '../../interaction/where-offered.ts'
import { checkClose } from './check-close.ts'
import { checkCounting } from './check-counting.ts'
import { checkList } from './check-list.ts'
import { checkResume } from './check-resume.ts'
import { checkStart } from './check-start.ts'
import { checkWaiting } from './check-waiting.ts'

const subcommands = [checkStart, checkResume, checkList, checkClose, checkWaiting, checkCounting]

export const checkCommand: Command = {
  name: 'check',
  subcommands,
  describe: say => ({
    type: ApplicationCommandType.ChatInput,
    name: 'check',
    description: say('command.check'),
    ...everywhere,
    options: subcommands.map(one => one.describe(say)),
  }),
}
