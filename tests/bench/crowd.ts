// Bench of a crowd: ten members of one server at every limit, and how long quiet people of that server and of another wait meanwhile.
//
// Quiet and loud seconds take turns in one run of one process, so the machine’s moods meet both alike. The crowd sends as much as it is let do:
// presses, suggestions for endless text and listings as long as can be typed; what is too much is refused by fair use, in words.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { startBot } from '../gateway/bot-process.ts'
import { handsOn, inServer, member, shown, startCheck } from '../gateway/open-bot.ts'
import { type Json, openSmallGateway, serverId } from '../gateway/small-gateway.ts'
import { type Line, ms, quantile } from './table.ts'

const otherServer = '900000000000000110'
const crowd = 10
const quietEach = 4
/** Turns of each kind, in seconds; the first two warm up. */
const turns = 10
const warmUp = 2
const turnMs = 3000
/** A quiet person reads what they are asked. */
const readsMs = 1000
const pressEvery = 250
const suggestEvery = 200
const claimEvery = 10_000

type Reader = { readonly where: Json; screen: Json; readonly from: 'here' | 'there' }

export async function benchCrowd(): Promise<Line[]> {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-crowd-'))
  const discord = await openSmallGateway()
  discord.servers = [serverId, otherServer].map(id => ({ id, coming: true }))
  const bot = startBot(discord.api, data, { CELLWARY_LOG: 'silent' })
  const { command, press, suggest } = handsOn(discord)
  const times = {
    here: { quiet: [] as number[], loud: [] as number[] },
    there: { quiet: [] as number[], loud: [] as number[] },
  }
  try {
    await bot.ready()
    const readers: Reader[] = []
    for (const [from, server] of [
      ['here', serverId],
      ['there', otherServer],
    ] as const)
      for (let i = 0; i < quietEach; i++) {
        const where = inServer(member(`9000000000003${from === 'here' ? 1 : 2}${String(i).padStart(4, '0')}`), server)
        readers.push({ from, where, screen: await command(where, 'check', startCheck) })
      }
    const loud = Array.from({ length: crowd }, (_, i) =>
      inServer(member(`90000000000033${String(i).padStart(4, '0')}`)),
    )
    const screens = await Promise.all(loud.map(where => command(where, 'check', startCheck)))
    for (let turn = 0; turn < 2 * turns; turn++) {
      const kind = turn % 2 === 0 ? 'quiet' : 'loud'
      const until = performance.now() + turnMs
      const reading = readers.map(async (reader, i) => {
        await after((i * readsMs) / readers.length)
        while (performance.now() < until) {
          const took = await step(reader)
          if (turn >= 2 * warmUp) times[reader.from][kind].push(took)
          await after(readsMs)
        }
      })
      const noise = kind === 'loud' ? loud.map((where, i) => makeNoise(where, screens[i] as Json, until)) : []
      await Promise.all([...reading, ...noise])
      discord.asked.length = 0
    }
  } finally {
    bot.signal('SIGKILL')
    await bot.ended
    await discord.close()
    await rm(data, { recursive: true, force: true })
  }

  /** One step of somebody who reads, timed; a check that has come to its end is begun anew, not timed. */
  async function step(reader: Reader): Promise<number> {
    const unsure = () => shown(reader.screen).find(one => one.custom_id?.endsWith('.unsure'))?.custom_id
    for (let id = unsure(); ; id = unsure()) {
      if (id !== undefined) {
        const sent = performance.now()
        reader.screen = await press(reader.where, id)
        return performance.now() - sent
      }
      await command(reader.where, 'check', [{ name: 'close', type: 1, options: [] }])
      reader.screen = await command(reader.where, 'check', startCheck)
      if (unsure() === undefined) throw new Error('a quiet member was turned away')
    }
  }

  async function makeNoise(where: Json, screen: Json, until: number): Promise<void> {
    const id = shown(screen).find(one => one.custom_id?.endsWith('.unsure'))?.custom_id ?? 'x'
    // Nobody of the crowd waits for an answer, and a suggestion too many has none.
    const every = async (wait: number, act: () => Promise<Json>) => {
      for (; performance.now() < until; await after(wait)) void act()
    }
    await Promise.all([
      every(pressEvery, () => press(where, id)),
      every(suggestEvery, () => suggest(where, 'ask', 'xq wjz '.repeat(57).slice(0, 400))),
      every(claimEvery, () => command(where, 'claim', [{ name: 'text', type: 3, value: '1A '.repeat(1333) }])),
    ])
  }

  const line = (from: 'here' | 'there', what: string, atMost: number): Line => {
    const [one, other] = [quantile(times[from].loud, 0.5), quantile(times[from].quiet, 0.5)]
    const n = times[from].loud.length
    return {
      what: `${what}, median of ${n}`,
      ours: ms(one),
      baseline: `without them ${ms(other)}`,
      ratio: one / other,
      atMost,
    }
  }
  return [
    line('there', `a click on another server while ${crowd} members of one are at every limit`, 1.5),
    line('here', 'a click of a quiet member of that server', 3),
  ]
}
