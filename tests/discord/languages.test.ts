// Every language says everything English says: same keys, same values in each, no limit broken, no caution or "not" lost.
import { IntlMessageFormat } from 'intl-messageformat'
import { describe, expect, test } from 'vitest'
import { commands, messageCommands } from '../../src/discord/commands.ts'
import { inEveryLanguage, translated } from '../../src/discord/interaction/in-every-language.ts'
import { altDe } from '../../src/words/de/alt.ts'
import { german } from '../../src/words/de/german.ts'
import { altEn } from '../../src/words/en/alt.ts'
import { answerProblems } from '../../src/words/en/answer-problems.ts'
import { english } from '../../src/words/en/english.ts'
import { pictureInput } from '../../src/words/en/picture-input.ts'
import { trendInput } from '../../src/words/en/trend-input.ts'
import { altEs } from '../../src/words/es/alt.ts'
import { spanish } from '../../src/words/es/spanish.ts'
import { openMessage } from '../../src/words/message.ts'
import { openPseudo, pseudoLocale } from '../../src/words/pseudo.ts'
import { figuresIn, foreignQuotes, negates } from './compare-words.ts'

type Words = Readonly<Record<string, string>>
const catalogues: readonly (readonly [string, Words, Words])[] = [
  ['de', german as Words, altDe],
  ['es', spanish as Words, altEs],
]

/** Sentences of the command line, which stays English: whoever runs the bot reads them, never a member. */
const operators = Object.keys({ ...trendInput, ...pictureInput, ...answerProblems })

type Element = ReturnType<IntlMessageFormat['getAst']>[number]
const kinds = ['literal', 'argument', 'number', 'date', 'time', 'select', 'plural', 'pound', 'tag'] as const

/** What a message takes and how: each argument with its kind, a number's style, a choice's names. */
const takes = (message: string): string[] =>
  takesOf(new IntlMessageFormat(message, 'en', undefined, { ignoreTag: true }).getAst())

function takesOf(message: readonly Element[]): string[] {
  const found = new Set<string>()
  const walk = (elements: readonly Element[]) => {
    for (const one of elements) {
      const kind = kinds[one.type] ?? 'other'
      if (kind === 'literal' || kind === 'pound') continue
      const style =
        'style' in one ? JSON.stringify(one.style, (key, value) => (key === 'location' ? undefined : value)) : ''
      found.add(`${(one as { value: string }).value} ${kind} ${style ?? ''}`)
      if (!('options' in one)) continue
      for (const [name, option] of Object.entries(one.options)) {
        if (kind === 'select' || name.startsWith('=')) found.add(`${one.value} ${kind} ${name}`)
        walk(option.value)
      }
    }
  }
  walk(message)
  return [...found].sort()
}

/** The categories of every plural in a message; English ones of one form only count as none. */
function pluralForms(message: string): string[][] {
  const found: string[][] = []
  const walk = (elements: readonly Element[]) => {
    for (const one of elements) {
      if (!('options' in one)) continue
      const names = Object.keys(one.options).filter(name => !name.startsWith('='))
      if (kinds[one.type] === 'plural') found.push(names)
      for (const option of Object.values(one.options)) walk(option.value)
    }
  }
  walk(new IntlMessageFormat(message, 'en', undefined, { ignoreTag: true }).getAst())
  return found
}

/** What stands outside of placeholders, also inside the branches of a choice. */
function literals(message: string): string {
  const parts: string[] = []
  const walk = (elements: readonly Element[]) => {
    for (const one of elements) {
      if (kinds[one.type] === 'literal') parts.push((one as { value: string }).value)
      if ('options' in one) for (const option of Object.values(one.options)) walk(option.value)
    }
  }
  walk(new IntlMessageFormat(message, 'en', undefined, { ignoreTag: true }).getAst())
  return parts.join(' ')
}

const figures = (language: string, message: string): string[] => figuresIn(language, literals(message))

