// A room to test in: the stand-in of Discord with the demo server, and the real bot connected to it in this process.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readConfig } from '../../src/bin/config.ts'
import { type OpenedServices, openServices } from '../../src/bin/open-services.ts'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { type Bot, openBot } from '../../src/discord/gateway/bot.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import type { Services } from '../../src/discord/services.ts'
import type { Exchange } from '../../src/practice/journal.ts'
import type { Scenario } from '../../src/practice/scenario.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'

export type TestRoom = {
  readonly standIn: StandIn
  readonly services: Services
  /** What the weekly job needs beside the services. */
  readonly job: OpenedServices['job']
  readonly whereabouts: Bot['whereabouts']
  /** The folder of its data. */
  readonly data: string
  /** Lines the bot has logged so far. */
  readonly log: string[]
  /** Another bot of its own process's kind on the same database. */
  another(): Promise<() => Promise<void>>
  /** Closes everything; fails if the bot has ever sent a body that Discord would not take. */
  close(): Promise<void>
}

/** Discord's code for a body that breaks its rules; 40060 (answered already) is ordinary when things are delivered twice. */
const invalidBody = 50035

/** The demo server with everybody's screen in English, for tests that read and press English words as a moderator. */
export const englishServer: Scenario = {
  ...demoServer,
  people: demoServer.people.map(person => ({ ...person, locale: 'en-GB' })),
}

export async function openRoom(
  change: (services: Services) => Services = services => services,
  scenario: Scenario = demoServer,
  env: Readonly<Record<string, string>> = {},
): Promise<TestRoom> {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-room-'))
  const log: string[] = []
  const logger = openLog('debug', { write: line => void log.push(line) })
  // Tests press faster than people; what fair use does is seen where a test asks for it.
  const read = readConfig({ CELLWARY_FAIR_USE: 'off', ...env, CELLWARY_DATA: data })
  if (!read.ok) throw new Error(read.sentences.join())
  // A loaded machine may take long over an answer, and over what a press promised; nothing waits longer than that takes.
  const patience = { acknowledged: 120_000, deferred: 15_000 }
  const standIn = await openStandIn({ scenario, patience, firstAnswerMs: 120_000 })
  const connection = { token: standIn.botToken, api: standIn.apiUrl }
  const open = async () => {
    const config = { ...read.config, attachmentOrigins: [new URL(standIn.apiUrl).origin] }
    let opened: OpenedServices | undefined
    let services: Services | undefined
    const bot = await openBot(
      async posts => {
        opened = await openServices(config, logger, posts)
        services = change(opened.services)
        return services
      },
      { ...connection, log: logger },
    )
    if (!opened || !services) throw new Error('the bot is ready without its services')
    const { job, close } = opened
    await bot.register()
    return { services, job, whereabouts: bot.whereabouts, close: () => bot.close().then(close) }
  }
  const first = await open()
  const closing = [first.close]
  return {
    standIn,
    data,
    services: first.services,
    job: first.job,
    whereabouts: first.whereabouts,
    log,
    async another() {
      const next = await open()
      closing.push(next.close)
      return next.close
    },
    async close() {
      for (const close of closing) await close().catch(() => undefined)
      // A reply to what somebody has deleted meanwhile is refused in the same way, and is nobody's mistake.
      const mistaken = (one: Exchange) => one.issues.some(issue => issue.code !== 'REPLIES_UNKNOWN_MESSAGE')
      const invalid = standIn.complaints.filter(one => one.code === invalidBody && !one.byFault && mistaken(one))
      await standIn.close()
      await rm(data, { recursive: true, force: true })
      if (invalid.length > 0) throw new Error(`Discord would refuse these bodies: ${JSON.stringify(invalid, null, 1)}`)
    },
  }
}
