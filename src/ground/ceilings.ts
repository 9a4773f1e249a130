// The one table of what cells can be, per format and chemistry: best known, high, beyond belief, impossible; with dates and sources.
import { type FormatName, nominalVolume } from './formats.ts'

/** What is inside, as far as limits differ by it; where a label is silent or contradicts itself, nickel or cobalt, the most generous. */
export type CellChemistry = 'nickel-or-cobalt' | 'iron-phosphate' | 'sodium-ion' | 'titanate'

/**
 * Four figures of one kind. Above `high`: a class so new that a data sheet is asked for (the best known may lie above it). Above `credible`: beyond
 * what any believable data sheet shows, a strong sign. From `impossible` on: at least a quarter beyond the best, cannot be.
 */
export type Lines = {
  readonly best: number
  readonly high: number
  readonly credible: number
  readonly impossible: number
}

/** A source named beside a row: seen in a published text, derived from figures beside it, or from memory. */
export type Ground = 'published' | 'derived' | 'memory'
export type CapacityLines = Lines & { readonly ground: Ground }

/**
 * The last day on which `high`, `credible` and the currents count; to be gone over each June. `impossible` never ages: a figure
 * that has aged may weaken a sign, but not make the impossible possible.
 */
export const agesOn = '2028-12-31'

const lines = (ground: Ground, best: number, high: number, credible: number, impossible: number): CapacityLines => ({
  best,
  high,
  credible,
  impossible,
  ground,
})

/**
 * Capacities in mAh where a figure of the format itself is known. Published: data sheets and independent tests of 2025 and 2026
 * (18650: 4.0 Ah, 14.4 Wh, 48 g; 21700: 6.5 Ah typical, 6.4 minimum; 26650: 7.0 Ah; 26800: 7.0–7.2 Ah; 14430: 1.15 Ah; 14500:
 * labels inside AA products 1.2–1.3 Ah; 20700: label 4.25 Ah; 46800: 23.1 Ah measured, a later one of 272 Wh/kg; iron phosphate 18650 1.8, 26650
 * 4.0, 32700 7.0 Ah; sodium 18650 1.5 Ah). Others are from memory and have wider margins.
 */
const known: { readonly [C in CellChemistry]?: { readonly [F in FormatName]?: CapacityLines } } = {
  'nickel-or-cobalt': {
    '10440': lines('memory', 400, 400, 500, 700),
    '14430': lines('published', 1150, 1100, 1250, 1450),
    '14500': lines('published', 1300, 1100, 1400, 1650),
    '16340': lines('memory', 1000, 950, 1100, 1300),
    '16650': lines('memory', 2500, 2500, 2900, 3700),
    '17500': lines('memory', 1600, 1600, 1900, 2600),
    '17670': lines('memory', 2000, 2000, 2900, 4000),
    '18350': lines('memory', 1500, 1300, 1600, 1900),
    '18500': lines('memory', 2300, 2100, 2600, 3400),
    '18650': lines('published', 4000, 3700, 4200, 5000),
    '20700': lines('published', 4250, 4300, 4500, 5500),
    '21700': lines('published', 6500, 6000, 7000, 8200),
    '26350': lines('memory', 3000, 3000, 3500, 4700),
    '26500': lines('memory', 4500, 4500, 5300, 6700),
    '26650': lines('published', 7000, 6000, 7400, 8750),
    '26700': lines('memory', 6000, 6000, 7600, 9400),
    '26800': lines('published', 7200, 7200, 7600, 9000),
    '46800': lines('published', 26_000, 28_000, 30_000, 36_000),
  },
  'iron-phosphate': {
    '10440': lines('memory', 280, 280, 350, 450),
    '14500': lines('memory', 700, 700, 800, 1000),
    '16340': lines('memory', 550, 550, 650, 800),
    '18350': lines('memory', 750, 750, 850, 1100),
    '18500': lines('memory', 1100, 1100, 1250, 1600),
    '18650': lines('published', 1800, 1900, 2000, 2300),
    '26650': lines('published', 4000, 4000, 4200, 5000),
    '26700': lines('memory', 4500, 4500, 4800, 5700),
    '32650': lines('memory', 6500, 6500, 6900, 8100),
    '32700': lines('published', 7000, 6300, 7350, 8750),
    '33140': lines('memory', 15_000, 15_000, 16_500, 18_750),
  },
  'sodium-ion': { '18650': lines('published', 1500, 1600, 1700, 2000) },
}

