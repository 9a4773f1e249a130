// Shows a person's checks: open ones, finished ones with their verdict, those offered to them, and those in other hands.
import { ButtonStyle } from 'discord.js'
import { type Check, lifetime } from '../../../check/check.ts'
import type { Verdict } from '../../../ground/verdicts.ts'
import { sayDate, sayExpiry } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { sayPerson } from '../../../words/say-custody.ts'
import { message, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'
import { button } from './check-buttons.ts'

/** `verdict`: null where its packs are gone, so that nobody can say any more what it came to. */
export type FinishedEntry = { readonly check: Check; readonly verdict: Verdict | null }
export type CheckLists = {
  readonly open: readonly Check[]
  readonly finished: readonly FinishedEntry[]
  readonly offered: readonly Check[]
  readonly others: readonly Check[]
}

/** `what` names a check; `now` in ms since 1970. */
export function showCheckList(say: Say, lists: CheckLists, what: (check: Check) => string, now: number): ShownMessage {
  const { open, finished, offered, others } = lists
  if (open.length + finished.length + offered.length + others.length === 0)
    return message([text(say('list.none')), small(`${say('list.kept')}\n${say('caution.line')}`)])
  let counted = 0
  const part = <T>(
    title: string,
    list: readonly T[],
    line: (one: T) => string,
    press: (one: T, number: number) => ReturnType<typeof button>,
  ) => {
    if (list.length === 0) return []
    const first = counted + 1
    counted += list.length
    return [
      text([`### ${title}`, ...list.map((one, i) => `${first + i}. ${line(one)}`)].join('\n')),
      ...rows(list.map((one, i) => press(one, first + i))),
    ]
  }
  const look = (check: Check, number: number) => handButton(check, 'progress', say('waiting.look', { number }))
  return message([
    ...part(
      say('list.title'),
      open,
      check =>
        say('list.entry', {
          what: what(check),
          since: sayDate(check.startedAt),
          count: check.trail.length,
          date: sayExpiry(check),
        }),
      (check, number) => button(check, { is: 'show' }, say('list.resume', { number }), ButtonStyle.Primary),
    ),
    ...part(
      say('list.finished'),
      finished,
      ({ check, verdict }) =>
        say('list.finished.entry', {
          what: what(check),
          verdict: verdict === null ? say('list.no-verdict') : say(`verdict.${verdict}`),
          since: sayDate(Math.min(now, check.expiresAt - lifetime)),
          date: sayExpiry(check),
        }),
      ({ check }, number) => button(check, { is: 'show' }, say('list.result', { number })),
    ),
    ...part(say('list.offered'), offered, what, look),
    ...part(
      say('list.others'),
      others,
      check => say('waiting.entry', { what: what(check), holder: sayPerson(check.holder), state: say('waiting.held') }),
      look,
    ),
    small(`${say('list.kept')}\n${say('caution.line')}`),
  ])
}
