// What a server's settings need of a store: the last word wins only over what its author had seen.
import type { History, Made } from './history.ts'
import type { ServerId, ServerSettings } from './settings.ts'

export type SettingsStore = {
  /** The server's settings; those that hold before any decision if it has made none. */
  load(server: ServerId): Promise<ServerSettings>
  /**
   * Stores `settings`, whose revision is one more than the stored one; `stale` if somebody else changed them meanwhile. `made`: who did
   * it; what has changed is kept in the history then, in the same statement.
   */
  save(settings: ServerSettings, made?: Made): Promise<'saved' | 'stale'>
  /** What was changed, newest first, within its bounds. */
  history(server: ServerId): Promise<History>
  /** Forgets changes made before `before` (ms since 1970); says of how many servers. */
  forgetChanges(before: number): Promise<number>
  /** Every server that has decided something. */
  all(): Promise<ServerSettings[]>
  /** Forgets the server. */
  forget(server: ServerId): Promise<void>
}
