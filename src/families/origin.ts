// Where each feature of a draft comes from: the construction it was begun with, or what was set here since.
import canonicalize from 'canonicalize'
import type { Construction, Facts } from './facts/facts-schema.ts'
import { settleFacts } from './facts/settle-facts.ts'

/** `set`: features that are otherwise than in the construction, or not in it at all. */
export type Origin =
  | { readonly is: 'own' }
  | { readonly is: 'built'; readonly construction: string; readonly set: ReadonlySet<string> }

/** Undefined where the construction is not there any more, or has changed since: what came with it cannot be told. */
export function originOf(facts: Facts, constructions: readonly Construction[]): Origin | undefined {
  const { from } = facts
  if (from === null) return { is: 'own' }
  const built = constructions.find(one => one.construction === from.construction && one.version === from.version)
  if (!built) return undefined
  const now = settleFacts(facts).traits
  const before = settleFacts({ ...facts, traits: built.traits }).traits
  const set = Object.keys(now).filter(one => canonicalize(now[one]) !== canonicalize(before[one]))
  return { is: 'built', construction: built.construction, set: new Set(set) }
}
