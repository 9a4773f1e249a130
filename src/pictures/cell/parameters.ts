// What a drawn cell can show: every parameter, its allowed values and its default, in one table.
import { type WrapColour, wraps } from '../ink.ts'

export const views = ['side', 'top', 'top-angle', 'cut-away'] as const

export type View = (typeof views)[number]
export type Format = (typeof choices.format)[number]

/** Parameters that take one of a few words; the first word is the default. */
export const choices = {
  /** from where the cell is seen */
  view: views,
  /** which end `top` and `top-angle` look at */
  end: ['positive', 'negative'],
  format: ['18650', '14500', '20700', '21700', '26650'],
  wrap: ['whole', 'torn', 'missing'],
  wrapColour: Object.keys(wraps) as WrapColour[],
  /** another wrap below the outer one */
  secondWrap: ['none', 'clear', 'coloured'],
  ring: ['whole', 'torn', 'missing', 'second'],
  ringColour: ['white', 'grey', 'black', 'green'],
  /** shape of the positive top: level with the rim, or a raised button */
  top: ['flat', 'button'],
  vent: ['plain', 'lines', 'button', 'smooth'],
  /** marks of an earlier pack on the end that is shown: burnt pits, or torn nickel strip that still sticks */
  welds: ['none', 'scars', 'nickel'],
  terminal: ['clean', 'ground', 'plated'],
  /** what `weldMarks` are: dots, or short lines */
  weldMarkShape: ['dots', 'lines'],
  /** the positive contact: standing on legs with gaps between them, or closed all round */
  contact: ['legs', 'closed'],
  lettering: ['none', 'can', 'wrap', 'second-wrap'],
  letteringPrint: ['sharp', 'faint', 'blurred', 'broken'],
  /** what the lettering says: signs that mean nothing, a word, or one of the few things a label says everywhere */
  wording: [
    'signs',
    'word',
    'misspelt',
    'trade-code',
    'standard-code',
    'nickel',
    'iron',
    'contrary',
    'capacity',
    'current',
  ],
  code: ['none', 'wrap', 'can'],
  codePrint: ['clear', 'faint', 'dark', 'smeared', 'solid'],
  /** what the code looks like: dots, an L along two edges, squares in three corners (no drawn code can be read) */
  codeKind: ['dots', 'edge-l', 'corner-squares'],
  dent: ['none', 'side', 'top-edge', 'bottom-edge'],
  leak: ['none', 'top', 'bottom'],
  rust: ['none', 'top', 'bottom'],
  heat: ['none', 'hot', 'smoke'],
} as const satisfies Record<string, readonly string[]>

/** Parameters that count something: least, most, default. */
export const counts = {
  /** legs the top contact stands on */
  legs: { least: 2, most: 6, usual: 3 },
  /** dimples in the can's shoulder, under the insulating ring */
  dimples: { least: 0, most: 4, usual: 0 },
  /** radial lines of `vent: lines` */
  ventLines: { least: 2, most: 8, usual: 4 },
  /** small weld marks on the top contact, as a maker leaves them */
  weldMarks: { least: 0, most: 4, usual: 0 },
} as const

/** Parameters that are yes or no; all default to no. */
export const switches = ['seam', 'board', 'bin', 'swollen', 'wet', 'scorched', 'sizes'] as const

/** What can be pointed at, and in which views it can be seen. */
export const parts = {
  side: [
    'body',
    'wrap',
    'seam',
    'second-wrap',
    'lettering',
    'lettering-print',
    'code',
    'code-print',
    'bin',
    'top',
    'bottom',
    'board',
    'dent',
    'scorch',
    'leak',
    'rust',
    'swelling',
    'wet',
    'heat',
    'length',
    'diameter',
  ],
  top: ['top', 'wrap', 'ring', 'legs', 'dimples', 'vent', 'weld-marks', 'welds', 'terminal', 'leak', 'rust', 'wet'],
  'top-angle': ['top', 'wrap', 'ring', 'legs', 'dimples', 'vent', 'welds', 'terminal', 'leak', 'rust', 'wet', 'heat'],
  'cut-away': ['wrap', 'second-wrap', 'ring', 'legs', 'dimples', 'vent', 'can'],
} as const satisfies Record<View, readonly string[]>

export type Part = (typeof parts)[View][number] | 'none'

type Choice = { -readonly [K in keyof typeof choices]: (typeof choices)[K][number] }
type Count = { -readonly [K in keyof typeof counts]: number }
type Switch = Record<(typeof switches)[number], boolean>

/** Everything a cell drawing depends on. */
export type CellParameters = Choice & Count & Switch & { pointAt: Part }

/** Parts of the side that are shown close up, with the layers laid back. */
const peeledParts = ['lettering', 'lettering-print', 'code', 'code-print', 'bin', 'second-wrap', 'seam'] as const
export type Peeled = (typeof peeledParts)[number]

/** Whether a picture shows, or adds, such a close-up. */
export const isPeeled = (params: CellParameters): params is CellParameters & { view: 'side'; pointAt: Peeled } =>
  params.view === 'side' && (peeledParts as readonly string[]).includes(params.pointAt)

/** The picture of an ordinary cell: every default. */
export const usualCell: CellParameters = {
  ...(Object.fromEntries(Object.entries(choices).map(([key, words]) => [key, words[0]])) as unknown as Choice),
  ...(Object.fromEntries(Object.entries(counts).map(([key, count]) => [key, count.usual])) as unknown as Count),
  ...(Object.fromEntries(switches.map(key => [key, false])) as unknown as Switch),
  pointAt: 'none',
}

/** Fills what is left out with the defaults. */
export const completeCell = (some: Partial<CellParameters>): CellParameters => ({ ...usualCell, ...some })
