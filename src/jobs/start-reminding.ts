// Starts reminding beside a running bot, and stops it in order.
import { lookEveryTenMinutes } from './look-every.ts'
import { type ReminderJob, remind } from './remind.ts'

export const startReminding = (job: ReminderJob): { stop(): Promise<void> } =>
  lookEveryTenMinutes(() => remind(job).catch(error => job.services.log.warn({ err: error }, 'reminding failed')))
