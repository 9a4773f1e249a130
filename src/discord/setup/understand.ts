// What a click in the set-up asks for: a change, a tag still to be chosen, or what stands in its way.
import type { Guild } from 'discord.js'
import type { FileAct, HistoryAct, SetupAct } from '../../custom-ids/setup-id.ts'
import type { Change } from '../../server/change.ts'
import type { Tag } from '../../server/places.ts'
import {
  type ForumOffers,
  leastKeepWeeks,
  mostKeepWeeks,
  reminderHours,
  type ServerSettings,
} from '../../server/settings.ts'
import type { ChannelPart } from '../../server/setup-part.ts'
import type { Problem } from '../../server/setup-problem.ts'
import { languages } from '../../words/say.ts'
import type { Clicked } from '../interaction/reply.ts'
import { testPlace } from './places.ts'

export type SetupIntent =
  | { readonly is: 'change'; readonly change: Change }
  | { readonly is: 'choose-tag'; readonly forum: string; readonly tags: readonly Tag[] }
  | { readonly is: 'problem'; readonly problem: Problem }

/** The acts that ask for a change of one part. */
export type ChangingAct = Exclude<SetupAct, { is: 'see' | 'begin' | 'ask-weeks' } | HistoryAct | FileAct>

/** Stands in the menu of languages for the one the server tells Discord. */
export const discordsOwn = 'discord'
export const weeksField = 'weeks'

/** Whether Discord has to be asked before it can be answered. */
export const asksDiscord = (act: ChangingAct): boolean =>
  act.is === 'tag' ||
  ((act.is === 'moderators' || act.is === 'helpers' || act.is === 'ping') && act.roles === 'chosen') ||
  ((act.is === 'reports' || act.is === 'review') && act.channel !== 'none') ||
  (act.is === 'forum' && act.forum !== 'none')

export async function understand(
  guild: Guild,
  interaction: Clicked,
  settings: ServerSettings,
  act: ChangingAct,
): Promise<SetupIntent> {
  const values = interaction.isAnySelectMenu() ? interaction.values : []
  switch (act.is) {
    case 'reports':
    case 'review':
      return channelChange(guild, act.is, act.channel === 'chosen' ? (values[0] ?? '') : act.channel)
    case 'moderators':
    case 'helpers': {
      const is = act.is === 'moderators' ? 'moderator-roles' : 'helper-roles'
      return act.roles === 'none' ? change({ is, roles: [] }) : roleChange(guild, is, values)
    }
    case 'remind':
      return change({ is: 'reminders', hours: reminderHours.find(hours => String(hours) === values[0]) ?? null })
    case 'ping':
      return act.roles === 'none' ? change({ is: 'reminder-role', role: null }) : pingChange(guild, values)
    case 'language': {
      const [language = ''] = values
      if (language === discordsOwn) return change({ is: 'language', language: null })
      return languages.includes(language) ? change({ is: 'language', language }) : problem({ code: 'language-gone' })
    }
    case 'outcomes':
    case 'pooling':
      return change({ is: act.is, on: act.on })
    case 'note':
      return change({ is: 'weekly-note', on: act.on })
    case 'weeks': {
      const typed = interaction.isModalSubmit() ? interaction.fields.getTextInputValue(weeksField).trim() : ''
      return /^\d{1,5}$/.test(typed)
        ? change({ is: 'keep-weeks', weeks: Number(typed) })
        : problem({ code: 'weeks-not-a-number', least: leastKeepWeeks, most: mostKeepWeeks })
    }
    case 'fewer':
      return change({ is: 'keep-weeks', weeks: act.weeks })
    case 'forum':
      if (act.forum === 'none') return change({ is: 'forum-offers', offers: [] })
      if (act.forum === 'gone') return change({ is: 'forum-offers', offers: await stillThere(guild, settings) })
      return forumTags(guild, act.forum === 'chosen' ? (values[0] ?? '') : act.forum)
    case 'untag':
      return change({ is: 'offers-in', forum: act.forum, tags: [] })
    case 'tag': {
      const meant = await forumTags(guild, act.forum)
      if (meant.is !== 'choose-tag') return meant
      return values.every(tag => meant.tags.some(one => one.id === tag))
        ? change({ is: 'offers-in', forum: act.forum, tags: values })
        : problem({ code: 'tag-gone' })
    }
  }
}

const change = (one: Change): SetupIntent => ({ is: 'change', change: one })
const problem = (one: Problem): SetupIntent => ({ is: 'problem', problem: one })

async function channelChange(guild: Guild, part: ChannelPart, channel: string): Promise<SetupIntent> {
  const is = part === 'reports' ? 'reports-channel' : 'review-channel'
  if (channel === 'none') return change({ is, channel: null })
  const state = await testPlace(guild, channel, part)
  return state.is === 'fine' ? change({ is, channel }) : problem({ code: 'place', use: part, channel, state })
}

async function roleChange(
  guild: Guild,
  is: 'moderator-roles' | 'helper-roles',
  chosen: readonly string[],
): Promise<SetupIntent> {
  return (await unfit(guild, chosen)) ?? change({ is, roles: chosen })
}

async function pingChange(guild: Guild, chosen: readonly string[]): Promise<SetupIntent> {
  return (await unfit(guild, chosen)) ?? change({ is: 'reminder-role', role: chosen[0] ?? null })
}

/** What keeps one of these roles from being named; nothing where all of them can be. */
async function unfit(guild: Guild, chosen: readonly string[]): Promise<SetupIntent | undefined> {
  const roles = await guild.roles.fetch(undefined, { force: true })
  for (const id of chosen) {
    const role = roles.get(id)
    if (!role) return problem({ code: 'role-gone' })
    if (role.managed) return problem({ code: 'role-of-bot', role: id })
  }
  return undefined
}

async function forumTags(guild: Guild, forum: string): Promise<SetupIntent> {
  const state = await testPlace(guild, forum, 'offers')
  if (state.is !== 'fine') return problem({ code: 'place', use: 'offers', channel: forum, state })
  if (state.tags.length === 0) return problem({ code: 'no-tags', channel: forum })
  return { is: 'choose-tag', forum, tags: state.tags }
}

/** The offers in forums that have not been deleted; those the bot may not see stay. */
async function stillThere(guild: Guild, { forumOffers }: ServerSettings): Promise<ForumOffers[]> {
  const states = await Promise.all(forumOffers.map(one => testPlace(guild, one.forum, 'offers')))
  return forumOffers.filter((_, at) => states[at]?.is !== 'gone')
}
