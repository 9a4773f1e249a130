// What findings need of a store: each is kept once, and of two decisions at once one counts.
import type { Finding, NewFinding } from './finding.ts'
import type { Week } from './week.ts'

export type FindingLog = {
  /** Keeps what is new of a server; what it has under the same key is left alone. `newId` gives an id for each. */
  add(server: string, found: readonly NewFinding[], newId: () => string): Promise<void>
  load(id: string): Promise<Finding | undefined>
  /** Findings of a server nobody has been told of, or that are due again in `week`; oldest first. */
  untold(server: string, week: Week): Promise<readonly Finding[]>
  /** Servers in which something is to be told in `week`, or a warning is to be posted. */
  serversWaiting(week: Week): Promise<readonly string[]>
  /** Findings whose warning is decided on and not posted. */
  unposted(server: string): Promise<readonly Finding[]>
  /** Stores `finding`, whose revision is one more than the stored one; `stale` if somebody else changed it meanwhile. */
  save(finding: Finding): Promise<'saved' | 'stale'>
  forget(server: string): Promise<void>
}
