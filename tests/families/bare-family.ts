// What tests of derivation begin with: a family of which nothing is known, and facts to add to it.
import { bareFacts } from '../../src/families/construction.ts'
import type { Facts, Trait } from '../../src/families/facts/facts-schema.ts'

export const bare = bareFacts({
  ...{ id: 'f-tried01', name: 'Tried', maker: 'Nobody', alsoCalled: [], format: '18650' },
  ...{ kind: 'bare', chemistry: 'not-known' },
})
/** A rule of that family. */
export const id = (name: string) => `f-tried01-${name}`

/** The options that speak against it: what rules out, unless something else is said. */
export const against = (options: string[], more: Partial<Trait['against'][number]> = {}): Trait['against'][number] => ({
  ...{ options, tells: 'must', from: 'moderator' },
  ...more,
})
export const traits = (all: Record<string, Partial<Trait>>): Facts['traits'] =>
  Object.fromEntries(
    Object.entries(all).map(([feature, one]) => [feature, { made: [], against: [], remarks: [], ...one }]),
  )
