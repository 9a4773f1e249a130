// Says whose a check is, who it is offered to, and what happened to it: names as mentions, which ping nobody.
import type { HandOverRecord, Taker } from '../check/custody.ts'
import { forgotten } from '../check/person-in-check.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'

export const sayPerson = (id: string): string => `<@${id}>`

/** Whoever had their name deleted is somebody. */
const sayAnybody = (say: Say, id: string): string => (id === forgotten ? say('finding.somebody') : sayPerson(id))

export function sayTaker(say: Say, taker: Taker): string {
  if (taker.to === 'anyone') return say('taker.anyone')
  return taker.to === 'person' ? sayAnybody(say, taker.person) : `<@&${taker.role}>`
}

/** A day and an hour, as Discord shows them in the reader's own calendar. `at`: ms since 1970. */
export const sayMoment = (at: number): string => `<t:${Math.floor(at / 1000)}:f>`

export function sayHandled(say: Say, { by, did, at, to, why }: HandOverRecord): string {
  const deed = say(`deed.${did}`, {
    who: sayAnybody(say, by),
    when: sayMoment(at),
    taker: to ? sayTaker(say, to) : '',
  })
  return why ? say('deed.why', { deed, why: plain(why) }) : deed
}
