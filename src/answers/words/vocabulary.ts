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

/** Sizes of cells: a figure that is a name. */
const sizes =
  /^(10440|14430|14500|16340|17500|18350|18500|18650|20700|21700|26650|26700|26800|32650|32700|33140|46800|60086|61960)$/
/** A bare figure of four or five digits: a size, a year, or what somebody measured or read. */
const bareFigure = (value: number): string => {
  if (sizes.test(String(value))) return ` ${value} `
  if (value > 1989 && value < 2031) return ' yearfigure '
  return value > 5900 ? ' mah hugecapacity ' : ' mah '
}

/** Figures, with a unit as all languages write them: what kind of figure it is tells more than the figure. */
export const figures: readonly (readonly [RegExp, (value: number) => string])[] = [
  [/(\d+(?:[.,]\d+)?) ?(?:mah|milliamp\w* ?h\w*)\b/g, value => (value > 5900 ? ' mah hugecapacity ' : ' mah ')],
  [/(\d+(?:[.,]\d+)?) ?(?:v|volts?|voltios?)\b/g, value => (value < 2.5 ? ' volt emptyvolt ' : ' volt ')],
  [/(\d+(?:[.,]\d+)?) ?(?:a|amps?|amperes?|amperios?)\b/g, () => ' ampere '],
  [/(\d+(?:[.,]\d+)?) ?(?:g|gr|grams?|gramm|gramos?)\b/g, () => ' gram '],
  [/(\d+(?:[.,]\d+)?) ?(?:mm|millimet\w*|milimet\w*)\b/g, () => ' millimetre '],
  [/(\d+(?:[.,]\d+)?) ?(?:mω|mohms?|milliohms?)(?![a-z])/g, () => ' milliohm '],
  [/(\d+(?:[.,]\d+)?) ?(?:°c?|degrees?|grad|grados)(?![a-z])/g, () => ' degree '],
  [/(?<![\p{L}\d.,/-])(\d{4,5})(?![\p{L}\d.,/-])/gu, bareFigure],
]