describe.each(catalogues)('%s', (language, words, alt) => {
  test('has every key that people see, and no other', () => {
    const wanted = Object.keys(english).filter(key => !operators.includes(key))
    expect(wanted.filter(key => !(key in words))).toEqual([])
    expect(Object.keys(words).filter(key => !wanted.includes(key))).toEqual([])
    expect(Object.keys(altEn).filter(key => !(key in alt))).toEqual([])
    expect(Object.keys(alt).filter(key => !(key in altEn))).toEqual([])
  })

  const pairs = [
    ...Object.entries(words).map(([key, said]) => [key, (english as Words)[key] ?? '', said] as const),
    ...Object.entries(alt).map(([key, said]) => [`alt ${key}`, altEn[key] ?? '', said] as const),
  ]

  test('takes the same values in the same way as English', () => {
    const differ = pairs.filter(([, en, said]) => takes(en).join('\n') !== takes(said).join('\n'))
    expect(differ.map(([key, en, said]) => ({ key, en: takes(en), said: takes(said) }))).toEqual([])
  })

  test('every plural has the forms its language counts in, as far as English tells them apart', () => {
    const known = new Intl.PluralRules(language).resolvedOptions().pluralCategories as string[]
    for (const [key, en, said] of pairs)
      for (const forms of pluralForms(said)) {
        expect(forms, key).toContain('other')
        expect(
          forms.filter(form => !known.includes(form)),
          key,
        ).toEqual([])
        const englishTells = pluralForms(en).every(names => names.includes('one'))
        if (englishTells) expect(forms, key).toContain('one')
      }
  })

  test('no figure in a sentence is lost or changed', () => {
    const differ = pairs.filter(([, en, said]) => figures('en', en).join() !== figures(language, said).join())
    expect(differ.map(([key, en, said]) => ({ key, en: figures('en', en), said: figures(language, said) }))).toEqual([])
  })

  test('where English says no, never or nothing, this language does, too', () => {
    const lost = pairs.filter(([, en, said]) => negates('en', literals(en)) && !negates(language, literals(said)))
    expect(lost.map(([key, en, said]) => ({ key, en, said }))).toEqual([])
  })

  test('nothing is left in English', () => {
    const same = pairs.filter(([key, en, said]) => en === said && /\p{L}{4,}/u.test(literals(en)) && !alike.has(key))
    expect(same.map(([key, en]) => `${key}: ${en}`)).toEqual([])
  })

  test('sentences are quoted as this language quotes, and begin and end without blanks', () => {
    for (const [key, , said] of pairs) {
      expect(said.trim(), key).toBe(said)
      expect(said, key).not.toMatch(foreignQuotes[language] as RegExp)
    }
  })
})

test('the pseudo-language of the tests takes the same values in the same way, in every message', () => {
  openPseudo()
  for (const [key, en] of Object.entries({ ...english, ...altEn }))
    expect(takesOf(openMessage(en, pseudoLocale).getAst()), key).toEqual(takes(en))
})

describe('people are spoken to as du and tú, as Discord does; only a letter to a seller is formal', () => {
  /** "Sie" inside a sentence is no "she" or "they". */
  const formal = {
    de: /(?<=[\p{Ll},] )(Sie|Ihnen|Ihre?[nmrs]?)(?!\p{L})/u,
    es: /(?<!\p{L})(usted(es)?|les ruego)(?!\p{L})/iu,
  }
  test.each(catalogues)('%s', (language, words, alt) => {
    const pattern = formal[language as 'de' | 'es']
    for (const [key, said] of [...Object.entries(words), ...Object.entries(alt)])
      if (!key.startsWith('letter.')) expect(said, key).not.toMatch(pattern)
    const letters = Object.entries(words).filter(([key]) => key.startsWith('letter.'))
    expect(letters.map(([, said]) => said).join(' ')).toMatch(pattern)
  })
})

/** Words that are the same in two of the languages. */
const alike = new Set([
  'name.claim.text',
  'name.check.start',
  'name.trends',
  'name.trends',
  'check.pause',
  'instrument.thermometer',
  'alt format',
  'buying.part.links',
  'region.au',
])

test('the caution is whole in every language', () => {
  const wanted = {
    de: {
      'caution.line': [/unsicher/, /benutze und lade die Zelle nicht/],
      'caution.full': [
        /von außen/,
        /nie/,
        /unsicher/,
        /benutze und lade die Zelle nicht/,
        /Consumer Product Safety Commission/,
        /8\. Januar 2021/,
        /18650/,
        /überhaupt nicht kaufen oder benutzen/,
        /Industrieteile/,
        /Schutzschaltung/,
        /Anleitung des Herstellers/,
        /Brandschutz- und Abfallregeln/,
        /zugelassene Fachbetriebe/,
      ],
    },
    es: {
      'caution.line': [/duda/, /no uses ni cargues la celda/],
      'caution.full': [
        /desde fuera/,
        /nunca/,
        /duda/,
        /no uses ni cargues la celda/,
        /Consumer Product Safety Commission/,
        /8 de enero de 2021/,
        /18650/,
        /no se compren ni se usen .* en absoluto/,
        /piezas industriales/,
        /protección/,
        /instrucciones del fabricante/,
        /normas de incendios y de residuos/,
        /gestores autorizados/,
      ],
    },
  }
  for (const [language, words] of catalogues)
    for (const [key, parts] of Object.entries(wanted[language as 'de' | 'es']))
      for (const part of parts) expect(words[key]).toMatch(part)
})

