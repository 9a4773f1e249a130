// Whether settings that were not chosen from a menu just now fit the server as it is: its channels, roles, forums and languages.
import type { Guild } from 'discord.js'
import type { Field, Fields } from '../../server/history.ts'
import type { Problem } from '../../server/setup-problem.ts'
import { languages } from '../../words/say.ts'
import { testPlace } from './places.ts'

/** What stands in the way of each of them; nothing where all fit. */
export async function problemsWith(guild: Guild, fields: Partial<Fields>): Promise<Problem[]> {
  const {
    reportsChannel,
    reviewChannel,
    forumOffers = [],
    moderatorRoles = [],
    helperRoles = [],
    reminders,
    language,
  } = fields
  const places = [
    { use: 'reports', channel: reportsChannel },
    { use: 'review', channel: reviewChannel },
  ] as const
  const problems: Problem[] = []
  for (const { use, channel } of places) {
    if (!channel) continue
    const state = await testPlace(guild, channel, use)
    if (state.is !== 'fine') problems.push({ code: 'place', use, channel, state })
  }
  for (const { forum, tags } of forumOffers) {
    const state = await testPlace(guild, forum, 'offers')
    if (state.is !== 'fine') problems.push({ code: 'place', use: 'offers', channel: forum, state })
    else if (!tags.every(tag => state.tags.some(one => one.id === tag))) problems.push({ code: 'tag-gone' })
  }
  const named = [...moderatorRoles, ...helperRoles, ...(reminders?.role ? [reminders.role] : [])]
  const roles = named.length > 0 ? await guild.roles.fetch(undefined, { force: true }) : undefined
  for (const id of named) {
    const role = roles?.get(id)
    if (!role) problems.push({ code: 'role-gone' })
    else if (role.managed) problems.push({ code: 'role-of-bot', role: id })
  }
  if (language && !languages.includes(language)) problems.push({ code: 'language-gone' })
  return problems
}

/** What of a file's settings does not fit here, and why. `roles`: so many of a list. */
export type AwayFromHere = { readonly field: Field; readonly problem: Problem }

/** What of a file's settings fits here; ids of another server's channels and roles are left out, and whatever else does not fit. */
export async function withoutForeign(
  guild: Guild,
  fields: Partial<Fields>,
): Promise<{ readonly fields: Partial<Fields>; readonly away: readonly AwayFromHere[] }> {
  const left: Partial<Fields> = { ...fields }
  const away: AwayFromHere[] = []
  for (const field of Object.keys(fields) as Field[]) {
    const several = partsOf(fields, field)
    if (several) {
      const tried = await Promise.all(several.map(async one => [one, (await problemsWith(guild, one))[0]] as const))
      for (const [, problem] of tried) if (problem) away.push({ field, problem })
      const fit = tried.filter(([, problem]) => !problem).flatMap(([one]) => one[field] as readonly unknown[])
      // Where none of them is of here, those that are named here stay.
      if (fit.length > 0 || several.length === 0) Object.assign(left, { [field]: fit })
      else delete left[field]
      continue
    }
    const [problem] = await problemsWith(guild, { [field]: fields[field] })
    if (!problem) continue
    away.push({ field, problem })
    delete left[field]
  }
  return { fields: left, away }
}

/** A setting that names several, as so many settings that name one each; undefined for every other. */
function partsOf(fields: Partial<Fields>, field: Field): Partial<Fields>[] | undefined {
  switch (field) {
    case 'moderatorRoles':
    case 'helperRoles':
      return fields[field]?.map(id => ({ [field]: [id] }))
    case 'forumOffers':
      return fields.forumOffers?.flatMap(({ forum, tags }) =>
        tags.map(tag => ({ forumOffers: [{ forum, tags: [tag] }] })),
      )
    default:
      return undefined
  }
}
