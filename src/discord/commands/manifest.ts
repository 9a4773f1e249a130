// Every command there is; a command that is not listed here does not exist.
import { askCommand, findAnswerCommand } from './ask.ts'
import { buyingCommand } from './buying.ts'
import { checkCommand } from './check.ts'
import { claimCommand, readClaimsCommand } from './claim.ts'
import type { Command, MessageCommand } from './command.ts'
import { logCommand } from './log.ts'
import { privacyCommand } from './privacy.ts'
import { setupCommand } from './setup.ts'
import { trendsCommand } from './trends.ts'

export const commands: readonly Command[] = [
  checkCommand,
  askCommand,
  claimCommand,
  logCommand,
  buyingCommand,
  trendsCommand,
  privacyCommand,
  setupCommand,
]

export const messageCommands: readonly MessageCommand[] = [readClaimsCommand, findAnswerCommand]
