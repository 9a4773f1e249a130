// Bench of clicks while a log is being read: the same bot idle, beside a bare download, and busy, in turns.
import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { open, openLanes, room, slice } from './clicks.ts'
import { usually } from './effort.ts'
import { longLog } from './readings.ts'
import { compared, type Line, ms, quantile } from './table.ts'

/** Fresh bots, one-second slices of each kind in turns, and how many of them warm up. */
const rounds = usually(3, 1)
const turns = usually(14, 4)
const warmUp = usually(4, 1)
/** About 20 MB, near the largest file that is taken. */
const rows = 800_000
const reader = '900000000000000500'

/**
 * The stand-in serves the file from the process that times the clicks, which Discord does not: so reading is held against a
 * process that only downloads the same file just as often, and beside it the idle bot is printed.
 */
type Kind = 'idle' | 'fetched' | 'read'
type Times = Record<Kind, number[]>

export async function benchLogClicks(): Promise<Line[]> {
  const bytes = longLog(rows)
  const times: Times = { idle: [], fetched: [], read: [] }
  for (let round = 0; round < rounds; round++) await measure(bytes, times)
  const line = (what: string, q: number, against: 'idle' | 'fetched', atMost?: number): Line => {
    const [busy, base] = [quantile(times.read, q), quantile(times[against], q)]
    const baseline = against === 'idle' ? 'the same bot, idle:' : 'a bare download of the same file:'
    return {
      what,
      ours: ms(busy),
      baseline: `${baseline} ${ms(base)}`,
      ...compared(times.read, times[against], q),
      ...(atMost && { atMost }),
    }
  }
  return [
    line(
      `a click while logs of ${rows} rows are read, one after the other, median of ${times.read.length}`,
      0.5,
      'fetched',
    ),
    line('the same, 99th percentile', 0.99, 'fetched', 1.5),
    line('the same, median (printed, not held)', 0.5, 'idle'),
    line('the same, 99th percentile (printed, not held)', 0.99, 'idle'),
  ]
}

async function measure(bytes: Uint8Array, times: Times): Promise<void> {
  const data = await mkdtemp(join(tmpdir(), 'cellwary-bench-'))
  const standIn = await room()
  const bot = await open('ours', standIn, data)
  const lanes = await openLanes(standIn)
  const { link, close } = await serve(bytes)
  const download = await openDownloader()
  let readFor = 400
  const work: Record<Exclude<Kind, 'idle'>, () => Promise<void>> = {
    // As often as logs are read, so that both serve the file equally often.
    fetched: () => Promise.all([download.once(link), after(readFor)]).then(() => undefined),
    async read() {
      const begun = performance.now()
      const reply = await standIn.as(reader).run('log', { file: { name: 'log.csv', bytes } })
      if (reply.kind === 'deferred') await reply.final
      readFor = performance.now() - begun
    },
  }
  for (let turn = 0; turn < turns; turn++)
    for (const kind of ['idle', 'read', 'fetched'] as const) {
      let going = true
      // File after file, for as long as the slice lasts.
      const beside = (async () => {
        while (going && kind !== 'idle') await work[kind]()
      })()
      const found = await slice(standIn, lanes, turn * 100)
      going = false
      await beside
      if (turn >= warmUp) times[kind].push(...found)
    }
  download.stop()
  close()
  await bot.stop()
  await standIn.close()
  await rm(data, { recursive: true, force: true })
}

/** Serves the file from this process, as the stand-in does for the bot. */
async function serve(bytes: Uint8Array): Promise<{ readonly link: string; close(): void }> {
  const server = createServer((_, response) => void response.end(bytes))
  server.listen(0, '127.0.0.1')
  await once(server, 'listening')
  const link = `http://127.0.0.1:${(server.address() as AddressInfo).port}/log.csv`
  return { link, close: () => void server.close() }
}

async function openDownloader(): Promise<{ once(link: string): Promise<void>; stop(): void }> {
  const child: ChildProcess = fork(import.meta.filename, ['download'])
  return {
    async once(link) {
      const done = once(child, 'message')
      child.send(link)
      await done
    },
    stop: () => void child.kill('SIGKILL'),
  }
}

if (import.meta.main && process.argv[2] === 'download')
  process.on('message', async link => {
    const { body } = await fetch(String(link))
    if (body) for await (const _ of body);
    process.send?.('done')
  })
