// Bench of a click's round trip and of the start, against a bare discord.js bot, through the same stand-in, in turns.
//
// A picture is uploaded with the message it stands in: a link would have to be hosted or expires. An upload is Discord's price,
// not ours: a bare bot that sends nothing is no measure for it, so what is held is measured against a bare bot that uploads.
import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { demoServer } from '../../src/bin/practice-room/demo-server.ts'
import { buttons, type SeenMessage } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { openFairUse } from '../../src/services/fair-use/open-fair-use.ts'
import { usually } from './effort.ts'
import { compared, type Line, ms, quantile } from './table.ts'
import { middlePicture, warmPictureMs } from './warm-pictures.ts'

const start = fileURLToPath(new URL('../../src/bin/start.js', import.meta.url))
const bare = fileURLToPath(new URL('./bare-bot.ts', import.meta.url))
/** `drawn` is ours with pictures, `uploading` the bare bot with one of them in every answer. */
const bots = { ours: start, drawn: start, bare, uploading: bare }
type Kind = keyof typeof bots

const kinds = ['bare', 'ours', 'uploading', 'drawn'] as const
const perSecond = 100
/** Slices of one second each, in turns among the bots; the first ones warm them up. */
const slices = usually(18, 8)
const warmUp = usually(9, 4)
/** More than the questions of a check without a family: whoever clicks so often has seen every picture there is. */
const wholeCheck = usually(60, 40)
/** Fresh processes each round, all measured together: where a process lands in memory moves its figures by a tenth and more. */
const clickRounds = usually(3, 1)
const startRounds = usually(5, 2)
/** Enough people with eight checks each that no check is clicked again before its last click was answered. */
const people = Array.from({ length: 24 }, (_, i) => ({
  id: `9000000000000005${String(i).padStart(2, '0')}`,
  name: `P${i}`,
  locale: 'en-GB',
  roles: [],
}))
/** Validation is the same work for all and not the bot's; it is tested elsewhere. */
export const room = () => openStandIn({ scenario: { ...demoServer, people }, validate: false })

const pictureFile = 'picture.png'

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
      // Presses that come faster than fair use lets them are what is measured.
      CELLWARY_FAIR_USE: 'off',
      CELLWARY_PICTURES: kind === 'drawn' ? 'on' : 'off',
      ...(kind === 'uploading' && { BARE_PICTURE: join(data, pictureFile) }),
    },
    execArgv: bots[kind] === bare ? [] : ['--min-semi-space-size=16'],
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
      const reply = await standIn.as(id).run('check start', { depth: 'full' })
      if (reply.kind !== 'message') throw new Error(`no message but ${reply.kind}`)
      lanes.push({ person: id, message: reply.message, last: Promise.resolve() })
    }
  return lanes
}

