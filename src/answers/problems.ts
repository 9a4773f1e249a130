// What can be wrong with an entry, as data: a code, where it is, and what is needed to say it in a sentence.

export type AnswerProblem = { readonly at: string } & (
  | { readonly code: 'no-front-matter' | 'no-english' | 'no-source' | 'itself-related' }
  | { readonly code: 'another-name'; readonly name: string; readonly wanted: string }
  | { readonly code: 'twice'; readonly name: string }
  | { readonly code: 'unknown-related' | 'unknown-words'; readonly name: string; readonly known: readonly string[] }
  | { readonly code: 'language-incomplete'; readonly language: string; readonly lacks: string }
  | {
      readonly code: 'body-too-long' | 'title-too-long'
      readonly language: string
      readonly length: number
      readonly most: number
    }
  | { readonly code: 'too-few-keywords'; readonly language: string; readonly least: number }
  | { readonly code: 'no-year'; readonly name: string }
  | { readonly code: 'assures'; readonly language: string; readonly name: string; readonly sentence: string }
  | { readonly code: 'caution-too-weak'; readonly name: string; readonly wanted: string }
)
