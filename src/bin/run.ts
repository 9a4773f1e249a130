// The process of the bot: with a token on Discord, without one in the practice room.

import { setTimeout as after } from 'node:timers/promises'
import type { Logger } from 'pino'
import { languages } from '../answers/entry.ts'
import { type Bot, openBot } from '../discord/gateway/bot.ts'
import { invitationOf } from '../discord/gateway/invitation.ts'
import { openLog } from '../discord/gateway/logger.ts'
import type { Sharding } from '../discord/gateway/sharding.ts'
import type { Posts } from '../discord/posts/post.ts'
import type { Services } from '../discord/services.ts'
import { dayOf } from '../engine/day-of.ts'
import { inTurns } from '../services/in-turns.ts'
import { type Ending, endingOf, exitCodes } from './cannot-start.ts'
import { type Config, readConfig } from './config.ts'
import type { Prometheus } from './figures/prometheus.ts'
import type { FiguresServer } from './figures/serve-figures.ts'
import { holdFolder } from './hold-folder.ts'
import type { OpenedServices } from './open-services.ts'
import { prepareFolder } from './prepare-data.ts'
import { stopWithNpm } from './stop-with-npm.ts'
import { whenQuiet } from './when-quiet.ts'

/** So long a start waits for its commands to be registered before it says that it is ready, in ms. */
const commandsWithin = 10_000

/** So long after a start the answers are read, unless somebody asks before; in ms. */
const quietAfter = 5000

/** Runs the bot until a signal stops it; resolves once its code is loaded. Ends the process with a sentence if it cannot start or go on. */
export async function run(): Promise<void> {
  const read = readConfig(process.env)
  if (!read.ok) {
    for (const sentence of read.sentences) console.error(sentence)
    process.exit(exitCodes.operator)
  }
  const { config } = read
  const log = openLog(
    config.token === undefined && process.env['CELLWARY_LOG'] === undefined ? 'warn' : config.logLevel,
  )

  let opened: OpenedServices | undefined
  let compiled: Promise<void> | undefined
  try {
    // The practice room keeps its keys in a folder of its own.
    await prepareFolder(config.data, config.token === undefined ? [] : ['keys'])
    // Over PostgreSQL several processes share the work.
    const letGo =
      config.database === undefined
        ? holdFolder(config.data, config.token === undefined ? 'practice' : 'bot')
        : undefined
    // The practice room is only loaded where it is opened.
    const practice =
      config.token === undefined
        ? await (await import('./practice-room/open-practice.ts')).openPractice(config)
        : undefined
    const connection = practice?.connection ?? { token: config.token ?? '', ...(config.api && { api: config.api }) }
    // Figures are only loaded where they are shown.
    const prometheus = config.figures && (await import('./figures/prometheus.ts')).openPrometheus()
    const open = async (posts: Posts) => {
      const { openServices } = await import('./open-services.ts')
      opened = await openServices(practice?.config ?? config, log, posts, prometheus?.queried)
      const { compileAll } = await import('../packs/compile-all.ts')
      const rest = await compileAll(opened.services.programs, dayOf(Date.now()))
      // Goes on while Discord is waited for, and behind the running bot; what is wrong is said there.
      compiled = inTurns(rest)
      compiled.catch(() => undefined)
      return opened.services
    }
    const reached = { ...connection, log, ...(prometheus && { figures: prometheus.figures }) }
    // Connections are made once the services are open.
    const sharding = config.shards && {
      ...config.shards,
      turn: (...asked: Parameters<Sharding['turn']>) => (opened as OpenedServices).identifyTurn(...asked),
    }
    const bot = config.http
      ? await (await import('../discord/http/open-http-bot.ts')).openHttpBot(open, reached, config.http)
      : await openBot(open, { ...reached, ...(sharding && { sharding }) })
    if (!opened) throw new Error('the bot is ready without its services')
    const { services, job, askDatabase, close } = opened
    const figures =
      prometheus && config.figures && (await showFigures(config.figures, prometheus, bot, services, askDatabase, log))

    let stopping = false
    let weekly: { stop(): Promise<void> } | undefined
    let reminding: { stop(): Promise<void> } | undefined
    const stop = async (code: number) => {
      if (stopping) return
      stopping = true
      await figures?.close()
      await weekly?.stop()
      await reminding?.stop()
      await bot.close()
      await close()
      await practice?.close()
      letGo?.()
      process.exit(code)
    }
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop(exitCodes.fine))
    stopWithNpm(process.env, () => void stop(exitCodes.fine))
    void bot.lost.then(loss => {
      if (stopping) return
      const { sentences, code } = endingOf(loss, config)
      log.fatal({ loss: loss.loss, code }, sentences.join(' '))
      return stop(code)
    })
    void compiled?.catch(error => {
      const ending = endingOf(error, config)
      say(ending, error, log)
      return stop(ending.code)
    })
    const { keepRegistering } = await import('../jobs/keep-registering.ts')
    const registered = keepRegistering(() => bot.register(), log)
    await Promise.race([registered.first, new Promise(resolve => setTimeout(resolve, commandsWithin).unref())])
    announce(bot, practice?.pageUrl, log)
    process.send?.('ready')

    // Practice goes on without a past, where one cannot be made.
    if (practice && !stopping)
      await (await import('./practice-room/seed-practice.ts'))
        .seedPractice(services)
        .catch(error => log.warn({ err: error }, 'no invented outcomes'))
    // The first clicks come first; what follows is loaded between them.
    await compiled?.catch(() => undefined)
    const quiet = async () => {
      await whenQuiet(() => services.queue.lengths()['in-order'] > 0)
      return !stopping
    }
    await quiet()
    const { startWeeklyJob } = await import('../jobs/start-weekly-job.ts')
    if (!stopping) weekly = startWeeklyJob({ services, ...job, whereabouts: bot.whereabouts })
    const { startReminding } = await import('../jobs/start-reminding.ts')
    if (!stopping) reminding = startReminding({ services, leases: job.leases, holder: job.holder })
    // The first seconds after a start are those in which everybody presses again.
    void after(quietAfter, undefined, { ref: false }).then(() => (stopping ? undefined : openAnswers(services, log)))
    const { loadHandlers } = await import('./load-handlers.ts')
    await loadHandlers(quiet).catch(error => log.warn({ err: error }, 'a feature cannot be loaded'))
  } catch (error) {
    await opened?.close().catch(second => log.warn({ err: second }, 'the database could not be closed'))
    const ending = endingOf(error, config)
    say(ending, error, log)
    process.exit(ending.code)
  }
}

