// The weekly note: one quiet post a week in the reports channel of each server that wants it, never a second one for the same week.
import { dayOf } from '../../engine/day-of.ts'
import { isOlderThanHalfAYear } from '../../server/change-links.ts'
import { publicLanguage, type ServerSettings } from '../../server/settings.ts'
import { kindOfWeek } from '../../trends/kind-of-week.ts'
import { type Week, weeksFrom } from '../../trends/week.ts'
import { noteOf } from '../../trends/weekly-note.ts'
import { sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import { recentReleases, weeksBehind } from './recent-releases.ts'
import { showWeek } from './show/week.ts'
import type { BackgroundServices } from './tell-findings.ts'

/** `week`: the last one that is closed. What cannot be posted to one server keeps the others from nothing. */
export async function tellWeek(services: BackgroundServices, week: Week): Promise<void> {
  for (const settings of await services.servers.all())
    if (settings.weeklyNote && settings.reportsChannel !== null)
      await tellOne(services, settings, settings.reportsChannel, week).catch(error =>
        services.log.error({ err: error, server: settings.server }, 'a weekly note could not be posted'),
      )
}

async function tellOne(
  services: BackgroundServices,
  settings: ServerSettings,
  channel: string,
  week: Week,
): Promise<void> {
  const { server } = settings
  if (await services.posts.isOpenToAll(channel)) return
  // Claimed before it is posted: killed in between, the week has no note, and never two.
  if (!(await services.offers.claim(server, `note ${week} ${server}`, services.now()))) return
  const weeks = await recentReleases(services, server, week, weeksBehind)
  const note = noteOf(weeks.at(-1)?.release, await services.trends.findings.of(server))
  const links = settings.links.filter(link => isOlderThanHalfAYear(link, services.now())).length
  const say = sayIn(publicLanguage(settings))
  const names = openTrendNames(say, await services.families.programsFor(server), dayOf(services.now()))
  const shown = showWeek(say, names, note, {
    week,
    kind: kindOfWeek(weeks),
    links,
    reviews: await inReview(services, server),
  })
  const posting = await services.posts.post(channel, shown, nonceOf(week, server), undefined, 'quiet')
  if (posting.is !== 'posted')
    services.log.warn({ server, posting: posting.is }, 'the reports channel cannot be posted to: no weekly note')
}

/** The names of families whose draft waits for a second moderator. */
async function inReview({ families }: BackgroundServices, server: string): Promise<string[]> {
  const names: string[] = []
  for (const { id, name, state } of await families.store.heads(server)) {
    if (state !== 'in-review' && state !== 'in-force') continue
    const waits = state === 'in-review' || (await families.store.load(server, id))?.review
    if (waits) names.push(name)
  }
  return names
}

/** At most 25 characters. */
const nonceOf = (week: Week, server: string): string => `k${weeksFrom('2020-W01', week).toString(36)}.${server}`
