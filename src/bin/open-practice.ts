// Opens the practice room: the local stand-in of Discord with the invented server in it.
import { join } from 'node:path'
import { openStandIn } from '../practice/stand-in.ts'
import type { Config } from './config.ts'
import { demoServer } from './demo-server.ts'

/** The stand-in, what the bot needs to connect to it, and a data folder of its own so that practice never mixes with use. */
export async function openPractice(config: Config) {
  const standIn = await openStandIn({ scenario: demoServer, port: config.port })
  return {
    pageUrl: standIn.pageUrl,
    connection: { token: standIn.botToken, api: standIn.apiUrl },
    config: {
      ...config,
      data: join(config.data, 'practice'),
      database: undefined,
      attachmentOrigins: [new URL(standIn.apiUrl).origin],
    } satisfies Config,
    close: () => standIn.close(),
  }
}
