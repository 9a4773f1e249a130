// A finding whose known fake was described among a server's families: it stands as such from then on.
import type { ServerSettings } from '../../server/settings.ts'
import type { KnownFakeOf } from '../../trends/findings/finding.ts'
import type { Services } from '../services.ts'
import { freshenPost, settleFinding } from './settle-finding.ts'

/** Nothing happens where the finding is gone, or somebody has decided otherwise meanwhile. */
export async function becomeFake(
  services: Services,
  settings: ServerSettings,
  by: string,
  id: string,
  fake: KnownFakeOf,
): Promise<void> {
  const finding = await services.trends.findings.load(id)
  if (finding?.server !== settings.server) return
  const settled = await settleFinding(services, finding, { is: 'known-fake', by, fake })
  if (settled.came === 'in-time') await freshenPost(services, settings, settled.finding, null)
}
