// The weekly job: closes the weeks that are over, lets go of what is too old, and does so once however many processes there are.
//
// It looks every few minutes whether anything is due. Whatever it was in the middle of when it was cut off, the next look goes on.
import { lifetime } from '../check/check.ts'
import { type BackgroundServices, tellFindings } from '../discord/trends/tell-findings.ts'
import { tellWeek } from '../discord/trends/tell-week.ts'
import { changesKept } from '../server/history.ts'
import { mostKeepWeeks } from '../server/settings.ts'
import type { Traces } from '../server/traces.ts'
import type { EpochKeys } from '../stores/epoch-keys.ts'
import { graceMs } from '../trends/closing.ts'
import { epochOf } from '../trends/epoch.ts'
import type { Leases } from '../trends/lease.ts'
import type { Scope } from '../trends/outcome-log.ts'
import { type Week, weekOf, weekPlus } from '../trends/week.ts'
import { type Absences, letGoOfAbsent, type Whereabouts } from './absent-servers.ts'
import { type Clock, lookAtClock } from './clock-guard.ts'
import { closeWeeks } from './close-weeks.ts'
import { rejudgeOutcomes } from './rejudge-outcomes.ts'
import { sayJobRefusal } from './say-job-refusal.ts'

export type Job = {
  readonly services: BackgroundServices & { readonly traces: Traces }
  readonly leases: Leases
  readonly clock: Clock
  /** One an epoch, behind the pseudonyms; one a week, behind the seals. */
  readonly keys: EpochKeys
  readonly sealKeys: EpochKeys
  /** Names this process among the others. */
  readonly holder: string
  readonly absences: Absences
  readonly whereabouts: Whereabouts
}

export type Looked =
  /** Another process is at it. */
  | { readonly is: 'busy' }
  | { readonly is: 'done'; readonly frozen: readonly { readonly scope: Scope; readonly week: Week }[] }

const leaseName = 'weekly'
/** A check lives for so many weeks after its last step: what was sealed in a week before those is read no more, and what it left is counted. */
const weeksSealed = lifetime / (7 * 24 * 3600_000)
/** A process that dies at it holds the others up for this long, in ms. */
export const leaseMs = 10 * 60_000

/** Does what is due now. Throws what the database throws; the next look tries again. */
export async function lookForWork(job: Job): Promise<Looked> {
  const { services, leases, holder } = job
  const hold = () => leases.take(leaseName, holder, services.now(), services.now() + leaseMs)
  if (!(await hold())) return { is: 'busy' }
  try {
    const frozen: { scope: Scope; week: Week }[] = []
    let clockIsWrong = false
    let clockHolds = (await lookAtClock(job.clock, services.now(), services.log)).all
    for (const scope of await scopesOf(services)) {
      if (!(await hold())) return { is: 'busy' }
      const closing = await closeWeeks(services.trends, scope, services.now())
      frozen.push(...closing.frozen.map(week => ({ scope, week })))
      if (closing.ok) continue
      if (closing.refusal.code === 'clock-behind' || closing.refusal.code === 'clock-ahead') {
        clockHolds = false
        clockIsWrong = true
      }
      services.log.error({ refusal: closing.refusal, scope: scope.kind }, sayJobRefusal(closing.refusal))
    }
    // What a wrong clock takes for old may be the newest there is.
    if (clockHolds) await letGo(job)
    if (clockHolds) await letGoOfAbsent(services, job.absences, job.whereabouts)
    await tellFindings(services)
    if (!clockIsWrong) await tellWeek(services, weekPlus(weekOf(services.now() - graceMs), -1))
    return { is: 'done', frozen }
  } finally {
    await leases.giveBack(leaseName, holder)
  }
}

/** Judges again what an older pack has judged: once after a start, since packs change at no other time. */
export async function rejudgeOnce(job: Job): Promise<number> {
  const { services, leases, holder } = job
  if (!(await leases.take('rejudge', holder, services.now(), services.now() + leaseMs))) return 0
  try {
    return await rejudgeOutcomes(services)
  } finally {
    await leases.giveBack('rejudge', holder)
  }
}

async function scopesOf(services: BackgroundServices): Promise<Scope[]> {
  const servers = await services.servers.all()
  return [...servers.map(({ server }): Scope => ({ kind: 'server', server })), { kind: 'pool' }]
}

/** Deletes outcomes past what their server keeps, and the keys of epochs that are over. */
async function letGo({ services, keys, sealKeys }: Job): Promise<void> {
  const week = weekOf(services.now())
  const { outcomes } = services.trends
  let gone = await outcomes.purgeBefore(weekPlus(week, -mostKeepWeeks))
  for (const { server, keepWeeks } of await services.servers.all())
    gone += await outcomes.purgeBefore(weekPlus(week, -keepWeeks), server)
  // Their last week has been looked at: nobody can join those of a quarter that is over.
  const epoch = epochOf(weekOf(services.now() - graceMs))
  gone += await outcomes.dropWaiting(epoch)
  await services.servers.forgetChanges(services.now() - changesKept)
  // What was sealed before has been opened by now, or its check has expired; where the keys were lost it cannot be opened, and goes.
  const sealedSince = weekPlus(week, -weeksSealed)
  gone += await outcomes.dropSealedBefore(sealedSince)
  // Not before its last week has been looked at: what is counted of it is given its codes then.
  const destroyed = (await keys.destroyBefore(epoch)) + (await sealKeys.destroyBefore(sealedSince))
  if (gone + destroyed > 0) services.log.info({ outcomes: gone, keys: destroyed }, 'let go')
}
