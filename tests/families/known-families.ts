// The unnamed maker's families and those of two invented makers as facts, to be held against the packs that were written by hand.
import { type Facts, factsSchema, type RawFacts } from '../../src/families/facts/facts-schema.ts'

type RawTraits = RawFacts['traits']
type RawAgainst = NonNullable<RawTraits[string]['against']>[number]

const against = (tells: RawAgainst['tells'], options: string[], more: Partial<RawAgainst> = {}): RawAgainst => ({
  options,
  tells,
  from: 'moderator',
  ...more,
})
const counterfeit = { means: 'counterfeit' } as const
const another = { means: 'another-cell' } as const
const nothing = (options: string[]) => ({ options })

type Written = Pick<RawFacts, 'traits'> & Partial<Pick<RawFacts, 'figures' | 'alsoEnough' | 'show'>>

export function factsOf(id: string, name: string, format: '18650' | '21700', more: Written): Facts {
  return factsSchema.parse({
    facts: 1,
    identity: { id, name, maker: 'invented', format, kind: 'bare', chemistry: 'nickel-or-cobalt' },
    from: null,
    ...more,
  })
}

const rewrap = { unless: 'open-rewrap' } as const
const unnamed: RawTraits = {
  'lettering-place': {
    made: ['can'],
    against: [against('must', ['wrap', 'clear-wrap'], { ...counterfeit, ...rewrap })],
  },
  'lettering-look': { remarks: [nothing(['rough', 'unlike-pictures'])] },
  'code-place': { made: ['wrap'], against: [against('must', ['can'], counterfeit)] },
  'code-print': { remarks: [nothing(['faint', 'dark', 'smeared', 'solid'])] },
  legs: { made: ['three'], against: [against('must', ['four', 'five'], another)] },
  'measured-capacity': {
    against: [against('moderate', ['under-half', 'half-to-80'], { together: { 'test-current': ['high'] } })],
    remarks: [{ options: ['from-80'], together: { 'test-current': ['low'] } }],
  },
}
const dimples18650: RawTraits = {
  dimples: { made: ['two'], against: [against('must', ['none'], another)], remarks: [nothing(['two'])] },
}
const noPair: RawTraits = { 'weld-dots': { made: ['none'], against: [against('strong', ['pair'])] } }
const disc = (made: string): RawTraits => ({
  'vent-disc': {
    made: [made],
    against: [
      against(
        'strong',
        ['four-lines', 'raised-button', 'smooth', 'other'].filter(one => one !== made),
      ),
    ],
  },
})

/** The wrong disc beside weld marks is another cell's plus end, where either alone may be misread. */
const discWithWelds = (made: string): RawTraits => ({
  'vent-disc': {
    made: [made],
    against: [
      ...(disc(made)['vent-disc']?.against ?? []),
      ...(disc(made)['vent-disc']?.against ?? []).map(one => ({
        ...one,
        ...another,
        tells: 'must' as const,
        together: { 'weld-dots': ['pair', 'lines'] },
      })),
    ],
  },
})

/** By the id of the family in the pack that was written by hand. */
export const unnamedFamilies: Readonly<Record<string, Facts>> = {
  'unnamed-18650-a': factsOf('f-unnameda', 'unnamed 18650 A', '18650', {
    traits: { ...unnamed, ...dimples18650, ...noPair, ...disc('four-lines') },
  }),
  'unnamed-18650-b': factsOf('f-unnamedb', 'unnamed 18650 B', '18650', {
    traits: { ...unnamed, ...dimples18650, ...noPair, ...disc('raised-button') },
  }),
  'unnamed-18650-c': factsOf('f-unnamedc', 'unnamed 18650 C', '18650', { traits: { ...unnamed, ...dimples18650 } }),
  'unnamed-21700': factsOf('f-unnamedd', 'unnamed 21700', '21700', {
    traits: { ...unnamed, dimples: { made: ['none'], remarks: [nothing(['none'])] } },
  }),
}

