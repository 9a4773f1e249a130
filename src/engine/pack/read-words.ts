// Reads a pack's words in another language and holds them against the pack: ids it does not know are problems, gaps are known.
import type { Pack, PackWords, Question } from './pack.ts'
import type { PackProblem } from './problems.ts'
import { findUnknown, shapeProblems } from './read-pack.ts'
import { packWordsSchema, type RawPackWords } from './schema.ts'

export type WordsReading =
  | { readonly ok: true; readonly words: PackWords }
  | { readonly ok: false; readonly problems: readonly PackProblem[] }

/** Checks and reads one language's words for `pack`. Nothing of them is kept if one has a problem. */
export function readWords(raw: unknown, pack: Pack): WordsReading {
  const shape = packWordsSchema.safeParse(raw ?? {})
  if (!shape.success) return { ok: false, problems: shapeProblems(shape.error) }
  const { questions, rules, families, sources } = shape.data
  const problems: PackProblem[] = []
  const known = (list: readonly { readonly id: string }[]) => list.map(one => one.id)
  findUnknown('questions', 'question', Object.keys(questions), known(pack.questions), problems)
  findUnknown('rules', 'rule', Object.keys(rules), known(pack.rules), problems)
  findUnknown('families', 'family', Object.keys(families), known(pack.families), problems)
  findUnknown('sources', 'source', Object.keys(sources), Object.keys(pack.sources), problems)
  for (const question of pack.questions) {
    const told = Object.keys(questions[question.id]?.options ?? {})
    if (question.answer.kind === 'options')
      findUnknown(`questions.${question.id}.options`, 'option', told, known(question.answer.options), problems)
    else if (told.length > 0)
      problems.push({ code: 'not-an-option-question', at: `questions.${question.id}.options`, name: question.id })
  }
  if (problems.length > 0) return { ok: false, problems }
  const read = Object.entries(questions).map(([id, question]) => [id, readQuestionWords(question)])
  return { ok: true, words: { questions: Object.fromEntries(read), rules, families, sources } }
}

/** Two files of one language together; a text that both have is a problem. */
export function joinWords(before: PackWords | undefined, words: PackWords): WordsReading {
  if (!before) return { ok: true, words }
  const problems: PackProblem[] = []
  const join = <T>(key: 'questions' | 'rules' | 'families' | 'sources', what: string, one: T, other: T): T => {
    for (const name of Object.keys(other as object))
      if (name in (one as object)) problems.push({ code: 'duplicate', at: key, what, name })
    return { ...one, ...other }
  }
  const joined = {
    questions: join('questions', 'question', before.questions, words.questions),
    rules: join('rules', 'rule', before.rules, words.rules),
    families: join('families', 'family', before.families, words.families),
    sources: join('sources', 'source', before.sources, words.sources),
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, words: joined }
}

function readQuestionWords(raw: RawPackWords['questions'][string]): PackWords['questions'][string] {
  const options = Object.entries(raw.options ?? {}).map(([id, told]) => {
    if (typeof told === 'string') return [id, { label: told }]
    return [id, { label: told.label, ...(told.hint !== undefined && { hint: told.hint }) }]
  })
  return {
    ...(raw.ask !== undefined && { ask: raw.ask }),
    ...(raw.look !== undefined && { look: raw.look }),
    options: Object.fromEntries(options),
  }
}

/** Where `pack` has a text and `words` has none, such as `questions.ring.options.torn.hint`; in the pack's order. */
export function missingWords(pack: Pack, words: PackWords): string[] {
  return [
    ...pack.questions.flatMap(question => missingOf(question, words.questions[question.id])),
    ...pack.rules.filter(rule => words.rules[rule.id] === undefined).map(rule => `rules.${rule.id}`),
    ...pack.families
      .filter(family => family.about !== undefined && words.families[family.id] === undefined)
      .map(family => `families.${family.id}`),
    ...namedSources(pack)
      .filter(id => words.sources[id] === undefined)
      .map(id => `sources.${id}`),
  ]
}

/** The published sources that findings name: the first one of each rule. */
export function namedSources(pack: Pack): string[] {
  const first = pack.rules.flatMap(rule => rule.source.find(id => pack.sources[id] !== undefined) ?? [])
  return [...new Set(first)].filter(id => pack.sources[id]?.kind === 'published')
}

function missingOf(question: Question, words: PackWords['questions'][string] | undefined): string[] {
  const at = `questions.${question.id}`
  const options = question.answer.kind === 'options' ? question.answer.options : []
  return [
    ...(words?.ask === undefined ? [`${at}.ask`] : []),
    ...(question.look !== undefined && words?.look === undefined ? [`${at}.look`] : []),
    ...options.flatMap(option => {
      const told = words?.options[option.id]
      if (!told) return [`${at}.options.${option.id}`]
      return option.hint !== undefined && told.hint === undefined ? [`${at}.options.${option.id}.hint`] : []
    }),
  ]
}
