// What can be wrong with a family's facts, as data: a code, the feature, and what is needed to say it in a sentence.

export type FactProblem =
  | { readonly code: 'shape'; readonly at: string; readonly says: string }
  /** It would speak of every cell. */
  | { readonly code: 'always-speaks'; readonly feature: string }
  /** An option counts for it and against it, or twice against it. */
  | { readonly code: 'contradictory'; readonly feature: string; readonly option: string }
  | { readonly code: 'fake-looks-genuine'; readonly fake: string }
  | { readonly code: 'twice'; readonly what: 'fake'; readonly name: string }
  | {
      readonly code: 'figure-out-of-range'
      readonly figure: string
      readonly value: number
      readonly least: number
      readonly most: number
    }
  | { readonly code: 'least-above-typical'; readonly least: number; readonly typical: number }
  | { readonly code: 'nothing-to-hold-against' }
  | { readonly code: 'too-tangled' }
  | { readonly code: 'name-of-two-alphabets'; readonly name: string }
  | { readonly code: 'name-reads-like-link'; readonly name: string }
  | { readonly code: 'must-not-earned'; readonly feature: string; readonly have: number; readonly need: number }

/** What a family named that the project does not know any more: it was left out, and the rest goes on. */
export type Dropped = { readonly feature: string; readonly option?: string }
