// Bench of the memory that servers take: the bot with one server and with a thousand ordinary ones, its gateway in another process.
import { fork } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { botToken } from '../gateway/small-gateway.ts'
import type { Line } from './table.ts'

const start = fileURLToPath(new URL('../../src/bin/start.js', import.meta.url))
const gateway = fileURLToPath(new URL('./gateway-process.ts', import.meta.url))
/** Above the bot with one server, in MB. */
const allowed = 200
const servers = 1000
/** Long enough for what was only needed at the start to be let go of, in ms. */
const settling = 10_000

export async function benchMemory(): Promise<Line[]> {
  const [one, many] = [await residentWith(1), await residentWith(servers)]
  return [
    {
      what: `Resident memory of ${servers} ordinary servers, above a bot with one`,
      ours: `${many - one} MB above ${one} MB`,
      baseline: `${allowed} MB`,
      ratio: (many - one) / allowed,
      atMost: 1,
    },
  ]
}

/** Of a bot that is ready and has all its servers, in MB (Linux). */
async function residentWith(count: number): Promise<number> {
  const discord = fork(gateway, [String(count)])
  const [api] = await once(discord, 'message')
  const data = await mkdtemp(join(tmpdir(), 'cellwary-memory-'))
  const env = { DISCORD_TOKEN: botToken, CELLWARY_DISCORD_API: api, CELLWARY_DATA: data, CELLWARY_LOG: 'warn' }
  const bot = fork(start, { env: { PATH: process.env['PATH'], ...env } })
  const ended = once(bot, 'close')
  await Promise.race([once(bot, 'message'), ended.then(([code]) => Promise.reject(new Error(`ended with ${code}`)))])
  await after(settling)
  const kilobytes = /^VmRSS:\s+(\d+)/m.exec(await readFile(`/proc/${bot.pid}/status`, 'utf8'))?.[1]
  bot.kill('SIGTERM')
  await ended
  discord.disconnect()
  await rm(data, { recursive: true })
  return Math.round(Number(kilobytes) / 1024)
}
