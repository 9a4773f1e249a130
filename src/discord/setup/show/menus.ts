// The menus and the form of the set-up: channels, roles, languages, tags, and the number of weeks.
import {
  type APIActionRowComponent,
  type APIModalInteractionResponseCallbackData,
  type APISelectMenuComponent,
  ChannelType,
  ComponentType,
  SelectMenuDefaultValueType,
} from 'discord.js'
import { encodeSetup, type SetupAct } from '../../../custom-ids/setup-id.ts'
import type { Tag, Use } from '../../../server/places.ts'
import { mostModeratorRoles, mostTags, reminderHours, type ServerSettings } from '../../../server/settings.ts'
import { languages, type Say } from '../../../words/say.ts'
import { nameLanguage } from '../../../words/setup-words.ts'
import { form, lineField } from '../../message/form.ts'
import { cut } from '../../message/parts.ts'
import { discordsOwn, weeksField } from '../understand.ts'
import { valuesOf } from './values.ts'

type Row<T extends APISelectMenuComponent> = APIActionRowComponent<T>
const inRow = <T extends APISelectMenuComponent>(menu: T): Row<T> => ({
  type: ComponentType.ActionRow,
  components: [menu],
})

/** Only channels of the kind that can serve are listed. */
export function channelMenu(say: Say, revision: number, use: Use, chosen: string | null) {
  const act: SetupAct = use === 'offers' ? { is: 'forum', forum: 'chosen' } : { is: use, channel: 'chosen' }
  return inRow({
    type: ComponentType.ChannelSelect,
    custom_id: encodeSetup({ revision, act }),
    placeholder: cut(say(use === 'offers' ? 'setup.choose.forum' : 'setup.choose.channel'), 150),
    channel_types: use === 'offers' ? [ChannelType.GuildForum] : [ChannelType.GuildText, ChannelType.GuildAnnouncement],
    ...(chosen !== null && { default_values: [{ id: chosen, type: SelectMenuDefaultValueType.Channel }] }),
  })
}

export function roleMenu(say: Say, revision: number, is: 'moderators' | 'helpers', chosen: readonly string[]) {
  return inRow({
    type: ComponentType.RoleSelect,
    custom_id: encodeSetup({ revision, act: { is, roles: 'chosen' } }),
    placeholder: cut(say('setup.choose.roles'), 150),
    min_values: 1,
    max_values: mostModeratorRoles,
    // An empty list beside `min_values: 1` may be refused.
    ...(chosen.length > 0 && {
      default_values: chosen.map(id => ({ id, type: SelectMenuDefaultValueType.Role as const })),
    }),
  })
}

/** One role, to be pinged. */
export function pingMenu(say: Say, revision: number, chosen: string | null) {
  return inRow({
    type: ComponentType.RoleSelect,
    custom_id: encodeSetup({ revision, act: { is: 'ping', roles: 'chosen' } }),
    placeholder: cut(say('setup.choose.ping'), 150),
    ...(chosen !== null && { default_values: [{ id: chosen, type: SelectMenuDefaultValueType.Role as const }] }),
  })
}

/** After how many hours, or not at all. */
export function hoursMenu(say: Say, { revision, reminders }: ServerSettings) {
  return inRow({
    type: ComponentType.StringSelect,
    custom_id: encodeSetup({ revision, act: { is: 'remind' } }),
    placeholder: cut(say('setup.choose.hours'), 150),
    options: [
      { value: 'off', label: cut(say('setup.hours.off'), 100), default: reminders === null },
      ...reminderHours.map(hours => ({
        value: String(hours),
        label: cut(say('setup.hours', { hours }), 100),
        default: hours === reminders?.hours,
      })),
    ],
  })
}

export function languageMenu(say: Say, { revision, language }: ServerSettings) {
  return inRow({
    type: ComponentType.StringSelect,
    custom_id: encodeSetup({ revision, act: { is: 'language' } }),
    placeholder: cut(say('setup.choose.language'), 150),
    options: [
      ...languages.map(one => ({ value: one, label: cut(nameLanguage(say, one), 100), default: one === language })),
      { value: discordsOwn, label: cut(say('setup.choose.language-of-discord'), 100), default: language === null },
    ],
  })
}

export type OfferedTags = { readonly forum: string; readonly tags: readonly Tag[] }

/** Discord allows a forum twenty tags, a menu twenty-five options. */
export function tagMenu(say: Say, { revision, forumOffers }: ServerSettings, { forum, tags }: OfferedTags) {
  const chosen = forumOffers.find(one => one.forum === forum)?.tags ?? []
  return inRow({
    type: ComponentType.StringSelect,
    custom_id: encodeSetup({ revision, act: { is: 'tag', forum } }),
    placeholder: cut(say('setup.choose.tag'), 150),
    min_values: 1,
    max_values: Math.min(tags.length, mostTags),
    options: tags.slice(0, mostTags).map(({ id, name }) => ({
      value: id,
      label: cut(name, 100),
      default: chosen.includes(id),
    })),
  })
}

export function weeksForm(
  say: Say,
  settings: ServerSettings,
  opening: string,
): APIModalInteractionResponseCallbackData {
  const id = encodeSetup({ revision: settings.revision, act: { is: 'weeks', opening } })
  return form(id, say('setup.part.keeping'), [
    lineField(
      weeksField,
      { label: say('setup.form.weeks', valuesOf(settings)), hint: say('setup.form.weeks.hint') },
      { most: 5, required: true, value: String(settings.keepWeeks) },
    ),
  ])
}
