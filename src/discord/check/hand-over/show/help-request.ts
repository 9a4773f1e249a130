// What moderators see of somebody who is stuck: the question, their words and photographs; and the question to answer for them.
import { ButtonStyle } from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import type { HandOverAction, HandOverRecord } from '../../../../check/custody.ts'
import { custodyOf } from '../../../../check/custody-of.ts'
import type { Program } from '../../../../engine/compile.ts'
import type { Question } from '../../../../engine/pack/pack.ts'
import type { ShownPicture } from '../../../../services/pictures/shown-picture.ts'
import { sayAnswer } from '../../../../words/describe.ts'
import { plain } from '../../../../words/plain.ts'
import type { Say } from '../../../../words/say.ts'
import { sayHandled, sayPerson } from '../../../../words/say-custody.ts'
import { gallery, message, rows, type ShownMessage, small, text } from '../../../message/parts.ts'
import { handButton } from './holder-menu.ts'

export function showHelpRequest(
  say: Say,
  what: string,
  check: Check,
  question: Question,
  photos: readonly ShownPicture[],
): ShownMessage {
  const words = custodyOf(check).helpRequest?.words
  const lines = [
    `### ${say('help-request.title')}`,
    say('help-request.text', { holder: sayPerson(check.holder), what }),
    `**${question.ask}**`,
    ...(words ? [say('help-request.words', { words: plain(words) })] : []),
  ]
  return message(
    [
      text(lines.join('\n')),
      ...gallery(photos),
      ...(photos.length > 0 ? [small(say('help-request.photos', { count: photos.length }))] : []),
      ...rows([
        handButton(check, 'help', say('help-request.help'), ButtonStyle.Primary),
        handButton(check, 'claim', say('help-request.claim')),
        handButton(check, 'pass-on', say('help-request.pass-on')),
        handButton(check, 'send-back', say('help-request.send-back')),
        handButton(check, 'take-over', say('help-request.take-over')),
      ]),
      small(`${say('help-request.care')}\n${say('caution.line')}`),
    ],
    photos,
  )
}

/** A helpRequest that was answered, sent back or withdrawn, for the moderators who saw it: who did what, and when. Its photographs go with it. */
export function showHelpRequestOver(say: Say, check: Check, program?: Program): ShownMessage {
  const last = custodyOf(check).history.findLast(one => endings.includes(one.did))
  const answer = last?.did === 'helped' ? answerOf(say, check, last, program) : undefined
  const lines = [say('help-request.over'), ...(last ? [sayHandled(say, last)] : []), ...(answer ? [answer] : [])]
  return message([text(lines.join('\n')), small(say('caution.line'))])
}

const endings: readonly HandOverAction[] = ['helped', 'sent-back', 'took-over', 'unasked']

/** What a moderator has answered in the holder's place, and only that. */
function answerOf(
  say: Say,
  check: Check,
  { question = '', by }: HandOverRecord,
  program?: Program,
): string | undefined {
  const asked = program?.questions.get(question)
  const answer = check.answers[question]
  if (!asked || !answer || check.saidBy?.[question] !== by) return undefined
  return say('answer.said', { question: asked.ask, answer: sayAnswer(say, asked, answer) })
}

/** What whoever claims a question, lets it go or passes it on sees. */
export function showClaimed(say: Say, check: Check): ShownMessage {
  const { history, helpRequest } = custodyOf(check)
  const last = history.at(-1)
  return message([
    text(last ? sayHandled(say, last) : say('help-request.over')),
    ...rows([
      handButton(check, 'help', say('help-request.help'), ButtonStyle.Primary),
      helpRequest?.claimed
        ? handButton(check, 'let-go', say('help-request.let-go'))
        : handButton(check, 'claim', say('help-request.claim')),
    ]),
    small(say('caution.line')),
  ])
}

/** What a helper sees whose answer waits for a second one's. */
export const showFirstOfTwo = (say: Say, check: Check): ShownMessage =>
  message([text(say('helping.waits-second', { holder: sayPerson(check.holder) })), small(say('caution.line'))])

/** What whoever has asked the holder something sees; `where`: the channel in which the holder was told, if any. */
export function showAsked(say: Say, check: Check, told: string, where: string | undefined): ShownMessage {
  const holder = sayPerson(check.holder)
  const so = where ? say('helping.told', { holder, channel: `<#${where}>` }) : say('desk.untold', { holder })
  return message([text(`${told}\n${so}`), small(say('caution.line'))])
}

/** What the moderator sees once their answer is stored; `told`: in which channel the holder was told, or in none, once that is known. */
export function showThanks(say: Say, check: Check, told?: { readonly in: string | undefined }): ShownMessage {
  const holder = sayPerson(check.holder)
  const untold = check.phase.is === 'done' ? 'helping.untold.result' : 'helping.untold'
  const where = told && (told.in ? say('helping.told', { holder, channel: `<#${told.in}>` }) : say(untold, { holder }))
  return message([text(say('helping.thanks', { holder })), ...(where ? [text(where)] : []), small(say('caution.line'))])
}