/** Nominal voltages, by which energy and capacity are turned into each other. Source: encyclopaedia copies, sodium from a data sheet. */
export const nominalVolts: Readonly<Record<CellChemistry, number>> = {
  'nickel-or-cobalt': 3.6,
  'iron-phosphate': 3.2,
  'sodium-ion': 3.05,
  titanate: 2.3,
}

type DensityLines = { readonly perVolume_WhpL: Lines; readonly perMass_Whpkg: Lines }

const plain = (best: number, high: number, credible: number, impossible: number): Lines => ({
  best,
  high,
  credible,
  impossible,
})

/**
 * Energy per volume and per mass. `credible` leaves room for a cell at the small end of its format and a label of 3.7 V, by which a
 * genuine 4.0 Ah 18650 comes to 895 Wh/L and a 6.5 Ah 21700 to 990. Sources: nickel or cobalt, 18650: 14.4 Wh bare is 812 Wh/L (derived), 300 Wh/kg, 330 claimed
 * (2026), so impossible from 1,050 Wh/L and 415 Wh/kg; 21700, the densest of all: 890–900 Wh/L, 335 Wh/kg, so from 1,150 and 420.
 * Iron phosphate: 26650 of 4.0 Ah, 364 Wh/L and 142 Wh/kg, so from 500 and 190. Sodium: 18650 of 1.5 Ah, 276 Wh/L (derived), 118
 * Wh/kg. Titanate: 60–110 Wh/kg, up to 177 Wh/L, so from 250.
 */
const densities: Readonly<Record<CellChemistry, DensityLines>> = {
  'nickel-or-cobalt': { perVolume_WhpL: plain(812, 900, 950, 1050), perMass_Whpkg: plain(330, 340, 375, 415) },
  'iron-phosphate': { perVolume_WhpL: plain(364, 400, 440, 500), perMass_Whpkg: plain(142, 150, 175, 190) },
  'sodium-ion': { perVolume_WhpL: plain(276, 300, 330, 370), perMass_Whpkg: plain(118, 140, 180, 220) },
  titanate: { perVolume_WhpL: plain(177, 180, 220, 250), perMass_Whpkg: plain(110, 115, 130, 140) },
}
const densest: DensityLines = { perVolume_WhpL: plain(900, 1000, 1050, 1150), perMass_Whpkg: plain(335, 345, 385, 420) }

/** The formats whose own cells reach the density of the newest 21700s. */
const asDenseAs21700: readonly FormatName[] = ['21700']

/** Lines of energy per litre and per kilogram; of a format that is not known (null) those of the densest. */
export function densityLines(format: FormatName | null, chemistry: CellChemistry = 'nickel-or-cobalt'): DensityLines {
  if (chemistry !== 'nickel-or-cobalt') return densities[chemistry]
  return format === null || asDenseAs21700.includes(format) ? densest : densities[chemistry]
}

/** Real cells run up to a tenth over the nominal volume of their format (a battery design site, on the 21700). */
const oversize = 1.1

/**
 * Lines of capacity in mAh for every format and chemistry. Where no figure of the format itself is known, they are worked out from
 * its nominal volume, a tenth added, and the chemistry's lines per litre, rounded up to 50 mAh.
 */
export function capacityLines(format: FormatName, chemistry: CellChemistry = 'nickel-or-cobalt'): CapacityLines {
  const own = known[chemistry]?.[format]
  if (own) return own
  const { best, high, credible, impossible } = densityLines(format, chemistry).perVolume_WhpL
  const capacity = (WhpL: number) =>
    Math.ceil((nominalVolume(format) * oversize * WhpL * 1000) / nominalVolts[chemistry] / 50) * 50
  return lines('derived', capacity(best), capacity(high), capacity(credible), capacity(impossible))
}

/** Continuous currents in A: the best known, and the line a quarter beyond it, with and without a cut-off at 75 or 80 °C. */
export type CurrentLines = {
  readonly free: { readonly best: number; readonly credible: number }
  readonly toTemperature: { readonly best: number; readonly credible: number }
  readonly ground: Ground
}

const amperes = (ground: Ground, free: number, freeLine: number, hot: number, hotLine: number): CurrentLines => ({
  free: { best: free, credible: freeLine },
  toTemperature: { best: hot, credible: hotLine },
  ground,
})

