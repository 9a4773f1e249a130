// A family as its moderators work on it: what is stored, what is in force, its reference cells, and what would come into force.

import { workedOn } from '../../families/edit.ts'
import type { Facts } from '../../families/facts/facts-schema.ts'
import type { ServerFamily, Version } from '../../families/family.ts'
import { propose } from '../../families/propose.ts'
import type { Proposed } from '../../families/review.ts'
import type { Reference } from '../../families/strength/references.ts'
import type { Services } from '../services.ts'

export type WorkingOn = {
  readonly family: ServerFamily
  /** The draft, or the version in force where there is none. */
  readonly facts: Facts
  readonly inForce: Version | undefined
  readonly references: readonly Reference[]
  /** The facts at the strengths they have earned. */
  readonly proposed: Proposed
}

/** Undefined where the server has no such family. */
export async function workingOn(
  services: Pick<Services, 'families'>,
  server: string,
  id: string,
): Promise<WorkingOn | undefined> {
  const { store, base, constructions, sha256 } = services.families
  const family = await store.load(server, id)
  if (!family) return undefined
  const inForce = family.head > 0 ? await store.version(server, id, family.head) : undefined
  const facts = workedOn(family, inForce?.facts)
  if (!facts) return undefined
  const references = await store.references(server, id)
  return { family, facts, inForce, references, proposed: propose(facts, base, constructions, references, sha256) }
}
