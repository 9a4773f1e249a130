#!/usr/bin/env node
// The command line: cellwary judge, cellwary rules check. Exit codes: 0 fine, 1 findings about the input, 2 misuse.
import { Command, CommanderError } from 'commander'
import { rulesCommand } from './cli/rules.ts'

const program = new Command('cellwary')
  .description(
    'Check whether a cylindrical lithium-ion cell is what it claims to be. A pass proves nothing; unsure means do not use.',
  )
  .exitOverride()
program.addCommand(rulesCommand())
for (const command of program.commands) for (const one of [command, ...command.commands]) one.exitOverride()

try {
  await program.parseAsync()
} catch (error) {
  if (!(error instanceof CommanderError)) throw error
  process.exitCode = error.exitCode === 0 ? 0 : 2
}
