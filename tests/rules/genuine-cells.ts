// Genuine cells at the best published figure of each size and kind, and what such a cell answers to every question.
//
// Figures: data sheets and independent tests of 2025 and 2026, and a national laboratory's failure databank of 2024 (masses); those of
// 16340, 18350, 18500 and the like are from memory. Sizes are the smallest a cell of the format may have, which makes its claim look
// the densest.
import { type Answers, option } from '../../src/engine/answers.ts'

export type Genuine = {
  readonly name: string
  readonly format: string
  readonly other?: string
  readonly chemistry: string
  readonly mAh: number
  readonly nominalV: number
  readonly A?: { readonly value: number; readonly word: string }
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
    format: '18650',
    mAh: 3500,
    A: amps(10),
    g: 45.2,
    mm: { diameter: 18.3, length: 65.1 },
  },
  {
    ...nickel,
    name: '18650 of 3.0 Ah',
    format: '18650',
    mAh: 3000,
    A: amps(36),
    g: 46,
    mm: { diameter: 18.3, length: 65 },
  },
  {
    ...nickel,
    name: '18650 of 3.0 Ah, 56 A to 80 °C',
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
    format: '21700',
    mAh: 6500,
    A: amps(26),
    g: 75,
    mm: { diameter: 21.4, length: 70.2 },
  },
  {
    ...nickel,
    name: '21700 of 6.0 Ah',
    format: '21700',
    mAh: 6000,
    A: amps(100, 'to-temperature'),
    g: 73,
    mm: { diameter: 21.4, length: 70 },
  },
  {
    ...nickel,
    name: '21700 of 5.0 Ah',
    format: '21700',
    mAh: 5000,
    A: amps(125, 'to-temperature'),
    g: 68.4,
    mm: { diameter: 21.2, length: 70 },
  },
  {
    ...nickel,
    name: '26650 of 7.0 Ah',
    format: '26650',
    mAh: 7000,
    A: amps(14),
    g: 96,
    mm: { diameter: 26.2, length: 65.3 },
  },
  {
    ...nickel,
    name: '20700 of 4.25 Ah',
    format: '20700',
    mAh: 4250,
    A: amps(30),
    g: 63,
    mm: { diameter: 20.3, length: 70 },
  },
  {
    ...nickel,
    name: '14500 of 1.3 Ah',
    format: '14500',
    mAh: 1300,
    A: amps(3),
    g: 20,
    mm: { diameter: 14.1, length: 49.5 },
  },
  { ...nickel, name: '14430 of 1.15 Ah', format: 'other', other: '14430', mAh: 1150, g: 18 },
  { ...nickel, name: '16340 of 1.0 Ah', format: 'other', other: '16340', mAh: 1000, A: amps(5), g: 18 },
  { ...nickel, name: '18350 of 1.5 Ah', format: 'other', other: '18350', mAh: 1500, A: amps(10), g: 25 },
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
    format: '26650',
    mAh: 4000,
    A: amps(40),
    g: 86,
    mm: { diameter: 26, length: 65.1 },
  },
  { ...iron, name: 'iron phosphate 32700 of 7.0 Ah', format: 'other', other: '32700', mAh: 7000, A: amps(35), g: 144 },
  {
    chemistry: 'sodium-ion',
    nominalV: 3.05,
    V: 2.7,
    name: 'sodium 18650 of 1.5 Ah',
    format: '18650',
    mAh: 1500,
    A: amps(4.5),
    g: 36.5,
    mm: { diameter: 18.2, length: 65 },
  },
]

/** What every genuine cell answers to the looks, whatever it is. */
export const sound: Answers = {
  'how-many': option('one'),
  'sold-as': option('new-bare'),
  'where-bought': option('known-shop'),
  price: option('usual'),
  'label-listing': option('same'),
  'asked-seller': option('gave-papers'),
  'arrival-charge': option('part'),
  'hot-now': option('nothing'),
  swollen: option('straight'),
  leaking: option('clean'),
  smell: option('none'),
  'colour-change': option('none'),
  rust: option('clean'),
  dent: option('smooth'),
  wet: option('dry'),
  'wrap-torn': option('whole'),
  ring: option('whole'),
  'past-damage': option('never'),
  'got-hot': option('hand-warm'),
  'top-damage': option('sound'),
  'arrived-how': option('covered'),
  'voltage-rest': option('rested'),
  'meter-sign': option('plus'),
  'voltage-drop': option('not-read'),
  'charger-kind': option('own-kind'),
  'weld-marks': option('none'),
  'ends-finish': option('as-made'),
  'second-wrap': option('single'),
  'second-ring': option('single'),
  print: option('clean'),
  'wrap-colour': option('as-pictured'),
  designation: option('trade-code'),
  'square-code': option('data-matrix'),
  'code-scan': option('text'),
  'cert-marks': option('some'),
  'crossed-bin': option('there'),
  'lettering-place': option('can'),
  'lettering-look': option('crisp'),
  'code-place': option('wrap'),
  'code-print': option('clear'),
  'in-makers-list': option('listed'),
  'sheet-fits': option('fits'),
  'sheet-of-new-class': option('there'),
  'label-energy': option('agrees'),
  'first-sold': option('elsewhere'),
  'current-looked-up': option('as-claimed'),
  'in-device': option('fine'),
  'load-test': option('held'),
  'reference-at-hand': option('have'),
  'reference-lettering': option('same'),
  'reference-code': option('same'),
  'reference-top': option('same'),
  'same-serial': option('all-different'),
  batch: option('alike'),
  'batch-masses': option('close'),
  'measured-capacity': option('from-80'),
  'test-current': option('low'),
  'resistance-meter': option('charger'),
}
