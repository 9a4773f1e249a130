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
  /** What is searched for among the answers to danger where the question has no word of theirs. */
  readonly alarm: string
  /** What holds or charges cells: where it is named, a sign of danger is one of a cell, whatever else stands in the question. */
  readonly holders: RegExp
  /** What a sign of danger may be told of, cells and what holds them apart: parts, devices, what one feels it with. */
  readonly signedThings: RegExp
  /** What smokes, swells or burns, too, and is no cell. */
  readonly otherThings: RegExp
  /** Where something is or happens: a room, a pocket, a car that one sits in. No thing that the question is about. */
  readonly places: RegExp
  /** Words of ours that mean something else in other worlds, and what shows that the question is from one of those. */
  readonly double: string
  readonly otherWorlds: RegExp
  /** What the question is about, named as a thing at its beginning: the thing in the first group. */
  readonly subject: RegExp
  /** What smells, leaks, hisses or swells, in the first group: the word before that verb. */
  readonly doer: RegExp
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

/** A full cell's 4.20 V with the twentieth of a volt by which chargers and meters differ: only from here on it is fuller than full. */
const leastOver = 4.25
/** What a figure in volts tells: far too empty, fuller than full, or neither. */
const volts = (value: number): string => {
  if (value < 2.5) return ' volt emptyvolt '
  return value >= leastOver && value < 4.6 ? ' volt overvolt ' : ' volt '
}

/** Figures, with a unit as all languages write them: what kind of figure it is tells more than the figure. */
export const figures: readonly (readonly [RegExp, (value: number) => string])[] = [
  [/(\d+(?:[.,]\d+)?) ?(?:mah|milliamp\w* ?h\w*)\b/g, value => (value > 5900 ? ' mah hugecapacity ' : ' mah ')],
  [/(\d+(?:[.,]\d+)?) ?(?:v|volts?|voltios?)\b/g, volts],
  [/(\d+(?:[.,]\d+)?) ?(?:a|amps?|amperes?|amperios?)\b/g, () => ' ampere '],
  [/(\d+(?:[.,]\d+)?) ?(?:g|gr|grams?|gramm|gramos?)\b/g, () => ' gram '],
  [/(\d+(?:[.,]\d+)?) ?(?:mm|millimet\w*|milimet\w*)\b/g, () => ' millimetre '],
  [/(\d+(?:[.,]\d+)?) ?(?:mω|mohms?|milliohms?)(?![a-z])/g, () => ' milliohm '],
  [/(\d+(?:[.,]\d+)?) ?(?:°c?|degrees?|grad|grados)(?![a-z])/g, () => ' degree '],
  // A figure like 3.62 with no unit is one that a meter shows.
  [/(?<![\p{L}\d.,/-])([0-3][.,]\d{1,2}|4[.,][0-5]\d?)(?![\p{L}\d/%-]|[.,]\d| ?(?:x|bis|to|a|-) ?\d)/gu, volts],
  [/(?<![\p{L}\d.,/-])(\d{4,5})(?![\p{L}\d.,/-])/gu, bareFigure],
]
