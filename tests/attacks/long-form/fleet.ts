// Processes of one bot over one PostgreSQL, as an operator starts them, connected to the small gateway; and what they use of the machine.
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Running, startBot } from '../../gateway/bot-process.ts'
import { type Hands, handsOn, idOf, inServer, member, shown } from '../../gateway/open-bot.ts'
import { serverIds } from '../../gateway/ordinary-server.ts'
import { type Json, openSmallGateway } from '../../gateway/small-gateway.ts'
import { freshPostgres } from '../../stores/fresh-postgres.ts'

export type Fleet = {
  readonly hands: Hands
  readonly servers: readonly string[]
  /** Seconds of processor time of all processes so far. */
  cpu(): Promise<number>
  /** Megabytes of memory of all processes now. */
  memory(): Promise<number>
  close(): Promise<void>
}

/** The kernel counts processor time in hundredths of a second (proc(5), `sysconf(_SC_CLK_TCK)`), and memory in pages. */
const [ticks, page] = [100, 4096]

export async function openFleet(processes: number, servers: number): Promise<Fleet> {
  const discord = await openSmallGateway()
  const ids = serverIds(servers)
  Object.assign(discord, { shards: processes, servers: ids.map(id => ({ id, coming: true })) })
  discord.session.max_concurrency = processes
  // What was asked of REST is not looked at, and would fill the memory.
  discord.before = () => {
    discord.asked.length = 0
    return undefined
  }
  const postgres = await freshPostgres()
  const data = await mkdtemp(join(tmpdir(), 'cellwary-fleet-'))
  const bots: Running[] = []
  // One after the other: the first makes the tables.
  for (let i = 0; i < processes; i++) {
    const shards: Record<string, string> = processes === 1 ? {} : { CELLWARY_SHARDS: `${i}of${processes}/${processes}` }
    const bot = startBot(discord.api, data, { DATABASE_URL: postgres.url, CELLWARY_LOG: 'fatal', ...shards })
    bots.push(bot)
    await bot.ready()
  }
  const sum = async (file: string, read: (fields: readonly string[]) => number) => {
    const all = await Promise.all(bots.map(({ pid }) => readFile(`/proc/${pid}/${file}`, 'utf8')))
    // A name in brackets stands before the fields, and may hold spaces.
    return all.reduce(
      (total, text) =>
        total +
        read(
          text
            .slice(text.lastIndexOf(')') + 1)
            .trim()
            .split(/\s+/),
        ),
      0,
    )
  }
  return {
    hands: handsOn(discord),
    servers: ids,
    cpu: () => sum('stat', fields => (Number(fields[11]) + Number(fields[12])) / ticks),
    memory: () => sum('statm', fields => (Number(fields[1]) * page) / 2 ** 20),
    async close() {
      for (const bot of bots) bot.signal('SIGKILL')
      for (const bot of bots) await bot.ended
      await discord.close()
      await postgres.close()
      await rm(data, { recursive: true, force: true })
    },
  }
}

/** Somebody on a server, by a number. */
export const somebody = (server: string, n: number): Json =>
  inServer(member(`91${String(n).padStart(16, '0')}`), server)

const quick: readonly Json[] = [
  {
    name: 'start',
    type: 1,
    options: [
      { name: 'family', type: 3, value: '-' },
      { name: 'depth', type: 3, value: 'quick' },
    ],
  },
]
export const unsureOf = (screen: Json): string | undefined =>
  shown(screen).find(one => /\.(unsure|consent\.\w+\.no)$/.test(one.custom_id ?? ''))?.custom_id

export const begin = (hands: Hands, who: Json): Promise<Json> => hands.command(who, 'check', quick)

/** A whole check: begun, every question answered with "can't tell", closed. Says how many interactions it took. */
export async function wholeCheck(hands: Hands, who: Json): Promise<number> {
  let screen = await begin(hands, who)
  let interactions = 1
  for (let unsure = unsureOf(screen); unsure !== undefined; unsure = unsureOf(screen)) {
    screen = await hands.press(who, unsure)
    interactions++
  }
  await hands.press(who, idOf(screen, '.close'))
  return interactions + 1
}

/** Does `task` so often, so many at a time. */
export async function many(times: number, atOnce: number, task: (n: number) => Promise<unknown>): Promise<void> {
  let next = 0
  const one = async () => {
    while (next < times) await task(next++)
  }
  await Promise.all(Array.from({ length: atOnce }, one))
}
