// Tells moderators what a release has found, once each, and posts the warnings they have decided on.
import { dayOf } from '../../engine/day-of.ts'
import { publicLanguage, type ServerSettings } from '../../server/settings.ts'
import { decide, type Finding, findingsOf } from '../../trends/finding.ts'
import { readRelease } from '../../trends/release/freeze-week.ts'
import { weekOf } from '../../trends/week.ts'
import { sayIn } from '../../words/say.ts'
import { openTrendNames } from '../../words/trend-names.ts'
import type { FamilyDesk } from '../families/family-desk.ts'
import type { Services } from '../services.ts'
import { showFinding, showWarning } from './show/finding.ts'

/** At most so many posts for a server at a look, so that a bad week does not flood its channel. */
const mostAtOnce = 5

/** The part of the services that works without anybody asking. */
export type BackgroundServices = Pick<
  Services,
  'trends' | 'servers' | 'programs' | 'now' | 'newId' | 'posts' | 'log'
> & {
  readonly families: Pick<FamilyDesk, 'programsFor'>
}

/**
 * Does what is due: takes down what new releases have found, and tells it in the servers where something waits. Whatever a cut-off
 * left undone is done by the next look, under the same nonce.
 */
export async function tellFindings(services: BackgroundServices): Promise<void> {
  for (const { server, week, bytes } of await services.trends.releases.unread()) {
    const read = readRelease(bytes)
    if (read.ok) await services.trends.findings.add(server, findingsOf(read.release), services.newId)
    else services.log.error({ server, week }, 'a damaged release: nothing that it found is told')
    await services.trends.releases.markRead(server, week)
  }
  // What is damaged or out of reach for one server is no reason for the others not to be told.
  for (const server of await services.trends.findings.serversWaiting(weekOf(services.now())))
    await tellServer(services, await services.servers.load(server)).catch(error =>
      services.log.error({ err: error, server }, 'a server could not be told of what was found'),
    )
}

async function tellServer(services: BackgroundServices, settings: ServerSettings): Promise<void> {
  const { server, reportsChannel } = settings
  const say = sayIn(publicLanguage(settings))
  const names = openTrendNames(say, await services.families.programsFor(server), dayOf(services.now()))
  for (const finding of await services.trends.findings.unposted(server)) await postWarning(services, finding)
  if (reportsChannel === null) return
  if (services.posts.isOpenToAll(reportsChannel))
    return services.log.warn({ server }, 'everybody can read the reports channel: nothing is told there')
  const untold = await services.trends.findings.untold(server, weekOf(services.now()))
  for (const finding of untold.slice(0, mostAtOnce)) {
    const told = decide(finding, { is: 'told' }, services.now())
    if (!told) continue
    // The revision is part of the nonce: told again a week later is another message.
    const posting = await services.posts.post(
      reportsChannel,
      showFinding(say, names, told),
      `${finding.id}.${finding.revision}`,
      undefined,
      'quiet',
    )
    if (posting.is === 'posted') await services.trends.findings.save(told)
    else {
      services.log.warn({ server, posting: posting.is }, 'the reports channel cannot be posted to')
      break
    }
  }
}

/** Posts a warning that was decided on; false if it could not be, and the finding waits for a decision again. */
export async function postWarning(services: BackgroundServices, finding: Finding): Promise<boolean> {
  if (finding.warning?.posted !== false) return true
  const language = publicLanguage(await services.servers.load(finding.server))
  const { channel, text } = finding.warning
  const posting = await services.posts.post(channel, showWarning(sayIn(language), text), `w${finding.id}`)
  const next = decide(finding, { is: posting.is === 'posted' ? 'warning-posted' : 'warning-failed' }, services.now())
  if (next) await services.trends.findings.save(next)
  return posting.is === 'posted'
}
