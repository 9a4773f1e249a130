// The command line: one file a command in cli/, loaded when it is named. Exit codes: 0 fine, 1 findings about the input, 2 misuse.
import { Command, CommanderError } from 'commander'
import manifest from '../../package.json' with { type: 'json' }
import { UnusablePacks } from '../packs/unusable-packs.ts'

/** In the order in which help lists them. */
const commands: ReadonlyMap<string, () => Promise<Command>> = new Map([
  ['judge', async () => (await import('./cli/judge.ts')).judgeCommand()],
  ['rules', async () => (await import('./cli/rules.ts')).rulesCommand()],
  ['claim', async () => (await import('./cli/claim.ts')).claimCommand()],
  ['measure', async () => (await import('./cli/measure.ts')).measureCommand()],
  ['batch', async () => (await import('./cli/batch.ts')).batchCommand()],
  ['trends', async () => (await import('./cli/trends.ts')).trendsCommand()],
  ['picture', async () => (await import('./cli/picture.ts')).pictureCommand()],
  ['doctor', async () => (await import('./cli/doctor.ts')).doctorCommand()],
  ['move', async () => (await import('./cli/move.ts')).moveCommand()],
  ['policy', async () => (await import('./cli/policy.ts')).policyCommand()],
  ['practice', async () => (await import('./cli/practice.ts')).practiceCommand()],
  ['completion', async () => (await import('./cli/completion.ts')).completionCommand(allOthers)],
])

const allOthers = (): Promise<readonly Command[]> =>
  Promise.all([...commands].filter(([name]) => name !== 'completion').map(([, load]) => load()))

/** `words`: as the process was called, Node and the file first. Sets the exit code. */
export async function runCommandLine(words: readonly string[]): Promise<void> {
  const program = new Command('cellwary')
    .description(
      'Check whether a cylindrical lithium-ion cell is what it claims to be. A pass proves nothing; unsure means do not use.',
    )
    .version(manifest.version)
    .enablePositionalOptions()
    .exitOverride()
  for (const load of wanted(words[2])) program.addCommand(await load())
  for (const command of program.commands) for (const one of [command, ...command.commands]) one.exitOverride()

  try {
    await program.parseAsync(words)
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
}

/** The one that is named; for help, and for what is misspelt, all of them. */
function wanted(first: string | undefined): Iterable<() => Promise<Command>> {
  const named = commands.get(first ?? '')
  if (named) return [named]
  return first === '--version' || first === '-V' ? [] : commands.values()
}

function isFileError(error: unknown): error is Error & { code: string; path: string } {
  return error instanceof Error && 'path' in error && 'code' in error
}
