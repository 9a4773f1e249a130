// What a claim answers of the questions a check asks; what it leaves open or says in two ways is left to be asked.

import { option, reading } from '../../engine/answers.ts'
import { type Fact, factsOf } from '../../readings/claims/facts.ts'
import { type Claim, cellChemistry, currentsOf, gather } from '../../readings/claims/gather-claim.ts'
import { perCell } from '../../readings/claims/weigh-capacity.ts'
import type { CarriedFacts } from './carried-facts.ts'

/** The sizes that are asked for first, and those that stand behind "another size". */
const askedFormats: readonly string[] = ['14500', '18650', '20700', '21700', '26650']
const otherFormats: readonly string[] = [
  '10440',
  '14430',
  '16340',
  '18350',
  '18500',
  '26700',
  '26800',
  '32650',
  '32700',
  '33140',
  '46800',
]

export function factsOfClaim(facts: readonly Fact[]): CarriedFacts {
  const claim = gather(facts)
  const capacity = perCell(claim)
  const names = [...new Set(claim.formats.map(fact => fact.format))]
  const [format] = names
  return {
    ...(format && names.length === 1 && formatOf(format)),
    ...(capacity !== null && { 'claimed-capacity': reading(capacity) }),
    ...(claim.battery?.inParallel !== null && currentOf(facts, claim)),
    ...chemistryOf(facts, claim),
  }
}

function formatOf(format: string): CarriedFacts {
  if (askedFormats.includes(format)) return { format: option(format) }
  return { format: option('other'), 'other-format': option(otherFormats.includes(format) ? format : 'none') }
}

/**
 * The current a claim gives with the word that goes with it, shared out among the cells side by side: a continuous one before one up to a
 * temperature, that before a bare figure. A pulse is kept by its word alone, since nothing can be held against it.
 */
function currentOf(facts: readonly Fact[], claim: Claim): CarriedFacts {
  const { parallel } = claim
  const currents = currentsOf(facts, claim).filter(fact => fact.sort !== 'charge')
  const most = (some: readonly { readonly A: number }[]) => reading(Math.max(...some.map(fact => fact.A)) / parallel)
  const free = currents.filter(fact => fact.sort === 'continuous' && fact.limit_C === undefined)
  if (free.length > 0) return { 'claimed-current': most(free), 'current-word': option('continuous') }
  const limited = currents.filter(fact => fact.limit_C !== undefined)
  if (limited.length > 0) return { 'claimed-current': most(limited), 'current-word': option('to-temperature') }
  if (currents.length === 0) return {}
  if (currents.some(fact => fact.sort !== 'unsaid')) return { 'current-word': option('pulse') }
  return { 'claimed-current': most(currents), 'current-word': option('bare') }
}

/** 1.5 V comes before any name: what is inside does not show then. Names that contradict each other are left to be asked. */
function chemistryOf(facts: readonly Fact[], { converter }: Claim): CarriedFacts {
  if (converter) return { chemistry: option('fixed-voltage') }
  const named = factsOf(facts, 'chemistry').filter(fact => fact.chemistry !== 'lithium-ion')
  const [kind, another] = new Set(named.map(fact => cellChemistry(fact.chemistry)))
  return kind === undefined || another !== undefined ? {} : { chemistry: option(kind) }
}
