// Weighs the currents of a claim: only a continuous one can be compared, and only with those meant up to the same limit.
import { agesOn, currentLines, tradeOffs } from '../../ground/ceilings.ts'
import type { Fact, FactOf } from './facts.ts'
import type { ClaimFinding, Compared } from './finding.ts'
import { type Claim, currentsOf } from './gather-claim.ts'
import { type Part, perCell } from './weigh-capacity.ts'

const reasons = {
  pulse: 'pulse-undefined',
  max: 'max-undefined',
  unsaid: 'sort-unsaid',
  charge: 'charge-current',
} as const

export function weighCurrents(claim: Claim, facts: readonly Fact[], today: string): Part {
  const findings: ClaimFinding[] = []
  let compared: Compared[] = []
  const said = new Set<string>()
  for (const current of currentsOf(facts, claim)) {
    const { A: value, sort, span } = current
    const claimed = `${value} ${sort} ${current.limit_C ?? ''}`
    if (said.has(claimed)) continue
    said.add(claimed)
    const unshared = claim.battery !== null && claim.battery.inParallel === null
    const because = sort !== 'continuous' ? reasons[sort] : unshared ? 'battery-current' : null
    if (because) {
      findings.push({ code: 'current-not-comparable', weight: 'not-comparable', value, because, spans: [span] })
      continue
    }
    if (claim.format && currentLines[claim.format]) compared = ['current']
    const found = continuous(claim, { ...current, A: value / claim.parallel }, today)
    if (found) findings.push(found)
  }
  return { findings, compared }
}

/** A continuous current of one cell against the best of its format, then together with its capacity. */
function continuous(claim: Claim, { A, limit_C, span }: FactOf<'current'>, today: string): ClaimFinding | null {
  const { format, capacity } = claim
  const lines = format && currentLines[format]
  if (!lines) return null
  const outOfDate = today > agesOn
  const weight = outOfDate ? 'high' : 'beyond'
  const aged = { value: A, unit: 'A', validUntil: agesOn, outOfDate, spans: [span] } as const
  const { free, toTemperature } = lines
  if (A > toTemperature.credible) {
    const upTo = limit_C === undefined ? 'no-limit' : 'temperature'
    const { best, credible: line } = upTo === 'temperature' ? toTemperature : free
    return { code: 'continuous-current', weight, ...aged, best, line, upTo }
  }
  const pair = tradeOffs[format]?.find(({ capacity_mAh, free_A, toTemperature_A }) => {
    const each = perCell(claim)
    return each !== null && each > capacity_mAh && A > (limit_C === undefined ? free_A : toTemperature_A)
  })
  if (pair && capacity) {
    const continuous_A = limit_C === undefined ? pair.free_A : pair.toTemperature_A
    return {
      code: 'capacity-and-current',
      weight,
      capacity_mAh: perCell(claim) ?? capacity.mAh,
      current_A: A,
      pair: { capacity_mAh: pair.capacity_mAh, continuous_A },
      validUntil: agesOn,
      outOfDate,
      spans: [capacity.span, span],
    }
  }
  // Beyond what is given without a limit, but within what is given up to a temperature: the claim lacks its limit.
  if (limit_C !== undefined || A <= free.credible) return null
  const high = outOfDate ? 'not-comparable' : 'high'
  return { code: 'continuous-current', weight: high, ...aged, best: free.best, line: free.credible, upTo: 'no-limit' }
}
