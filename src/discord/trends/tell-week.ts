// The weekly note: one quiet post a week in the reports channel of each server that wants it, never a second one for the same week.
import { isOlderThanHalfAYear } from '../../server/change-links.ts'
import { publicLanguage, type ServerSettings } from '../../server/settings.ts'
import { readRelease } from '../../trends/release/freeze-week.ts'
import { type Week, weeksFrom } from '../../trends/week.ts'
import { noteOf } from '../../trends/weekly-note.ts'
import { sayIn } from '../../words/say.ts'
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
  const bytes = await services.trends.releases.bytes({ kind: 'server', server }, week)
  const read = bytes === null ? undefined : readRelease(bytes)
  const note = noteOf(read?.ok ? read.release : undefined, await services.trends.findings.of(server))
  const links = settings.links.filter(link => isOlderThanHalfAYear(link, services.now())).length
  const shown = showWeek(sayIn(publicLanguage(settings)), note, {
    week,
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
