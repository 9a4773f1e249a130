// Keeps a second bot off a data folder: both would answer every click out of one database, and one of them late.
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { CannotStart, exitCodes } from './cannot-start.ts'

/** So long a bot that is just stopping may still hold it, in ms. */
const lettingGo = 2000

/**
 * Holds the folder for `who` until the process ends, however it ends: the system lets go of the lock, so that none is ever left behind.
 * Throws `CannotStart` where another process holds it. Hands back what lets go of it before.
 */
export function holdFolder(folder: string, who: 'bot' | 'practice'): () => void {
  const lock = new DatabaseSync(join(folder, `${who}.lock`), { timeout: lettingGo })
  try {
    lock.exec('begin exclusive')
  } catch (error) {
    lock.close()
    if (!(error instanceof Error) || !/locked/.test(error.message)) throw error
    const [running, other] =
      who === 'bot' ? ['A bot', 'this one'] : ['A practice room', 'this one, and another CELLWARY_PORT,']
    throw new CannotStart(
      `CELLWARY_DATA: ${running} is running with the folder ${folder} already. Stop that one, or give ${other} another folder.`,
      exitCodes.operator,
    )
  }
  return () => lock.close()
}
