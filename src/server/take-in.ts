// What a file of settings would make of a server's own: one change, and what of the file is left out and why.
import { type Asked, type Change, type ChangeRefusal, changeSettings } from './change.ts'
import { changeLinks, type ChangeRefusal as LinkChangeRefusal } from './change-links.ts'
import type { SettingsFile } from './exchange.ts'
import type { Field, Fields } from './history.ts'
import { readAddress } from './links.ts'
import type { ServerSettings } from './settings.ts'

export type LeftOut =
  | { readonly is: 'field'; readonly field: Field; readonly refusal: ChangeRefusal }
  | { readonly is: 'link'; readonly title: string; readonly url: string; readonly refusal: LinkChangeRefusal }

export type TakenIn = { readonly settings: ServerSettings; readonly left: readonly LeftOut[] }

/**
 * The settings with what the file says, at the next revision. What the file is silent about stays, links that are not in it too. A link
 * that is here under the same address keeps its dates. `linkId`: an id for the link of this number in the file.
 */
export function takeIn(
  settings: ServerSettings,
  file: Pick<SettingsFile, 'fields' | 'links'>,
  asked: Asked,
  now: number,
  linkId: (number: number) => string,
): TakenIn {
  const left: LeftOut[] = []
  let after = settings
  for (const [field, change] of changesIn(file.fields)) {
    const changing = changeSettings(after, change, asked)
    if (changing.ok) after = changing.settings
    else left.push({ is: 'field', field, refusal: changing.refusal })
  }
  for (const [i, { url, title }] of file.links.entries()) {
    const address = readAddress(url)
    const known = address.ok ? after.links.find(link => link.url === address.url) : undefined
    const change = known
      ? ({ is: 'edit', id: known.id, url, title } as const)
      : ({ is: 'add', id: linkId(i), url, title } as const)
    const changing = changeLinks(after, change, now)
    if (changing.ok) after = changing.settings
    else left.push({ is: 'link', title, url, refusal: changing.refusal })
  }
  const { by: changedBy, discordLanguage } = asked
  return { settings: { ...after, revision: settings.revision + 1, changedBy, discordLanguage }, left }
}

/** Recording comes before pooling, which needs it. */
function changesIn(fields: Partial<Fields>): [Field, Change][] {
  const { reportsChannel, reviewChannel, moderatorRoles, helperRoles, language, outcomes, pooling } = fields
  const { keepWeeks, forumOffers, weeklyNote, reminders } = fields
  return [
    ...one('language', language, value => ({ is: 'language', language: value })),
    ...one('reportsChannel', reportsChannel, channel => ({ is: 'reports-channel', channel })),
    ...one('reviewChannel', reviewChannel, channel => ({ is: 'review-channel', channel })),
    ...one('moderatorRoles', moderatorRoles, roles => ({ is: 'moderator-roles', roles })),
    ...one('helperRoles', helperRoles, roles => ({ is: 'helper-roles', roles })),
    ...one('reminders', reminders, value => ({ is: 'reminders', hours: value?.hours ?? null })),
    // The role is named once there are reminders that can ping it.
    ...one('reminders', reminders ?? undefined, ({ role }) => ({ is: 'reminder-role', role })),
    ...one('outcomes', outcomes, on => ({ is: 'outcomes', on })),
    ...one('pooling', pooling, on => ({ is: 'pooling', on })),
    ...one('keepWeeks', keepWeeks, weeks => ({ is: 'keep-weeks', weeks })),
    ...one('weeklyNote', weeklyNote, on => ({ is: 'weekly-note', on })),
    ...one('forumOffers', forumOffers, offers => ({ is: 'forum-offers', offers })),
  ]
}

const one = <T>(field: Field, value: T | undefined, change: (value: T) => Change): [Field, Change][] =>
  value === undefined ? [] : [[field, change(value)]]
