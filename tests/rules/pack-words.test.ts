// The shipped packs in every language: nothing missing, no figure changed, no "do not" lost.
import { describe, expect, test } from 'vitest'
import type { Pack, PackWords } from '../../src/engine/pack/pack.ts'
import { missingWords, namedSources } from '../../src/engine/pack/read-words.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { german } from '../../src/words/de/german.ts'
import { spanish } from '../../src/words/es/spanish.ts'
import { figuresIn, foreignQuotes, negates } from '../discord/compare-words.ts'

const packs = (await loadPacks(shippedRules, { cases: false })).packs.map(loaded => loaded.pack)
const all = packs.flatMap(pack => ['de', 'es'].map(language => [pack.id, language, pack] as const))

/** Every text of a pack with its translation, by where it stands. */
function pairs(pack: Pack, words: PackWords): (readonly [string, string, string])[] {
  const both = (at: string, own: string | undefined, told: string | undefined) =>
    own === undefined ? [] : [[at, own, told ?? ''] as const]
  return [
    ...pack.questions.flatMap(question => {
      const told = words.questions[question.id]
      const options = question.answer.kind === 'options' ? question.answer.options : []
      return [
        ...both(`${question.id}.ask`, question.ask, told?.ask),
        ...both(`${question.id}.look`, question.look, told?.look),
        ...options.flatMap(option => [
          ...both(`${question.id}.${option.id}`, option.label, told?.options[option.id]?.label),
          ...both(`${question.id}.${option.id}.hint`, option.hint, told?.options[option.id]?.hint),
        ]),
      ]
    }),
    ...pack.rules.flatMap(rule => both(rule.id, rule.says, words.rules[rule.id])),
    ...pack.families.flatMap(family => both(family.id, family.about, words.families[family.id])),
  ]
}

describe.each(all)('%s in %s', (_, language, pack) => {
  const words = pack.words[language] as PackWords
  const told = pairs(pack, words)

  test('quotes in English with “ ” and ’, as every other screen does', () => {
    expect(told.filter(([, own]) => /"|\p{L}'\p{L}/u.test(own))).toEqual([])
  })

  test('lacks nothing', () => {
    expect(missingWords(pack, words)).toEqual([])
  })

  test('has every figure of the original, and no other', () => {
    const differ = told.filter(([, own, said]) => figuresIn('en', own).join() !== figuresIn(language, said).join())
    expect(differ).toEqual([])
  })

  test('names each published source that a reason can name, with no figure that the source does not have', () => {
    for (const id of namedSources(pack)) {
      const own = figuresIn('en', pack.sources[id]?.text ?? '')
      expect(own, id).toEqual(expect.arrayContaining(figuresIn(language, words.sources[id] ?? '')))
      expect(words.sources[id], id).not.toMatch(foreignQuotes[language] as RegExp)
    }
  })

  test('says no, never and nothing where the original does', () => {
    expect(told.filter(([, own, said]) => negates('en', own) && !negates(language, said))).toEqual([])
  })

  test('calls to get away, to call for help, and not to use it where the original does', () => {
    const commands: readonly (readonly [RegExp, RegExp, RegExp])[] = [
      [/call your emergency number/i, /wähl den Notruf/, /llama al número de emergencias/],
      [/only if (that is safe|it is safe)/i, /nur wenn es gefahrlos/i, /solo si (no hay peligro|puedes hacerlo sin)/i],
      [/do not use (it|this cell)/i, /benutze .*nicht/i, /no (la|lo) uses|no uses/i],
      [
        /do not use (it|this cell)?.* or charge/i,
        /benutze und lade .*nicht/i,
        /(no la uses|no uses) ni (la )?cargues/i,
      ],
      [/never recharge/i, /lade sie nie wieder/, /no la recargues nunca/i],
    ]
    for (const [at, own, said] of told)
      for (const [english, inGerman, inSpanish] of commands)
        if (english.test(own)) expect(said, at).toMatch(language === 'de' ? inGerman : inSpanish)
  })

  test('names the button for not knowing as it stands on the button', () => {
    const unsure = (language === 'de' ? german : spanish)['check.unsure']
    for (const [at, own, said] of told)
      if (/say you can't tell|answer “Can’t tell”/.test(own)) expect(said, at).toContain(unsure)
  })

  test('is translated, and quotes as its language does', () => {
    const same = told.filter(([, own, said]) => own === said && /[a-z]{4,}/.test(own))
    expect(same).toEqual([])
    for (const [at, , said] of told) expect(said, at).not.toMatch(foreignQuotes[language] as RegExp)
  })
})
