// Weighs the facts of a claim against what cells can be: impossible, merely high, contradictory, or not to be compared.

import { nominalSize } from '../ground/formats.ts'
import { zone } from '../ground/guard-band.ts'
import { anyFormat, type Ceiling, ironPhosphate, validUntil } from './claims/ceilings.ts'
import { type Fact, factsOf } from './claims/facts.ts'
import type { AgainstCeiling, ClaimFinding, ClaimWeight } from './claims/finding.ts'
import { type Claim, gather, isIron } from './claims/gather-claim.ts'
import { claimedEnergyDensity, claimedEnergyPerMass } from './densities.ts'

/** What was measured on the cell itself; standard uncertainties beside the values. Better than any nominal size. */
export type MeasuredCell = {
  readonly diameter_mm?: { readonly value: number; readonly u: number }
  readonly length_mm?: { readonly value: number; readonly u: number }
  readonly mass_g?: { readonly value: number; readonly u: number }
}

/**
 * All findings of a claim, the heaviest first. `today` is an ISO date: lines past their date weigh one step less.
 *
 * Capacities are judged by format; densities only where a size or mass was measured or claimed. A "pulse", "max" or bare
 * current is never compared with a continuous one. Nothing found means nothing: a modest claim is easily made.
 */
export function weighClaims(
  facts: readonly Fact[],
  today: string,
  measured: MeasuredCell = {},
): readonly ClaimFinding[] {
  const claim = gather(facts)
  const findings = [
    ...weighFormat(claim),
    ...weighCapacity(claim, today),
    ...weighDensities(claim, today, measured),
    ...weighCurrents(claim, facts, today),
    ...weighMass(claim),
    ...factsOf(facts, 'unclear').map(
      ({ of, readings, span }): ClaimFinding => ({
        code: 'unclear-figure',
        weight: 'not-comparable',
        of,
        readings,
        spans: [span],
      }),
    ),
  ]
  const order: readonly ClaimWeight[] = ['impossible', 'contradiction', 'high', 'low', 'not-comparable']
  return findings.sort((a, b) => order.indexOf(a.weight) - order.indexOf(b.weight))
}

function weighFormat({ formats }: Claim): ClaimFinding[] {
  const names = [...new Set(formats.map(fact => fact.format))]
  if (names.length < 2) return []
  return [{ code: 'two-formats', weight: 'contradiction', formats: names, spans: formats.map(fact => fact.span) }]
}

function weighCapacity({ capacity, format, lines, nominalV, cells, parallel }: Claim, today: string): ClaimFinding[] {
  if (!capacity) return []
  const spans = [capacity.span]
  const value = capacity.mAh / parallel
  if (!lines) {
    const because = format ? 'format-unknown' : 'no-format'
    return [{ code: 'capacity-not-comparable', weight: 'not-comparable', value, because, spans }]
  }
  const weighed = against(value, 0, lines.capacity_mAh, today)
  if (!weighed) return []
  const atNominalSize = format && claimedEnergyDensity({ capacity_mAh: value, nominalV, ...nominalSize(format) })
  return [{ code: 'capacity', ...weighed, unit: 'mAh', atNominalSize, cells, spans }]
}

