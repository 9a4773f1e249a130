// What can be wrong with a pack or a case, as data: a code, where it is, and what is needed to say it in a sentence.

export type PackProblem =
  | { readonly code: 'yaml'; readonly at: string; readonly says: string }
  | { readonly code: 'too-large'; readonly at: string; readonly most: number }
  | { readonly code: 'shape'; readonly at: string; readonly says: string }
  | { readonly code: 'unknown-key'; readonly at: string; readonly name: string }
  | { readonly code: 'duplicate'; readonly at: string; readonly what: string; readonly name: string }
  | {
      readonly code: 'unknown-name'
      readonly at: string
      readonly what: string
      readonly name: string
      readonly known: readonly string[]
    }
  | { readonly code: 'not-an-option-question'; readonly at: string; readonly name: string }
  | { readonly code: 'not-a-reading-question'; readonly at: string; readonly name: string }
  | {
      readonly code: 'limit-out-of-range'
      readonly at: string
      readonly name: string
      readonly limit: number
      readonly least: number
      readonly most: number
    }
  | { readonly code: 'missing-pack'; readonly at: string; readonly name: string; readonly known: readonly string[] }
  | { readonly code: 'enough-cannot-be-met'; readonly at: string; readonly name: string }
  | { readonly code: 'hazard-cannot-be-waived'; readonly at: string; readonly name: string }
  | {
      readonly code: 'too-tangled'
      readonly at: string
      readonly rules: readonly string[]
      readonly questions: readonly string[]
      readonly cap: number
    }
  | {
      readonly code: 'uncovered'
      readonly at: string
      readonly name: string
      readonly lacks: readonly ('fires' | 'quiet' | 'unknown')[]
    }
  | {
      readonly code: 'case-differs'
      readonly at: string
      readonly name: string
      readonly expected: string
      readonly got: string
    }
  | {
      readonly code: 'unit-does-not-fit'
      readonly at: string
      readonly name: string
      readonly unit: string
      readonly wanted: string
    }
  | { readonly code: 'not-a-number'; readonly at: string; readonly name: string }
  | {
      readonly code: 'out-of-range'
      readonly at: string
      readonly name: string
      readonly value: number
      readonly least: number
      readonly most: number
      readonly unit: string
    }
  | {
      readonly code: 'too-many-states'
      readonly at: string
      readonly name: string
      readonly states: number
      readonly most: number
    }
  | { readonly code: 'no-cases'; readonly at: string }
  | { readonly code: 'not-a-language'; readonly at: string; readonly name: string }
  | {
      readonly code: 'cannot-be-drawn'
      readonly at: string
      readonly name: string
      readonly value: string
      readonly allowed: readonly string[]
    }