/** Presses a button every hundredth of a second, for a second unless told otherwise, whether the last was answered or not; times each answer. */
export async function slice(
  standIn: StandIn,
  lanes: readonly Lane[],
  from: number,
  clicks = perSecond,
): Promise<number[]> {
  const times: number[] = []
  const begun = performance.now()
  for (let i = 0; i < clicks; i++) {
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

/** What it takes to let one click through, in ms; the mean, as a single one is shorter than a clock can tell. */
function fairUseMs(): number {
  const fairUse = openFairUse()
  const [crowd, servers] = [5_000, 50]
  const who = Array.from({ length: crowd }, (_, i) => String(900_000_000_000_000_000n + BigInt(i)))
  const rounds = 100
  let letThrough = 0
  const begun = performance.now()
  for (let i = 0; i < crowd * rounds; i++)
    if (!fairUse.admit('act', who[i % crowd] ?? '', who[i % servers] ?? '', i * 2)) letThrough++
  const took = performance.now() - begun
  if (letThrough < crowd * rounds) throw new Error('somebody was turned away')
  return took / (crowd * rounds)
}

/** One check from end to end, so that every picture was drawn once: what is measured are pictures that are there. */
async function seeAll(standIn: StandIn, [lane]: readonly Lane[]): Promise<void> {
  for (let i = 0; i < wholeCheck && lane; i++) await slice(standIn, [lane], 0, 1)
}

/** All bots run at once, each in its own room, and are clicked in turns, so that the machine's moods meet them alike. */
async function measureClicks(data: string): Promise<Record<Kind, number[]>> {
  const rooms = []
  for (const kind of kinds) {
    const standIn = await room()
    const folder = join(data, kind)
    await mkdir(folder, { recursive: true })
    if (kind === 'uploading') await writeFile(join(folder, pictureFile), (await middlePicture()).bytes)
    const bot = await open(kind, standIn, folder)
    const lanes = await openLanes(standIn)
    if (kind === 'drawn') await seeAll(standIn, lanes)
    rooms.push({ kind, standIn, bot, lanes })
  }
  const times: Record<Kind, number[]> = { ours: [], bare: [], drawn: [], uploading: [] }
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
  const times: Record<Kind, number[]> = { ours: [], bare: [], drawn: [], uploading: [] }
  for (let round = 0; round < clickRounds; round++) {
    const found = await measureClicks(join(data, `clicks-${round}`))
    for (const kind of kinds) times[kind].push(...found[kind])
  }
  const { first, starts } = await measureStarts(data)
  await rm(data, { recursive: true, force: true })
  const size = `${((await middlePicture()).bytes.length / 1000).toFixed(0)} kB`
  const names = { bare: 'bare discord.js bot', uploading: `bare discord.js bot that uploads ${size}` }
  const line = (what: string, kind: Kind, than: keyof typeof names, q: number, atMost?: number): Line => {
    const [one, other] = [quantile(times[kind], q), quantile(times[than], q)]
    const held = atMost === undefined ? {} : { atMost }
    return {
      what,
      ours: ms(one),
      baseline: `${names[than]} ${ms(other)}`,
      ...compared(times[kind], times[than], q),
      ...held,
    }
  }
  const click = quantile(times.ours, 0.5)
  const warm = await warmPictureMs()
  const fairUse = fairUseMs()
  const [ours, plain] = [quantile(starts.ours, 0.5), quantile(starts.bare, 0.5)]
  return [
    line(`a click's round trip at ${perSecond} a second, median of ${times.ours.length}`, 'ours', 'bare', 0.5, 1.2),
    line('the same, 99th percentile', 'ours', 'bare', 0.99, 1.3),
    line('the same with a picture to nearly every question, median', 'drawn', 'uploading', 0.5, 1.15),
    line('the same with pictures, 99th percentile', 'drawn', 'uploading', 0.99, 1.5),
    {
      what: 'finding and describing a picture that was drawn before, as a share of a click',
      ours: ms(warm),
      baseline: `a click without pictures ${ms(click)}`,
      ratio: warm / click,
      atMost: 0.05,
    },
    {
      what: 'asking fair use, with 5,000 people in 50 servers at it, as a share of a click',
      ours: ms(fairUse),
      baseline: `a click without pictures ${ms(click)}`,
      ratio: fairUse / click,
      atMost: 0.01,
    },
    line('what uploading alone costs a bare bot (printed only), median', 'uploading', 'bare', 0.5),
    line('ours with pictures against a bare bot that sends none (printed only), median', 'drawn', 'bare', 0.5),
    {
      what: 'start to ready, first start of all',
      ours: ms(first),
      baseline: `bare discord.js bot ${ms(plain)}`,
      ratio: first / plain,
      atMost: 1.8,
    },
    {
      what: 'start to ready, every later start, median',
      ours: ms(ours),
      baseline: `bare discord.js bot ${ms(plain)}`,
      ...compared(starts.ours, starts.bare),
      atMost: 1.4,
    },
  ]
}
