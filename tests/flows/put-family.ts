// Families of a test's server, past the screens: their facts by a way of building, and put in force as two moderators would.
import { bareFacts, factsFrom } from '../../src/families/construction.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { skeletonOf } from '../../src/families/names.ts'
import { propose } from '../../src/families/propose.ts'
import { draftOf, versionOf } from '../families/made-families.ts'
import type { TestRoom } from './open-room.ts'

export function builtFacts(room: TestRoom, id: string, name: string, built = 'two-dimples-three-legs'): Facts {
  const identity = {
    ...{ id, name, maker: 'Larkmoor', alsoCalled: [], format: '18650' as const },
    ...{ kind: 'bare' as const, chemistry: 'not-known' as const },
  }
  const construction = room.services.families.constructions.find(one => one.construction === built)
  return construction ? factsFrom(construction, identity) : bareFacts(identity)
}

export async function putInForce(room: TestRoom, where: string, made: Facts, number = 1): Promise<void> {
  const { store, base, constructions, sha256 } = room.services.families
  const proposed = propose(made, base, constructions, [], sha256)
  const key = skeletonOf(made.identity.name)
  if (number === 1) await store.create(draftOf(where, made, { revision: 0 }), key)
  const before = await store.load(where, made.identity.id)
  if (!before) throw new Error('it is gone')
  const after = {
    ...before,
    ...{ state: 'in-force' as const, head: number, draft: null },
    ...{ revision: before.revision + 1, changedBy: `put-${number}` },
  }
  await store.putInForce(after, key, { ...versionOf(proposed.facts, number), digest: proposed.digest })
}
