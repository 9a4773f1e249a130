// A disk that is full, and one that may only be read: on a file system of the bot's own, which twenty people fill or meet as it is.
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { copyFile, mkdtemp, open, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { openStandIn, type StandIn } from '../../../src/practice/stand-in.ts'
import { openCheckStore } from '../../../src/stores/check-store.ts'
import { openAsIs } from '../../../src/stores/open-sqlite.ts'
import { testSeal } from '../../stores/test-seal.ts'
import { crowdScenario, openCrowd } from './crowd.ts'
import { openWrongs, type Result } from './result.ts'

const entry = fileURLToPath(new URL('../../../src/bin/start.js', import.meta.url))
const megabytes = 48

/** Runs shell words in a space of mounts of its own, and then the bot in their place. */
function startIn(standIn: StandIn, data: string, words: string) {
  const child = spawn('unshare', ['-rm', 'sh', '-c', `${words}; exec "$0" "$@"`, process.execPath, entry], {
    env: {
      ...process.env,
      DISCORD_TOKEN: standIn.botToken,
      CELLWARY_DISCORD_API: standIn.apiUrl,
      CELLWARY_DATA: data,
      CELLWARY_PICTURES: 'off',
      CELLWARY_FAIR_USE: 'off',
    },
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  })
  const closed = once(child, 'close')
  return {
    pid: child.pid ?? 0,
    ready: once(child, 'message'),
    ended: Promise.all([closed, text(child.stderr as never)]).then(([[code], err]) => ({ code: code as number, err })),
    kill: () => child.kill('SIGKILL'),
  }
}

/** Whether this machine lets a process have mounts of its own. */
async function mayMount(): Promise<boolean> {
  const child = spawn('unshare', ['-rm', 'mount', '-t', 'tmpfs', 'none', tmpdir()], { stdio: 'ignore' })
  const [code] = await once(child, 'close').catch(() => [1])
  return code === 0
}

/** Fills a file system to the last byte. */
async function fill(file: string): Promise<void> {
  const handle = await open(file, 'w')
  for (let bytes = 1 << 20; bytes >= 1; )
    try {
      await handle.write(Buffer.alloc(bytes))
    } catch {
      bytes >>= 1
    }
  await handle.close()
}

export async function fullDisks(count: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const what = 'times a full disk for 20 people pressing, SQLite'
  if (!(await mayMount())) return { what: `${what} (no mounts of its own here)`, done: 0, wrong, took: 0 }
  const data = await mkdtemp(join(tmpdir(), 'cellwary-disk-'))
  const standIn = await openStandIn({ scenario: crowdScenario, validate: false })
  const bot = startIn(standIn, data, `mount -t tmpfs -o size=${megabytes}m none ${data}`)
  let refused = 0
  try {
    await bot.ready
    const there = `/proc/${bot.pid}/root${data}`
    const crowd = await openCrowd(standIn)
    const compare = async (when: string) => {
      // SQLite does not find its way into another space of mounts: it reads what was copied out of it.
      const copy = await mkdtemp(join(tmpdir(), 'cellwary-disk-'))
      for (const file of ['cellwary.db', 'cellwary.db-wal']) await copyFile(join(there, file), join(copy, file))
      const db = openAsIs(join(copy, 'cellwary.db'), true)
      await crowd.compare(openCheckStore(db, testSeal), sentence => tell(`${when}: ${sentence}`))
      await db.destroy()
      await rm(copy, { recursive: true })
    }
    for (let n = 0; n < count; n++) {
      await crowd.pressOn()
      await fill(join(there, 'filler'))
      // Until the pages that SQLite has in hand are used up, too.
      for (let presses = 0; presses < 4; presses++) refused += await crowd.pressInVain()
      await compare(`full ${n}`)
      await rm(join(there, 'filler'))
      await crowd.pressOn()
      await compare(`room again ${n}`)
    }
  } finally {
    bot.kill()
    await bot.ended
    await standIn.close()
    await rm(data, { recursive: true, force: true })
  }
  if (refused === 0) tell('nobody met the full disk')
  return {
    what,
    done: count,
    wrong,
    figures: `${refused} presses were told to try again`,
    took: performance.now() - begun,
  }
}

export async function readOnlyFile(): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const what = 'start on a database file that may only be read'
  if (!(await mayMount())) return { what: `${what} (no mounts of its own here)`, done: 0, wrong, took: 0 }
  const data = await mkdtemp(join(tmpdir(), 'cellwary-disk-'))
  const standIn = await openStandIn({ scenario: crowdScenario, validate: false })
  try {
    const first = startIn(standIn, data, 'true')
    await first.ready
    first.kill()
    await first.ended
    const file = join(data, 'cellwary.db')
    const { code, err } = await startIn(standIn, data, `mount --bind ${file} ${file}; mount -o remount,ro,bind ${file}`)
      .ended
    if (code !== 2) tell(`it ended with ${code}`)
    if (!/^CELLWARY_DATA: .*may only be read/m.test(err)) tell(`it said: ${err.slice(0, 150)}`)
    // Nothing of what was there is harmed.
    const again = startIn(standIn, data, 'true')
    await again.ready
    again.kill()
    await again.ended
  } finally {
    await standIn.close()
    await rm(data, { recursive: true, force: true })
  }
  return { what, done: 1, wrong, took: performance.now() - begun }
}
