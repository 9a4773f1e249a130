// Starts the weekly job beside a running bot, and stops it in order.
import { type Job, lookForWork, rejudgeOnce } from './weekly-job.ts'

/** How often it is looked whether a week is over, in ms. */
const lookEvery = 10 * 60_000

/** Looks now and then every ten minutes, one look at a time; `stop` waits for the one that is under way. */
export function startWeeklyJob(job: Job): { stop(): Promise<void> } {
  const { log } = job.services
  let under: Promise<unknown> | undefined
  const guarded = (work: Promise<unknown>) => work.catch(error => log.warn({ err: error }, 'the weekly job failed'))
  const look = () => {
    under ??= guarded(lookForWork(job)).finally(() => {
      under = undefined
    })
  }
  under = guarded(rejudgeOnce(job).then(() => lookForWork(job))).finally(() => {
    under = undefined
  })
  const timer = setInterval(look, lookEvery).unref()
  return {
    async stop() {
      clearInterval(timer)
      await under
    },
  }
}
