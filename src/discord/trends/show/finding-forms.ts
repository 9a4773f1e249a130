// The forms about a finding: a warning with its channel, a changed or withdrawn one, a reason, and how long it is watched.
import { type APIModalInteractionResponseCallbackData, ChannelType } from 'discord.js'
import { encodeTrends } from '../../../custom-ids/trends-id.ts'
import type { Finding } from '../../../trends/findings/finding.ts'
import { type Week, weekPlus } from '../../../trends/week.ts'
import { sayWeek } from '../../../words/dates.ts'
import type { Say } from '../../../words/say.ts'
import { channelField, form, menuField, textField } from '../../message/form.ts'
import { cut } from '../../message/parts.ts'

/** What a warning may be long, so that the caution always fits below it. */
export const longestWarning = 1500
const longestWhy = 300
export const warningField = 'warning'
export const warningChannel = 'channel'
export const reasonField = 'reason'
export const weeksField = 'weeks'
/** For how many weeks something can be watched. */
export const watchWeeks = [1, 2, 4, 8, 13] as const

type Modal = APIModalInteractionResponseCallbackData

const warningText = (say: Say, value: string) =>
  textField(
    warningField,
    { label: say('finding.form.warning'), hint: say('finding.form.warning.hint') },
    { most: longestWarning, required: true, value },
  )

export const warningForm = (say: Say, { id }: Finding, draft: string, opening: string): Modal =>
  form(encodeTrends({ is: 'finding', id, does: 'warned', opening }), say('finding.warn'), [
    warningText(say, draft),
    channelField(
      warningChannel,
      { label: say('finding.form.channel') },
      { required: true, channel_types: [ChannelType.GuildText, ChannelType.GuildAnnouncement] },
    ),
  ])

export const editForm = (say: Say, { id, warning }: Finding, opening: string): Modal =>
  form(encodeTrends({ is: 'finding', id, does: 'edited', opening }), say('finding.edit'), [
    warningText(say, warning?.text ?? ''),
  ])

export const withdrawalForm = (say: Say, { id, decisions }: Finding, opening: string): Modal =>
  form(encodeTrends({ is: 'finding', id, does: 'undone', of: decisions.length, opening }), say('finding.undo.warned'), [
    textField(
      reasonField,
      { label: say('finding.form.withdraw'), hint: say('finding.form.withdraw.hint') },
      { most: longestWhy, required: true },
    ),
  ])

/** `custom_id`: of one finding, or of several at once. */
export const dismissalForm = (say: Say, custom_id: string): Modal =>
  form(custom_id, say('finding.dismiss'), [
    textField(reasonField, { label: say('finding.form.reason') }, { most: longestWhy, required: true }),
  ])

/** `week`: the one that runs. */
export const watchForm = (say: Say, { id }: Finding, week: Week, opening: string): Modal =>
  form(encodeTrends({ is: 'finding', id, does: 'watched', opening }), say('finding.watch'), [
    menuField(
      weeksField,
      { label: say('finding.form.weeks') },
      {
        required: true,
        options: watchWeeks.map(weeks => ({
          value: String(weeks),
          label: cut(say('finding.form.weeks.choice', { weeks, until: sayWeek(say, weekPlus(week, weeks)) }), 100),
          default: weeks === 4,
        })),
      },
    ),
  ])
