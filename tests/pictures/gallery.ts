// Every kind of picture once or more, for the tests that hold for all of them and for a person to look at.

import { drawCell } from '../../src/pictures/cell/draw-cell.ts'
import { drawOptions } from '../../src/pictures/cell/draw-options.ts'
import { drawReference } from '../../src/pictures/cell/draw-reference.ts'
import { drawVerdictCard } from '../../src/pictures/cell/draw-verdict-card.ts'
import { type CellParameters, completeCell, parts, views } from '../../src/pictures/cell/parameters.ts'
import { drawDischargeCurve } from '../../src/pictures/charts/draw-discharge-curve.ts'
import { drawRelease } from '../../src/pictures/charts/draw-release.ts'
import { drawTrend } from '../../src/pictures/charts/draw-trend.ts'
import { numbersIn } from '../../src/pictures/charts/plot.ts'
import { drawMeasuring, measuringKinds } from '../../src/pictures/measuring/draw-measuring.ts'
import type { SheetEntry } from './contact-sheet.ts'

type Show = Partial<CellParameters>
type Family = { base: Show; key: keyof CellParameters; values: readonly CellParameters[keyof CellParameters][] }

/** Option sheets: what is asked and the answers that are drawn. */
export const optionSets: readonly Family[] = [
  { base: { view: 'top', pointAt: 'legs', wrapColour: 'green' }, key: 'legs', values: [2, 3, 4, 5, 6] },
  { base: { view: 'top-angle', pointAt: 'legs', wrapColour: 'blue' }, key: 'legs', values: [3, 4, 5] },
  { base: { view: 'top', pointAt: 'legs' }, key: 'contact', values: ['legs', 'closed'] },
  {
    base: { view: 'top', pointAt: 'vent', wrapColour: 'yellow' },
    key: 'vent',
    values: ['plain', 'lines', 'button', 'smooth'],
  },
  {
    base: { view: 'top-angle', pointAt: 'vent', wrapColour: 'purple' },
    key: 'vent',
    values: ['lines', 'button', 'smooth'],
  },
  { base: { view: 'cut-away', pointAt: 'vent' }, key: 'vent', values: ['plain', 'lines', 'button', 'smooth'] },
  { base: { view: 'top', pointAt: 'dimples', wrapColour: 'turquoise' }, key: 'dimples', values: [0, 1, 2, 3, 4] },
  { base: { view: 'cut-away', pointAt: 'dimples' }, key: 'dimples', values: [0, 2] },
  {
    base: { view: 'top', pointAt: 'ring', wrapColour: 'red' },
    key: 'ring',
    values: ['whole', 'torn', 'missing', 'second'],
  },
  {
    base: { view: 'top-angle', pointAt: 'ring', wrapColour: 'red' },
    key: 'ring',
    values: ['whole', 'torn', 'missing', 'second'],
  },
  { base: { view: 'top', pointAt: 'weld-marks', wrapColour: 'pink' }, key: 'weldMarks', values: [0, 2] },
  { base: { view: 'top', pointAt: 'welds', wrapColour: 'blue' }, key: 'welds', values: ['none', 'scars', 'nickel'] },
  {
    base: { view: 'top', end: 'negative', pointAt: 'welds', wrapColour: 'blue' },
    key: 'welds',
    values: ['none', 'scars', 'nickel'],
  },
  {
    base: { view: 'top', end: 'negative', pointAt: 'terminal', wrapColour: 'grey' },
    key: 'terminal',
    values: ['clean', 'ground', 'plated'],
  },
  {
    base: { view: 'top', pointAt: 'terminal', wrapColour: 'grey' },
    key: 'terminal',
    values: ['clean', 'ground', 'plated'],
  },
  {
    base: { pointAt: 'lettering', wrapColour: 'green' },
    key: 'lettering',
    values: ['can', 'wrap', 'second-wrap', 'none'],
  },
  {
    base: { pointAt: 'lettering-print', lettering: 'can' },
    key: 'letteringPrint',
    values: ['sharp', 'faint', 'blurred', 'broken'],
  },
  { base: { pointAt: 'code', wrapColour: 'black' }, key: 'code', values: ['wrap', 'can', 'none'] },
  {
    base: { pointAt: 'code-print', code: 'wrap', wrapColour: 'pink' },
    key: 'codePrint',
    values: ['clear', 'faint', 'dark', 'smeared', 'solid'],
  },
  {
    base: { pointAt: 'code-print', code: 'wrap', wrapColour: 'white' },
    key: 'codeKind',
    values: ['dots', 'edge-l', 'corner-squares'],
  },
  { base: { pointAt: 'second-wrap', wrapColour: 'orange' }, key: 'secondWrap', values: ['none', 'clear', 'coloured'] },
  { base: { pointAt: 'seam', wrapColour: 'orange' }, key: 'seam', values: [false, true] },
  { base: { pointAt: 'dent', wrapColour: 'blue' }, key: 'dent', values: ['none', 'side', 'top-edge', 'bottom-edge'] },
  { base: { pointAt: 'leak', wrapColour: 'grey' }, key: 'leak', values: ['none', 'top', 'bottom'] },
  { base: { pointAt: 'rust', wrapColour: 'brown' }, key: 'rust', values: ['none', 'top', 'bottom'] },
  { base: { view: 'top', pointAt: 'rust', wrapColour: 'green' }, key: 'rust', values: ['none', 'top'] },
  { base: { pointAt: 'swelling' }, key: 'swollen', values: [false, true] },
  { base: { pointAt: 'wet' }, key: 'wet', values: [false, true] },
  { base: { pointAt: 'scorch', wrapColour: 'yellow' }, key: 'scorched', values: [false, true] },
  { base: { pointAt: 'heat', wrapColour: 'red' }, key: 'heat', values: ['none', 'hot', 'smoke'] },
  { base: { pointAt: 'wrap', wrapColour: 'white' }, key: 'wrap', values: ['whole', 'torn', 'missing'] },
  {
    base: { view: 'top-angle', pointAt: 'wrap', wrapColour: 'orange' },
    key: 'wrap',
    values: ['whole', 'torn', 'missing'],
  },
  {
    base: { pointAt: 'lettering-print', lettering: 'wrap' },
    key: 'wording',
    values: ['word', 'misspelt', 'trade-code', 'standard-code', 'nickel', 'iron', 'contrary', 'capacity', 'current'],
  },
  { base: { pointAt: 'bin', wrapColour: 'white' }, key: 'bin', values: [true, false] },
  { base: { pointAt: 'board' }, key: 'board', values: [false, true] },
  { base: { view: 'top-angle', pointAt: 'top', wrapColour: 'brown' }, key: 'top', values: ['flat', 'button'] },
  { base: { pointAt: 'length', sizes: true }, key: 'format', values: ['14500', '18650', '20700', '21700', '26650'] },
]

