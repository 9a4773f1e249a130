// Loads the handlers that a start has left out, a feature at a time: whoever clicks meanwhile is answered between two of them.
import { clickHandlers } from '../discord/click-handlers.ts'
import { commands, messageCommands } from '../discord/commands.ts'
import type { Loads } from '../discord/interaction/command.ts'

/** Rejects where one of them cannot be loaded, which whoever wants it meets again. `goOn` says when the next may be, or that none is wanted. */
export async function loadHandlers(goOn: () => Promise<boolean>): Promise<void> {
  const runs = commands.flatMap((one): readonly Loads<unknown>[] => ('subcommands' in one ? one.subcommands : [one]))
  for (const one of [...clickHandlers.values(), ...runs, ...messageCommands]) {
    if (!(await goOn())) return
    await one.load()
  }
}
