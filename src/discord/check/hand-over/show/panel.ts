// A check as everybody in a channel sees it: what is offered to whom, who has it now; never an answer.
import { ButtonStyle } from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import type { HandOverAction } from '../../../../check/custody.ts'
import { custodyOf } from '../../../../check/custody-of.ts'
import type { PersonId } from '../../../../check/ids.ts'
import type { Key } from '../../../../words/catalogue.ts'
import { plain } from '../../../../words/plain.ts'
import type { Say } from '../../../../words/say.ts'
import { sayMoment, sayPerson, sayTaker } from '../../../../words/say-custody.ts'
import { message, rows, type ShownMessage, small, text } from '../../../message/parts.ts'
import { handButton } from './holder-menu.ts'

/** `what`: the family's name in the language of `say`. */
export function showPanel(say: Say, what: string, check: Check): ShownMessage {
  const { offer, history } = custodyOf(check)
  const holder = sayPerson(check.holder)
  const progress = handButton(check, 'progress', say('panel.progress'))
  if (!offer || check.phase.is === 'closed') {
    return message([
      text(`### ${say('panel.title')}\n${say(standing(check), { holder, what })}`),
      ...(check.phase.is === 'closed' ? [] : rows([progress])),
      small(say('caution.line')),
    ])
  }
  const why = history.findLast(one => one.did === 'offered' || one.did === 'redirected')?.why
  const lines = [
    `### ${say('panel.title')}`,
    say('panel.offer', { starter: holder, what, taker: sayTaker(say, offer.to) }),
    ...(why ? [say('panel.why', { why: plain(why) })] : []),
    say('panel.until', { until: sayMoment(offer.until) }),
  ]
  return message([
    text(lines.join('\n')),
    ...rows([
      handButton(check, 'take', say('panel.take'), ButtonStyle.Primary),
      ...(offer.to.to === 'person' ? [handButton(check, 'decline', say('panel.decline'))] : []),
      progress,
    ]),
    small(say('caution.line')),
  ])
}

function standing(check: Check): Key {
  if (check.phase.is === 'closed') return 'panel.closed'
  if (check.phase.is === 'done') return 'panel.verdict'
  // What helpers do about a question changes nothing about whose it is.
  const last = custodyOf(check).history.findLast(({ did }) => [...passed, ...untaken].includes(did))
  return last && untaken.includes(last.did) ? 'panel.back' : 'panel.taken'
}

const passed: readonly HandOverAction[] = ['took', 'took-over', 'gave-back']
/** An offer that is none any more though nobody took it. */
const untaken: readonly HandOverAction[] = ['offered', 'redirected', 'declined', 'withdrew']

export type PanelNote =
  | 'helped'
  | 'unsure'
  | 'disagree'
  | 'result'
  | 'danger'
  | 'sent-back'
  | 'gave-back'
  | 'took-over'
  | 'redirected'
  | 'closing'
  | 'reopened'

/** Tells `who` in a channel: the holder to go on, with a button; somebody else what they must know. */
export function showWord(say: Say, what: string, check: Check, word: PanelNote, who: PersonId): ShownMessage {
  const { offer, history } = custodyOf(check)
  const helper = sayPerson(history.at(-1)?.by ?? '')
  const values = { who: sayPerson(who), holder: sayPerson(check.holder), what, helper }
  const goOn = handButton(check, 'go-on', say('word.go-on'), ButtonStyle.Primary)
  const mayClose = [
    handButton(check, 'keep-open', say('desk.keep'), ButtonStyle.Primary),
    handButton(check, 'close-it', say('desk.close')),
  ]
  return message([
    text(say(`word.${word}`, { ...values, taker: offer ? sayTaker(say, offer.to) : '' })),
    ...(who === check.holder ? rows(word === 'closing' ? [...mayClose, goOn] : [goOn]) : []),
    small(say('caution.line')),
  ])
}
