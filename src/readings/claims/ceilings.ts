// The best known of each format, and from where on a claim is high or impossible: figures that age, each with its date.

/** `high`: beyond what is sold. `impossible`: at least a quarter beyond the best known. */
export type Ceiling = {
  readonly best: number
  readonly high: number
  readonly impossible: number | null
}

export type FormatCeilings = {
  readonly capacity_mAh: Ceiling
  readonly perVolume_WhpL: Ceiling
  readonly perMass_Whpkg: Ceiling
  /** Null where no figure is known. */
  readonly continuous_A: Ceiling | null
  /** Lightest genuine cell, g. */
  readonly lightest_g: number
  /** Pairs of capacity and continuous current of which only one can be had at a time: beyond both is high. */
  readonly tradeOff: readonly { readonly capacity_mAh: number; readonly continuous_A: number }[]
}

export type CeilingFormat = '14500' | '18650' | '20700' | '21700' | '26650'

/** After these dates a line proves nothing any more: high becomes unknown, impossible becomes high. */
export const validUntil = { high: '2027-12-31', impossible: '2029-12-31' } as const

const usual = {
  perVolume_WhpL: { best: 740, high: 760, impossible: 1000 },
  perMass_Whpkg: { best: 265, high: 280, impossible: 340 },
}
const densest = {
  perVolume_WhpL: { best: 900, high: 950, impossible: 1150 },
  perMass_Whpkg: { best: 335, high: 350, impossible: 420 },
}

/**
 * Sources: densities from data sheets of 2024 to 2026 (18650: 740 Wh/L and 265 Wh/kg; newest 21700: 900 Wh/L and 335
 * Wh/kg), NASA abstract "Safe, High Specific Energy & Power Lithium Ion Cell Designs" (265 Wh/kg, 725 Wh/L). Impossible
 * capacities are derived: the impossible Wh/L times the volume of the largest bare cell of the format, at 3.6 V.
 * Capacities of 14500, 20700, 26650, all currents and masses: common practice or from memory, no source.
 */
export const ceilings: Record<CeilingFormat, FormatCeilings> = {
  '14500': {
    ...usual,
    capacity_mAh: { best: 1000, high: 1200, impossible: 2400 },
    continuous_A: { best: 40, high: 40, impossible: 50 },
    lightest_g: 15,
    tradeOff: [],
  },
  '18650': {
    ...usual,
    capacity_mAh: { best: 3600, high: 3700, impossible: 5000 },
    continuous_A: { best: 40, high: 40, impossible: 50 },
    lightest_g: 42,
    tradeOff: [
      { capacity_mAh: 3300, continuous_A: 20 },
      { capacity_mAh: 2900, continuous_A: 30 },
    ],
  },
  '20700': {
    ...usual,
    capacity_mAh: { best: 4250, high: 4400, impossible: 6600 },
    continuous_A: { best: 70, high: 70, impossible: 90 },
    lightest_g: 55,
    tradeOff: [],
  },
  '21700': {
    ...densest,
    capacity_mAh: { best: 6000, high: 6300, impossible: 8500 },
    continuous_A: { best: 70, high: 70, impossible: 90 },
    lightest_g: 60,
    tradeOff: [],
  },
  '26650': {
    ...usual,
    capacity_mAh: { best: 5800, high: 6000, impossible: 10_500 },
    continuous_A: null,
    lightest_g: 76,
    tradeOff: [],
  },
}

/** For sizes without a row of their own: the lines of the densest format known. */
export const anyFormat = densest

/** Iron phosphate: 90 to 130 Wh/kg and about 333 Wh/L (a supplier's table); high from a quarter beyond. */
export const ironPhosphate = {
  perVolume_WhpL: { best: 333, high: 420, impossible: null },
  perMass_Whpkg: { best: 130, high: 165, impossible: null },
} as const satisfies Partial<Record<keyof FormatCeilings, Ceiling>>
