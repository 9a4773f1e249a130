// Cells as reports describe counterfeit, overstated and salvaged ones, with invented figures of the kinds that were published or seen.
//
// Sources of the kinds: an industrial CT study of 2025 (claims of 9.9 Ah), hobby tests (masses of 32–37 g, 126 mΩ, shares of the label),
// Penn State 2018 (a fifth of the label), the US consumer safety agency 2021 (salvaged cells sold as new), hobby tests of rewraps (currents).
import { type Answers, option, reading } from '../../src/engine/answers.ts'

export type FalseCell = {
  readonly name: string
  readonly tells: Answers
  /** It takes a tool, or somebody who has measured, to see it. */
  readonly measured?: true
}

const nickel: Answers = { chemistry: option('nickel-or-cobalt') }
const size = (format: string): Answers => ({ ...nickel, format: option(format) })
const other = (format: string): Answers => ({ ...nickel, format: option('other'), 'other-format': option(format) })
const claims = (mAh: number, A?: number, word = 'continuous'): Answers => ({
  'claimed-capacity': reading(mAh),
  ...(A !== undefined && { 'claimed-current': reading(A), 'current-word': option(word) }),
})
const g = (mass: number): Answers => ({ mass: reading(mass, 0.2) })
const seen = (question: string, answer: string): Answers => ({ [question]: option(answer) })
/** By a four-wire meter at room temperature, with what is worked out of it. */
const fourWire = (mΩ: number, A: number): Answers => ({
  'sold-as': option('new-bare'),
  'resistance-meter': option('four-wire'),
  'ac-resistance': reading(mΩ, 0.5),
  'room-temperature': reading(22, 1),
  'voltage-at-claim': reading((mΩ * A) / 1000, (0.5 * A) / 1000),
})
/** A test that was done below the claim, with leads of its own. */
const fell = (V: number, at: number, A: number): Answers => ({
  'load-test': option('less'),
  'load-test-leads': option('own-leads'),
  'voltage-lost-in-test': reading((V * A) / at, (0.02 * A) / at),
})
const usual: Answers = { ...size('18650'), ...claims(3000, 15) }

