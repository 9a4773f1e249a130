// Checks entries as rules are checked: names, links between them, sources, length, and that each carries the caution it needs.
import { type CautionKind, cautions, type Entry, type EntryText, type Language, languages } from './entry.ts'
import type { AnswerProblem } from './problems.ts'

/** What a telephone shows without endless scrolling, and what leaves room in a message for sources and the whole caution. */
const longestBody = 2500
/** A suggestion and the label of a button are no longer than this. */
export const longestTitle = 80
const fewestKeywords = 5

/** Words that would vouch for a cell, and what has to stand in the same sentence for them to be no promise. */
const assuring: Record<Language, { readonly words: RegExp; readonly unless: RegExp }> = {
  en: {
    words: /\b(safe|safely|genuine|authentic|harmless)\b/i,
    unless: /\b(no|not|never|nobody|nothing|nor|neither|cannot|if|whether|unless)\b|n't\b|\?/i,
  },
  de: {
    words: /(?<!\p{L})(sicher|ungefährlich|echt(?:e[nrms]?)?|harmlos)(?!\p{L})/iu,
    unless: /(?<!\p{L})(kein\p{L}*|nicht|nie|niemals|niemand|nichts|ohne|wenn|ob|falls)(?!\p{L})|\?/iu,
  },
  es: {
    words: /(?<!\p{L})(segur[oa]s?|inofensiv[oa]s?|auténtic[oa]s?|genuin[oa]s?)(?!\p{L})/iu,
    unless: /(?<!\p{L})(no|nunca|nadie|nada|ningun[oa]?|ningún|sin|si|ni|tampoco)(?!\p{L})|\?/iu,
  },
}

/** What an entry is about, told by its English words, and the caution it then carries at least. */
const needed: readonly { readonly caution: CautionKind; says(text: EntryText): boolean }[] = [
  { caution: 'emergency', says: ({ title }) => /\b(smok|hiss|burn|leak|swell)/i.test(title) },
  { caution: 'full', says: ({ body }) => /\b((dis)?charg(e|ed|ing)|use it|use them|buy|re-sleeve)\b/i.test(body) },
]

/** Everything wrong with the entries, each with its own id; none if they can be used. They may be related to those of `beside`. */
export function checkEntries(entries: readonly Entry[], beside: readonly Entry[] = []): AnswerProblem[] {
  const known = [...entries, ...beside].map(entry => entry.id)
  return entries.flatMap((entry, i) => [
    ...(known.indexOf(entry.id) === i ? [] : [{ at: entry.id, code: 'twice' as const, name: entry.id }]),
    ...checkLinks(entry, known),
    ...checkSources(entry),
    ...languages.flatMap(language => checkText(entry, language)),
    ...checkCaution(entry),
  ])
}

function checkLinks({ id, related }: Entry, known: readonly string[]): AnswerProblem[] {
  return related.flatMap((name): AnswerProblem[] => {
    if (name === id) return [{ at: id, code: 'itself-related' }]
    return known.includes(name) ? [] : [{ at: id, code: 'unknown-related', name, known }]
  })
}

/** A published text has a year, or says that it has none. */
function checkSources({ id, sources }: Entry): AnswerProblem[] {
  if (sources.length === 0) return [{ at: id, code: 'no-source' }]
  return sources.flatMap((source): AnswerProblem[] =>
    'text' in source && !/\b(19|20)\d\d\b|undated/.test(source.text)
      ? [{ at: id, code: 'no-year', name: source.text }]
      : [],
  )
}

function checkText({ id, texts }: Entry, language: Language): AnswerProblem[] {
  const text = texts[language]
  if (!text) return []
  const at = id
  const { title, body, keywords } = text
  const problems: AnswerProblem[] = []
  if (body.length > longestBody)
    problems.push({ at, code: 'body-too-long', language, length: body.length, most: longestBody })
  if (title.length > longestTitle)
    problems.push({ at, code: 'title-too-long', language, length: title.length, most: longestTitle })
  if (keywords.length < fewestKeywords) problems.push({ at, code: 'too-few-keywords', language, least: fewestKeywords })
  const { words, unless } = assuring[language]
  for (const sentence of body.match(/[^.!?:;\n]+[.!?:;]?/g) ?? []) {
    const word = words.exec(sentence)?.[0]
    if (word && !unless.test(sentence))
      problems.push({ at, code: 'assures', language, name: word, sentence: sentence.trim() })
  }
  return problems
}

function checkCaution({ id, caution, texts }: Entry): AnswerProblem[] {
  const wanted = needed.find(one => one.says(texts.en))?.caution
  return wanted && cautions.indexOf(caution) < cautions.indexOf(wanted)
    ? [{ at: id, code: 'caution-too-weak', name: caution, wanted }]
    : []
}