/** What each option of a set shows. */
export const showsOf = (set: Family): Show[] => set.values.map(value => ({ ...set.base, [set.key]: value }))

export const nameOf = (set: Family): string =>
  `${completeCell(set.base).view}${set.base.end === undefined ? '' : ' negative'} · ${set.base.pointAt} · ${set.key}`

const caution =
  'If you are not sure, do not use this cell. Talk to the seller, and buy only from known, widely used sources, never just because the price is low.'

const curvePoints = Array.from({ length: 2000 }, (_, i) => ({
  capacity: i * 1.2,
  voltage: 4.1 - 0.35 * (i / 2000) - 0.25 * (1 - Math.exp(-i / 90)) - 0.75 * Math.exp((i - 2000) / 120),
  temperature: 24 + 14 * (i / 2000) ** 1.3,
}))

export const curve = {
  title: 'Discharge at 2 A',
  points: curvePoints,
  gaps: [{ from: 900, to: 1010 }],
  cutOff: 2.8,
  result: { value: 2380, u: 42 },
  promised: 2900,
  words: {
    capacity: 'Charge drawn, mAh',
    voltage: 'Voltage, V',
    temperature: 'Temperature, °C',
    cutOff: 'Cut-off',
    result: 'Capacity with uncertainty',
    promised: 'Least its maker promises',
    gap: 'No readings',
  },
  number: numbersIn('en'),
}

