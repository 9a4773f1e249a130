// Weighs the facts of a claim against what cells can be: impossible, beyond belief, merely high, contradictory, or not to be compared.

import { masses } from '../ground/ceilings.ts'
import { type Fact, factsOf } from './claims/facts.ts'
import { type ClaimFinding, type Compared, claimWeights } from './claims/finding.ts'
import { type Claim, gather } from './claims/gather-claim.ts'
import {
  type MeasuredCell,
  nothingWeighed,
  type Part,
  perCell,
  weighCapacity,
  weighDensities,
  weighEnergy,
  weighEnergyAgainstCapacity,
} from './claims/weigh-capacity.ts'
import { weighCurrents } from './claims/weigh-current.ts'

export type WeighedClaims = {
  /** The heaviest first. */
  readonly findings: readonly ClaimFinding[]
  /** What could be held against known figures; where it is empty, finding nothing impossible says nothing at all. */
  readonly compared: readonly Compared[]
}

/**
 * All findings of a claim. `today` is an ISO date: lines past their date weigh one step less, what is impossible stays so.
 *
 * Capacities are judged by format and chemistry; densities only where a size or mass was measured or claimed. A battery's
 * figures are shared out among its cells, where the text says how these are connected. A "pulse", "max" or bare current is
 * never compared with a continuous one. Nothing found means nothing: a modest claim is easily made.
 */
export function weighClaims(facts: readonly Fact[], today: string, measured: MeasuredCell = {}): WeighedClaims {
  const claim = gather(facts)
  const parts = [
    weighFormat(claim),
    weighCapacity(claim, today),
    weighEnergy(claim, today),
    weighEnergyAgainstCapacity(claim),
    weighDensities(claim, today, measured),
    weighCurrents(claim, facts, today),
    weighMass(claim),
    weighUnclear(facts),
  ]
  return {
    findings: parts
      .flatMap(({ findings }) => findings)
      .sort((a, b) => claimWeights.indexOf(a.weight) - claimWeights.indexOf(b.weight)),
    compared: parts.flatMap(({ compared }) => compared),
  }
}

function weighFormat({ formats }: Claim): Part {
  const names = [...new Set(formats.map(fact => fact.format))]
  if (names.length < 2) return nothingWeighed
  const spans = formats.map(fact => fact.span)
  return { findings: [{ code: 'two-formats', weight: 'contradiction', formats: names, spans }], compared: [] }
}

/** A mass against the lightest of its format and chemistry, or of those that hold as much. */
function weighMass(claim: Claim): Part {
  const { mass, format, chemistry, cells, battery } = claim
  const window = format && masses[chemistry]?.[format]
  if (!mass || !window || cells > 1 || battery) return nothingWeighed
  const { full } = window
  const holds = perCell(claim)
  const lightest_g = full && holds !== null && holds >= full.capacity_mAh ? full.lightest : window.lightest
  if (mass.g >= lightest_g) return { findings: [], compared: ['mass'] }
  const spans = [mass.span]
  return { findings: [{ code: 'mass', weight: 'low', value: mass.g, lightest_g, spans }], compared: ['mass'] }
}

function weighUnclear(facts: readonly Fact[]): Part {
  const findings = factsOf(facts, 'unclear').map(({ of, readings, span }): ClaimFinding => {
    return { code: 'unclear-figure', weight: 'not-comparable', of, readings, spans: [span] }
  })
  return { findings, compared: [] }
}
