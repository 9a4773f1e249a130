// What the search knows of a language: small words to leave out, words of the trade that mean the same, words that go together.

export type Vocabulary = {
  /** Words that say nothing about the matter; spaces between them. */
  readonly small: string
  /** Words that mean the same here, one group a line; the first stands for the rest. */
  readonly same: readonly string[]
  /** Words that show that a question is about cells: with none of them, a strange word weighs more. */
  readonly ours: string
  /** What somebody types whose cell burns, smokes, swells, leaks or gets hot, whatever else stands in the question. */
  readonly danger: readonly RegExp[]
  /** What smokes, swells or burns, too, and is no cell. */
  readonly otherThings: RegExp
  /** What people also ask in such places and no entry is about: a question that lies near these is not ours. */
  readonly elsewhere: readonly string[]
  /** Words that mean something only together, and the one word they are taken for. */
  readonly together: readonly (readonly [RegExp, string])[]
  /** Whether words are put together out of others without a space. */
  readonly compounds: boolean
  stem(word: string): string
}

/** Figures with a unit, as all languages write them: what kind of figure it is tells more than the figure. */
export const figures: readonly (readonly [RegExp, (value: number) => string])[] = [
  [/(\d+(?:[.,]\d+)?) ?(?:mah|milliamp\w* ?h\w*)\b/g, value => (value > 5900 ? ' mah hugecapacity ' : ' mah ')],
  [/(\d+(?:[.,]\d+)?) ?(?:v|volts?|voltios?)\b/g, value => (value < 2.5 ? ' volt emptyvolt ' : ' volt ')],
  [/(\d+(?:[.,]\d+)?) ?(?:a|amps?|amperes?|amperios?)\b/g, () => ' ampere '],
  [/(\d+(?:[.,]\d+)?) ?(?:g|gr|grams?|gramm|gramos?)\b/g, () => ' gram '],
  [/(\d+(?:[.,]\d+)?) ?(?:mm|millimet\w*|milimet\w*)\b/g, () => ' millimetre '],
  [/(\d+(?:[.,]\d+)?) ?(?:mω|mohms?|milliohms?)(?![a-z])/g, () => ' milliohm '],
  [/(\d+(?:[.,]\d+)?) ?(?:°c?|degrees?|grad|grados)(?![a-z])/g, () => ' degree '],
]
