// The form that takes a file of settings, and what the file would change, before anything is changed.
import { type APIModalInteractionResponseCallbackData, ButtonStyle } from 'discord.js'
import { encodeSetup } from '../../../custom-ids/setup-id.ts'
import { differenceOf } from '../../../server/history.ts'
import type { Surroundings } from '../../../server/places.ts'
import type { ServerSettings } from '../../../server/settings.ts'
import type { TakenIn } from '../../../server/take-in.ts'
import { sayDifference } from '../../../words/history-words.ts'
import type { Say } from '../../../words/say.ts'
import { sayAway, sayLeftOut } from '../../../words/settings-file-words.ts'
import { form, uploadField } from '../../message/form.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import type { AwayFromHere } from '../fits-here.ts'

export const fileField = 'file'

export const fileForm = (
  say: Say,
  { revision }: ServerSettings,
  opening: string,
): APIModalInteractionResponseCallbackData =>
  form(encodeSetup({ revision, act: { is: 'file', opening } }), say('setup.file.import'), [
    uploadField(fileField, { label: say('setup.file.form'), hint: say('setup.file.form.hint') }, 1),
  ])

export type Taking = TakenIn & { readonly away: readonly AwayFromHere[]; readonly foreign: boolean }

export function showTakingIn(
  say: Say,
  settings: ServerSettings,
  around: Surroundings,
  { settings: after, left, away, foreign }: Taking,
  draft: string,
): ShownMessage {
  const { revision } = settings
  const difference = differenceOf(settings, after)
  const lines = sayDifference(say, difference, settings, around).map(line => `- ${line}`)
  const out = [...away.map(one => sayAway(say, one)), ...left.map(one => sayLeftOut(say, one))]
  const deletes = after.keepWeeks < settings.keepWeeks
  const stops = settings.outcomes && !after.outcomes
  const back = pressButton(encodeSetup({ revision, act: { is: 'see', what: 'overview' } }), say('setup.file.no'))
  const press = pressButton(
    encodeSetup({ revision, act: { is: 'take-in', draft } }),
    say('setup.file.yes'),
    deletes || stops ? ButtonStyle.Danger : ButtonStyle.Primary,
  )
  return message([
    text(
      cut(
        [`### ${say('setup.file.title')}`, ...(lines.length > 0 ? lines : [say('setup.file.same')])].join('\n'),
        1800,
      ),
    ),
    ...(deletes || stops
      ? [
          text(
            [
              ...(deletes ? [`⚠ ${say('history.sure.fewer', { weeks: after.keepWeeks })}`] : []),
              ...(stops ? [`⚠ ${say('history.sure.stop')}`] : []),
            ].join('\n'),
          ),
        ]
      : []),
    ...(out.length > 0
      ? [
          text(
            cut(
              [
                `**${say('setup.file.left-out', { count: out.length })}**`,
                ...out.slice(0, 6).map(line => `- ${line}`),
              ].join('\n'),
              1200,
            ),
          ),
        ]
      : []),
    ...(foreign ? [small(say('setup.file.foreign'))] : []),
    small(say('setup.file.stays')),
    ...rows(lines.length > 0 ? [press, back] : [back]),
    small(say('caution.line')),
  ])
}
