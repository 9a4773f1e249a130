// A check as everybody in a channel sees it: what is offered to whom, who has it now; never an answer.
import { ButtonStyle } from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import { custodyOf } from '../../../../check/custody-of.ts'
import type { PersonId } from '../../../../check/ids.ts'
import type { Key } from '../../../../words/catalogue.ts'
import { plain } from '../../../../words/plain.ts'
import type { Say } from '../../../../words/say.ts'
import { sayDay, sayPerson, sayTaker } from '../../../../words/say-custody.ts'
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
  const why = history.findLast(one => one.did === 'offered')?.why
  const lines = [
    `### ${say('panel.title')}`,
    say('panel.offer', { starter: holder, what, taker: sayTaker(say, offer.to) }),
    ...(why ? [say('panel.why', { why: plain(why) })] : []),
    say('panel.until', { until: sayDay(offer.until) }),
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
  return ['took', 'took-over', 'gave-back', 'asked', 'helped', 'sent-back', 'unasked'].includes(
    custodyOf(check).history.at(-1)?.did ?? '',
  )
    ? 'panel.taken'
    : 'panel.back'
}

export type PanelNote = 'helped' | 'unsure' | 'result' | 'danger' | 'sent-back' | 'gave-back' | 'took-over'

/** Tells `who` in a channel: the holder to go on, with a button; somebody else what they must know. */
export const showWord = (say: Say, what: string, check: Check, word: PanelNote, who: PersonId): ShownMessage =>
  message([
    text(say(`word.${word}`, { who: sayPerson(who), holder: sayPerson(check.holder), what })),
    ...(who === check.holder ? rows([handButton(check, 'go-on', say('word.go-on'), ButtonStyle.Primary)]) : []),
    small(say('caution.line')),
  ])
