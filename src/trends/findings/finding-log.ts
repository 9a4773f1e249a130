// What findings need of a store: each is kept once, and of two decisions at once one counts.
import type { Week } from '../week.ts'
import type { Finding, NewFinding } from './finding.ts'

export type FindingLog = {
  /** Keeps what is new of a server; what it has under the same key is left alone. `newId` gives an id for each. */
  add(server: string, found: readonly NewFinding[], newId: () => string): Promise<void>
  load(id: string): Promise<Finding | undefined>
  /** All of a server's, the latest first. */
  of(server: string): Promise<readonly Finding[]>
  /** Findings of a server whose channel is behind (`isDue`) in `week`; oldest first. */
  due(server: string, week: Week): Promise<readonly Finding[]>
  /** Servers in which something is due in `week`, or a warning is to be posted. */
  serversWaiting(week: Week): Promise<readonly string[]>
  /** Findings with a warning, or one taken back, that Discord does not have yet. */
  unposted(server: string): Promise<readonly Finding[]>
  /** Stores `finding`, whose revision is one more than the stored one; `stale` if somebody else changed it meanwhile. */
  save(finding: Finding): Promise<'saved' | 'stale'>
  forget(server: string): Promise<void>
}
