// Starts the weekly job beside a running bot, and stops it in order.
import { lookEveryTenMinutes } from './look-every.ts'
import { type Job, lookForWork, rejudgeOnce } from './weekly-job.ts'

/** Looks at once, whether a week is over, and again every ten minutes. */
export function startWeeklyJob(job: Job): { stop(): Promise<void> } {
  const guarded = (work: Promise<unknown>) =>
    work.catch(error => job.services.log.warn({ err: error }, 'the weekly job failed'))
  return lookEveryTenMinutes(
    () => guarded(lookForWork(job)),
    () => guarded(rejudgeOnce(job).then(() => lookForWork(job))),
  )
}
