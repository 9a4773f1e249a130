// What moderators see of somebody who is stuck: the question, their words and photographs; and the question to answer for them.
import { ButtonStyle } from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import { custodyOf } from '../../../../check/custody-of.ts'
import type { Question } from '../../../../engine/pack/pack.ts'
import { plain } from '../../../../words/plain.ts'
import type { Say } from '../../../../words/say.ts'
import { sayPerson } from '../../../../words/say-custody.ts'
import { gallery, message, rows, type ShownMessage, small, text } from '../../../message/parts.ts'
import type { ShownPicture } from '../../../message/shown-picture.ts'
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
        handButton(check, 'send-back', say('help-request.send-back')),
        handButton(check, 'take-over', say('help-request.take-over')),
      ]),
      small(`${say('help-request.care')}\n${say('caution.line')}`),
    ],
    photos,
  )
}

/** A help request that was answered, sent back or withdrawn: its photographs go with it. */
export const showHelpRequestOver = (say: Say): ShownMessage =>
  message([text(say('help-request.over')), small(say('caution.line'))])

/** What the moderator sees once their answer is stored; `told`: in which channel the holder was told, or in none, once that is known. */
export function showThanks(say: Say, check: Check, told?: { readonly in: string | undefined }): ShownMessage {
  const holder = sayPerson(check.holder)
  const untold = check.phase.is === 'done' ? 'helping.untold.result' : 'helping.untold'
  const where = told && (told.in ? say('helping.told', { holder, channel: `<#${told.in}>` }) : say(untold, { holder }))
  return message([text(say('helping.thanks', { holder })), ...(where ? [text(where)] : []), small(say('caution.line'))])
}
