// The answers in every language: line for line what the English says, with every figure, every "do not" and every call for help.
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { commands } from '../../src/discord/commands.ts'
import { answersIn, loadAnswers } from '../../src/packs/load-answers.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import type { Key } from '../../src/words/catalogue.ts'
import type { english } from '../../src/words/en/english.ts'
import { sayIn } from '../../src/words/say.ts'
import { figuresIn, foreignQuotes, negates } from '../discord/compare-words.ts'

const { entries } = await loadAnswers(answersIn(shippedRules))
const told = entries.flatMap(entry =>
  (['de', 'es'] as const).flatMap(language => {
    const text = entry.texts[language]
    return text ? [{ id: entry.id, language, own: entry.texts.en, text }] : []
  }),
)

/** Numbers of laws and telephones: written alike in every language, whatever marks its thousands. */
const numbers = /49 CFR 173\.185\(f\)|1-800-638-2772|0808 223 1133|2023\/988|Batteries 4\(3\) 45/g

/** A title or a line of the body beside its translation. */
const pairs = told.flatMap(({ id, language, own, text }) => {
  const [lines, theirs] = [own.body, text.body].map(body => body.split('\n')) as [string[], string[]]
  return [[own.title, text.title], ...lines.map((line, i) => [line, theirs[i] ?? ''])].map(([en = '', said = '']) => ({
    at: `${id} ${language}: ${en}`,
    language,
    en,
    said,
  }))
})

test('every entry is there in every language', () => {
  expect(entries.length).toBeGreaterThan(0)
  expect(told.length).toBe(2 * entries.length)
})

test('every source is named in every language, with its figures, and sources.yaml names no other', async () => {
  const sources = entries.flatMap(entry => entry.sources.flatMap(source => ('text' in source ? [source] : [])))
  for (const { text, told: names } of sources)
    for (const language of ['de', 'es'] as const) {
      const figures = (language: string, name: string) => figuresIn(language, name.replace(numbers, ''))
      expect(figures(language, names[language] ?? ''), `${language}: ${text}`).toEqual(figures('en', text))
    }
  const listed = parse(await readFile(join(answersIn(shippedRules), 'sources.yaml'), 'utf8')) as object
  expect(Object.keys(listed).sort()).toEqual([...new Set(sources.map(one => one.text))].sort())
})

test('line for line: paragraphs, lists and what is bold stand where they stand in English', () => {
  for (const { id, language, own, text } of told) {
    const shape = (body: string) => body.split('\n').map(line => /^(- |\d\. |)/.exec(line)?.[0])
    expect(shape(text.body), `${id} ${language}`).toEqual(shape(own.body))
  }
  const bold = (text: string) => text.match(/\*\*/g)?.length ?? 0
  expect(pairs.filter(({ en, said }) => bold(en) !== bold(said)).map(one => one.at)).toEqual([])
})

test('no figure is lost or changed', () => {
  const of = (language: string, text: string) => [
    ...(text.match(numbers) ?? []),
    ...figuresIn(language, text.replace(numbers, '')),
  ]
  const differ = pairs.filter(({ language, en, said }) => of('en', en).join() !== of(language, said).join())
  expect(differ.map(({ at, language, en, said }) => [at, of('en', en), of(language, said)])).toEqual([])
})

test('no “not”, “never” or “nothing” is lost', () => {
  const lost = pairs.filter(({ language, en, said }) => negates('en', en) && !negates(language, said))
  expect(lost.map(({ at, said }) => [at, said])).toEqual([])
})

test('whoever is told not to use a cell is told not to charge it in the same breath, in answers and in rules', async () => {
  const packs = (await loadPacks(shippedRules, { cases: false })).packs.map(one => one.pack)
  const ruled = packs.flatMap(({ rules, words }) => [
    ...rules.map(rule => ['en', rule.says] as const),
    ...(['de', 'es'] as const).flatMap(each =>
      Object.values(words[each]?.rules ?? {}).map(said => [each, said] as const),
    ),
  ])
  const answered = entries.flatMap(({ texts }) =>
    (['en', 'de', 'es'] as const).map(each => [each, texts[each]?.body ?? ''] as const),
  )
  const orders = {
    en: [/do not use (?:it|the cell|this cell|that cell|a cell|them)\b(?! there)/i, /charg/i],
    de: [/\bbenutze? (?:sie|die Zelle|diese Zelle) (?!dort )(?:\p{L}+ )?nicht/iu, /lad|läd/i],
    es: [/\bno (?:la|las) uses\b(?! ahí| más a mucha)/i, /carg/i],
  } as const
  const lost = [...ruled, ...answered].flatMap(([language, text]) => {
    const [use, charge] = orders[language]
    return (text.match(/[^.!?:;\n]+/g) ?? []).filter(said => use.test(said) && !charge.test(said))
  })
  expect(lost).toEqual([])
})

