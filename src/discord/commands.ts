// Every command there is; a command that is not listed here does not exist.
import { askCommand, findAnswerCommand } from './answers/ask-command.ts'
import { batchCommand } from './batch/batch-command.ts'
import { buyingCommand } from './buying/buying-command.ts'
import { claimCommand, readClaimsCommand } from './check/claims/claim-command.ts'
import { checkCommand } from './check/commands/check.ts'
import { familyCommand } from './families/family-command.ts'
import type { Command, MessageCommand } from './interaction/command.ts'
import { logCommand } from './logs/log-command.ts'
import { privacyCommand } from './privacy/privacy-command.ts'
import { setupCommand } from './setup/setup-command.ts'
import { trendsCommand } from './trends/trends-command.ts'

export const commands: readonly Command[] = [
  checkCommand,
  askCommand,
  claimCommand,
  logCommand,
  batchCommand,
  buyingCommand,
  trendsCommand,
  privacyCommand,
  setupCommand,
  familyCommand,
]

export const messageCommands: readonly MessageCommand[] = [readClaimsCommand, findAnswerCommand]
