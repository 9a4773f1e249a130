// What a claim answers of the questions a check asks; what it leaves open or says in two ways is left to be asked.
import { option, reading } from '../../../engine/answers.ts'
import { type Fact, factsOf } from '../../../readings/claims/facts.ts'
import { type Claim, cellChemistry, gather } from '../../../readings/claims/gather-claim.ts'
import { perCell } from '../../../readings/claims/weigh-capacity.ts'
import type { CarriedFacts } from './facts-codec.ts'

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
    ...(claim.battery?.inParallel !== null && currentOf(facts, claim.parallel)),
    ...chemistryOf(facts, claim),
  }
}

function formatOf(format: string): CarriedFacts {
  if (askedFormats.includes(format)) return { format: option(format) }
  return { format: option('other'), 'other-format': option(otherFormats.includes(format) ? format : 'none') }
}

/**
 * Only a continuous current is a figure to judge, shared out among the cells side by side, with or without a limit by temperature;
 * the others are kept by the word that goes with them.
 */
function currentOf(facts: readonly Fact[], parallel: number): CarriedFacts {
  const currents = factsOf(facts, 'current').filter(fact => fact.sort !== 'charge')
  const continuous = currents.filter(fact => fact.sort === 'continuous')
  const largest = (of: typeof continuous) => reading(Math.max(...of.map(fact => fact.A)) / parallel)
  const free = continuous.filter(fact => fact.limit_C === undefined)
  if (free.length > 0) return { 'claimed-current': largest(free), 'current-word': option('continuous') }
  if (continuous.length > 0) return { 'claimed-current': largest(continuous), 'current-word': option('to-temperature') }
  if (currents.length === 0) return {}
  return { 'current-word': option(currents.some(fact => fact.sort !== 'unsaid') ? 'pulse' : 'bare') }
}

/** 1.5 V, or mWh in place of mAh, comes before any name: what is inside does not show then. Names that contradict each other are left to be asked. */
function chemistryOf(facts: readonly Fact[], { converter, capacity, energy }: Claim): CarriedFacts {
  if (converter || (!capacity && energy?.milli)) return { chemistry: option('fixed-voltage') }
  const named = factsOf(facts, 'chemistry').filter(fact => fact.chemistry !== 'lithium-ion')
  const [kind, another] = new Set(named.map(fact => cellChemistry(fact.chemistry)))
  return kind === undefined || another !== undefined ? {} : { chemistry: option(kind) }
}
