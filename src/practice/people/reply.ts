// What a person gets back from the bot, and the wait for it.

import { layOut } from '../interactions/modal.ts'
import type { Choice, Happening, Opened } from '../interactions/opened.ts'
import { tokenMs } from '../interactions/opened.ts'
import type { Room } from '../room.ts'
import type { Issue } from '../rules/issue.ts'
import { type SeenMessage, see } from '../seen.ts'
import type { RawComponent, WireForm } from '../wire.ts'
import type { Message } from '../world/world.ts'

export type Reply =
  | { readonly kind: 'message'; readonly message: SeenMessage; readonly private: boolean; readonly deferred: boolean }
  | { readonly kind: 'updated'; readonly message: SeenMessage; readonly deferred: boolean }
  | { readonly kind: 'modal'; readonly modal: WireForm }
  /** Still "please wait" after `patience`; `final` gives the message once it comes, or null when the token has died. */
  | {
      readonly kind: 'deferred'
      readonly message: SeenMessage
      readonly private: boolean
      readonly final: Promise<SeenMessage | null>
    }
  | { readonly kind: 'acknowledged' }
  | {
      readonly kind: 'silent'
      readonly why: 'no answer within 3 s' | 'no bot is connected'
      /** What was wrong with answers that were refused meanwhile. */
      readonly refusals: readonly Issue[]
    }

/** Forms kept open; the oldest close past this. */
const mostModals = 2000

/** How long to wait, in real milliseconds, once the bot has said "please wait" (5) or "noted" (6). */
export type Patience = {
  readonly deferred: number
  readonly acknowledged: number
}

/** Waits for the bot's answer to an interaction that has just been opened. */
export function awaitReply(room: Room, opened: Opened, patience: Patience): Promise<Reply> {
  return new Promise(resolve => {
    let state: 'waiting' | 'deferred' | 'acknowledged' = 'waiting'
    let timer: NodeJS.Timeout | null = null
    const finish = (reply: Reply) => {
      stopClock()
      if (timer !== null) clearTimeout(timer)
      opened.watchers.delete(watch)
      resolve(reply)
    }
    const stopClock = room.clock.at(opened.at + room.firstAnswerMs, () => {
      if (state === 'waiting') finish(silent(room, opened))
    })
    const shown = (message: Message, deferred: boolean): Reply => ({
      kind: 'message',
      message: see(room.world, message),
      private: message.onlyFor !== null,
      deferred,
    })
    const watch = (happening: Happening) => {
      switch (happening.kind) {
        case 'message':
          return finish(shown(happening.message, false))
        case 'updated':
          return finish({ kind: 'updated', message: see(room.world, happening.message), deferred: false })
        case 'modal':
          return finish({ kind: 'modal', modal: keepModal(room, opened, happening.modal) })
        case 'deferred':
          state = 'deferred'
          timer = setTimeout(() => finish(stillWaiting(room, opened, happening.message)), patience.deferred)
          return
        case 'acknowledged':
          state = 'acknowledged'
          timer = setTimeout(() => finish({ kind: 'acknowledged' }), patience.acknowledged)
          return
        case 'edited':
          if (state === 'deferred') return finish(shown(happening.message, true))
          return finish({ kind: 'updated', message: see(room.world, happening.message), deferred: true })
        case 'follow-up':
          if (state === 'acknowledged') finish(shown(happening.message, true))
          return
        default:
          return
      }
    }
    opened.watchers.add(watch)
    if (!reaches(room)) finish(silent(room, opened))
  })
}

/** Waits for the choices that answer autocomplete; none when the bot is silent. */
export function awaitChoices(room: Room, opened: Opened): Promise<readonly Choice[]> {
  return new Promise(resolve => {
    const finish = (choices: readonly Choice[]) => {
      stopClock()
      opened.watchers.delete(watch)
      resolve(choices)
    }
    const stopClock = room.clock.at(opened.at + room.firstAnswerMs, () => finish([]))
    const watch = (happening: Happening): void => {
      if (happening.kind === 'choices') finish(happening.choices)
    }
    opened.watchers.add(watch)
    if (!reaches(room)) finish([])
  })
}

/** Whether an interaction can come to anybody. */
const reaches = ({ gateway, endpoint }: Room): boolean => gateway.sessions.size > 0 || endpoint.url !== null

function silent(room: Room, opened: Opened): Reply {
  const why = room.gateway.live() === 0 && room.endpoint.url === null ? 'no bot is connected' : 'no answer within 3 s'
  return { kind: 'silent', why, refusals: [...opened.refusals] }
}

function stillWaiting(room: Room, opened: Opened, message: Message): Reply {
  const final = new Promise<SeenMessage | null>(resolve => {
    const finish = (found: SeenMessage | null) => {
      stopClock()
      opened.watchers.delete(watch)
      resolve(found)
    }
    const stopClock = room.clock.at(opened.at + tokenMs, () => finish(null))
    const watch = (happening: Happening): void => {
      if (happening.kind === 'edited') finish(see(room.world, happening.message))
    }
    opened.watchers.add(watch)
  })
  return { kind: 'deferred', message: see(room.world, message), private: message.onlyFor !== null, final }
}

function keepModal(
  room: Room,
  opened: Opened,
  given: { customId: string; title: string; components: RawComponent[] },
): WireForm {
  const seen = layOut({
    id: opened.id,
    customId: given.customId,
    title: given.title,
    components: given.components,
    personId: opened.personId,
    channelId: opened.channelId,
  })
  room.modals.set(seen.id, { seen, sourceId: opened.sourceId })
  if (room.modals.size > mostModals) room.modals.delete(room.modals.keys().next().value ?? '')
  return seen
}
