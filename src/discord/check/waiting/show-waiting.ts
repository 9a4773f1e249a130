// Shows a page of the queue: what waits, what stands still or what was handled, each with the way to it.
import { type APIButtonComponent, type APIStringSelectComponent, ComponentType } from 'discord.js'
import { type QueueFilter, queueFilters } from '../../../check/waiting.ts'
import { encodeWaiting } from '../../../custom-ids/waiting-id.ts'
import type { HelpCounted } from '../../../server/helper-log.ts'
import type { Say } from '../../../words/say.ts'
import { sayHelp } from '../../../words/say-queue.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'

/** One entry of the list. */
export type QueueEntry = { readonly lines: readonly string[]; readonly press: APIButtonComponent }

export type QueuePage = {
  readonly filter: QueueFilter
  readonly page: number
  readonly pages: number
  readonly count: number
  readonly entries: readonly QueueEntry[]
  /** Who has helped how often, for moderators. */
  readonly help?: readonly HelpCounted[]
}

export function showWaiting(say: Say, { filter, page, pages, count, entries, help }: QueuePage): ShownMessage {
  const turn = (to: number) => encodeWaiting({ filter, page: to })
  return message([
    text(`### ${say('queue.title')}\n${sayCount(say, filter, { count, pages, page: page + 1 })}`),
    ...rows([filterMenu(say, filter)]),
    ...(help ? [small(sayHelp(say, help).join('\n'))] : []),
    ...entries.map(({ lines, press }) => ({
      type: ComponentType.Section as const,
      components: [text(lines.join('\n'))],
      accessory: press,
    })),
    ...rows([
      ...(page > 0 ? [pressButton(turn(page - 1), say('page.back'))] : []),
      ...(page < pages - 1 ? [pressButton(turn(page + 1), say('page.on'))] : []),
    ]),
    small(say('caution.line')),
  ])
}

function sayCount(say: Say, filter: QueueFilter, values: { count: number; pages: number; page: number }): string {
  if (filter === 'still' || filter === 'handled') return say(`queue.${filter}.count`, values)
  return values.count === 0 ? say('queue.none') : say('queue.count', values)
}

const filterMenu = (say: Say, filter: QueueFilter): APIStringSelectComponent => ({
  type: ComponentType.StringSelect,
  custom_id: encodeWaiting({ filter: 'chosen', page: 0 }),
  placeholder: cut(say('queue.choose'), 150),
  options: queueFilters.map(one => ({
    value: one,
    label: cut(say(`queue.filter.${one}`), 100),
    default: one === filter,
  })),
})
