// What checks are sold as, for lists and panels that name it: shipped families, constructions and those of their servers.
import type { Check } from '../../check/check.ts'
import type { Family } from '../../engine/pack/pack.ts'
import type { Services } from '../services.ts'

/** A way to look up each check's family, all of them read beforehand. */
export async function familiesOfChecks(
  services: Pick<Services, 'families'>,
  checks: readonly Pick<Check, 'server' | 'family'>[],
): Promise<(check: Pick<Check, 'server' | 'family'>) => Family | undefined> {
  const keyOf = ({ server, family }: Pick<Check, 'server' | 'family'>) => `${server} ${family}`
  const found = await Promise.all(
    checks.map(async one => [keyOf(one), await services.families.familyOf(one.server, one.family)] as const),
  )
  const byKey = new Map(found)
  return check => byKey.get(keyOf(check))
}
