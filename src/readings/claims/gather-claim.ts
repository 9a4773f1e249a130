// Brings the facts of a text together into the one claim they make.

import { type CellChemistry, nominalVolts } from '../../ground/ceilings.ts'
import type { FormatName } from '../../ground/formats.ts'
import { type Chemistry, type Fact, type FactOf, factsOf } from './facts.ts'

export type Claim = {
  readonly format: FormatName | null
  readonly formats: readonly FactOf<'format'>[]
  /** What limits are taken for: nickel or cobalt, the most generous, where the text names nothing or contradicts itself. */
  readonly chemistry: CellChemistry
  readonly nominalV: number
  /** The nominal voltage is the text's own, not the usual one of the chemistry. */
  readonly saysVoltage: boolean
  /** Every voltage the text names, V. */
  readonly voltages: readonly number[]
  /** Cells the text is about; a capacity is taken to be each one's, as loose cells are sold, unless they make up a battery. */
  readonly cells: number
  /** The text is about a battery of cells; `inSeries` and `parallel` say how they are connected, where it does. */
  readonly battery: FactOf<'battery'> | null
  readonly inSeries: number | null
  /** Cells side by side, which share the capacity and the current of a battery; 1 for loose cells. */
  readonly parallel: number
  /** The largest one: a minimum beside it claims less. One with its unit written goes before one without. */
  readonly capacity: FactOf<'capacity'> | null
  readonly energy: FactOf<'energy'> | null
  readonly mass: FactOf<'mass'> | null
  /** 1.5 V is claimed: a cell with a converter inside, whose mAh count at 1.5 V. */
  readonly converter: FactOf<'voltage'> | null
}

/** The currents of a claim in amperes: as they are given, and as a multiple of its capacity (45C of 5 Ah is 225 A). */
export function currentsOf(facts: readonly Fact[], { capacity }: Claim): readonly FactOf<'current'>[] {
  const rates = factsOf(facts, 'rate').flatMap(({ C, sort, span }): FactOf<'current'>[] =>
    capacity
      ? [{ kind: 'current', A: Number(((C * capacity.mAh) / 1000).toPrecision(12)), sort, seconds: null, span }]
      : [],
  )
  return [...factsOf(facts, 'current'), ...rates]
}

/** The claim of all facts together; what is said twice counts at its highest. */
export function gather(facts: readonly Fact[]): Claim {
  const formats = factsOf(facts, 'format')
  const chemistry = chemistryOf(factsOf(facts, 'chemistry').map(fact => fact.chemistry))
  const voltages = factsOf(facts, 'voltage')
  const stated = voltages.find(({ V }) => Math.abs(V / nominalVolts[chemistry] - 1) <= 0.08)?.V
  const capacities = factsOf(facts, 'capacity')
  const written = capacities.filter(({ assumed }) => !assumed)
  const batteries = factsOf(facts, 'battery')
  const battery = batteries.find(({ inParallel }) => inParallel !== null) ?? batteries[0] ?? null
  const { inSeries = null, inParallel = null } = battery ?? {}
  const counted = Math.max(1, ...factsOf(facts, 'count').map(fact => fact.cells))
  return {
    format: formats[0]?.format ?? null,
    formats,
    chemistry,
    nominalV: stated ?? nominalVolts[chemistry],
    saysVoltage: stated !== undefined,
    voltages: voltages.map(({ V }) => V),
    cells: Math.max(counted, (inSeries ?? 1) * (inParallel ?? 1)),
    battery,
    inSeries,
    parallel: inParallel ?? 1,
    capacity: largest(written.length > 0 ? written : capacities),
    energy: factsOf(facts, 'energy')[0] ?? null,
    mass: factsOf(facts, 'mass')[0] ?? null,
    converter: voltages.find(({ V }) => V >= 1.4 && V <= 1.6) ?? null,
  }
}

function largest(capacities: readonly FactOf<'capacity'>[]): FactOf<'capacity'> | null {
  return capacities.reduce<FactOf<'capacity'> | null>((most, one) => (most && most.mAh >= one.mAh ? most : one), null)
}

/** The one chemistry that all names mean; "lithium-ion" leaves it open, and names that contradict each other do so, too. */
function chemistryOf(named: readonly Chemistry[]): CellChemistry {
  const meant = new Set(named.filter(one => one !== 'lithium-ion').map(cellChemistry))
  const [only, another] = meant
  return only !== undefined && another === undefined ? only : 'nickel-or-cobalt'
}

/** What a name of a chemistry means for limits. */
export function cellChemistry(named: Chemistry): CellChemistry {
  if (named === 'IFR' || named === 'iron-phosphate') return 'iron-phosphate'
  return named === 'sodium-ion' || named === 'titanate' ? named : 'nickel-or-cobalt'
}
