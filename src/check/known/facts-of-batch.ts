// What the masses of a batch answer of the questions a check asks; its capacities answer none.

import { option } from '../../engine/answers.ts'
import type { BatchFinding } from '../../readings/batch/weigh-batch.ts'
import type { CarriedFacts } from './carried-facts.ts'

/** Nothing where the scale was too coarse to say how far apart they are. */
export function factsOfBatch({ quantity, found, share }: BatchFinding): CarriedFacts {
  if (quantity !== 'mass' || found === 'scale-too-coarse') return {}
  const spread = share <= 0.025 ? 'close' : share <= 0.05 ? 'apart' : 'far-apart'
  return { 'how-many': option('several'), 'batch-masses': option(spread) }
}