const brindlewick: RawTraits = {
  'lettering-place': {
    made: ['can'],
    against: [against('must', ['wrap', 'clear-wrap'], { ...counterfeit, ...rewrap }), against('moderate', ['nowhere'])],
  },
  'lettering-look': { remarks: [nothing(['rough', 'unlike-pictures'])] },
  'code-place': { made: ['wrap'], against: [against('must', ['can'], counterfeit), against('moderate', ['nowhere'])] },
  'code-print': { remarks: [nothing(['faint', 'dark', 'smeared', 'solid'])] },
}
const brindlewick18650: RawTraits = {
  ...brindlewick,
  dimples: { made: ['two'], against: [against('must', ['none', 'other'], another)], remarks: [nothing(['two'])] },
  'weld-dots': { made: ['none'], against: [against('moderate', ['pair', 'lines'])] },
}
const tarnhollow: RawTraits = {
  'code-place': { made: ['can'], against: [against('must', ['wrap'], counterfeit), against('moderate', ['nowhere'])] },
  'code-print': { remarks: [nothing(['faint', 'dark', 'smeared', 'solid'])] },
  'lettering-place': {
    made: ['wrap', 'can', 'nowhere'],
    against: [against('must', ['clear-wrap'], { ...another, ...rewrap })],
    remarks: [nothing(['wrap', 'can', 'nowhere'])],
  },
  dimples: { remarks: [nothing(['none', 'other'])] },
}
const legs = (made: string): RawTraits => ({
  legs: {
    made: [made],
    against: [
      against(
        'must',
        ['three', 'four', 'five', 'other'].filter(one => one !== made),
        another,
      ),
    ],
  },
})
const also = (format: string) => ['reworked-ends', 'second-ring-below', `size-far-${format}`]
const possible = (format: string) => [...also(format), `capacity-impossible-${format}`]

export const inventedFamilies: Readonly<Record<string, Facts>> = {
  'brindlewick-heron': factsOf('f-bwheron', 'Brindlewick Heron', '18650', {
    traits: { ...brindlewick18650, ...legs('four'), ...discWithWelds('raised-button') },
    figures: { capacity: { typical: 2500 } },
    alsoEnough: also('18650'),
  }),
  'brindlewick-rook': factsOf('f-bwrook1', 'Brindlewick Rook', '18650', {
    traits: {
      ...brindlewick18650,
      legs: { made: ['three'], against: [against('must', ['four', 'five', 'other'], another)] },
      ...discWithWelds('four-lines'),
    },
    alsoEnough: possible('18650'),
  }),
  'brindlewick-bittern': factsOf('f-bwbittern', 'Brindlewick Bittern', '21700', {
    traits: {
      ...brindlewick,
      ...legs('three'),
      ...disc('smooth'),
      dimples: { made: ['none'], against: [against('moderate', ['two', 'other'])], remarks: [nothing(['none'])] },
      'weld-dots': { remarks: [nothing(['pair', 'lines'])] },
    },
    alsoEnough: possible('21700'),
  }),
  'tarnhollow-amber': factsOf('f-thamber', 'Tarnhollow Amber', '18650', {
    traits: {
      ...tarnhollow,
      ...disc('smooth'),
      legs: { made: ['five'], against: [against('must', ['three', 'four', 'other'], another)] },
      'weld-dots': { made: ['pair'], against: [against('moderate', ['none'])], remarks: [nothing(['pair', 'lines'])] },
    },
    alsoEnough: possible('18650'),
  }),
  'tarnhollow-slate': factsOf('f-thslate', 'Tarnhollow Slate', '21700', {
    traits: {
      ...tarnhollow,
      ...legs('four'),
      ...discWithWelds('four-lines'),
      'weld-dots': { made: ['none'], against: [against('moderate', ['pair', 'lines'])] },
    },
    alsoEnough: possible('21700'),
  }),
}
