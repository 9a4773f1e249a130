// A raid: so many members at once start checks and press as fast as they can, while one who was there before goes on reading and answering.
import { setTimeout as after } from 'node:timers/promises'
import { inServer, member, openSmallBot, shown, startCheck, textOf } from '../../gateway/open-bot.ts'
import type { Json } from '../../gateway/small-gateway.ts'
import { inTime } from './in-time.ts'
import { openWrongs, type Result } from './result.ts'

const pressesEach = 3
const quietEvery = 500

const unsureOf = (screen: Json) => shown(screen).find(one => one.custom_id?.endsWith('.unsure'))?.custom_id

/** `slowestMs` is that of the quiet member, whom the raid must not hold up. */
export async function raid(people: number): Promise<Result> {
  const begun = performance.now()
  const { wrong, tell } = openWrongs()
  const faults: string[] = []
  const bot = await openSmallBot({ CELLWARY_FAIR_USE: 'on' }, undefined, undefined, line => void faults.push(line))
  const quiet = inServer()
  let slowest = 0
  let over = false
  try {
    let screen = await bot.command(quiet, 'check', startCheck)
    const reading = async () => {
      while (!over) {
        const unsure = unsureOf(screen)
        if (unsure === undefined) break
        const sent = performance.now()
        const next = await bot.press(quiet, unsure)
        const took = performance.now() - sent
        slowest = Math.max(slowest, took)
        if (/wait|slow/i.test(textOf(next)) && unsureOf(next) === undefined) tell('the quiet member was asked to wait')
        else screen = next
        await after(quietEvery)
      }
    }
    const one = async (i: number) => {
      const who = inServer(member(`90000000000002${String(i).padStart(4, '0')}`))
      let mine = await inTime(bot.command(who, 'check', startCheck))
      for (let n = 0; n < pressesEach && mine; n++) {
        const unsure = unsureOf(mine)
        if (textOf(mine) === '') tell('somebody of the raid was answered without a word')
        if (unsure === undefined) return
        mine = await inTime(bot.press(who, unsure))
      }
    }
    const read = reading()
    await Promise.all(Array.from({ length: people }, (_, i) => one(i)))
    over = true
    await read
  } finally {
    over = true
    await bot.close()
  }
  for (const line of faults) tell(line)
  return {
    what: 'people raid a server at once (the slowest is that of a quiet member of it)',
    ...{ done: people, wrong, slowestMs: slowest, took: performance.now() - begun },
  }
}