function weighDensities(claim: Claim, today: string, measured: MeasuredCell): ClaimFinding[] {
  const { capacity, energy, mass, nominalV, chemistry, lines, cells, parallel } = claim
  const findings: ClaimFinding[] = []
  if (energy && capacity) {
    const fromCapacity_Wh = (capacity.mAh * nominalV) / 1000
    const part = energy.Wh / fromCapacity_Wh
    // 15 % covers 3.6 against 3.7 V and rounding; a whole pack may be meant by one of the two.
    const ofAll = cells > 1 && Math.abs(part / cells - 1) <= 0.15
    if (Math.abs(part - 1) > 0.15 && !ofAll) {
      const spans = [energy.span, capacity.span]
      findings.push({
        code: 'energy-and-capacity',
        weight: 'contradiction',
        energy_Wh: energy.Wh,
        fromCapacity_Wh,
        spans,
      })
    }
  }
  const fromEnergy = energy && cells === 1 ? (energy.Wh / nominalV) * 1000 : null
  const capacity_mAh = capacity ? capacity.mAh / parallel : fromEnergy
  if (capacity_mAh === null) return findings
  const spans = [(capacity ?? energy)!.span]
  const limits = { ...(lines ?? anyFormat), ...(isIron(chemistry) ? ironPhosphate : {}) }
  const { diameter_mm, length_mm } = measured
  if (diameter_mm && length_mm) {
    const density = claimedEnergyDensity({
      capacity_mAh,
      nominalV,
      diameter_mm: diameter_mm.value,
      length_mm: length_mm.value,
      uDiameter_mm: diameter_mm.u,
      uLength_mm: length_mm.u,
    })
    const weighed = against(density.value, density.u, limits.perVolume_WhpL, today)
    if (weighed) {
      findings.push({ code: 'energy-per-volume', ...weighed, unit: 'Wh/L', u: density.u, size: 'measured', spans })
    }
  }
  const weight = measured.mass_g ?? (mass && cells === 1 ? { value: mass.g, u: 0 } : null)
  if (weight) {
    const density = claimedEnergyPerMass({ capacity_mAh, nominalV, mass_g: weight.value, uMass_g: weight.u })
    const weighed = against(density.value, density.u, limits.perMass_Whpkg, today)
    const size = measured.mass_g ? 'measured' : 'claimed'
    const from = size === 'claimed' ? [...spans, mass!.span] : spans
    if (weighed) findings.push({ code: 'energy-per-mass', ...weighed, unit: 'Wh/kg', u: density.u, size, spans: from })
  }
  return findings
}

function weighCurrents({ lines, capacity }: Claim, facts: readonly Fact[], today: string): ClaimFinding[] {
  const rates = factsOf(facts, 'rate').flatMap(({ C, sort, span }) =>
    capacity ? [{ A: (C * capacity.mAh) / 1000, sort, span }] : [],
  )
  return [...factsOf(facts, 'current'), ...rates].flatMap(({ A, sort, span }): ClaimFinding[] => {
    const spans = [span]
    if (sort !== 'continuous') {
      const because = {
        pulse: 'pulse-undefined',
        max: 'max-undefined',
        unsaid: 'sort-unsaid',
        charge: 'charge-current',
      } as const
      return [{ code: 'current-not-comparable', weight: 'not-comparable', value: A, because: because[sort], spans }]
    }
    const weighed = lines?.continuous_A ? against(A, 0, lines.continuous_A, today) : null
    if (weighed) return [{ code: 'continuous-current', ...weighed, unit: 'A', spans }]
    const pair = lines?.tradeOff.find(each => capacity && capacity.mAh > each.capacity_mAh && A > each.continuous_A)
    if (!pair || !capacity || today > validUntil.high) return []
    return [
      {
        code: 'capacity-and-current',
        weight: 'high',
        capacity_mAh: capacity.mAh,
        current_A: A,
        pair,
        validUntil: validUntil.high,
        spans: [capacity.span, span],
      },
    ]
  })
}

function weighMass({ mass, lines, cells, chemistry }: Claim): ClaimFinding[] {
  // Iron phosphate is lighter, and a mass may be of the whole lot.
  if (!mass || !lines || cells > 1 || isIron(chemistry) || mass.g >= lines.lightest_g) return []
  return [{ code: 'mass', weight: 'low', value: mass.g, lightest_g: lines.lightest_g, spans: [mass.span] }]
}

type Crossed = Pick<AgainstCeiling, 'weight' | 'value' | 'best' | 'line' | 'validUntil' | 'outOfDate'>

/** The heaviest line a value is above with certainty (guard band of 2 u), with its date; null if none. */
function against(value: number, u: number, ceiling: Ceiling, today: string): Crossed | null {
  const above = (limit: number | null) =>
    limit !== null && (u === 0 ? value > limit : zone({ value, u, limit, side: 'upper' }) === 'above')
  if (above(ceiling.impossible)) {
    const outOfDate = today > validUntil.impossible
    const weight = outOfDate ? 'high' : 'impossible'
    return {
      weight,
      value,
      best: ceiling.best,
      line: ceiling.impossible!,
      validUntil: validUntil.impossible,
      outOfDate,
    }
  }
  if (!above(ceiling.high)) return null
  const outOfDate = today > validUntil.high
  const weight = outOfDate ? 'not-comparable' : 'high'
  return { weight, value, best: ceiling.best, line: ceiling.high, validUntil: validUntil.high, outOfDate }
}
