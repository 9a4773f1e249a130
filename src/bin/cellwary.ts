#!/usr/bin/env node
// The command line: one file a command in cli/. Exit codes: 0 fine, 1 findings about the input, 2 misuse.
import { Command, CommanderError } from 'commander'
import manifest from '../../package.json' with { type: 'json' }
import { UnusablePacks } from '../packs/unusable-packs.ts'
import { batchCommand } from './cli/batch.ts'
import { claimCommand } from './cli/claim.ts'
import { doctorCommand } from './cli/doctor.ts'
import { judgeCommand } from './cli/judge.ts'
import { measureCommand } from './cli/measure.ts'
import { moveCommand } from './cli/move.ts'
import { pictureCommand } from './cli/picture.ts'
import { practiceCommand } from './cli/practice.ts'
import { rulesCommand } from './cli/rules.ts'
import { trendsCommand } from './cli/trends.ts'

const program = new Command('cellwary')
  .description(
    'Check whether a cylindrical lithium-ion cell is what it claims to be. A pass proves nothing; unsure means do not use.',
  )
  .version(manifest.version)
  .enablePositionalOptions()
  .exitOverride()
const commands = [
  judgeCommand(),
  rulesCommand(),
  claimCommand(),
  measureCommand(),
  batchCommand(),
  trendsCommand(),
  pictureCommand(),
  doctorCommand(),
  moveCommand(),
  practiceCommand(),
]
for (const command of commands) program.addCommand(command)
for (const command of program.commands) for (const one of [command, ...command.commands]) one.exitOverride()

try {
  await program.parseAsync()
} catch (error) {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2
  else if (error instanceof UnusablePacks) {
    for (const sentence of error.sentences) console.error(sentence)
    process.exitCode = 1
  } else if (isFileError(error)) {
    console.error(`${error.path}: this cannot be read (${error.code}). Check the path and its rights.`)
    process.exitCode = 2
  } else throw error
}

function isFileError(error: unknown): error is Error & { code: string; path: string } {
  return error instanceof Error && 'path' in error && 'code' in error
}