export const trend = {
  title: 'Failed checks, all families',
  weeks: [5, 5, 10, 5, undefined, 5, 5, 10, 5, 10, 10, 15, 20, 30, 45, 40].map((failed, i) => ({
    name: `W${i + 10}`,
    ...(failed === undefined ? {} : { failed }),
    alarm: i > 12,
  })),
  words: { failed: 'Failed checks', alarm: 'Rise', withheld: 'Too few to show' },
  number: numbersIn('en'),
}

export const release = {
  title: 'Week 24: 65 checks',
  rows: [
    { tone: 'danger', label: 'Danger', share: { value: 0.08, low: 0.03, high: 0.17 } },
    { tone: 'ruled-out', label: 'Ruled out', share: { value: 0.31, low: 0.21, high: 0.43 } },
    { tone: 'doubtful', label: 'Doubtful', share: { value: 0.15, low: 0.08, high: 0.26 } },
    { tone: 'open', label: 'Open', share: { value: 0.38, low: 0.28, high: 0.5 } },
    { tone: 'nothing-found', label: 'Nothing found' },
  ],
  words: { interval: '95% interval', withheld: 'too few' },
  percent: (share: number): string => `${Math.round(share * 100)} %`,
} as const

const cards = (['danger', 'ruled-out', 'doubtful', 'open', 'nothing-found'] as const).map(tone => ({
  name: `verdict · ${tone}`,
  drawing: drawVerdictCard({
    tone,
    word: tone === 'open' ? 'Nichts gefunden, und das heißt nicht, dass sie in Ordnung ist' : 'Ruled out',
    views: [
      {
        show: { view: 'top', legs: 4, wrapColour: 'green' },
        marks: [{ part: 'legs', text: 'The top contact stands on four legs. This family has three.' }],
      },
      {
        show: { lettering: 'second-wrap' },
        marks: [{ part: 'lettering', text: 'The lettering is on a clear second wrap, not on the can.' }],
      },
    ],
    reasons: ['The claimed capacity is more than any cell of this size can hold.'],
    caution: caution,
  }),
}))

/** All of them. */
export function gallery(): SheetEntry[] {
  const questions = views.flatMap(view =>
    parts[view].map(pointAt => ({
      name: `question · ${view} · ${pointAt}`,
      drawing: drawCell({ view, pointAt, lettering: 'wrap', code: 'wrap', seam: true, wrapColour: 'blue' }),
    })),
  )
  const options = optionSets.map(set => ({
    name: `options · ${nameOf(set)}`,
    drawing: drawOptions([
      ...showsOf(set).map((show, i) => ({ show, label: String(set.values[i]) })),
      { label: 'Can’t tell' },
    ]),
  }))
  const reference = drawReference([
    { show: { view: 'top', wrapColour: 'pink' }, label: 'Top' },
    { show: { view: 'top-angle', wrapColour: 'pink' }, label: 'At an angle' },
    { show: { view: 'top', pointAt: 'dimples', dimples: 2, wrapColour: 'pink' }, label: 'Under the ring' },
  ])
  return [
    ...questions,
    ...options,
    { name: 'reference', drawing: reference },
    ...cards,
    ...measuringKinds.map(kind => ({
      name: `measuring · ${kind}`,
      drawing: drawMeasuring(kind),
    })),
    { name: 'chart · discharge', drawing: drawDischargeCurve(curve) },
    { name: 'chart · trend', drawing: drawTrend(trend) },
    { name: 'chart · release', drawing: drawRelease(release) },
  ]
}
