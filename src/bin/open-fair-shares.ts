// Which fair use this process is given: its own, or one that it shares with the others on the same PostgreSQL.
import { join } from 'node:path'
import type { Kysely } from 'kysely'
import type { Logger } from 'pino'
import { type FairUse, noLimits, openFairUse } from '../services/fair-use/open-fair-use.ts'
import { type Shared, shareFairUse } from '../services/fair-use/share-fair-use.ts'
import { openAllowances } from '../stores/allowances.ts'
import { openEpochKeys } from '../stores/epoch-keys.ts'
import type { Tables } from '../stores/tables.ts'
import type { Config } from './config.ts'

export type FairShares = {
  readonly fairUse: FairUse
  /** Lets go of what nobody waits for any more. */
  purge(): Promise<unknown>
}

/** Of a database that is away one line in so many ms is enough. */
const tellEvery = 60_000

export function openFairShares(config: Config, db: Kysely<Tables>, log: Logger): FairShares {
  const alone = config.fairUse ? openFairUse() : noLimits
  if (!config.fairUse || config.database === undefined) return { fairUse: alone, purge: async () => undefined }
  const keys = openEpochKeys(join(config.data, 'keys', 'fair-use'))
  const allowances = openAllowances(db, () => keys.keyOf('buckets'))
  let told = Number.NEGATIVE_INFINITY
  const tell = (error: unknown) => {
    if (Date.now() - told < tellEvery) return
    told = Date.now()
    log.warn({ err: error }, 'fair use cannot be shared; this process counts for itself meanwhile')
  }
  return { fairUse: shareFairUse(alone, allowances, sharedBy(config), tell), purge: allowances.purge }
}

/** What can come to another process as well as to this one. */
function sharedBy({ shards, http }: Config): Shared {
  if (http) return 'all'
  return shards && shards.ids.length < shards.count ? 'people' : 'posts'
}
