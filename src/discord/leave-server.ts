// A server that has removed the bot takes its data along; one that is only out of reach keeps it.
import type { Desk } from './desk.ts'

/** Never throws: what could not be deleted is in the log, and the server still known, so that it can be done again. */
export async function leaveServer(desk: Pick<Desk, 'traces' | 'log'>, server: string): Promise<void> {
  try {
    await desk.traces.forgetServer(server)
    desk.log.info({ server }, 'a server has removed the bot; what was kept of it is deleted')
  } catch (error) {
    desk.log.error({ err: error, server }, 'what is kept of a server that has left could not be deleted')
  }
}
