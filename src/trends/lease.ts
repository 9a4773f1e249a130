// What the weekly job needs so that one process of many does it.

export type Leases = {
  /** Takes the lease, or keeps it if `holder` has it, until `until` (ms since 1970); false while somebody else has it at `now`. */
  take(name: string, holder: string, now: number, until: number): Promise<boolean>
  /** Gives it back before its time; nothing happens if somebody else has it. */
  giveBack(name: string, holder: string): Promise<void>
}
