// Genuine cells at the best published figure of each size and kind.
//
// Resistances: the highest of those sheets; where there is none, the top of the usual bands, from memory. Figures: data sheets and independent tests of 2025 and 2026, and a national laboratory's failure databank of 2024 (masses); those of
// 16340, 18350, 18500 and the like are from memory. Sizes are the smallest a cell of the format may have, which makes its claim look
// the densest.
export type Genuine = {
  readonly name: string
  readonly format: string
  readonly other?: string
  readonly chemistry: string
  readonly mAh: number
  readonly nominalV: number
  readonly voltsBeside?: string
  readonly A?: { readonly value: number; readonly word: string }
  /** Highest of its sheet or class at 1 kHz, and DC, mΩ; by these and A it loses the most that a genuine cell may. */
  readonly ac_mΩ?: number
  readonly dc_mΩ?: number
  readonly g?: number
  readonly mm?: { readonly diameter: number; readonly length: number }
  /** At rest, as it is delivered. */
  readonly V: number
}

const nickel = { chemistry: 'nickel-or-cobalt', nominalV: 3.6, V: 3.55 }
const iron = { chemistry: 'iron-phosphate', nominalV: 3.2, V: 3.28 }
const amps = (value: number, word = 'continuous') => ({ value, word })

export const genuineCells: readonly Genuine[] = [
  {
    ...nickel,
    name: '18650 of 4.0 Ah',
    ac_mΩ: 45,
    format: '18650',
    mAh: 4000,
    A: amps(12),
    g: 48,
    mm: { diameter: 18.3, length: 65 },
  },
  {
    ...nickel,
    name: '18650 of 3.6 Ah',
    format: '18650',
    mAh: 3600,
    A: amps(10),
    g: 47.5,
    mm: { diameter: 18.3, length: 65 },
  },
  {
    ...nickel,
    name: '18650 of 3.5 Ah',
    ac_mΩ: 45,
    dc_mΩ: 45,
    format: '18650',
    mAh: 3500,
    A: amps(10),
    g: 45.2,
    mm: { diameter: 18.3, length: 65.1 },
  },
  {
    ...nickel,
    name: '18650 of 3.0 Ah',
    ac_mΩ: 5,
    format: '18650',
    mAh: 3000,
    A: amps(36),
    g: 46,
    mm: { diameter: 18.3, length: 65 },
  },
  {
    ...nickel,
    name: '18650 of 3.0 Ah, 56 A to 80 °C',
    ac_mΩ: 5,
    dc_mΩ: 10.25,
    format: '18650',
    mAh: 3000,
    A: amps(56, 'to-temperature'),
    g: 46,
  },
  {
    ...nickel,
    name: '18650 of 2.15 Ah',
    format: '18650',
    mAh: 2150,
    A: amps(10),
    g: 41.5,
    mm: { diameter: 18.2, length: 64.8 },
  },
  {
    ...nickel,
    name: '21700 of 6.5 Ah',
    ac_mΩ: 14,
    format: '21700',
    mAh: 6500,
    A: amps(26),
    g: 75,
    mm: { diameter: 21.4, length: 70.2 },
  },
  {
    ...nickel,
    name: '21700 of 6.0 Ah',
    ac_mΩ: 5,
    dc_mΩ: 10.25,
    format: '21700',
    mAh: 6000,
    A: amps(100, 'to-temperature'),
    g: 73,
    mm: { diameter: 21.4, length: 70 },
  },
  {
    ...nickel,
    name: '21700 of 5.0 Ah',
    ac_mΩ: 5,
    dc_mΩ: 8.2,
    format: '21700',
    mAh: 5000,
    A: amps(125, 'to-temperature'),
    g: 68.4,
    mm: { diameter: 21.2, length: 70 },
  },
  {
    ...nickel,
    name: '26650 of 7.0 Ah',
    ac_mΩ: 30,
    format: '26650',
    mAh: 7000,
    A: amps(14),
    g: 96,
    mm: { diameter: 26.2, length: 65.3 },
  },
  {
    ...nickel,
    name: '20700 of 4.25 Ah',
    ac_mΩ: 14,
    format: '20700',
    mAh: 4250,
    A: amps(30),
    g: 63,
    mm: { diameter: 20.3, length: 70 },
  },
  {
    ...nickel,
    name: '14500 of 1.3 Ah',
    ac_mΩ: 60,
    format: '14500',
    mAh: 1300,
    A: amps(3),
    g: 20,
    mm: { diameter: 14.1, length: 49.5 },
  },
  { ...nickel, name: '14430 of 1.15 Ah', format: 'other', other: '14430', mAh: 1150, g: 18 },
  { ...nickel, name: '16340 of 1.0 Ah', format: 'other', other: '16340', mAh: 1000, A: amps(5), ac_mΩ: 60, g: 18 },
  { ...nickel, name: '18350 of 1.5 Ah', format: 'other', other: '18350', mAh: 1500, A: amps(10), ac_mΩ: 40, g: 25 },
  { ...nickel, name: '26800 of 7.2 Ah', format: 'other', other: '26800', mAh: 7200, g: 121 },
  { ...nickel, name: '46800 of 26 Ah', format: 'other', other: '46800', mAh: 26_000, g: 355 },
  {
    ...iron,
    name: 'iron phosphate 18650 of 1.8 Ah',
    format: '18650',
    mAh: 1800,
    g: 40,
    mm: { diameter: 18.2, length: 65 },
  },
  {
    ...iron,
    name: 'iron phosphate 26650 of 4.0 Ah',
    ac_mΩ: 18,
    dc_mΩ: 25,
    format: '26650',
    mAh: 4000,
    A: amps(40),
    g: 86,
    mm: { diameter: 26, length: 65.1 },
  },
  {
    ...iron,
    name: 'iron phosphate 32700 of 7.0 Ah',
    format: 'other',
    other: '32700',
    mAh: 7000,
    A: amps(35),
    ac_mΩ: 8,
    g: 144,
  },
  {
    ...nickel,
    name: '18650 of 3.0 Ah, 30 A to 75 °C',
    format: '18650',
    mAh: 3000,
    A: amps(30, 'to-temperature'),
    ac_mΩ: 18,
    dc_mΩ: 36,
    g: 46,
  },
  {
    ...nickel,
    name: '21700 of 4.2 Ah, 45 A',
    format: '21700',
    mAh: 4200,
    A: amps(45, 'to-temperature'),
    ac_mΩ: 14,
    dc_mΩ: 18.7,
    g: 68.4,
  },
  {
    ...nickel,
    name: '21700 of 5.0 Ah, 70 A to 80 °C',
    format: '21700',
    mAh: 5000,
    A: amps(70, 'to-temperature'),
    ac_mΩ: 7,
    dc_mΩ: 14.3,
    g: 69,
  },
  {
    ...nickel,
    name: '21700 of 5.85 Ah, 50 A to 80 °C',
    format: '21700',
    mAh: 5850,
    A: amps(50, 'to-temperature'),
    ac_mΩ: 5.5,
    dc_mΩ: 11.3,
    g: 73,
  },
  {
    chemistry: 'sodium-ion',
    voltsBeside: 'lithium',
    nominalV: 3.7,
    V: 3.6,
    name: 'sodium 18650 of 0.75 Ah, of the kind that has 3.7 V',
    format: '18650',
    mAh: 750,
    A: amps(15),
    ac_mΩ: 15,
  },
  {
    chemistry: 'sodium-ion',
    nominalV: 3.05,
    V: 2.7,
    name: 'sodium 18650 of 1.5 Ah',
    ac_mΩ: 30,
    dc_mΩ: 60,
    format: '18650',
    mAh: 1500,
    A: amps(4.5),
    g: 36.5,
    mm: { diameter: 18.2, length: 65 },
  },
]
