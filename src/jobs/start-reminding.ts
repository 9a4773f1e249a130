// Starts reminding beside a running bot, and stops it in order.
import { type ReminderJob, remind } from './remind.ts'

/** How often it is looked whether somebody has waited for long, in ms. */
const lookEvery = 10 * 60_000

/** Looks every ten minutes, one look at a time; `stop` waits for the one that is under way. */
export function startReminding(job: ReminderJob): { stop(): Promise<void> } {
  let under: Promise<unknown> | undefined
  const look = () => {
    under ??= remind(job)
      .catch(error => job.services.log.warn({ err: error }, 'reminding failed'))
      .finally(() => {
        under = undefined
      })
  }
  const timer = setInterval(look, lookEvery).unref()
  return {
    async stop() {
      clearInterval(timer)
      await under
    },
  }
}
