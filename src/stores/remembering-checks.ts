// A check store that answers from memory where it can: most clicks are on the very state this process saved last.
import { LRUCache } from 'lru-cache'
import type { Check } from '../check/check.ts'
import type { CheckId } from '../check/ids.ts'
import type { CheckStore, Stored } from '../check/store.ts'

/** How many checks are remembered; about 2 kB each. */
const most = 500

export type RememberingChecks<Outcome> = CheckStore<Outcome> & {
  /** Forgets the checks of which this holds, once they are deleted where they are stored. */
  letGo(gone: (check: Check) => boolean): void
}

/**
 * Wraps a store. The database stays the only truth: a check is answered from memory only when it has the revision the caller
 * expects, and a save that finds the database ahead is stale there, is told so, and is forgotten here.
 */
export function rememberChecks<Outcome>(store: CheckStore<Outcome>): RememberingChecks<Outcome> {
  const remembered = new LRUCache<CheckId, Stored>({ max: most })
  const remember = (stored: Stored) => remembered.set(stored.check.id, stored)
  return {
    ...store,
    letGo(gone) {
      for (const [id, { check }] of remembered) if (gone(check)) remembered.delete(id)
    },
    async create(check, interaction, most) {
      const outcome = await store.create(check, interaction, most)
      if (outcome === 'saved') remember({ check, changedBy: interaction })
      return outcome
    },
    async load(id, expected) {
      const known = remembered.get(id)
      if (known && known.check.revision === expected) return known
      remembered.delete(id)
      return store.load(id)
    },
    async save(check, expected, interaction, outcome) {
      const known = remembered.peek(check.id)?.check
      const stood = known?.revision === expected ? known : undefined
      const saving = await store.save(check, expected, interaction, outcome, stood)
      // What a check has become by leaving its outcome, only the store knows.
      if (saving === 'saved' && outcome === undefined) remember({ check, changedBy: interaction })
      else remembered.delete(check.id)
      return saving
    },
    async pass(check, ...rest) {
      remembered.delete(check.id)
      return store.pass(check, ...rest)
    },
    async settle(check, outcome) {
      remembered.delete(check.id)
      return store.settle(check, outcome)
    },
  }
}
