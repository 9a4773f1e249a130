// Where a finding becomes a known fake of its family: the seam to whatever keeps the families of a server.
import type { Finding, KnownFakeOf } from './finding.ts'

/** Everything about a known fake that the counts can say. `by`: the moderator's id. */
export type FakeSeen = Pick<Finding, 'server' | 'family' | 'parts' | 'week'> & { readonly by: string }

export type KnownFakes = {
  /** Keeps it, as something to be looked over before it counts; gives its id. */
  keep(seen: FakeSeen): Promise<KnownFakeOf>
  /** `in-force`: somebody has gone on with it, so it is taken back among the families and not here. */
  takeBack(server: string, fake: KnownFakeOf): Promise<'taken-back' | 'in-force'>
}
