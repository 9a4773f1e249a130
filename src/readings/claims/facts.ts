// What a listing or a wrap claims, as facts, each with the piece of text it was read from.
import type { FormatName } from '../../ground/formats.ts'

/** Where in the text: `text.slice(from, to)`. */
export type Span = {
  readonly from: number
  readonly to: number
}

/** Trade letters: I and N/C/M/F for what the positive electrode is made of; in words where no letters stand. */
export type Chemistry =
  | 'ICR'
  | 'INR'
  | 'IMR'
  | 'NCR'
  | 'IFR'
  | 'iron-phosphate'
  | 'sodium-ion'
  | 'titanate'
  | 'lithium-ion'

/** A cell designation of IEC 61960-3, 5.1: A1 A2 A3 N2/N4, or a battery with N1 in series and N5 in parallel. */
export type Designation = {
  readonly chemistry: 'ICR' | 'INR' | 'IMR' | 'IVR' | 'ITR' | 'IFR' | 'LCR' | 'LNR' | 'LMR' | 'LVR' | 'LTR'
  /** Largest diameter and height, mm, each rounded up: a nominal 18650 is 19/66 (or 19/65), not a 19 mm cell. */
  readonly diameter_mm: number
  readonly height_mm: number
  readonly inSeries: number
  readonly inParallel: number
}

/** "max" is kept apart: without time and temperature it says neither. A continuous current may end at a temperature. */
export type CurrentSort = 'continuous' | 'pulse' | 'max' | 'charge' | 'unsaid'

export type Fact = { readonly span: Span } & (
  | {
      readonly kind: 'format'
      readonly format: FormatName
      /** `doubled-digit`: six digits, of which one was typed twice. */
      readonly from: 'trade-code' | 'designation' | 'doubled-digit'
    }
  | { readonly kind: 'designation'; readonly designation: Designation; readonly format: FormatName | null }
  | { readonly kind: 'chemistry'; readonly chemistry: Chemistry }
  /** `assumed`: no unit is written; beside a size code, only mAh makes sense. */
  | {
      readonly kind: 'capacity'
      readonly mAh: number
      readonly grade: 'minimum' | 'typical' | 'unsaid'
      readonly assumed?: true
    }
  /** `milli`: written in mWh, which looks like mAh. */
  | { readonly kind: 'energy'; readonly Wh: number; readonly milli?: true }
  /** `limit_C`: the temperature up to which it is meant, "30 A (80 °C cut-off)". */
  | {
      readonly kind: 'current'
      readonly A: number
      readonly sort: CurrentSort
      readonly seconds: number | null
      readonly limit_C?: number
    }
  /** A current as a multiple of the capacity per hour: 10C. */
  | { readonly kind: 'rate'; readonly C: number; readonly sort: CurrentSort }
  | { readonly kind: 'mass'; readonly g: number }
  | { readonly kind: 'voltage'; readonly V: number }
  | { readonly kind: 'resistance'; readonly mΩ: number }
  | { readonly kind: 'protection'; readonly protected: boolean }
  /** Several cells: masses and energies may be of all of them. */
  | { readonly kind: 'count'; readonly cells: number }
  /** The text is about a battery of cells; how they are connected, where it says so. */
  | {
      readonly kind: 'battery'
      readonly inSeries: number | null
      readonly inParallel: number | null
      /** "13S4P" or a designation; "6800mAh (2x 3400)"; a voltage no single cell has; the word. */
      readonly from: 'notation' | 'parts' | 'voltage' | 'word'
    }
  /** A number that can be read in two ways; both are given, in the canonical unit. */
  | {
      readonly kind: 'unclear'
      readonly of: 'capacity' | 'current' | 'mass' | 'energy' | 'voltage' | 'resistance'
      readonly readings: readonly number[]
    }
)

export type FactOf<K extends Fact['kind']> = Extract<Fact, { kind: K }>

/** All facts of one kind, in the order of the text. */
export function factsOf<K extends Fact['kind']>(facts: readonly Fact[], kind: K): FactOf<K>[] {
  return facts.filter((fact): fact is FactOf<K> => fact.kind === kind)
}

/** The longest text looked at; listings have their claims in the title. */
export const longestClaim = 4000

/** The most facts read out of one text: a listing has a dozen, a page copied whole has no end. Whoever shows as many says so. */
export const mostFacts = 60
