// Brings the facts of a text together into the one claim they make.

import type { FormatName } from '../../ground/formats.ts'
import { type CeilingFormat, ceilings, type FormatCeilings } from './ceilings.ts'
import { type Chemistry, type Fact, type FactOf, factsOf } from './facts.ts'

export type Claim = {
  readonly format: FormatName | null
  readonly formats: readonly FactOf<'format'>[]
  readonly lines: FormatCeilings | null
  readonly chemistry: Chemistry | null
  readonly nominalV: number
  /** Cells the text is about; a capacity is taken to be each one's, as loose cells are sold. */
  readonly cells: number
  /** Cells side by side in a battery's designation, which share its capacity. */
  readonly parallel: number
  /** The largest one: a minimum beside it claims less. */
  readonly capacity: FactOf<'capacity'> | null
  readonly energy: FactOf<'energy'> | null
  readonly mass: FactOf<'mass'> | null
}

/** The claim of all facts together; what is said twice counts at its highest. */
export function gather(facts: readonly Fact[]): Claim {
  const formats = factsOf(facts, 'format')
  const format = formats[0]?.format ?? null
  const chemistries = factsOf(facts, 'chemistry').map(fact => fact.chemistry)
  const chemistry = chemistries.find(isIron) ?? chemistries[0] ?? null
  const stated = factsOf(facts, 'voltage').find(({ V }) => V >= 3.2 && V <= 3.85)?.V
  const capacities = factsOf(facts, 'capacity')
  return {
    format,
    formats,
    lines: format && format in ceilings ? ceilings[format as CeilingFormat] : null,
    chemistry,
    nominalV: stated ?? nominalVoltage(chemistry),
    cells: Math.max(1, ...factsOf(facts, 'count').map(fact => fact.cells)),
    parallel: Math.max(1, ...factsOf(facts, 'designation').map(fact => fact.designation.inParallel)),
    capacity: capacities.length === 0 ? null : capacities.reduce((most, each) => (each.mAh > most.mAh ? each : most)),
    energy: factsOf(facts, 'energy')[0] ?? null,
    mass: factsOf(facts, 'mass')[0] ?? null,
  }
}

/** Nominal voltage by chemistry: 3.6 V, iron phosphate 3.2 V. */
function nominalVoltage(chemistry: Chemistry | null): number {
  return isIron(chemistry) ? 3.2 : 3.6
}

/** Whether a chemistry is iron phosphate, which holds less and weighs less. */
export function isIron(chemistry: Chemistry | null | undefined): boolean {
  return chemistry === 'IFR' || chemistry === 'iron-phosphate'
}
