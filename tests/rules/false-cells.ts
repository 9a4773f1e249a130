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
]
