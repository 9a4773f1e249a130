// Weighs what a claim says about capacity and energy: against its size, against its mass, and against each other.

import { capacityLines, densityLines, type Lines } from '../../ground/ceilings.ts'
import { nominalSize } from '../../ground/formats.ts'
import { claimedEnergyDensity, claimedEnergyPerMass } from '../densities.ts'
import { against } from './against-lines.ts'
import type { ClaimFinding, Compared } from './finding.ts'
import type { Claim } from './gather-claim.ts'

/** What was measured on the cell itself; standard uncertainties beside the values. Better than any nominal size. */
export type MeasuredCell = {
  readonly diameter_mm?: { readonly value: number; readonly u: number }
  readonly length_mm?: { readonly value: number; readonly u: number }
  readonly mass_g?: { readonly value: number; readonly u: number }
}

export type Part = { readonly findings: readonly ClaimFinding[]; readonly compared: readonly Compared[] }
export const nothingWeighed: Part = { findings: [], compared: [] }

/** One cell's capacity, mAh: a battery's is shared out among the cells side by side. Null without one, or where that is not said. */
export function perCell({ capacity, battery, parallel, converter }: Claim): number | null {
  if (!capacity || converter) return null
  return battery && battery.inParallel === null ? null : capacity.mAh / parallel
}

/** The capacity against the lines of its format. */
export function weighCapacity(claim: Claim, today: string): Part {
  const { capacity, format, chemistry, nominalV, cells, battery, converter } = claim
  if (!capacity) return nothingWeighed
  const spans = [capacity.span]
  const not = (because: 'no-format' | 'converter' | 'connection-unsaid'): Part => ({
    findings: [{ code: 'capacity-not-comparable', weight: 'not-comparable', value: capacity.mAh, because, spans }],
    compared: [],
  })
  if (converter) return not('converter')
  if (!format) return not(battery && battery.inParallel === null ? 'connection-unsaid' : 'no-format')
  // All cells side by side is the way of connecting them that asks least of each.
  const value = perCell(claim) ?? capacity.mAh / cells
  const crossed = against(value, 0, capacityLines(format, chemistry), today)
  const unsaid = battery !== null && battery.inParallel === null
  if (unsaid && (cells === 1 || crossed?.weight !== 'impossible')) {
    // In series each cell has the whole of it; where that is nothing out of the ordinary, no connection is.
    const whole = against(capacity.mAh, 0, capacityLines(format, chemistry), today)
    return whole ? not('connection-unsaid') : { findings: [], compared: ['capacity'] }
  }
  if (!crossed) return { findings: [], compared: ['capacity'] }
  const atNominalSize = claimedEnergyDensity({ capacity_mAh: value, nominalV, ...nominalSize(format) })
  const assumed = capacity.assumed === true
  return {
    findings: [{ code: 'capacity', ...crossed, unit: 'mAh', atNominalSize, cells, assumed, spans }],
    compared: ['capacity'],
  }
}

/** An energy without a capacity, or of a cell with a converter inside, against what the best of its format hold. */
export function weighEnergy(claim: Claim, today: string): Part {
  const { energy, capacity, converter, format, chemistry, nominalV, cells, battery } = claim
  const carries = energy ?? (converter ? capacity : null)
  if (!carries || (capacity && !converter) || cells > 1 || battery) return nothingWeighed
  const value = carries.kind === 'energy' ? carries.Wh : (carries.mAh * (converter?.V ?? nominalV)) / 1000
  const findings: ClaimFinding[] = []
  const spans = [carries.span]
  if (carries.kind === 'energy' && carries.milli) {
    const capacity_mAh = (value / nominalV) * 1000
    findings.push({ code: 'milliwatt-hours', weight: 'not-comparable', value, capacity_mAh, volts: nominalV, spans })
  }
  if (!format) return { findings, compared: [] }
  const crossed = against(value, 0, inWh(capacityLines(format, chemistry), nominalV), today)
  // Some makers of 1.5 V cells print the energy of the cell inside, others what can be drawn: only the impossible counts.
  if (crossed && (!converter || crossed.weight === 'impossible'))
    findings.unshift({ code: 'energy', ...crossed, unit: 'Wh', spans })
  return { findings, compared: ['energy'] }
}

