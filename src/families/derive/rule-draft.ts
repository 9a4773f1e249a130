// A rule as derivation writes it, with what its cases need to know: which answers make it fire, and which leave it quiet.
import type { RawCase, RawCondition, RawPack } from '../../engine/pack/schema.ts'
import type { Sentences } from './sentences.ts'

export type RawRule = RawPack['rules'][number]
export type CaseAnswers = RawCase['answers']

/** A rule's kind and what belongs to it, without its id and words. */
export type Weight =
  | { readonly kind: 'must'; readonly means: 'counterfeit' | 'another-cell' }
  | { readonly kind: 'sign'; readonly strength: 'weak' | 'moderate' | 'strong' }
  | { readonly kind: 'no-bearing' }

export type RuleDraft = {
  readonly id: string
  readonly weight: Weight
  readonly when: RawCondition
  readonly says: Sentences
  /** What a letter to a seller says of it: a fact about the model that accuses nobody. */
  readonly letter?: Sentences
  readonly source: string
  /** Sets of answers in each of which it fires, the first of them the plainest. */
  readonly fires: readonly CaseAnswers[]
  readonly quiet: CaseAnswers
  readonly unknown: CaseAnswers
  /** Whether it must have been answered and met before "nothing found". */
  readonly enough: boolean
  /** Whether it keeps "nothing found" away while it holds: an exception was used. */
  readonly holdsBack: boolean
}

const excepted = { 'open-rewrap': 'new-rewrap', protected: 'new-protected' } as const

/** An exception holds for what was openly sold so; not knowing excuses nothing. */
export const soldUnless = (unless: keyof typeof excepted): RawCondition => ({
  'sold-as': { unless: excepted[unless] },
})
/** What a cell was sold as in a case where no exception holds. */
export const plainlySold = { 'sold-as': 'new-bare' } as const
export const soldExcepted = (unless: keyof typeof excepted): string => excepted[unless]