test('what is to be done with hands says its own condition, and never follows a bare “otherwise”', () => {
  const bare = { en: /\botherwise\b/i, de: /\bsonst\b/i, es: /\bsi no[,:]/i } as const
  const tape = { en: 'Cover both ends', de: 'Kleb beide Enden', es: /tapa los dos extremos/i.source } as const
  const lost = entries.flatMap(({ id, texts }) =>
    (['en', 'de', 'es'] as const).flatMap(each =>
      (texts[each]?.body ?? '')
        .split(/\n\n/)
        .filter(part => {
          const [before, ...rest] = part.split(new RegExp(tape[each], 'i'))
          return rest.length > 0 && bare[each].test(before?.split(/(?<=[.!?]) /).at(-1) ?? '')
        })
        .map(part => `${id} ${each}: ${part}`),
    ),
  )
  expect(lost).toEqual([])
})

describe('what may save somebody is said as often as in English', () => {
  test.each<[string, RegExp, RegExp, RegExp]>([
    [
      'call your emergency number',
      /call your emergency number|your emergency number first/gi,
      /wähl (von draußen |sofort )?den Notruf|lass sofort den Notruf wählen|zuerst der Notruf/gi,
      /llam[ae] (desde fuera |ya )?al número de emergencias|primero el número de emergencias/gi,
    ],
    [
      'get away',
      /\bget away\b|get everyone out/gi,
      /\bgeh (\p{L}+ )?weg\b|bring alle (hinaus|aus dem Raum)/giu,
      /aléjate|saca a todos/gi,
    ],
    ['from memory', /from memory/gi, /aus dem Gedächtnis/gi, /de memoria/gi],
    [
      'only if it is safe',
      /only if it is safe/gi,
      /nur,? wenn es gefahrlos geht/gi,
      /solo si puedes hacerlo sin peligro/gi,
    ],
    [
      'do not use',
      /do not (touch, )?use|is not used|not used until/gi,
      /benutze|benutzt|nicht (mehr )?benutz/gi,
      /no la uses|no (lo|las) uses|no uses|no se usa|no la toques, uses|tampoco uses/gi,
    ],
    ['charge', /\bcharg(e|ed|ing)\b/gi, /lad|läd|lüd/gi, /c[aá]rg/gi],
    [
      'post',
      /\b(do not post|not be posted|without posting|not mail)/gi,
      /(nicht|ohne)[^.:;]*(Post|verschick|versend|einschick)|verschick[^.:;]*nicht/gi,
      /(no|sin)[^.:;]*(correo|env[ií])/gi,
    ],
    [
      'non-conducting tape',
      /tape that does not conduct/gi,
      /Klebeband, das nicht leitet/gi,
      /cinta que no condu(ce|zca)/gi,
    ],
    ['cannot burn', /cannot burn/gi, /nicht brenn(?:en kann|bar)/gi, /no (?:pued[ae]n? arder|arda)/gi],
  ])('%s', (_, en, de, es) => {
    const times = (text: string, words: RegExp) => text.match(words)?.length ?? 0
    const lost = pairs.filter(one => times(one.said, one.language === 'de' ? de : es) < times(one.en, en))
    expect(lost.map(({ at, said }) => [at, said])).toEqual([])
  })
})

test('buttons, verdicts and headings are called what they are called on the screen', () => {
  const named: readonly (readonly [RegExp, Key])[] = [
    [/“[Cc]an’t tell”/, 'check.unsure'],
    [/“Not checked”/, 'part.unchecked'],
    [/“[Nn]othing found”/, 'trends.verdict.nothing-found'],
    [/\*\*Write to the seller\*\*/, 'letter.write'],
  ]
  const wrong = pairs.filter(({ language, en, said }) =>
    named.some(([words, key]) => words.test(en) && !said.toLowerCase().includes(sayIn(language)(key).toLowerCase())),
  )
  expect(wrong.map(({ at, said }) => [at, said])).toEqual([])
})

test('a command that an entry names exists, and is named as Discord names it in that language', () => {
  const paths = commands.flatMap(one =>
    'subcommands' in one ? one.subcommands.map(sub => `${one.name}.${sub.name}`) : [one.name],
  )
  const called = (path: string, language: string) =>
    path
      .split('.')
      .map((_, i, parts) => sayIn(language)(`name.${parts.slice(0, i + 1).join('.')}` as keyof typeof english))
      .join(' ')
  for (const entry of entries)
    for (const [, name = ''] of entry.texts.en.body.matchAll(/`\/([^`]*)`/g)) {
      const path = name.replace(' ', '.')
      expect(paths, `${entry.id}: /${name}`).toContain(path)
      for (const one of told.filter(text => text.id === entry.id))
        expect(one.text.body, `${one.id} ${one.language}`).toContain(`\`/${called(path, one.language)}\``)
    }
})

test('nothing is left in English, and each language quotes in its own way', () => {
  const straight = pairs.filter(({ en }) => /"|\p{L}'\p{L}/u.test(en))
  expect(straight.map(one => one.at)).toEqual([])
  const same = pairs.filter(({ en, said }) => en === said && /\p{L}{4,}/u.test(en))
  expect(same.map(one => one.at)).toEqual([])
  for (const { at, language, said } of pairs) expect(said, at).not.toMatch(foreignQuotes[language] as RegExp)
})