const inWh = ({ best, high, credible, impossible }: Lines, volts: number): Lines => {
  const of = (mAh: number) => (mAh * volts) / 1000
  return { best: of(best), high: of(high), credible: of(credible), impossible: of(impossible) }
}

/** Energy per litre and per kilogram, where a size or a mass was measured or claimed. */
export function weighDensities(claim: Claim, today: string, measured: MeasuredCell): Part {
  const { capacity, energy, mass, nominalV, chemistry, format, cells, battery, converter } = claim
  const single = cells === 1 && !battery
  const fromEnergy = energy && single ? (energy.Wh / nominalV) * 1000 : null
  const capacity_mAh = perCell(claim) ?? (capacity && !converter ? null : fromEnergy)
  if (capacity_mAh === null) return nothingWeighed
  const spans = [(capacity && !converter ? capacity : energy)!.span]
  const { perVolume_WhpL, perMass_Whpkg } = densityLines(format, chemistry)
  const findings: ClaimFinding[] = []
  const compared: Compared[] = []
  const { diameter_mm, length_mm } = measured
  if (diameter_mm && length_mm) {
    const [{ value: d, u: uDiameter_mm }, { value: l, u: uLength_mm }] = [diameter_mm, length_mm]
    const cylinder = { diameter_mm: d, length_mm: l, uDiameter_mm, uLength_mm }
    const { value, u } = claimedEnergyDensity({ capacity_mAh, nominalV, ...cylinder })
    const crossed = against(value, u, perVolume_WhpL, today)
    compared.push('energy-per-volume')
    if (crossed) findings.push({ code: 'energy-per-volume', ...crossed, unit: 'Wh/L', u, size: 'measured', spans })
  }
  const weight = measured.mass_g ?? (mass && single ? { value: mass.g, u: 0 } : null)
  if (weight) {
    const { value, u } = claimedEnergyPerMass({ capacity_mAh, nominalV, mass_g: weight.value, uMass_g: weight.u })
    const crossed = against(value, u, perMass_Whpkg, today)
    const size = measured.mass_g ? 'measured' : 'claimed'
    const from = size === 'claimed' ? [...spans, mass!.span] : spans
    compared.push('energy-per-mass')
    if (crossed) findings.push({ code: 'energy-per-mass', ...crossed, unit: 'Wh/kg', u, size, spans: from })
  }
  return { findings, compared }
}

/** How far watt-hours and ampere-hours times volts may differ: 3.6 against 3.7 V and rounding; more where the voltage is not said. */
const tolerance = { said: 0.1, assumed: 0.15 }

/** Watt-hours against ampere-hours times volts, of one cell or of all of them. */
export function weighEnergyAgainstCapacity(claim: Claim): Part {
  const { energy, capacity, nominalV, saysVoltage, voltages, cells, inSeries, converter } = claim
  // With a converter inside, some print the energy of the cell within, others what can be drawn.
  if (!energy || !capacity || converter) return nothingWeighed
  const volts = [...new Set([nominalV, ...voltages])]
  const fits = volts.some(each =>
    [1, inSeries ?? 1, cells].some(all => {
      const part = energy.Wh / ((capacity.mAh * each * all) / 1000)
      return Math.abs(part - 1) <= (saysVoltage ? tolerance.said : tolerance.assumed)
    }),
  )
  if (fits) return nothingWeighed
  const spans = [energy.span, capacity.span]
  const fromCapacity_Wh = (capacity.mAh * nominalV) / 1000
  const finding = { code: 'energy-and-capacity', weight: 'contradiction' } as const
  return {
    findings: [{ ...finding, energy_Wh: energy.Wh, fromCapacity_Wh, volts: nominalV, spans }],
    compared: [],
  }
}
