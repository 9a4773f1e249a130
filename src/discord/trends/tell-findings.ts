// Tells moderators what releases have found, one post a finding, keeps the posts up to date, and carries out what was decided.
import { publicLanguage, type ServerSettings } from '../../server/settings.ts'
import type { FamilyDesk } from '../../services/family-desk.ts'
import { type Deciding, decide } from '../../trends/findings/decide.ts'
import { type Finding, isOver } from '../../trends/findings/finding.ts'
import { tellStories } from '../../trends/findings/stories.ts'
import { readRelease } from '../../trends/release/freeze-week.ts'
import type { Release } from '../../trends/release/release.ts'
import { weekOf } from '../../trends/week.ts'
import { sayIn } from '../../words/say.ts'
import type { Services } from '../services.ts'
import { carryOut } from './carry-out.ts'
import { viewFinding } from './view-finding.ts'

/** At most so many posts for a server at a look, so that a bad week does not flood its channel. */
const mostAtOnce = 5

/** The part of the services that works without anybody asking. */
export type BackgroundServices = Pick<
  Services,
  'trends' | 'servers' | 'offers' | 'programs' | 'now' | 'newId' | 'posts' | 'log'
> & {
  readonly pictures: Pick<Services['pictures'], 'ofDrawing'>
  readonly families: Pick<FamilyDesk, 'programsFor'> & {
    readonly store: Pick<FamilyDesk['store'], 'heads' | 'load'>
  }
}

/**
 * Does what is due: takes down what new releases have found, week after week, and then tells it in the servers where something waits, so
 * that a finding which several weeks tell of is one post that says the last of it. Whatever a cut-off left undone is done by the next
 * look, under the same nonce.
 */
export async function tellFindings(services: BackgroundServices): Promise<void> {
  const { releases } = services.trends
  // What is damaged or out of reach for one server is no reason for the others not to be told.
  for (const { server, week } of await releases.unread()) {
    const bytes = await releases.bytes({ kind: 'server', server }, week)
    const read = bytes === null ? undefined : readRelease(bytes)
    if (read?.ok) await takeDown(services, server, read.release)
    else services.log.error({ server, week }, 'a damaged release: nothing that it found is told')
    await releases.markRead(server, week)
  }
  for (const server of await services.trends.findings.serversWaiting(weekOf(services.now())))
    await tellServer(services, await services.servers.load(server)).catch(error =>
      services.log.error({ err: error, server }, 'a server could not be told of what was found'),
    )
}

/** Tries so often where somebody decides on a finding in the same moment. */
const tries = 5

async function takeDown({ trends: { findings }, newId }: BackgroundServices, server: string, release: Release) {
  for (let i = 0; i < tries; i++) {
    const told = tellStories(release, await findings.of(server))
    const saved = []
    for (const grown of told.grown) saved.push(await findings.save(grown))
    await findings.add(server, told.begun, newId)
    if (!saved.includes('stale')) return
  }
}

async function tellServer(services: BackgroundServices, settings: ServerSettings): Promise<void> {
  const { server, reportsChannel } = settings
  const { findings } = services.trends
  // One that cannot be carried out is no reason not to tell the rest.
  for (const finding of await findings.unposted(server))
    await carryOut(services, finding).catch(error =>
      services.log.error({ err: error, server }, 'what was decided on a finding could not be carried out yet'),
    )
  if (reportsChannel === null) return
  if (await services.posts.isOpenToAll(reportsChannel))
    return services.log.warn({ server }, 'everybody can read the reports channel: nothing is told there')
  const due = await findings.due(server, weekOf(services.now()))
  for (const finding of due.slice(0, mostAtOnce))
    if (!(await bringUp(services, settings, finding, reportsChannel))) break
}

/** Posts a finding, or changes its post to how it stands; false where the channel takes nothing. */
async function bringUp(
  services: BackgroundServices,
  settings: ServerSettings,
  due: Finding,
  channel: string,
): Promise<boolean> {
  let finding = due
  const change = async (event: Deciding): Promise<void> => {
    const next = decide(finding, event, services.now())
    // Whoever has changed it meanwhile leaves it due, and the next look meets it.
    if (next && (await services.trends.findings.save(next)) === 'saved') finding = next
  }
  if (isOver(finding, weekOf(services.now()))) await change({ is: 'watch-over' })
  if (finding.told && !finding.post) {
    await change({ is: 'shown', post: null })
    return true
  }
  const shown = await viewFinding(services, sayIn(publicLanguage(settings)), finding)
  if (finding.told && finding.post) {
    const redrawn = await services.posts.redraw(finding.post, shown)
    if (redrawn === 'forbidden' || redrawn === 'blocked') return refused(services, settings, redrawn)
    await change(redrawn === 'gone' ? { is: 'post-gone' } : { is: 'shown', post: null })
    return true
  }
  // The revision is part of the nonce: told again later it is another message, and the earlier one goes.
  const nonce = `${finding.id}.${finding.revision}`
  const posting = await services.posts.post(channel, shown, nonce, undefined, 'quiet')
  if (posting.is !== 'posted') return refused(services, settings, posting.is)
  const { post } = finding
  await change({ is: 'told', post: posting.place })
  if (post) await services.posts.remove(post)
  return true
}

/** True where the next one may be tried all the same: a filter takes offence at the words of one. */
function refused(
  services: BackgroundServices,
  { server }: ServerSettings,
  posting: 'forbidden' | 'gone' | 'blocked',
): boolean {
  services.log.warn({ server, posting }, 'the reports channel cannot be posted to')
  return posting === 'blocked'
}
