// Shows what waits on a server: what it is about, with whom, since when, at which question, who looks at it, and where it stands.
import { type APIStringSelectComponent, ButtonStyle, ComponentType } from 'discord.js'
import type { Notice } from '../../../check/notice-store.ts'
import { type Waiting, type WaitingFilter, waitingFilters } from '../../../check/waiting.ts'
import type { Say } from '../../../words/say.ts'
import { sayDay, sayPerson, sayTaker } from '../../../words/say-custody.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'
import { encodeWaiting } from './waiting-id.ts'

/** One line of the list, with what has to be looked up for it. */
export type WaitingEntry = {
  readonly waiting: Waiting
  readonly what: string
  /** What is asked, for whoever may help. */
  readonly question: string | undefined
  readonly notice: Notice | undefined
}

export type WaitingPage = {
  readonly filter: WaitingFilter
  readonly page: number
  readonly pages: number
  readonly count: number
  readonly entries: readonly WaitingEntry[]
}

export function showWaiting(
  say: Say,
  server: string,
  { filter, page, pages, count, entries }: WaitingPage,
): ShownMessage {
  const turn = (to: number) => encodeWaiting({ filter, page: to })
  return message([
    text(
      `### ${say('queue.title')}\n${count === 0 ? say('queue.none') : say('queue.count', { count, pages, page: page + 1 })}`,
    ),
    ...rows([filterMenu(say, filter)]),
    ...entries.map(({ waiting, ...looked }) => ({
      type: ComponentType.Section as const,
      components: [text(linesOf(say, server, { waiting, ...looked }).join('\n'))],
      accessory: handButton(
        waiting.check,
        waiting.for === 'help' ? 'help' : 'progress',
        say('queue.look'),
        ButtonStyle.Primary,
      ),
    })),
    ...rows([
      ...(page > 0 ? [pressButton(turn(page - 1), say('page.back'))] : []),
      ...(page < pages - 1 ? [pressButton(turn(page + 1), say('page.on'))] : []),
    ]),
    small(say('caution.line')),
  ])
}

function linesOf(say: Say, server: string, { waiting, what, question, notice }: WaitingEntry): string[] {
  const { check, since } = waiting
  const state =
    waiting.for === 'help'
      ? say('queue.asked', { since: sayAge(since) })
      : say('queue.offered', { taker: sayTaker(say, waiting.to), since: sayAge(since) })
  const who = waiting.for === 'help' ? waiting : { claimedBy: null, meant: null }
  const place = notice && `https://discord.com/channels/${server}/${notice.channel}/${notice.message}`
  return [
    say('queue.entry', { what, holder: sayPerson(check.holder), state }),
    ...(question === undefined ? [] : [cut(question, 200)]),
    ...(who.claimedBy === null ? [] : [say('queue.claimed', { who: sayPerson(who.claimedBy) })]),
    ...(who.meant === null ? [] : [say('queue.meant', { taker: sayTaker(say, who.meant) })]),
    ...(place ? [`[${say('queue.to-message')}](${place})`] : []),
  ]
}

/** The moment and how long ago it is, as Discord keeps it up to date. */
const sayAge = (since: number): string => `${sayDay(since)} (<t:${Math.floor(since / 1000)}:R>)`

const filterMenu = (say: Say, filter: WaitingFilter): APIStringSelectComponent => ({
  type: ComponentType.StringSelect,
  custom_id: encodeWaiting({ filter: 'chosen', page: 0 }),
  placeholder: cut(say('queue.choose'), 150),
  options: waitingFilters.map(one => ({
    value: one,
    label: cut(say(`queue.filter.${one}`), 100),
    default: one === filter,
  })),
})