/** Between clicks, a slice at a time; whoever asks earlier has the rest done at once. */
async function openAnswers({ answers }: Pick<Services, 'answers'>, log: Logger): Promise<void> {
  try {
    const book = await answers()
    for (const language of languages) await inTurns(book.opening(language))
  } catch (error) {
    log.warn({ err: error }, 'the answers cannot be read')
  }
}

async function showFigures(
  { host, port }: NonNullable<Config['figures']>,
  prometheus: Prometheus,
  bot: Bot,
  services: Services,
  askDatabase: () => Promise<unknown>,
  log: Logger,
): Promise<FiguresServer> {
  prometheus.watch({ shards: bot.shards, queues: services.queue.lengths })
  const { serveFigures } = await import('./figures/serve-figures.ts')
  const server = await serveFigures(host, port, {
    metrics: prometheus.text,
    async missing() {
      const down = [...bot.shards()].filter(([, up]) => !up).map(([shard]) => shard)
      if (down.length > 0) return `Discord (connection ${down.join(', ')})`
      return askDatabase().then(
        () => undefined,
        () => 'the database',
      )
    },
  })
  log.info({ host, port: server.port }, 'figures are shown')
  return server
}

function announce(bot: Bot, pageUrl: string | undefined, log: Logger): void {
  if (pageUrl !== undefined) console.log(`The practice room is open: ${pageUrl}\nStop it with Ctrl+C.`)
  else
    log.info({ invitation: invitationOf(bot.application) }, 'ready; the invitation brings the bot into further servers')
}

/** Sentences for what the operator can understand; the log for the rest. */
function say({ sentences }: Ending, error: unknown, log: Logger): void {
  for (const sentence of sentences) console.error(sentence)
  if (sentences.length === 0) log.fatal({ err: error }, 'could not start')
}