/**
 * Published: nine makers' data sheets read on 30 September 2026 (18650 36 A without and 56 A with a cut-off at 80 °C; 21700 40 A
 * without, 125 A with 75 °C advised). From memory: all others; an iron phosphate 26650 of 70 A is known, and small cells are held
 * to what a cell of twice their capacity gives.
 */
export const currentLines: { readonly [F in FormatName]?: CurrentLines } = {
  '10440': amperes('memory', 4, 10, 4, 10),
  '14500': amperes('memory', 10, 25, 15, 25),
  '16340': amperes('memory', 10, 25, 12, 25),
  '18350': amperes('memory', 15, 30, 20, 35),
  '18500': amperes('memory', 20, 40, 30, 50),
  '18650': amperes('published', 36, 45, 56, 70),
  '20700': amperes('memory', 30, 50, 45, 90),
  '21700': amperes('published', 40, 50, 125, 155),
  '26650': amperes('memory', 70, 90, 70, 90),
  '26700': amperes('memory', 70, 90, 70, 90),
  '26800': amperes('memory', 70, 90, 70, 90),
}

/**
 * Capacity and continuous current of which only one can be had at a time: a claim beyond both figures of a pair is out of reach.
 * `toTemperature`: the current with a cut-off by temperature. Derived: the best pairs of the same data sheets, a quarter added; a 4.0 Ah
 * 18650 gives 10–12 A, one of 3.5 Ah 8–10 A (13 “max”), one of 3.0 Ah 36 A, 56 A with cut-off; a 21700 of 6.5 Ah 26 A, of 6.0 Ah 40 A, 100 A with
 * cut-off, of 5.0 Ah 125 A with cut-off.
 */
export const tradeOffs: {
  readonly [F in FormatName]?: readonly {
    readonly capacity_mAh: number
    readonly free_A: number
    readonly toTemperature_A: number
  }[]
} = {
  '18650': [{ capacity_mAh: 3300, free_A: 20, toTemperature_A: 35 }],
  '21700': [{ capacity_mAh: 6200, free_A: 40, toTemperature_A: 125 }],
}

/** Mass of genuine bare cells in g: the lightest and the heaviest, and the lightest that holds much for its format. */
export type MassWindow = {
  readonly lightest: number
  readonly heaviest: number
  /** Claims from `capacity_mAh` on weigh at least `lightest`. */
  readonly full?: { readonly capacity_mAh: number; readonly lightest: number }
  readonly ground: Ground
}

/**
 * Published: a national laboratory's failure databank, rev. 2 (2024), masses of 133 cells in 14 series (18650 of 2.15 Ah 41.4–41.6 g, of 3.5 Ah
 * 45.2 g; 21700 68–73 g), data sheets (sodium 18650 36.5 g; iron phosphate 26650 up to 90 g; 26800 116–124 g; 46800 355 g). From memory: the others.
 */
export const masses: { readonly [C in CellChemistry]?: { readonly [F in FormatName]?: MassWindow } } = {
  'nickel-or-cobalt': {
    '14500': { lightest: 18, heaviest: 24, ground: 'memory' },
    '16340': { lightest: 15, heaviest: 20, ground: 'memory' },
    '18350': { lightest: 22, heaviest: 27, ground: 'memory' },
    '18650': { lightest: 40, heaviest: 50, full: { capacity_mAh: 2500, lightest: 42 }, ground: 'published' },
    '20700': { lightest: 55, heaviest: 66, ground: 'memory' },
    '21700': { lightest: 60, heaviest: 80, full: { capacity_mAh: 4500, lightest: 62 }, ground: 'published' },
    '26650': { lightest: 80, heaviest: 105, ground: 'memory' },
    '26800': { lightest: 105, heaviest: 125, ground: 'published' },
    '46800': { lightest: 330, heaviest: 380, ground: 'published' },
  },
  'iron-phosphate': {
    '14500': { lightest: 14, heaviest: 20, ground: 'memory' },
    '18650': { lightest: 36, heaviest: 44, ground: 'memory' },
    '26650': { lightest: 70, heaviest: 92, ground: 'published' },
    '32700': { lightest: 135, heaviest: 152, ground: 'memory' },
  },
  'sodium-ion': { '18650': { lightest: 34, heaviest: 40, ground: 'published' } },
}
