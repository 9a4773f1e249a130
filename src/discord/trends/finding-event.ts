// What a click or a form about a finding means, as a decision; or why it cannot be one.
import { GuildMember, PermissionFlagsBits, PermissionsBitField } from 'discord.js'
import type { FindingAct } from '../../custom-ids/trends-id.ts'
import type { Deciding } from '../../trends/findings/decide.ts'
import { weekOf, weekPlus } from '../../trends/week.ts'
import type { Refusal } from '../interaction/refusal.ts'
import type { Clicked } from '../interaction/reply.ts'
import type { Services } from '../services.ts'
import {
  longestWarning,
  reasonField,
  warningChannel,
  warningField,
  watchWeeks,
  weeksField,
} from './show/finding-forms.ts'

export type Meant = { readonly event: Deciding } | { readonly refusal: Refusal }

/** Undefined for what opens a form, and for a form that does not hold what it asks for. */
export function meantBy(services: Pick<Services, 'now'>, interaction: Clicked, act: FindingAct): Meant | undefined {
  const by = interaction.user.id
  const week = weekOf(services.now())
  if (act.does === 'put-off') return { event: { is: 'put-off', by, until: weekPlus(week, 1) } }
  if (act.does === 'undo') return { event: { is: 'undo', by, of: act.of, why: '' } }
  if (!interaction.isModalSubmit()) return undefined
  const { fields } = interaction
  switch (act.does) {
    case 'dismissed':
      return { event: { is: 'dismiss', by, why: fields.getTextInputValue(reasonField) } }
    case 'undone':
      return { event: { is: 'undo', by, of: act.of, why: fields.getTextInputValue(reasonField) } }
    case 'watched': {
      const weeks = watchWeeks.find(one => String(one) === fields.getStringSelectValues(weeksField)[0])
      return weeks && { event: { is: 'put-off', by, until: weekPlus(week, weeks) } }
    }
    case 'edited':
      return warningOf(interaction, text => ({ is: 'edit-warning', by, text }))
    case 'warned': {
      const channel = fields.getSelectedChannels(warningChannel, true).first()
      if (!channel) return undefined
      const told = toldOf(channel)
      const mayPost = told?.has(PermissionFlagsBits.SendMessages) ?? mayIn(interaction, channel.id)
      if (!mayPost) return { refusal: { code: 'may-not-post' } }
      return warningOf(interaction, text => ({ is: 'warn', by, channel: channel.id, text }))
    }
    default:
      return undefined
  }
}

function warningOf(interaction: Clicked, event: (text: string) => Deciding): Meant | undefined {
  const text = writtenIn(interaction)
  if (text === undefined) return undefined
  if (text.length <= longestWarning) return { event: event(text) }
  return { refusal: { code: 'long-warning', length: text.length, most: longestWarning } }
}

/** What a moderator has written into the form of a warning, to be given back where it was not posted. */
export function writtenIn(interaction: Clicked): string | undefined {
  if (!interaction.isModalSubmit() || !interaction.fields.fields.has(warningField)) return undefined
  return interaction.fields.getTextInputValue(warningField)
}

/** What Discord says the moderator may do there, as it came with the form; the bot's own right shows when it posts. */
function toldOf(channel: object): PermissionsBitField | undefined {
  const told = 'permissions' in channel ? channel.permissions : undefined
  if (typeof told === 'string' && /^\d+$/.test(told)) return new PermissionsBitField(BigInt(told))
  return told instanceof PermissionsBitField ? told : undefined
}

function mayIn(interaction: Clicked, channelId: string): boolean {
  const channel = interaction.guild?.channels.cache.get(channelId)
  // Whoever interacts comes with the interaction: of members nothing else is kept.
  const { member } = interaction
  if (!channel || !(member instanceof GuildMember)) return false
  return channel.permissionsFor(member).has(PermissionFlagsBits.SendMessages)
}
