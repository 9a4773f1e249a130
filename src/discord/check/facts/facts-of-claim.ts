// What a claim answers of the questions a check asks; what it leaves open or says in two ways is left to be asked.
import { option, reading } from '../../../engine/answers.ts'
import { type Fact, factsOf } from '../../../readings/claims/facts.ts'
import { gather, isIron } from '../../../readings/claims/gather-claim.ts'
import type { CarriedFacts } from './facts-codec.ts'

const askedFormats: readonly string[] = ['14500', '18650', '20700', '21700', '26650']

export function factsOfClaim(facts: readonly Fact[]): CarriedFacts {
  const { formats, capacity, parallel } = gather(facts)
  const names = [...new Set(formats.map(fact => fact.format))]
  const [format] = names
  return {
    ...(format && names.length === 1 && { format: option(askedFormats.includes(format) ? format : 'other') }),
    ...(capacity && { 'claimed-capacity': reading(capacity.mAh / parallel) }),
    ...currentOf(facts),
    ...chemistryOf(facts),
  }
}

/** Only a continuous current is a figure to judge; the others are kept by the word that goes with them. */
function currentOf(facts: readonly Fact[]): CarriedFacts {
  const currents = factsOf(facts, 'current').filter(fact => fact.sort !== 'charge')
  const continuous = currents.filter(fact => fact.sort === 'continuous').map(fact => fact.A)
  if (continuous.length > 0)
    return { 'claimed-current': reading(Math.max(...continuous)), 'current-word': option('continuous') }
  if (currents.length === 0) return {}
  return { 'current-word': option(currents.some(fact => fact.sort !== 'unsaid') ? 'pulse' : 'bare') }
}

function chemistryOf(facts: readonly Fact[]): CarriedFacts {
  const named = factsOf(facts, 'chemistry').filter(fact => fact.chemistry !== 'lithium-ion')
  const kinds = [...new Set(named.map(fact => isIron(fact.chemistry)))]
  if (kinds.length !== 1) return {}
  return { chemistry: option(kinds[0] ? 'iron-phosphate' : 'nickel-or-cobalt') }
}
