// Registers the commands, and tries again behind a running bot until it has worked: the bot answers meanwhile.
import { setTimeout as wait } from 'node:timers/promises'
import type { Logger } from 'pino'

/** How long to wait after each attempt that failed, in ms; the last one for ever after. */
const waits = [5_000, 30_000, 120_000, 600_000]

/** `first` resolves after the first attempt, however it ended. */
export function keepRegistering(
  register: () => Promise<'written' | 'same'>,
  log: Logger,
  after: readonly number[] = waits,
): { readonly first: Promise<void>; readonly done: Promise<void> } {
  const attempt = async (): Promise<boolean> => {
    try {
      log.info({ commands: await register() }, 'the commands are registered')
      return true
    } catch (error) {
      log.error({ err: error }, 'the commands could not be registered; what is registered already works on')
      return false
    }
  }
  const first = attempt()
  const again = async () => {
    let worked = await first
    for (let i = 0; !worked; i++) {
      await wait(after[Math.min(i, after.length - 1)], undefined, { ref: false })
      worked = await attempt()
    }
  }
  return { first: first.then(() => undefined), done: again() }
}
