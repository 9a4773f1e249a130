// kill -9 again and again, somewhere between taking a click in and answering it: what was acknowledged is stored, once.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as after } from 'node:timers/promises'
import { demoServer } from '../../../src/bin/practice-room/demo-server.ts'
import type { Person } from '../../../src/practice/people/person.ts'
import { buttons, type SeenMessage } from '../../../src/practice/seen.ts'
import { openStandIn } from '../../../src/practice/stand-in.ts'
import { openCheckStore } from '../../../src/stores/check-store.ts'
import { openSqlite } from '../../../src/stores/open-sqlite.ts'
import { startBot } from '../../faults/bot-process.ts'
import { idOf, press, startCheck } from '../../flows/hands.ts'
import { testSeal } from '../../stores/test-seal.ts'
import { openWrongs, type Result } from './result.ts'

/** Clicks that are answered before the one in the middle of which it is killed. */
const acknowledgedEach = 2

/** A machine that does much else may be late with an answer; whoever waits tries again. */
const mostTries = 20

const canGoOn = (message: SeenMessage) => buttons(message).some(one => one.customId?.includes('.unsure'))

/** Presses "can't tell" until it is answered. */
async function goOn(
  wren: Person,
  message: SeenMessage,
  again: (id: string) => SeenMessage | null,
): Promise<SeenMessage> {
  let current = message
  for (let tries = 0; tries < mostTries && canGoOn(current); tries++) {
    const reply = await press(wren, current, '.unsure')
    if (reply.kind === 'updated' || reply.kind === 'message') return reply.message
    await after(200)
    current = again(message.id) ?? current
  }
  return current
}

async function begin(wren: Person): Promise<SeenMessage> {
  for (let tries = 0; ; tries++)
    try {
      return await startCheck(wren, { depth: 'full' })
    } catch (error) {
      if (tries === mostTries) throw error
      await after(200)
      await wren.run('check close')
    }
}

export async function kills(count: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const data = await mkdtemp(join(tmpdir(), 'cellwary-kills-'))
  const standIn = await openStandIn({ scenario: demoServer, validate: false })
  const wren = standIn.as('Wren')
  let bot = await startBot(standIn, data, { CELLWARY_FAIR_USE: 'off', CELLWARY_PICTURES: 'off' })
  const db = await openSqlite(join(data, 'cellwary.db'))
  const store = openCheckStore(db, testSeal)
  try {
    const again = (id: string) => standIn.message(id)
    let message = await begin(wren)
    for (let n = 0; n < count; n++) {
      const id = idOf(message, '.pause').split('.')[1] ?? ''
      const revision = async () => (await store.load(id))?.check.revision ?? -1
      for (let i = 0; i < acknowledgedEach && canGoOn(message); i++) message = await goOn(wren, message, again)
      const acknowledged = await revision()
      const lost = canGoOn(message) ? press(wren, message, '.unsure') : undefined
      // A little later each time: from before it is read to after it is answered.
      await after(n % 40)
      await bot.kill()
      void lost
      const stored = await revision()
      if (stored !== acknowledged && stored !== acknowledged + 1)
        tell(`kill ${n}: revision ${stored} after ${acknowledged}`)
      const trail = (await store.load(id))?.check.trail ?? []
      if (new Set(trail).size !== trail.length) tell(`kill ${n}: something was counted twice`)
      bot = await startBot(standIn, data, { CELLWARY_FAIR_USE: 'off', CELLWARY_PICTURES: 'off' })
      message = standIn.message(message.id) ?? message
      if (canGoOn(message)) message = await goOn(wren, message, again)
      if (!canGoOn(message)) {
        await wren.run('check close')
        message = await begin(wren)
      }
    }
  } finally {
    await bot.kill()
    await db.destroy()
    await standIn.close()
    await rm(data, { recursive: true, force: true })
  }
  return { what: 'times killed in the middle of a click', done: count, wrong, took: performance.now() - begun }
}
