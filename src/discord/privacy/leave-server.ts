// A server that has removed the bot takes its data along; one that is only out of reach keeps it.
import type { Services } from '../services.ts'

/** Never throws: what could not be deleted is in the log, and the server still known, so that it can be done again. */
export async function leaveServer(services: Pick<Services, 'traces' | 'log'>, server: string): Promise<void> {
  try {
    await services.traces.forgetServer(server)
    services.log.info({ server }, 'a server has removed the bot; what was kept of it is deleted')
  } catch (error) {
    services.log.error({ err: error, server }, 'what is kept of a server that has left could not be deleted')
  }
}