describe('what is typed and pressed fits Discord in every language', () => {
  const limits: readonly (readonly [RegExp, number])[] = [
    [/^(check\.(unsure|back|pause|finish|measure|not-so)|paused\.resume|button\..*|consent\.\w+\.(yes|no))$/, 80],
    [/^(counting\.(out|in|forget)|privacy\.(show|delete|sure\.(yes|no))|(claim|log)\.(start|add)|list\.resume)$/, 80],
    [/^form\.(?!.*hint)/, 45],
    [/^(form\..*hint|check\.unsure\.hint|instrument\..*|log\.unit\..*|log\.clock\..*|log\.swap|family\.none)$/, 100],
    [/^(check|log)\.choose$/, 150],
  ]
  test.each([['en', english, altEn] as const, ...catalogues])('%s', (_, words) => {
    for (const [key, said] of Object.entries(words))
      for (const [keys, most] of limits)
        if (keys.test(key)) expect(literals(said).length, key).toBeLessThanOrEqual(most)
  })
})

describe('commands in every language', () => {
  type Node = {
    name: string
    description?: string
    name_localizations: Record<string, string>
    description_localizations?: Record<string, string>
    options?: Node[]
    choices?: Node[]
  }
  const walk = (node: Node, path: string): (readonly [string, Node])[] => [
    [`${path}.${node.name}`, node],
    ...(node.options ?? []).flatMap(one => walk(one, `${path}.${node.name}`)),
  ]
  const bodies = commands.map(command => inEveryLanguage(command) as unknown as Node)
  const all = bodies.flatMap(body => walk(body, 'name'))

  test('each command and option has a name of its own in the catalogues', () => {
    expect(all.map(([key]) => key).filter(key => !(key in english))).toEqual([])
    for (const [key, node] of all) expect((english as Words)[key]).toBe(node.name)
    const used = new Set(all.map(([key]) => key))
    expect(Object.keys(english).filter(key => key.startsWith('name.') && !used.has(key))).toEqual([])
  })

  test('names and descriptions fit, and no two names beside each other are the same', () => {
    for (const [key, node] of all)
      for (const locale of translated) {
        expect(node.name_localizations[locale], key).toMatch(/^[-_\p{Ll}\p{N}]{1,32}$/u)
        const said = node.description_localizations?.[locale] ?? ''
        expect(said.length, `${key} ${locale} ${said}`).toBeGreaterThan(0)
        expect(said.length, `${key} ${locale} ${said}`).toBeLessThanOrEqual(100)
        for (const choice of node.choices ?? [])
          expect(choice.name_localizations[locale]?.length).toBeLessThanOrEqual(100)
      }
    for (const locale of translated)
      for (const siblings of [bodies, ...all.map(([, node]) => node.options ?? [])]) {
        const names = siblings.map(one => one.name_localizations[locale])
        expect(new Set(names).size).toBe(names.length)
      }
  })

  test('message commands have a name of their own, too', () => {
    for (const command of messageCommands) {
      const { name_localizations: names } = inEveryLanguage(command) as unknown as Node
      for (const locale of translated) expect(names[locale]).not.toBe(command.name)
    }
  })

  test.each(catalogues)('what %s sentences call a command is what Discord calls it there', (language, words) => {
    const locale = language === 'es' ? 'es-ES' : language
    const pathsOf = (node: Node): string[] => {
      const name = node.name_localizations[locale] as string
      const subcommands = (node.options ?? []).filter(one => (one as unknown as { type: number }).type <= 2)
      return subcommands.length === 0 ? [name] : subcommands.flatMap(pathsOf).map(path => `${name} ${path}`)
    }
    const known = bodies.flatMap(pathsOf)
    for (const [key, said] of Object.entries(words)) {
      const named = (english as Words)[key]?.match(/(?<![\w:/])\/[a-z]+( [a-z]+)?/g)?.length ?? 0
      const called = said.match(/(?<![\p{L}:/])\/\p{L}+/gu)?.length ?? 0
      expect(called, key).toBe(named)
      for (const [, rest = ''] of said.matchAll(/(?<![\p{L}:/])\/(\p{L}[\p{L} ]*)/gu))
        expect(
          known.some(path => rest.startsWith(path)),
          `${key}: /${rest}`,
        ).toBe(true)
    }
  })
})
