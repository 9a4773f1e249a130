// What a claim answers of the questions a check asks; what it leaves open or says in two ways is left to be asked.
import { option, reading } from '../../../engine/answers.ts'
import { type Fact, factsOf } from '../../../readings/claims/facts.ts'
import { cellChemistry, gather } from '../../../readings/claims/gather-claim.ts'
import { perCell } from '../../../readings/claims/weigh-capacity.ts'
import type { CarriedFacts } from './facts-codec.ts'

const askedChemistries: readonly string[] = ['iron-phosphate', 'nickel-or-cobalt']
const askedFormats: readonly string[] = ['14500', '18650', '20700', '21700', '26650']

export function factsOfClaim(facts: readonly Fact[]): CarriedFacts {
  const claim = gather(facts)
  const capacity = perCell(claim)
  const { formats } = claim
  const names = [...new Set(formats.map(fact => fact.format))]
  const [format] = names
  return {
    ...(format && names.length === 1 && { format: option(askedFormats.includes(format) ? format : 'other') }),
    ...(capacity !== null && { 'claimed-capacity': reading(capacity) }),
    ...(claim.battery?.inParallel !== null && currentOf(facts, claim.parallel)),
    ...chemistryOf(facts),
  }
}

/**
 * Only a continuous current is a figure to judge, shared out among the cells side by side; the others are kept by the word that
 * goes with them. One up to a temperature is neither, and is left to be asked.
 */
function currentOf(facts: readonly Fact[], parallel: number): CarriedFacts {
  const currents = factsOf(facts, 'current').filter(fact => fact.sort !== 'charge' && fact.limit_C === undefined)
  const continuous = currents.filter(fact => fact.sort === 'continuous').map(fact => fact.A / parallel)
  if (continuous.length > 0)
    return { 'claimed-current': reading(Math.max(...continuous)), 'current-word': option('continuous') }
  if (currents.length === 0) return {}
  return { 'current-word': option(currents.some(fact => fact.sort !== 'unsaid') ? 'pulse' : 'bare') }
}

function chemistryOf(facts: readonly Fact[]): CarriedFacts {
  const named = factsOf(facts, 'chemistry').filter(fact => fact.chemistry !== 'lithium-ion')
  const [kind, another] = new Set(named.map(fact => cellChemistry(fact.chemistry)))
  if (kind === undefined || another !== undefined || !askedChemistries.includes(kind)) return {}
  return { chemistry: option(kind) }
}
