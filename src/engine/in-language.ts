// A program with its packs' texts in another language: only texts differ, so everything it judges stays as it was.
import type { Program } from './compile.ts'
import type { Family, Option, Pack, PackWords, Question, Rule } from './pack/pack.ts'

const kept = new WeakMap<Program, Map<string, Program>>()

/**
 * The program for a reader of `locale` ("de", "es-419"): texts its packs have in that language, their own texts elsewhere, these
 * marked with the language they are in, such as "[en] Which size is the cell?". The same program every time for one language.
 */
export function inLanguage(program: Program, locale: string): Program {
  const language = locale.split('-')[0] ?? locale
  const known = kept.get(program) ?? new Map<string, Program>()
  kept.set(program, known)
  const told = known.get(language) ?? translate(program, language)
  known.set(language, told)
  return told
}

function translate(program: Program, language: string): Program {
  const foreign = program.scope.filter(pack => pack.language !== language)
  if (foreign.length === 0) return program
  const questions = new Map(program.questions)
  for (const pack of foreign)
    for (const question of pack.questions)
      if (questions.has(question.id)) questions.set(question.id, tellQuestion(question, teller(pack, language)))
  const ruleOf = (rule: Rule): Rule => {
    const pack = foreign.find(one => one.id === rule.pack)
    return pack ? { ...rule, says: teller(pack, language)(pack.words[language]?.rules[rule.id], rule.says) } : rule
  }
  const rules = program.rules.map(ruleOf)
  const told = new Map(rules.map(rule => [rule.id, rule]))
  return {
    ...program,
    family: program.family && tellFamily(program.family, foreign, language),
    questions,
    rules,
    sources: { ...program.sources, ...Object.fromEntries(foreign.map(pack => [pack.id, tellSources(pack, language)])) },
    enough: program.enough.map(rule => told.get(rule.id) ?? rule),
  }
}

/** Published sources under the name they have in `language`; the others keep their own text, which no finding shows. */
function tellSources(pack: Pack, language: string): Pack['sources'] {
  const told = pack.words[language]?.sources ?? {}
  return Object.fromEntries(
    Object.entries(pack.sources).map(([id, source]) => {
      const text = source.kind === 'published' ? told[id] : undefined
      return [id, text === undefined ? source : { ...source, text }]
    }),
  )
}

type Teller = ((translated: string | undefined, own: string) => string) & { readonly words: PackWords | undefined }

/** Takes the translated text, or the pack's own one with its language before it. */
function teller(pack: Pack, language: string): Teller {
  const tell = (translated: string | undefined, own: string) => translated ?? `[${pack.language}] ${own}`
  return Object.assign(tell, { words: pack.words[language] })
}

function tellQuestion(question: Question, tell: Teller): Question {
  const words = tell.words?.questions[question.id]
  const tellOption = (option: Option): Option => {
    const told = words?.options[option.id]
    const hint = option.hint === undefined ? {} : { hint: tell(told?.hint, option.hint) }
    return { ...option, label: tell(told?.label, option.label), ...hint }
  }
  const { answer } = question
  return {
    ...question,
    ask: tell(words?.ask, question.ask),
    ...(question.look !== undefined && { look: tell(words?.look, question.look) }),
    answer: answer.kind === 'options' ? { ...answer, options: answer.options.map(tellOption) } : answer,
  }
}

function tellFamily(family: Family, foreign: readonly Pack[], language: string): Family {
  const pack = foreign.find(one => one.id === family.pack)
  if (!pack || family.about === undefined) return family
  return { ...family, about: teller(pack, language)(pack.words[language]?.families[family.id], family.about) }
}
