// What a server's settings need of a store: the last word wins only over what its author had seen.
import type { ServerId, ServerSettings } from './settings.ts'

export type SettingsStore = {
  /** The server's settings; those that hold before any decision if it has made none. */
  load(server: ServerId): Promise<ServerSettings>
  /** Stores `settings`, whose revision is one more than the stored one; `stale` if somebody else changed them meanwhile. */
  save(settings: ServerSettings): Promise<'saved' | 'stale'>
  /** Every server that has decided something. */
  all(): Promise<ServerSettings[]>
  /** Forgets the server. */
  forget(server: ServerId): Promise<void>
}
