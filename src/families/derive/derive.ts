// From facts to a pack with its own cases: every rule, what is enough, and the proof that each does what it should.
//
// A derived pack is never stored: it is made from its facts whenever it is needed, so that what the base pack learns reaches it.
import type { Letters, Pack, PackWords } from '../../engine/pack/pack.ts'
import { readPack } from '../../engine/pack/read-pack.ts'
import type { RawCase, RawPack } from '../../engine/pack/schema.ts'
import { drawnOf } from '../drawn.ts'
import type { Dropped, FactProblem } from '../facts/fact-problems.ts'
import type { Facts } from '../facts/facts-schema.ts'
import { fitFacts, settleFacts } from '../facts/settle-facts.ts'
import { deriveCases } from './derive-cases.ts'
import { deriveFakes } from './derive-fakes.ts'
import { deriveFigures } from './derive-figures.ts'
import { deriveTraits } from './derive-traits.ts'
import type { RawRule, RuleDraft } from './rule-draft.ts'
import { aboutSentence, languages } from './sentences.ts'

export type Derived = {
  readonly pack: Pack
  readonly cases: readonly RawCase[]
  /** What the facts name and the base does not have any more. */
  readonly dropped: readonly Dropped[]
}
export type Deriving =
  | ({ readonly ok: true } & Derived)
  | { readonly ok: false; readonly problems: readonly FactProblem[]; readonly dropped: readonly Dropped[] }

export type DeriveOptions = {
  /** Which version of the family it is. */
  readonly number?: number
  /** By which a verdict names it; made of the facts by `factsDigest`. */
  readonly digest?: string
  /** "Nothing found" cannot come out: nobody vouches that the model is made so. */
  readonly openEnded?: boolean
}

/** Of the project's general rules, those that must be met before "nothing found" is said of any family. */
const alwaysEnough = ['torn-wrap', 'torn-ring', 'missing-ring', 'weld-scars', 'second-wrap-below']
/** A family with fewer rules of its own that were looked at and met never says "nothing found". */
export const leastOwnEnough = 3

/** Derives the pack of `facts` over `base`, the pack that holds the questions. Throws on nothing. */
export function derive(facts: Facts, base: Pack, options: DeriveOptions = {}): Deriving {
  const { facts: known, dropped } = fitFacts(settleFacts(facts), base)
  const parts = [deriveTraits(known, base), deriveFigures(known, base), deriveFakes(known, base)]
  const rules = parts.flatMap(part => part.rules)
  const problems = parts.flatMap(part => part.problems)
  if (problems.length > 0) return { ok: false, problems, dropped }
  if (rules.length === 0) return { ok: false, problems: [{ code: 'nothing-to-hold-against' }], dropped }
  const read = readPack(packOf(known, base, rules, options), [base], options.digest ?? '')
  if (!read.ok)
    return {
      ok: false,
      problems: read.problems.map(problem => ({ code: 'shape', at: problem.at, says: problem.code })),
      dropped,
    }
  const pack = { ...read.pack, words: wordsOf(known, base, rules), letters: lettersOf(rules) }
  const conditions = new Map(pack.rules.map(rule => [rule.id, rule.when]))
  const cases = deriveCases(known.identity.id, rules, base, conditions, givenOf(known))
  return { ok: true, pack, cases, dropped }
}

function packOf(
  facts: Facts,
  base: Pack,
  rules: readonly RuleDraft[],
  { number = 1, openEnded }: DeriveOptions,
): RawPack {
  const { identity } = facts
  const own = rules.filter(rule => rule.enough).map(rule => rule.id)
  const shared = [...alwaysEnough, `mass-far-low-${identity.format}`, ...facts.alsoEnough]
  const known = new Set(base.rules.map(rule => rule.id))
  const enough = [...new Set([...own, ...shared.filter(rule => known.has(rule))])]
  const holdsBack = rules.filter(rule => rule.holdsBack).map(rule => rule.id)
  const first = rules.some(rule => rule.holdsBack || rule.id.endsWith('-x')) ? ['sold-as'] : []
  return {
    pack: identity.id,
    version: `${number}.0.0`,
    written: base.written,
    title: identity.name,
    about: aboutSentence(base, facts).en,
    uses: [base.id],
    sources: {
      described: {
        kind: 'common-practice',
        text: 'As the moderators of this server describe the model; nobody else vouches for it.',
      },
      'seen-here': { kind: 'common-practice', text: 'A false look that was seen on this server.' },
    },
    questions: [],
    rules: rules.map(rawRule),
    families: [
      {
        id: identity.id,
        name: identity.name,
        maker: identity.maker,
        about: aboutSentence(base, facts).en,
        given: givenOf(facts),
        enough,
        show: drawnOf(facts),
        ...(holdsBack.length > 0 && { notWhile: holdsBack }),
        ...(first.length > 0 && { first }),
        ...((openEnded || own.length < leastOwnEnough) && { openEnded: true }),
      },
    ],
  }
}

/** What is settled by what it is sold as. */
const givenOf = ({ identity }: Facts): Record<string, string> => ({
  format: identity.format,
  ...(identity.chemistry !== 'not-known' && { chemistry: identity.chemistry }),
})

function rawRule({ id, weight, when, says, source }: RuleDraft): RawRule {
  return { id, when, says: cut(says.en), source: [source], ...weight } as RawRule
}

const cut = (text: string): string => (text.length <= 400 ? text : `${text.slice(0, 399)}…`)

function wordsOf(facts: Facts, base: Pack, rules: readonly RuleDraft[]): Record<string, PackWords> {
  const about = aboutSentence(base, facts)
  const inLanguage = (language: 'de' | 'es'): PackWords => ({
    questions: {},
    rules: Object.fromEntries(rules.map(rule => [rule.id, cut(rule.says[language])])),
    families: { [facts.identity.id]: about[language] },
    sources: {},
  })
  return { de: inLanguage('de'), es: inLanguage('es') }
}

function lettersOf(rules: readonly RuleDraft[]): Record<string, Letters> {
  const told = (language: (typeof languages)[number]): Letters => ({
    questions: {},
    rules: Object.fromEntries(rules.flatMap(({ id, letter }) => (letter ? [[id, letter[language]]] : []))),
  })
  return Object.fromEntries(languages.map(language => [language, told(language)]))
}
