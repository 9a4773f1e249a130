// Twenty people with a check each, who press "can't tell" and know what they were told: for whatever befalls the bot meanwhile.
import { setTimeout as after } from 'node:timers/promises'
import { demoServer } from '../../../src/bin/practice-room/demo-server.ts'
import type { CheckStore } from '../../../src/check/store.ts'
import { checkIds } from '../../../src/custom-ids/check-id.ts'
import { buttons, type SeenMessage } from '../../../src/practice/seen.ts'
import type { StandIn } from '../../../src/practice/stand-in.ts'
import { idOf, press, startCheck } from '../../flows/hands.ts'

const count = 20
/** A machine that does much else may be late with an answer; whoever waits tries again. */
const mostTries = 30

const members = Array.from({ length: count }, (_, i) => ({
  id: `9000000000000006${String(i).padStart(2, '0')}`,
  name: `Member ${i}`,
  locale: 'en-GB',
  roles: [],
  about: 'newcomer',
}))
export const crowdScenario = { ...demoServer, people: [...demoServer.people, ...members] }

type One = { readonly name: string; message: SeenMessage; id: string }
export type Crowd = {
  readonly all: readonly One[]
  /** Each presses once and waits for the answer, again until there is one. */
  pressOn(): Promise<void>
  /** Each presses once, and never mind the answer; how many got none that went on. */
  pressInVain(): Promise<number>
  /** What stands in the store is what each was shown last, or one press further where that was never answered; and nothing twice. */
  compare(store: Pick<CheckStore<never>, 'load'>, tell: (sentence: string) => void): Promise<void>
}

/** Which revision of a check a screen shows: its buttons say so. */
const revisionOf = (message: SeenMessage): number | undefined =>
  buttons(message)
    .map(one => checkIds.read(one.customId ?? '')?.revision)
    .find(one => one !== undefined)
const canGoOn = (message: SeenMessage) => buttons(message).some(one => one.customId?.includes('.unsure'))

export async function openCrowd(standIn: StandIn): Promise<Crowd> {
  const begin = async (name: string): Promise<One> => {
    for (let tries = 0; ; tries++)
      try {
        const message = await startCheck(standIn.as(name), { depth: 'full', family: '-' })
        return { name, message, id: idOf(message, '.pause').split('.')[1] ?? '' }
      } catch (error) {
        if (tries === mostTries) throw error
        await after(200)
        await standIn.as(name).run('check close')
      }
  }
  const all: One[] = []
  for (const { name } of members) all.push(await begin(name))

  async function goOn(one: One): Promise<void> {
    for (let tries = 0; tries < mostTries; tries++) {
      one.message = standIn.message(one.message.id) ?? one.message
      if (!canGoOn(one.message)) {
        await standIn.as(one.name).run('check close')
        Object.assign(one, await begin(one.name))
        return
      }
      const reply = await press(standIn.as(one.name), one.message, '.unsure')
      if (reply.kind === 'updated') {
        one.message = reply.message
        return
      }
      await after(200)
    }
    throw new Error(`${one.name} was never answered`)
  }

  return {
    all,
    async pressOn() {
      await Promise.all(all.map(goOn))
    },
    async pressInVain() {
      let vain = 0
      const once = async (one: One) => {
        one.message = standIn.message(one.message.id) ?? one.message
        if (!canGoOn(one.message)) return
        const { kind } = await press(standIn.as(one.name), one.message, '.unsure')
        if (kind !== 'updated') vain++
      }
      await Promise.all(all.map(once))
      return vain
    },
    async compare(store, tell) {
      for (const one of all) {
        const shown = revisionOf(standIn.message(one.message.id) ?? one.message)
        const check = (await store.load(one.id))?.check
        if (!check || shown === undefined) {
          tell(`${one.name}: the ${check ? 'message' : 'check'} is gone`)
          continue
        }
        if (new Set(check.trail).size !== check.trail.length) tell(`${one.name}: something was counted twice`)
        if (check.revision !== shown && check.revision !== shown + 1)
          tell(`${one.name}: revision ${check.revision}, and ${shown} was shown`)
      }
    },
  }
}
