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

const soldAs = ['new-bare', 'new-protected', 'new-rewrap', 'used', 'not-said'] as const
const excepted = { 'open-rewrap': 'new-rewrap', protected: 'new-protected' } as const

/** What it may have been sold as where an exception does not hold, the plainest first, and where it does. */
export const soldUnless = (unless: keyof typeof excepted): string[] => soldAs.filter(one => one !== excepted[unless])
export const soldExcepted = (unless: keyof typeof excepted): string => excepted[unless]
