// What the handlers of outcomes and trends are given beside the rest of the services.
import type { FindingLog } from '../trends/findings/finding-log.ts'
import type { KnownFakes } from '../trends/findings/known-fakes.ts'
import type { Reporter } from '../trends/make-outcome.ts'
import type { OptOuts } from '../trends/opt-outs.ts'
import type { OutcomeLog, ReleaseLog } from '../trends/outcome-log.ts'
import type { Week } from '../trends/week.ts'

export type TrendsServices = {
  readonly outcomes: OutcomeLog
  readonly releases: ReleaseLog
  readonly findings: FindingLog
  readonly knownFakes: KnownFakes
  readonly optOuts: OptOuts
  /** Who a person is in the counts of a server in the epoch of a week; `pooled` is null unless `pooling`. */
  reporterOf(person: { server: string; user: string; week: Week; pooling: boolean }): Promise<Reporter>
}
