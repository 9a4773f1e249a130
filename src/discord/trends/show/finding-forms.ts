// The forms about a finding: a warning with its channel, a changed or withdrawn one, a reason, and how long it is watched.
import {
  type APILabelComponent,
  type APIModalInteractionResponseCallbackData,
  ChannelType,
  ComponentType,
  TextInputStyle,
} from 'discord.js'
import type { Finding } from '../../../trends/findings/finding.ts'
import { type Week, weekPlus } from '../../../trends/week.ts'
import { sayWeekStart } from '../../../words/finding-words.ts'
import type { Say } from '../../../words/say.ts'
import { cut } from '../../message/parts.ts'
import { encodeTrends } from '../trends-id.ts'

/** What a warning may be long, so that the caution always fits below it. */
export const longestWarning = 1500
export const longestWhy = 300
export const warningField = 'warning'
export const channelField = 'channel'
export const reasonField = 'reason'
export const weeksField = 'weeks'
/** For how many weeks something can be watched. */
export const watchWeeks = [1, 2, 4, 8, 13] as const

type Modal = APIModalInteractionResponseCallbackData

function lines(
  label: string,
  field: string,
  most: number,
  more: { hint?: string; value?: string } = {},
): APILabelComponent {
  return {
    type: ComponentType.Label,
    label: cut(label, 45),
    ...(more.hint !== undefined && { description: cut(more.hint, 100) }),
    component: {
      type: ComponentType.TextInput,
      custom_id: field,
      style: TextInputStyle.Paragraph,
      required: true,
      max_length: most,
      ...(more.value !== undefined && { value: cut(more.value, most) }),
    },
  }
}

const warningLines = (say: Say, value: string): APILabelComponent =>
  lines(say('finding.form.warning'), warningField, longestWarning, { hint: say('finding.form.warning.hint'), value })

const form = (
  say: Say,
  title: 'finding.warn' | 'finding.edit' | 'finding.undo.warned' | 'finding.dismiss' | 'finding.watch',
  custom_id: string,
  ...components: APILabelComponent[]
): Modal => ({
  custom_id,
  title: cut(say(title), 45),
  components,
})

export const warningForm = (say: Say, { id }: Finding, draft: string, opening: string): Modal =>
  form(say, 'finding.warn', encodeTrends({ is: 'finding', id, does: 'warned', opening }), warningLines(say, draft), {
    type: ComponentType.Label,
    label: cut(say('finding.form.channel'), 45),
    component: {
      type: ComponentType.ChannelSelect,
      custom_id: channelField,
      required: true,
      channel_types: [ChannelType.GuildText, ChannelType.GuildAnnouncement],
    },
  })

export const editForm = (say: Say, { id, warning }: Finding, opening: string): Modal =>
  form(
    say,
    'finding.edit',
    encodeTrends({ is: 'finding', id, does: 'edited', opening }),
    warningLines(say, warning?.text ?? ''),
  )

export const withdrawalForm = (say: Say, { id, decisions }: Finding, opening: string): Modal =>
  form(
    say,
    'finding.undo.warned',
    encodeTrends({ is: 'finding', id, does: 'undone', of: decisions.length, opening }),
    lines(say('finding.form.withdraw'), reasonField, longestWhy, { hint: say('finding.form.withdraw.hint') }),
  )

/** `custom_id`: of one finding, or of several at once. */
export const dismissalForm = (say: Say, custom_id: string): Modal =>
  form(say, 'finding.dismiss', custom_id, lines(say('finding.form.reason'), reasonField, longestWhy))

/** `week`: the one that runs. */
export const watchForm = (say: Say, { id }: Finding, week: Week, opening: string): Modal =>
  form(say, 'finding.watch', encodeTrends({ is: 'finding', id, does: 'watched', opening }), {
    type: ComponentType.Label,
    label: cut(say('finding.form.weeks'), 45),
    component: {
      type: ComponentType.StringSelect,
      custom_id: weeksField,
      required: true,
      options: watchWeeks.map(weeks => ({
        value: String(weeks),
        label: cut(say('finding.form.weeks.choice', { weeks, until: sayWeekStart(say, weekPlus(week, weeks)) }), 100),
        default: weeks === 4,
      })),
    },
  })