export const falseCells: readonly FalseCell[] = [
  { name: '18650 of 9,900 mAh', tells: { ...size('18650'), ...claims(9900) } },
  {
    name: '18650 of 6,800 mAh with a scan code',
    tells: { ...size('18650'), ...claims(6800), ...seen('code-scan', 'page') },
  },
  { name: '18650 of 5,000 mAh', tells: { ...size('18650'), ...claims(5000) } },
  { name: '18650 of 4,800 mAh', tells: { ...size('18650'), ...claims(4800) } },
  { name: '26650 of 9,800 mAh', tells: { ...size('26650'), ...claims(9800) } },
  { name: '26650 of 8,000 mAh', tells: { ...size('26650'), ...claims(8000) } },
  { name: '21700 of 8,000 mAh', tells: { ...size('21700'), ...claims(8000) } },
  { name: '21700 of 12,000 mAh', tells: { ...size('21700'), ...claims(12_000) } },
  { name: '20700 of 6,000 mAh', tells: { ...size('20700'), ...claims(6000) } },
  { name: '14500 of 2,300 mAh', tells: { ...size('14500'), ...claims(2300) } },
  { name: '16340 of 2,800 mAh', tells: { ...other('16340'), ...claims(2800) } },
  { name: '18350 of 3,000 mAh', tells: { ...other('18350'), ...claims(3000) } },
  { name: '10440 of 1,000 mAh', tells: { ...other('10440'), ...claims(1000) } },
  { name: '26800 of 15,000 mAh', tells: { ...other('26800'), ...claims(15_000) } },
  {
    name: '32700 of iron phosphate, 12,000 mAh',
    tells: { ...other('32700'), ...claims(12_000), ...seen('chemistry', 'iron-phosphate') },
  },
  {
    name: '26650 of iron phosphate, 6,000 mAh',
    tells: { ...size('26650'), ...claims(6000), ...seen('chemistry', 'iron-phosphate') },
  },
  {
    name: '18650 of iron phosphate, 3,000 mAh',
    tells: { ...size('18650'), ...claims(3000), ...seen('chemistry', 'iron-phosphate') },
  },
  {
    name: 'sodium 18650 of 3,000 mAh',
    tells: { ...size('18650'), ...claims(3000), ...seen('chemistry', 'sodium-ion') },
  },
  { name: '18650 of 3,500 mAh and 35 A', tells: { ...size('18650'), ...claims(3500, 35) } },
  { name: '18650 of 3,500 mAh and 30 A, no word', tells: { ...size('18650'), ...claims(3500, 30, 'bare') } },
  { name: '18650 of 80 A', tells: { ...size('18650'), ...claims(2600, 80, 'bare') } },
  { name: '26650 of 120 A', tells: { ...size('26650'), ...claims(4500, 120, 'bare') } },
  { name: '14500 of 40 A', tells: { ...size('14500'), ...claims(800, 40, 'bare') } },
  { name: '21700 of 6,300 mAh and 45 A', tells: { ...size('21700'), ...claims(6300, 45) } },
  {
    name: 'rewrap of 3,000 mAh and 40 A, tested at 20',
    tells: {
      ...size('18650'),
      ...claims(3000, 40, 'bare'),
      ...seen('sold-as', 'new-rewrap'),
      ...seen('current-looked-up', 'less'),
    },
  },
  {
    name: 'rewrap of 2,600 mAh and 35 A, tested at 25',
    tells: {
      ...size('18650'),
      ...claims(2600, 35),
      ...seen('sold-as', 'new-rewrap'),
      ...seen('current-looked-up', 'less'),
    },
  },
  {
    name: '21700 of 4,000 mAh and 60 A, tested at 35',
    tells: { ...size('21700'), ...claims(4000, 60, 'bare'), ...seen('current-looked-up', 'less') },
  },
  {
    name: '20700 of 3,000 mAh and 50 A, tested at 25',
    tells: { ...size('20700'), ...claims(3000, 50, 'bare'), ...seen('current-looked-up', 'less') },
  },
  { name: 'a model nobody makes', tells: { ...usual, ...seen('in-makers-list', 'not-listed') } },
  { name: 'new, with weld pits', tells: { ...usual, ...seen('weld-marks', 'spots') } },
  {
    name: 'nobody said as what, with weld pits',
    tells: { ...usual, ...seen('weld-marks', 'spots'), ...seen('sold-as', 'not-said') },
  },
  {
    name: 'with strip left on it',
    tells: { ...usual, ...seen('weld-marks', 'strip'), ...seen('sold-as', 'not-said') },
  },
  { name: 'soldered', tells: { ...usual, ...seen('weld-marks', 'solder') } },
  {
    name: 'with ends ground bright',
    tells: { ...usual, ...seen('ends-finish', 'ground'), ...seen('sold-as', 'not-said') },
  },
  { name: 'with ends plated over', tells: { ...usual, ...seen('ends-finish', 'plated') } },
  { name: 'two wraps', tells: { ...usual, ...seen('second-wrap', 'second') } },
  { name: 'a clear wrap below', tells: { ...usual, ...seen('second-wrap', 'clear'), ...seen('sold-as', 'not-said') } },
  { name: 'two rings', tells: { ...usual, ...seen('second-ring', 'doubled') } },
  { name: 'a ring torn by rewrapping', tells: { ...usual, ...seen('ring', 'torn') } },
  { name: 'rust under the contact', tells: { ...usual, ...seen('rust', 'rusty') } },
  { name: 'a contact pressed in', tells: { ...usual, ...seen('top-damage', 'pressed-in') } },
  {
    name: 'one serial on four cells',
    tells: { ...usual, ...seen('how-many', 'several'), ...seen('same-serial', 'serial-repeats') },
  },
  {
    name: 'three legs and four legs in one order',
    tells: { ...usual, ...seen('how-many', 'several'), ...seen('batch', 'metal-differs') },
  },
  {
    name: 'weak battery, cheap, poor print, from a stall',
    tells: { ...usual, ...seen('in-device', 'weak'), ...seen('price', 'far-below'), ...seen('print', 'poor') },
  },
  {
    name: 'Wh that do not fit, listing and wrap that differ, a seller who refuses',
    tells: {
      ...usual,
      ...seen('label-energy', 'differs'),
      ...seen('label-listing', 'differs'),
      ...seen('asked-seller', 'refused'),
    },
  },
  {
    name: 'hand-scratched lettering and a picture of a code',
    tells: { ...usual, ...seen('lettering-look', 'absurd'), ...seen('code-print', 'no-code') },
  },
  {
    name: '643 of 5,000 mAh, known from before',
    tells: { ...size('21700'), ...claims(5000), ...seen('measured-capacity', 'under-half') },
  },
  { name: 'gave out at the current it claims', tells: { ...usual, ...seen('load-test', 'gave-out') } },
  { name: '“3,000 mAh” of 37 g', tells: { ...usual, ...g(37) }, measured: true },
  { name: '“3,500 mAh” of 32.5 g', tells: { ...size('18650'), ...claims(3500), ...g(32.5) }, measured: true },
  { name: '4,000 mAh of 43 g', tells: { ...size('18650'), ...claims(4000), ...g(43) }, measured: true },
  { name: '21700 of 5,000 mAh and 56 g', tells: { ...size('21700'), ...claims(5000), ...g(56) }, measured: true },
  { name: '26650 of 5,500 mAh and 70 g', tells: { ...size('26650'), ...claims(5500), ...g(70) }, measured: true },
  { name: 'sand-filled 18650 of 66 g', tells: { ...usual, ...g(66) }, measured: true },
  {
    name: 'protected in the listing, 65.1 mm long',
    tells: { ...usual, ...seen('sold-as', 'new-protected'), length: reading(65.1, 0.1) },
    measured: true,
  },
  { name: 'not the size on the sheet', tells: { ...usual, ...seen('sheet-fits', 'differs') }, measured: true },
  {
    name: '43.1, 44.9 and 46.8 g in one order',
    tells: { ...usual, ...seen('how-many', 'several'), ...seen('batch-masses', 'far-apart') },
    measured: true,
  },
  { name: 'delivered at 0.8 V', tells: { ...usual, voltage: reading(0.8, 0.014) }, measured: true },
  { name: 'overcharged to 4.36 V', tells: { ...usual, voltage: reading(4.36, 0.024) }, measured: true },
  { name: 'falling by 0.1 V a week', tells: { ...usual, ...seen('voltage-drop', 'falls') }, measured: true },
  {
    name: 'four-wire 126 mΩ, with two thirds of the label',
    tells: {
      ...usual,
      ...seen('resistance-meter', 'four-wire'),
      'ac-resistance': reading(126, 0.9),
      'room-temperature': reading(22, 1),
      ...seen('measured-capacity', 'half-to-80'),
    },
    measured: true,
  },
  ...[
    { format: '18650', mAh: 2500, A: 25, mΩ: 33 },
    { format: '20700', mAh: 3000, A: 40, mΩ: 26 },
    { format: '21700', mAh: 4000, A: 50, mΩ: 22 },
    { format: '26650', mAh: 4500, A: 50, mΩ: 29 },
    { format: '14500', mAh: 900, A: 12, mΩ: 95 },
  ].map(
    ({ format, mAh, A, mΩ }): FalseCell => ({
      name: `${format} that claims ${A} A and shows ${mΩ} mΩ`,
      tells: { ...size(format), ...claims(mAh, A), ...fourWire(mΩ, A) },
      measured: true,
    }),
  ),
  {
    name: '18350 that claims 14 A and shows 110 mΩ',
    tells: { ...other('18350'), ...claims(1100, 14), ...fourWire(110, 14) },
    measured: true,
  },
  {
    name: 'iron phosphate 26650 that claims 50 A and shows 24 mΩ',
    tells: {
      ...size('26650'),
      ...claims(3300, 50),
      ...fourWire(24, 50),
      ...seen('chemistry', 'iron-phosphate'),
    },
    measured: true,
  },
  {
    name: '18650 of 25 A that falls by 0.8 V at 10 A',
    tells: { ...size('18650'), ...claims(2600, 25), ...fell(0.8, 10, 25) },
    measured: true,
  },
  {
    name: '21700 of 40 A that falls by 0.7 V at 15 A',
    tells: { ...size('21700'), ...claims(4200, 40), ...fell(0.7, 15, 40) },
    measured: true,
  },
  {
    name: 'iron phosphate 18650 of 20 A that falls by 0.6 V at 8 A',
    tells: { ...size('18650'), ...claims(1500, 20), ...fell(0.6, 8, 20), ...seen('chemistry', 'iron-phosphate') },
    measured: true,
  },
  {
    name: '63 °C at half of the claim',
    tells: { ...size('18650'), ...claims(2500, 24), ...seen('load-test', 'too-hot') },
    measured: true,
  },
  { name: '21700 of 4.0 Ah and 50C', tells: { ...size('21700'), ...claims(4000, 200, 'bare') } },
  {
    name: 'AA-sized and sold as 1.5 V, with 3.9 V at its ends',
    tells: { ...size('14500'), ...seen('chemistry', 'fixed-voltage'), voltage: reading(3.9, 0.02) },
    measured: true,
  },
  {
    name: 'sodium 18650 of 1,400 mAh with 3.7 V on its wrap',
    tells: {
      ...size('18650'),
      ...claims(1400),
      ...seen('chemistry', 'sodium-ion'),
      ...seen('volts-beside', 'lithium'),
    },
  },
  {
    name: 'titanate 33140 with 3.6 V on its wrap',
    tells: { ...other('33140'), ...seen('chemistry', 'titanate'), ...seen('volts-beside', 'lithium') },
  },
  { name: '21700 of 6,000 mAh and 66 g', tells: { ...size('21700'), ...claims(6000), ...g(66) }, measured: true },
  {
    name: 'twice the highest resistance of its sheet',
    tells: { ...usual, ...fourWire(31, 15), ...seen('sheet-resistance', 'far-above') },
    measured: true,
  },
  {
    name: '18650 of 3,400 mAh dated 2004',
    tells: { ...size('18650'), ...claims(3400), ...seen('printed-date', 'to-2006') },
  },
  { name: '21700 dated 2010', tells: { ...size('21700'), ...claims(4000), ...seen('printed-date', 'to-2011') } },
]
