// What can be changed about a server's settings, one thing at a time, and what cannot.
import {
  type ForumOffers,
  leastKeepWeeks,
  mostForums,
  mostKeepWeeks,
  mostModeratorRoles,
  mostTags,
  reminderHours,
  type ServerSettings,
} from './settings.ts'

export type Change =
  | { readonly is: 'reports-channel' | 'review-channel'; readonly channel: string | null }
  | { readonly is: 'moderator-roles' | 'helper-roles'; readonly roles: readonly string[] }
  /** Null: none any more. */
  | { readonly is: 'reminders'; readonly hours: number | null }
  | { readonly is: 'reminder-role'; readonly role: string | null }
  | { readonly is: 'language'; readonly language: string | null }
  | { readonly is: 'outcomes' | 'pooling' | 'weekly-note'; readonly on: boolean }
  | { readonly is: 'keep-weeks'; readonly weeks: number }
  | { readonly is: 'forum-offers'; readonly offers: readonly ForumOffers[] }
  /** The tags of one forum; without any, it gets no offers. */
  | { readonly is: 'offers-in'; readonly forum: string; readonly tags: readonly string[] }

export type ChangeRefusal =
  | { readonly code: 'weeks-out-of-range'; readonly least: number; readonly most: number }
  | { readonly code: 'too-many-roles' | 'too-many-forums'; readonly most: number }
  | {
      readonly code:
        | 'everyone-as-moderator'
        | 'everyone-as-helper'
        | 'everyone-as-pinged'
        | 'no-reminders'
        | 'nothing-to-pool'
    }

export type Changing =
  | { readonly ok: true; readonly settings: ServerSettings }
  | { readonly ok: false; readonly refusal: ChangeRefusal }

/** `by`: the interaction that asks for it. `discordLanguage`: what the server tells Discord at that moment. */
export type Asked = { readonly by: string; readonly discordLanguage: string | null }

/** The settings after the change, at the next revision; a refusal changes nothing. */
export function changeSettings(settings: ServerSettings, change: Change, asked: Asked): Changing {
  const after = apply(settings, change)
  if ('code' in after) return { ok: false, refusal: after }
  const { by: changedBy, discordLanguage } = asked
  return { ok: true, settings: { ...settings, ...after, revision: settings.revision + 1, changedBy, discordLanguage } }
}

function apply(settings: ServerSettings, change: Change): Partial<ServerSettings> | ChangeRefusal {
  switch (change.is) {
    case 'reports-channel':
      return { reportsChannel: change.channel }
    case 'review-channel':
      return { reviewChannel: change.channel }
    case 'language':
      return { language: change.language }
    case 'forum-offers':
      return offersOf(change.offers)
    case 'offers-in': {
      const { forum, tags } = change
      const known = settings.forumOffers.some(one => one.forum === forum)
      return offersOf(
        known
          ? settings.forumOffers.map(one => (one.forum === forum ? { forum, tags } : one))
          : [...settings.forumOffers, { forum, tags }],
      )
    }
    case 'moderator-roles':
      if (change.roles.length > mostModeratorRoles) return { code: 'too-many-roles', most: mostModeratorRoles }
      // Discord gives the role that everybody has the server's own id.
      if (change.roles.includes(settings.server)) return { code: 'everyone-as-moderator' }
      return { moderatorRoles: [...new Set(change.roles)] }
    case 'helper-roles':
      if (change.roles.length > mostModeratorRoles) return { code: 'too-many-roles', most: mostModeratorRoles }
      if (change.roles.includes(settings.server)) return { code: 'everyone-as-helper' }
      return { helperRoles: [...new Set(change.roles)] }
    case 'reminders': {
      const { hours } = change
      if (hours === null) return { reminders: null }
      const least = Math.min(...reminderHours)
      const fits = (reminderHours as readonly number[]).includes(hours)
      return { reminders: { hours: fits ? hours : least, role: settings.reminders?.role ?? null } }
    }
    case 'reminder-role':
      if (settings.reminders === null) return { code: 'no-reminders' }
      if (change.role === settings.server) return { code: 'everyone-as-pinged' }
      return { reminders: { ...settings.reminders, role: change.role } }
    case 'outcomes':
      // Whoever stops recording has not agreed to pool what may be recorded later.
      return change.on ? { outcomes: true } : { outcomes: false, pooling: false }
    case 'weekly-note':
      return { weeklyNote: change.on }
    case 'pooling':
      return change.on && !settings.outcomes ? { code: 'nothing-to-pool' } : { pooling: change.on }
    case 'keep-weeks': {
      const { weeks } = change
      const fits = Number.isInteger(weeks) && weeks >= leastKeepWeeks && weeks <= mostKeepWeeks
      return fits ? { keepWeeks: weeks } : { code: 'weeks-out-of-range', least: leastKeepWeeks, most: mostKeepWeeks }
    }
  }
}

/** Each forum once, with all its tags, and none without any. */
function offersOf(offers: readonly ForumOffers[]): Partial<ServerSettings> | ChangeRefusal {
  const tags = new Map<string, Set<string>>()
  for (const one of offers) tags.set(one.forum, new Set([...(tags.get(one.forum) ?? []), ...one.tags]))
  const forumOffers = [...tags]
    .filter(([, some]) => some.size > 0)
    .map(([forum, some]) => ({ forum, tags: [...some].slice(0, mostTags) }))
  return forumOffers.length > mostForums ? { code: 'too-many-forums', most: mostForums } : { forumOffers }
}
