// The process of the bot: with a token on Discord, without one in the practice room.
import type { Logger } from 'pino'
import { openBot } from '../discord/gateway/bot.ts'
import { openLog } from '../discord/gateway/logger.ts'
import { dayOf } from '../engine/day-of.ts'
import { UnusablePacks } from '../packs/unusable-packs.ts'
import { type Config, readConfig } from './config.ts'
import type { OpenedServices } from './open-services.ts'

/** Runs the bot until a signal stops it; ends the process with a sentence if it cannot start. */
export async function run(): Promise<void> {
  const read = readConfig(process.env)
  if (!read.ok) {
    for (const sentence of read.sentences) console.error(sentence)
    process.exit(2)
  }
  const { config } = read
  const log = openLog(
    config.token === undefined && process.env['CELLWARY_LOG'] === undefined ? 'warn' : config.logLevel,
  )

  try {
    // The practice room is only loaded where it is opened.
    const practice =
      config.token === undefined
        ? await (await import('./practice-room/open-practice.ts')).openPractice(config)
        : undefined
    const connection = practice?.connection ?? { token: config.token ?? '', ...(config.api && { api: config.api }) }
    // The rooms behind the services are loaded while Discord answers.
    const opening = Promise.withResolvers<OpenedServices>()
    const bot = await openBot(async posts => {
      import('./open-services.ts')
        .then(({ openServices }) => openServices(practice?.config ?? config, log, posts))
        .then(opening.resolve, opening.reject)
      return (await opening.promise).services
    }, connection)
    const { services, job, close } = await opening.promise
    await bot.registered
    if (practice) console.log(`The practice room is open: ${practice.pageUrl}\nStop it with Ctrl+C.`)
    else log.info('ready')
    process.send?.('ready')

    let stopping = false
    let weekly: { stop(): Promise<void> } | undefined
    const stop = async (code: number) => {
      if (stopping) return
      stopping = true
      await weekly?.stop()
      await bot.close()
      await close()
      await practice?.close()
      process.exit(code)
    }
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop(0))
    const { compileAll } = await import('../packs/compile-all.ts')
    await compileAll(services.programs, dayOf(Date.now())).catch(error => {
      tell(error, config, log)
      return stop(1)
    })
    // Practice goes on without a past, where one cannot be made.
    if (practice && !stopping)
      await (await import('./practice-room/seed-practice.ts'))
        .seedPractice(services)
        .catch(error => log.warn({ err: error }, 'no invented outcomes'))
    // Whoever asks first does not wait until the answers are read.
    await services.answers().catch(error => log.warn({ err: error }, 'the answers cannot be read'))
    const { startWeeklyJob } = await import('../jobs/start-weekly-job.ts')
    if (!stopping) weekly = startWeeklyJob({ services, ...job, whereabouts: bot.whereabouts })
  } catch (error) {
    tell(error, config, log)
    process.exit(1)
  }
}

/** One sentence for what the operator can mend; the log for the rest. */
function tell(error: unknown, config: Config, log: Logger): void {
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  if (error instanceof UnusablePacks) for (const sentence of error.sentences) console.error(sentence)
  else if (error instanceof Error && code === 'newer-database') console.error(error.message)
  else if (code === 'TokenInvalid')
    console.error(
      'Discord refused the token. Put a valid bot token into DISCORD_TOKEN, or leave it out to open the practice room.',
    )
  else if (code === 'EADDRINUSE')
    console.error(`Port ${config.port} is taken. Stop what uses it, or set CELLWARY_PORT to another one (0 takes any).`)
  else if ((code === 'ENOENT' || code === 'ENOTDIR' || code === 'EACCES') && config.rules !== undefined)
    console.error(
      `CELLWARY_RULES: ${config.rules} cannot be read (${code}). Correct the path or its rights, or leave it out.`,
    )
  else if (
    config.database !== undefined &&
    (code === 'ECONNREFUSED' || code === 'ENOTFOUND' || code === '28P01' || code === '3D000')
  )
    console.error(
      `DATABASE_URL: the database does not answer or does not let the bot in (${code}). Correct the address, the name or the password.`,
    )
  else log.fatal({ err: error }, 'could not start')
}
