// Says what is set up on a server, how the places are in which it is done, and what stands in the way of a change.

import type { Blind, Needed, PlaceState, Surroundings, Use } from '../server/places.ts'
import type { ForumOffers, ServerSettings } from '../server/settings.ts'
import type { Part } from '../server/setup-part.ts'
import type { Problem } from '../server/setup-problem.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'

const channelIn = (id: string): string => `<#${id}>`

const sayList = (say: Say, list: readonly string[]): string =>
  new Intl.ListFormat(say.locale, { type: 'conjunction' }).format(list)

const sayPermissions = (say: Say, permissions: readonly Needed[]): string =>
  sayList(
    say,
    permissions.map(one => `**${say(`permission.${one}`)}**`),
  )

/** What is the matter with a place; nothing where it can serve. */
function sayPlace(say: Say, use: Use, channel: string, state: PlaceState): string | undefined {
  if (state.is === 'fine') return undefined
  const values = { channel: channelIn(channel) }
  if (state.is !== 'missing') return say(`setup.place.${state.is}`, values)
  const key = use === 'offers' ? 'setup.place.missing-under-posts' : 'setup.place.missing'
  return say(key, { ...values, permissions: sayPermissions(say, state.permissions) })
}

export function sayProblem(say: Say, problem: Problem): string {
  switch (problem.code) {
    case 'place':
      return sayPlace(say, problem.use, problem.channel, problem.state) ?? ''
    case 'role-of-bot':
      return say('setup.problem.role-of-bot', { role: `<@&${problem.role}>` })
    case 'no-tags':
      return say('setup.problem.no-tags', { channel: channelIn(problem.channel) })
    default: {
      const { code, ...values } = problem
      return say(`setup.problem.${code}`, values)
    }
  }
}

/** What holds now, in a few words. */
export function sayNow(say: Say, settings: ServerSettings, around: Surroundings, part: Part): string {
  const channel = (id: string | null) => (id === null ? say('setup.now.nowhere') : channelIn(id))
  switch (part) {
    case 'reports':
      return channel(settings.reportsChannel)
    case 'review':
      return channel(settings.reviewChannel)
    case 'moderators':
      return sayRoles(say, settings.moderatorRoles, around, 'setup.now.no-roles')
    case 'helpers':
      return sayRoles(say, settings.helperRoles, around, 'setup.now.no-helpers')
    case 'reminders': {
      if (settings.reminders === null) return say('setup.now.no-reminders')
      const { hours, role } = settings.reminders
      if (role === null) return say('setup.now.reminders', { hours })
      return say('setup.now.reminders-pinging', { hours, role: sayRoles(say, [role], around, 'setup.now.no-roles') })
    }
    case 'language':
      return sayLanguage(say, settings)
    case 'recording': {
      const pooling = settings.pooling ? 'yes' : 'no'
      return say('setup.now.recording', { outcomes: settings.outcomes ? 'yes' : 'no', pooling })
    }
    case 'keeping':
      return say('setup.now.keeping', { weeks: settings.keepWeeks })
    case 'note':
      return say('setup.now.note', { on: settings.weeklyNote ? 'yes' : 'no' })
    case 'offers': {
      const { forumOffers } = settings
      if (forumOffers.length === 0) return say('setup.now.no-offers')
      return sayList(
        say,
        forumOffers.map(one => sayOffers(say, one, around)),
      )
    }
  }
}

/** More names of tags than these are counted. */
const mostNamed = 4

function sayOffers(say: Say, { forum, tags }: ForumOffers, around: Surroundings): string {
  const values = { forum: channelIn(forum) }
  const names = tags.flatMap(tag => around.tags[tag] ?? []).map(name => say('quoted', { text: plain(name) }))
  if (names.length === 0) {
    const state = around.forums.find(one => one.forum === forum)?.state
    return state?.is === 'fine' ? say('setup.now.offers-without-tag', values) : values.forum
  }
  const more = names.length - mostNamed
  const named = names.slice(0, mostNamed)
  const list = sayList(say, more > 0 ? [...named, say('setup.now.more-tags', { count: more })] : named)
  return say('setup.now.offers', { ...values, count: names.length, tags: list })
}

function sayRoles(
  say: Say,
  roles: readonly string[],
  { goneRoles }: Surroundings,
  none: 'setup.now.no-roles' | 'setup.now.no-helpers',
): string {
  const missing = roles.filter(role => goneRoles.includes(role)).length
  const named = roles.filter(role => !goneRoles.includes(role)).map(role => `<@&${role}>`)
  const gone = missing > 0 ? [say('setup.now.gone-roles', { count: missing })] : []
  const all = [...named, ...gone]
  return all.length === 0 ? say(none) : sayList(say, all)
}

/** Which of the named roles do not see what is for them, and what to change in Discord; at most three. */
function sayBlind(say: Say, { blind = [] }: Surroundings, part: Blind['of']): string[] | undefined {
  const lines = blind
    .filter(one => one.of === part)
    .slice(0, 3)
    .map(one => {
      const role = `<@&${one.role}>`
      if (one.is === 'command')
        return say('setup.blind.command', { role, command: `/${commandNamed(say, one.command)}` })
      return say(`setup.blind.channel${part === 'moderators' ? '' : (`.${part}` as const)}`, {
        role,
        channel: channelIn(one.channel),
      })
    })
  return lines.length > 0 ? lines : undefined
}

const commandNamed = (say: Say, command: 'trends' | 'check'): string =>
  command === 'trends' ? say('name.trends') : `${say('name.check')} ${say('name.check.waiting')}`

export const nameLanguage = (say: Say, language: string): string =>
  new Intl.DisplayNames([say.locale], { type: 'language' }).of(language) ?? language

function sayLanguage(say: Say, { language, discordLanguage }: ServerSettings): string {
  if (language !== null) return nameLanguage(say, language)
  return discordLanguage === null
    ? say('setup.now.language-of-discord')
    : say('setup.now.language-told', { language: nameLanguage(say, discordLanguage) })
}

/** Why nobody would be reminded, or not pinged as chosen. */
function sayUnheard(say: Say, { reminders, reviewChannel }: ServerSettings, around: Surroundings): string | undefined {
  if (reminders === null) return undefined
  if (reviewChannel === null) return say('setup.reminders.nowhere')
  const { role } = reminders
  if (role === null) return undefined
  if (around.goneRoles.includes(role)) return say('setup.reminders.role-gone')
  const lines = [
    ...(around.unheard ? [say('setup.reminders.silent', { role: `<@&${role}>` })] : []),
    ...(sayBlind(say, around, 'reminders') ?? []),
  ]
  return lines.length > 0 ? lines.join(' ') : undefined
}

/** The sentence about what no longer works as it is set; nothing where all is well. */
export function sayWarning(say: Say, settings: ServerSettings, around: Surroundings, part: Part): string | undefined {
  if (part === 'moderators' || part === 'helpers') return sayBlind(say, around, part)?.join(' ')
  if (part === 'reminders') return sayUnheard(say, settings, around)
  if (part === 'note')
    return settings.weeklyNote && settings.reportsChannel === null ? say('setup.note.no-channel') : undefined
  if (part === 'offers') {
    const lines = around.forums.flatMap(({ forum, state }) => sayPlace(say, part, forum, state) ?? [])
    return lines.length > 0 ? [...new Set(lines)].slice(0, 2).join(' ') : undefined
  }
  if (part !== 'reports' && part !== 'review') return undefined
  const id = part === 'reports' ? settings.reportsChannel : settings.reviewChannel
  if (!id) return undefined
  const state = around.places[part]
  return state && sayPlace(say, part, id, state)
}
