// What a holder can do with their check and other people, and how a check looks while it is offered.
import { type APIMessageTopLevelComponent, ButtonStyle } from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import type { Offer } from '../../../../check/custody.ts'
import { custodyOf } from '../../../../check/custody-of.ts'
import { encodeHand, type HandOverPress } from '../../../../custom-ids/hand-over-id.ts'
import type { QuestionId } from '../../../../engine/answers.ts'
import type { Program } from '../../../../engine/compile.ts'
import { plain } from '../../../../words/plain.ts'
import type { Say } from '../../../../words/say.ts'
import { sayHandled, sayMoment, sayPerson, sayTaker } from '../../../../words/say-custody.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../../../message/parts.ts'
import { menu } from '../../show/check-buttons.ts'

export const handButton = (check: Check, does: HandOverPress, label: string, style?: ButtonStyle.Primary) =>
  pressButton(encodeHand({ check: check.id, does }), label, style)

/** Where the check is at a question, a moderator can be asked about it; at a result, about one that could not be told. */
export function showHands(say: Say, program: Program, check: Check, note?: string): ShownMessage {
  const { helpRequest, offer, shares, from, starter, history, closing, pair } = custodyOf(check)
  const buttons = [
    ...(helpRequest
      ? [handButton(check, 'unask', say('hands.unask'))]
      : 'question' in check.phase
        ? [handButton(check, 'ask', say('hands.ask'), ButtonStyle.Primary)]
        : []),
    offer
      ? handButton(check, 'withdraw', say('offered.withdraw'), ButtonStyle.Primary)
      : handButton(check, 'offer', say('hands.offer')),
    ...(from === undefined ? [] : [handButton(check, 'give-back', say('hands.give-back'))]),
    ...(starter === check.holder
      ? []
      : [shares ? handButton(check, 'keep', say('hands.keep')) : handButton(check, 'share', say('hands.share'))]),
  ]
  const second = pair ? handButton(check, 'no-pair', say('desk.no-pair')) : handButton(check, 'pair', say('desk.pair'))
  const past = history.slice(-4).map(one => sayHandled(say, one))
  return message([
    ...(note ? [text(note)] : []),
    text(`### ${say('hands.title')}\n${say('hands.text')}`),
    ...(check.phase.is === 'done' && !helpRequest ? askAbout(say, program, check) : []),
    ...(helpRequest ? [text(`${say('hands.asked')} ${say('hands.hot')}`)] : []),
    ...(offer
      ? [text(say('progress.offered', { taker: sayTaker(say, offer.to), until: sayMoment(offer.until) }))]
      : []),
    ...(shares ? [text(say('hands.shared'))] : []),
    ...(pair ? [text(say('desk.pair.on'))] : []),
    ...(closing ? [text(say('hands.closing', { who: sayPerson(closing.by) }))] : []),
    ...(past.length > 0 ? [small(past.join('\n'))] : []),
    ...rows([...buttons, second], 2),
    ...(closing
      ? rows([handButton(check, 'keep-open', say('desk.keep')), handButton(check, 'close-it', say('desk.close'))])
      : []),
    ...rows([handButton(check, 'return', say('hands.return'))]),
    small(say('caution.line')),
  ])
}

/** The questions nobody could tell, those of danger first, to ask a moderator about one; where there are none, how any other is asked about. */
function askAbout(say: Say, program: Program, check: Check): APIMessageTopLevelComponent[] {
  const options = check.trail
    .filter(id => check.answers[id]?.kind === 'cant-tell')
    .toSorted((a, b) => Number(program.hazards.has(b)) - Number(program.hazards.has(a)))
    .flatMap(id => {
      const question = program.questions.get(id)
      return question ? [{ id, label: question.ask }] : []
    })
  return options.length > 0
    ? [
        text(say('hands.ask-about')),
        ...rows([menu(check, { is: 'ask-about' }, say('hands.ask-about.choose'), options)], 1),
      ]
    : [text(say('hands.ask-after', { change: say('button.change'), hands: say('button.hands') }))]
}

export const showOffered = (say: Say, check: Check, offer: Offer, note?: string): ShownMessage =>
  message([
    ...(note ? [text(note)] : []),
    text(
      `### ${say('offered.title')}\n${say('offered.text', { taker: sayTaker(say, offer.to), until: sayMoment(offer.until) })}\n${say('hands.hot')}`,
    ),
    ...rows([handButton(check, 'withdraw', say('offered.withdraw'), ButtonStyle.Primary)]),
    small(say('caution.line')),
  ])

/** What a moderator wrote when they sent this question back, for whoever asked; undefined at every other question. */
export function sentBack(say: Say, check: Check, question: QuestionId): string | undefined {
  const last = custodyOf(check).history.at(-1)
  // Records of earlier versions do not say which question it was.
  const about = last?.question === undefined || last.question === question
  return last?.did === 'sent-back' && about && last.why ? say('hands.sent-back', { why: plain(last.why) }) : undefined
}
