// Says what waits, stands still or was handled: what it is about, with whom, since when, at which question, who looks at it.
import type { Check } from '../check/check.ts'
import { custodyOf } from '../check/custody-of.ts'
import { untouchedSince } from '../check/desk.ts'
import type { HandledRequest, Waiting } from '../check/waiting.ts'
import type { Program } from '../engine/compile.ts'
import { type HelpCounted, helperStep, helpersOver } from '../server/helper-log.ts'
import { sayAnswer } from './describe.ts'
import type { Say } from './say.ts'
import { sayHandled, sayMoment, sayPerson, sayTaker } from './say-custody.ts'

/** The moment and how long ago it is, as Discord keeps it up to date. */
const sayAge = (since: number): string => `${sayMoment(since)} (<t:${Math.floor(since / 1000)}:R>)`

/** Questions are cut where a list shows them. */
const longest = 200
const short = (ask: string | undefined): string[] => {
  const letters = [...(ask ?? '')]
  return letters.length <= longest
    ? letters.length > 0
      ? [letters.join('')]
      : []
    : [`${letters.slice(0, longest - 1).join('')}…`]
}

/** `ask`: what is asked, for whoever may help. */
export function sayWaiting(say: Say, waiting: Waiting, what: string, ask: string | undefined): string[] {
  const { check, since } = waiting
  const state =
    waiting.for === 'help'
      ? say('queue.asked', { since: sayAge(since) })
      : say('queue.offered', { taker: sayTaker(say, waiting.to), since: sayAge(since) })
  const who = waiting.for === 'help' ? waiting : { claimedBy: null, meant: null }
  return [
    say('queue.entry', { what, holder: sayPerson(check.holder), state }),
    ...short(ask),
    ...(who.claimedBy === null ? [] : [say('queue.claimed', { who: sayPerson(who.claimedBy) })]),
    ...(who.meant === null ? [] : [say('queue.meant', { taker: sayTaker(say, who.meant) })]),
    ...sayClosing(say, check),
  ]
}

export function sayStill(say: Say, check: Check, what: string): string[] {
  const state = say('queue.untouched', { since: sayAge(untouchedSince(check)) })
  return [say('queue.entry', { what, holder: sayPerson(check.holder), state }), ...sayClosing(say, check)]
}

function sayClosing(say: Say, check: Check): string[] {
  const { closing } = custodyOf(check)
  return closing ? [say('queue.closing', { who: sayPerson(closing.by) })] : []
}

/** Who helped, with which answer, and when; `program`: in the reader's language, undefined where its packs are gone. */
export function sayHandledRequest(
  say: Say,
  { check, question, by, did, at, answer }: HandledRequest,
  what: string,
  program: Program | undefined,
): string[] {
  const asked = program?.questions.get(question)
  const said =
    asked && answer ? say('answer.said', { question: asked.ask, answer: sayAnswer(say, asked, answer) }) : asked?.ask
  return [
    say('queue.held', { what, holder: sayPerson(check.holder) }),
    sayHandled(say, { by, did, at }),
    ...short(said),
  ]
}

/** One line of a reminder, which everybody in the channel reads: nobody is named. */
export function sayReminder(say: Say, waiting: Waiting, what: string, link: string | undefined): string {
  const line = say(`reminder.${waiting.for}`, { what, since: sayAge(waiting.since) })
  return link ? `- ${line} [${say('queue.to-message')}](${link})` : `- ${line}`
}

/** More are not read, and a server's whole team would not fit. */
const mostHelpers = 15

/** Who has handled how many questions at least, for moderators. */
export const sayHelp = (say: Say, help: readonly HelpCounted[]): string[] => [
  say('queue.help', { weeks: helpersOver, least: helperStep, count: help.length }),
  ...help.slice(0, mostHelpers).map(({ person, count }) => say('queue.help.one', { who: sayPerson(person), count })),
]
