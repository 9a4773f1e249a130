// The process of the bot: with a token on Discord, without one in the practice room.
import { openBot } from '../discord/bot.ts'
import { openLog } from '../discord/log.ts'
import { readConfig } from './config.ts'
import type { OpenedDesk } from './open-desk.ts'
import { UnusablePacks } from './unusable-packs.ts'

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
      config.token === undefined ? await (await import('./open-practice.ts')).openPractice(config) : undefined
    const connection = practice?.connection ?? { token: config.token ?? '', ...(config.api && { api: config.api }) }
    // The rooms behind the desk are loaded while Discord answers.
    const opening = Promise.withResolvers<OpenedDesk>()
    const bot = await openBot(async () => {
      import('./open-desk.ts')
        .then(({ openDesk }) => openDesk(practice?.config ?? config, log))
        .then(opening.resolve, opening.reject)
      return (await opening.promise).desk
    }, connection)
    const { desk, close } = await opening.promise
    await bot.registered
    if (practice) console.log(`The practice room is open: ${practice.pageUrl}\nStop it with Ctrl+C.`)
    else log.info('ready')
    process.send?.('ready')

    let stopping = false
    const stop = async () => {
      if (stopping) return
      stopping = true
      await bot.close()
      await close()
      await practice?.close()
      process.exit(0)
    }
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop())
    const { compileAll } = await import('./compile-all.ts')
    await compileAll(desk.programs, new Date().toISOString().slice(0, 10))
  } catch (error) {
    if (error instanceof UnusablePacks) for (const sentence of error.sentences) console.error(sentence)
    else if (error instanceof Error && 'code' in error && error.code === 'TokenInvalid')
      console.error(
        'Discord refused the token. Put a valid bot token into DISCORD_TOKEN, or leave it out to open the practice room.',
      )
    else if (error instanceof Error && 'code' in error && error.code === 'EADDRINUSE')
      console.error(
        `Port ${config.port} is taken. Stop what uses it, or set CELLWARY_PORT to another one (0 takes any).`,
      )
    else log.fatal({ err: error }, 'could not start')
    process.exit(1)
  }
}
