// A rule pack once read and checked: questions, rules, families and sources, with every name resolved.

import type { Quantity } from '../../ground/quantities.ts'
import type { Tool } from '../../ground/tools.ts'
import type { Urgency } from '../../ground/urgencies.ts'
import type { FamilyId, OptionId, QuestionId, RuleId } from '../answers.ts'
import type { Condition } from '../conditions.ts'
import type { RawPack } from './schema.ts'

export type PackId = string
export type Show = Readonly<Record<string, string | number | boolean>>
export type Source = RawPack['sources'][string]
export type Strength = 'weak' | 'moderate' | 'strong'
export type Meaning = 'counterfeit' | 'another-cell' | 'salvaged' | 'impossible-claim'
export type Care = 'look' | 'handle' | 'meter' | 'unwrap' | 'bench'

export type Option = {
  readonly id: OptionId
  readonly label: string
  readonly hint?: string
  readonly odds: number
  readonly show: Show
}
/** A drawn cell seen from somewhere, or one of the pictures of how to measure. */
export type Picture =
  | { readonly kind: 'cell'; readonly view: string; readonly pointAt?: string; readonly show: Show }
  | { readonly kind: 'measuring'; readonly measuring: string }

export type Question = {
  readonly id: QuestionId
  readonly ask: string
  readonly look?: string
  readonly care: Care
  /** Rough minutes. */
  readonly effort: number
  readonly quick: boolean
  /** `label`: about what is printed, listed or said of the cell. */
  readonly topic?: 'label'
  /** Tools it cannot be answered without. */
  readonly needs?: readonly Tool[]
  /** Tools that may have told the answer already. */
  readonly toldBy?: readonly Tool[]
  readonly picture?: Picture
  readonly unsureOdds: number
  readonly answer:
    | { readonly kind: 'options'; readonly options: readonly Option[] }
    | {
        readonly kind: 'reading'
        readonly quantity: Quantity
        readonly unit: string
        readonly least: number
        readonly most: number
      }
}

type RuleCommon = {
  readonly id: RuleId
  readonly pack: PackId
  readonly when: Condition
  readonly says: string
  readonly source: readonly string[]
  readonly families?: readonly FamilyId[]
  /** Last day (YYYY-MM-DD) on which the rule counts. */
  readonly validUntil?: string
}
export type Rule =
  | (RuleCommon & { readonly kind: 'must'; readonly means: Meaning })
  | (RuleCommon & { readonly kind: 'sign'; readonly strength: Strength })
  | (RuleCommon & { readonly kind: 'hazard'; readonly act: Urgency })
  | (RuleCommon & { readonly kind: 'no-bearing' })

export type Family = {
  readonly id: FamilyId
  readonly pack: PackId
  readonly name: string
  readonly maker: string
  readonly about?: string
  readonly given: Readonly<Record<QuestionId, OptionId>>
  readonly enough: readonly RuleId[]
  /** Rules that do not hold for it. */
  readonly waives?: readonly RuleId[]
  readonly show: Show
  /** Questions asked right after what is urgent. */
  readonly first?: readonly QuestionId[]
  /** Rules of any kind that keep "nothing found" away unless they are known not to hold. */
  readonly notWhile?: readonly RuleId[]
  /** "Nothing found" is never said of it. */
  readonly openEnded?: boolean
}

/** A pack's texts in one language: what it has of them. */
export type PackWords = {
  readonly questions: Readonly<
    Record<
      QuestionId,
      {
        readonly ask?: string
        readonly look?: string
        readonly options: Readonly<Record<OptionId, { readonly label: string; readonly hint?: string }>>
      }
    >
  >
  readonly rules: Readonly<Record<RuleId, string>>
  readonly families: Readonly<Record<FamilyId, string>>
  /** What published sources are called. */
  readonly sources: Readonly<Record<string, string>>
}

/** A whole statement, or false for what no letter tells. */
export type LetterOption = string | false
/** `is` names the thing, and the answer follows; `options` are said in place of that. */
export type LetterQuestion = { readonly is?: string; readonly options: Readonly<Record<OptionId, LetterOption>> }
export type Letters = {
  readonly questions: Readonly<Record<QuestionId, LetterQuestion | false>>
  /** Why it cannot be so, as a sentence of fact. */
  readonly rules: Readonly<Record<RuleId, string>>
}

export type Pack = {
  readonly id: PackId
  readonly version: string
  /**
   * Hash of the pack as written, without its words in other languages, which judge nothing; by id, version and digest a verdict
   * can be judged again years later.
   */
  readonly digest: string
  /** YYYY-MM-DD: when it was last gone over, and the day its cases are judged on. */
  readonly written: string
  readonly title: string
  readonly about: string
  readonly uses: readonly PackId[]
  readonly sources: Readonly<Record<string, Source>>
  readonly questions: readonly Question[]
  readonly rules: readonly Rule[]
  readonly families: readonly Family[]
  /** The language its own texts are in, such as "en". */
  readonly language: string
  /** Its texts in other languages. */
  readonly words: Readonly<Record<string, PackWords>>
  /** What letters to a seller say of its questions and rules, by language; where it says nothing, the question itself stands. */
  readonly letters?: Readonly<Record<string, Letters>>
}
