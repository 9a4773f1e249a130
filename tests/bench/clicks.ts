// Bench of a click's round trip and of the start, against a bare discord.js bot, through the same stand-in, in turns.
import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { demoServer } from '../../src/bin/demo-server.ts'
import { buttons, type SeenMessage } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { type Line, ms, quantile } from './table.ts'

const bots = {
  drawn: fileURLToPath(new URL('../../src/bin/start.ts', import.meta.url)),
  ours: fileURLToPath(new URL('../../src/bin/start.ts', import.meta.url)),
  bare: fileURLToPath(new URL('./bare-bot.ts', import.meta.url)),
}
type Kind = keyof typeof bots

const kinds = ['bare', 'ours', 'drawn'] as const
const perSecond = 100
/** Slices of one second each, in turns among the bots; the first ones warm them up. */
const slices = 18
const warmUp = 9
/** Fresh processes each round, all measured together: where a process lands in memory moves its figures by a tenth and more. */
const clickRounds = 3
const startRounds = 5
/** Enough people with eight checks each that no check is clicked again before its last click was answered. */
const people = Array.from({ length: 24 }, (_, i) => ({
  id: `9000000000000005${String(i).padStart(2, '0')}`,
  name: `P${i}`,
  locale: 'en-GB',
  roles: [],
}))
/** Validation is the same work for all and not the bot's; it is tested elsewhere. */
export const room = () => openStandIn({ scenario: { ...demoServer, people }, validate: false })

export async function open(
  kind: Kind,
  standIn: StandIn,
  data: string,
): Promise<{ startedMs: number; stop(): Promise<void> }> {
  const begun = performance.now()
  const child: ChildProcess = fork(bots[kind], {
    env: {
      ...process.env,
      DISCORD_TOKEN: standIn.botToken,
      CELLWARY_DISCORD_API: standIn.apiUrl,
      CELLWARY_DATA: data,
      CELLWARY_LOG: 'warn',
      CELLWARY_PICTURES: kind === 'drawn' ? 'on' : 'off',
    },
    execArgv: kind === 'bare' ? [] : ['--min-semi-space-size=16'],
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
  })
  await once(child, 'message')
  const startedMs = performance.now() - begun
  return {
    startedMs,
    async stop() {
      const gone = once(child, 'exit')
      child.kill('SIGKILL')
      await gone
    },
  }
}

type Lane = { readonly person: string; message: SeenMessage; last: Promise<void> }

export async function openLanes(standIn: StandIn): Promise<Lane[]> {
  const lanes: Lane[] = []
  for (const { id } of people)
    for (let i = 0; i < 8; i++) {
      const reply = await standIn.as(id).run('check start')
      if (reply.kind !== 'message') throw new Error(`no message but ${reply.kind}`)
      lanes.push({ person: id, message: reply.message, last: Promise.resolve() })
    }
  return lanes
}

/** Presses a button every hundredth of a second for a second, whether the last was answered or not; times each answer. */
export async function slice(standIn: StandIn, lanes: readonly Lane[], from: number): Promise<number[]> {
  const times: number[] = []
  const begun = performance.now()
  for (let i = 0; i < perSecond; i++) {
    const due = begun + (i * 1000) / perSecond
    if (due > performance.now()) await after(due - performance.now())
    const lane = lanes[(from + i) % lanes.length]
    const id = lane && buttons(lane.message).find(one => one.customId?.includes('.unsure'))?.customId
    if (!lane || !id) continue
    const sent = performance.now()
    lane.last = standIn
      .as(lane.person)
      .click(lane.message, id)
      .then(reply => {
        if (reply.kind !== 'updated') throw new Error(`no update but ${reply.kind}`)
        times.push(performance.now() - sent)
        lane.message = reply.message
      })
  }
  await Promise.all(lanes.map(lane => lane.last))
  return times
}

/** All bots run at once, each in its own room, and are clicked in turns, so that the machine's moods meet them alike. */
async function measureClicks(data: string): Promise<Record<Kind, number[]>> {
  const rooms = []
  for (const kind of kinds) {
    const standIn = await room()
    const bot = await open(kind, standIn, join(data, kind))
    rooms.push({ kind, standIn, bot, lanes: await openLanes(standIn) })
  }
  const times: Record<Kind, number[]> = { ours: [], bare: [], drawn: [] }
  for (let turn = 0; turn < slices; turn++)
    for (const { kind, standIn, lanes } of rooms) {
      const found = await slice(standIn, lanes, turn * perSecond)
      if (turn >= warmUp) times[kind].push(...found)
    }
  for (const { bot, standIn } of rooms) {
    await bot.stop()
    await standIn.close()
  }
  return times
}

async function measureStarts(data: string): Promise<{ first: number; starts: Record<'ours' | 'bare', number[]> }> {
  const starts: Record<'ours' | 'bare', number[]> = { ours: [], bare: [] }
  let first = 0
  // Round 0 is a first start on a new machine: it fills our caches and is reported beside the others.
  for (let round = 0; round <= startRounds; round++)
    for (const kind of ['bare', 'ours'] as const) {
      const standIn = await room()
      const bot = await open(kind, standIn, join(data, 'starts'))
      if (round > 0) starts[kind].push(bot.startedMs)
      else if (kind === 'ours') first = bot.startedMs
      await bot.stop()
      await standIn.close()
    }
  return { first, starts }
}

export async function benchClicks(): Promise<Line[]> {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-bench-'))
  const times: Record<Kind, number[]> = { ours: [], bare: [], drawn: [] }
  for (let round = 0; round < clickRounds; round++) {
    const found = await measureClicks(join(data, `clicks-${round}`))
    for (const kind of kinds) times[kind].push(...found[kind])
  }
  const { first, starts } = await measureStarts(data)
  await rm(data, { recursive: true, force: true })
  const line = (what: string, q: number, atMost: number): Line => {
    const [ours, bare] = [quantile(times.ours, q), quantile(times.bare, q)]
    return { what, ours: ms(ours), baseline: `bare discord.js bot ${ms(bare)}`, ratio: ours / bare, atMost }
  }
  const withPictures = (what: string, q: number): Line => {
    const [drawn, bare] = [quantile(times.drawn, q), quantile(times.bare, q)]
    return { what, ours: ms(drawn), baseline: `bare discord.js bot ${ms(bare)}`, ratio: drawn / bare }
  }
  const [ours, bare] = [quantile(starts.ours, 0.5), quantile(starts.bare, 0.5)]
  return [
    line(`a click's round trip at ${perSecond} a second, median of ${times.ours.length}`, 0.5, 1.3),
    line('the same, 99th percentile', 0.99, 1.5),
    withPictures(
      'the same with a picture to nearly every question (printed, not held: the bare bot sends none), median',
      0.5,
    ),
    withPictures('the same with pictures, 99th percentile', 0.99),
    {
      what: 'start to ready, first start of all',
      ours: ms(first),
      baseline: `bare discord.js bot ${ms(bare)}`,
      ratio: first / bare,
    },
    {
      what: 'start to ready, every later start, median',
      ours: ms(ours),
      baseline: `bare discord.js bot ${ms(bare)}`,
      ratio: ours / bare,
      atMost: 1.5,
    },
  ]
}
