// Wires what outcomes and trends need: their stores, and pseudonyms under keys that lie beside the database, not in it.

import { join } from 'node:path'
import type { Kysely } from 'kysely'
import type { Logger } from 'pino'
import type { FamilyStore } from '../families/family-store.ts'
import { isServerFamily } from '../services/family-desk.ts'
import type { TrendsServices } from '../services/trends-services.ts'
import { type EpochKeys, openEpochKeys } from '../stores/epoch-keys.ts'
import { type FamilyCodes, openFamilyCodes } from '../stores/family-codes.ts'
import { openFamilyStore } from '../stores/family-store.ts'
import { openFindingLog } from '../stores/finding-log.ts'
import { hmac } from '../stores/hmac.ts'
import { openLeases } from '../stores/lease.ts'
import { openOptOuts } from '../stores/opt-outs.ts'
import { openOutcomeLog } from '../stores/outcome-log.ts'
import { openReleaseLog } from '../stores/release-log.ts'
import { openSeal, type Seal } from '../stores/seal.ts'
import type { Tables } from '../stores/tables.ts'
import { epochOf } from '../trends/epoch.ts'
import type { KnownFakes } from '../trends/findings/known-fakes.ts'
import { rulesOf } from '../trends/findings/parts.ts'
import type { Leases } from '../trends/lease.ts'
import { type PseudonymFor, pseudonymOf } from '../trends/pseudonym.ts'
import type { Week } from '../trends/week.ts'

/**
 * A known fake of an installed family is its name beside the finding; those of a server's own families stand there, and are taken back
 * there: for as long as one does, in what is in force or in the draft, it is not taken back here.
 */
const keptWith = (families: Pick<FamilyStore, 'load' | 'version'>): KnownFakes => ({
  keep: async ({ family, week, parts }) => ({ family, fake: fakeName(week, parts.flatMap(rulesOf)) }),
  async takeBack(server, { family: id, fake }) {
    if (!isServerFamily(id)) return 'taken-back'
    const family = await families.load(server, id)
    const inForce = family && family.head > 0 ? await families.version(server, id, family.head) : undefined
    const known = [family?.draft, inForce?.facts].flatMap(facts => facts?.fakes ?? [])
    return known.some(one => one.id === fake && one.state === 'seen') ? 'in-force' : 'taken-back'
  },
})

/** Like 'seen-2026-w45-code-on-the-can': the same for the same look in the same week. */
const fakeName = (week: Week, rules: readonly string[]): string =>
  ['seen', week.toLowerCase(), ...rules.slice(0, 1)].join('-')

export type OpenedTrends = {
  readonly services: TrendsServices
  /** One an epoch, behind the pseudonyms; one a week, behind the seals. */
  readonly keys: EpochKeys
  readonly sealKeys: EpochKeys
  readonly seal: Seal
  readonly codes: FamilyCodes
  readonly leases: Leases
}

/** `data`: the folder the keys lie in, in a folder of their own. */
export function openTrends(db: Kysely<Tables>, data: string, log: Logger): OpenedTrends {
  const keys = openEpochKeys(join(data, 'keys'))
  const sealKeys = openEpochKeys(join(data, 'keys', 'seals'))
  const seal = openSeal(sealKeys)
  const codes = openFamilyCodes(keys)
  const lost = (rows: number) =>
    log.error({ rows }, 'outcomes that wait cannot be opened: the folder keys is not the one they were left with')
  const damaged = (rows: number) => log.error({ rows }, 'damaged outcomes are left out of the counts')
  return {
    keys,
    sealKeys,
    seal,
    codes,
    leases: openLeases(db),
    services: {
      outcomes: openOutcomeLog(db, seal, codes, damaged, lost),
      releases: openReleaseLog(db),
      knownFakes: keptWith(openFamilyStore(db)),
      findings: openFindingLog(db, error => log.error({ err: error }, 'a finding is left out')),
      optOuts: openOptOuts(db),
      async reporterOf({ server, user, week, pooling }) {
        const key = await keys.keyOf(epochOf(week))
        const bear = (of: PseudonymFor): string => {
          const made = pseudonymOf(hmac, key, of)
          if (made.ok) return made.pseudonym
          throw new Error(`no pseudonym: ${made.refusal.code}`)
        }
        return {
          server,
          reporter: bear({ purpose: 'outcome', server, user }),
          pooled: pooling ? bear({ purpose: 'pool', server: '', user }) : null,
        }
      },
    },
  }
}
