// The pack that is made of facts: what is enough, what is asked first, its cases, and its words in every language.
import { describe, expect, test } from 'vitest'
import { derive, leastOwnEnough } from '../../src/families/derive/derive.ts'
import {
  aboutSentence,
  againstSentence,
  featureName,
  labels,
  optionLabel,
  remarkSentence,
} from '../../src/families/derive/sentences.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { settleFacts, toldIn } from '../../src/families/facts/settle-facts.ts'
import { against, bare, id, traits } from './bare-family.ts'
import { anyCell } from './base.ts'

describe('the pack', () => {
  const whole: Facts = {
    ...bare,
    traits: traits({
      legs: { made: ['three'], against: [against(['four'])] },
      'code-place': { made: ['can'], against: [against(['wrap'], { tells: 'weak' })] },
    }),
    figures: { capacity: { typical: 2500 } },
  }
  const packOf = (facts: Facts, options: Parameters<typeof derive>[2] = {}) => {
    const derived = derive(facts, anyCell, options)
    if (!derived.ok) throw new Error(JSON.stringify(derived.problems))
    return derived.pack
  }
  test('is of the version and digest that it was asked for; of the first, where none was said', () => {
    expect(packOf(whole, { number: 7, digest: 'sha256:x' })).toMatchObject({
      ...{ id: 'f-tried01', version: '7.0.0', digest: 'sha256:x', written: anyCell.written, uses: ['any-cell'] },
      title: 'Tried',
    })
    expect(packOf(whole)).toMatchObject({ version: '1.0.0', digest: '' })
  })
  test('settles what is settled by what the cell is sold as', () => {
    expect(packOf(whole).families[0]?.given).toEqual({ format: '18650' })
    const iron: Facts = { ...whole, identity: { ...whole.identity, format: '26650', chemistry: 'iron-phosphate' } }
    expect(packOf(iron).families[0]?.given).toEqual({ format: '26650', chemistry: 'iron-phosphate' })
  })
  test('has enough with its own looks and what every cell is held against, and not with less than three of its own', () => {
    const [family] = packOf(whole).families
    expect(leastOwnEnough).toBe(3)
    expect(family?.enough).toEqual([
      ...[id('code-place-1'), id('legs-1'), id('capacity-above')].sort(
        (a, b) =>
          packOf(whole).rules.findIndex(one => one.id === a) - packOf(whole).rules.findIndex(one => one.id === b),
      ),
      ...['torn-wrap', 'torn-ring', 'missing-ring', 'weld-scars', 'second-wrap-below', 'mass-far-low-18650'].filter(
        one => anyCell.rules.some(rule => rule.id === one),
      ),
    ])
    expect(family).not.toHaveProperty('openEnded')
    expect(family).not.toHaveProperty('first')
    expect(family).not.toHaveProperty('notWhile')
    expect(packOf({ ...whole, figures: {} }).families[0]?.openEnded).toBe(true)
    expect(packOf(whole, { openEnded: true }).families[0]?.openEnded).toBe(true)
    const [more] = anyCell.rules.filter(one => one.kind === 'must' && !family?.enough.includes(one.id))
    const also = packOf({ ...whole, alsoEnough: [more?.id ?? ''] }).families[0]?.enough
    expect(also).toEqual([...(family?.enough ?? []), more?.id])
  })
  test('asks first what it was sold as where an exception may hold, and is open while one does', () => {
    const excepted: Facts = {
      ...whole,
      traits: traits({ legs: { made: ['three'], against: [against(['four'], { unless: 'open-rewrap' })] } }),
    }
    expect(packOf(excepted).families[0]).toMatchObject({ first: ['sold-as'], notWhile: [id('legs-1-x')] })
    const unlooked = {
      ...excepted,
      traits: traits({ legs: { against: [against(['four'], { unless: 'open-rewrap' })] } }),
    }
    expect(packOf(unlooked).families[0]).toMatchObject({ first: ['sold-as'] })
    expect(packOf(unlooked).families[0]).not.toHaveProperty('notWhile')
  })
  test('says the same in German and Spanish, and in letters of all languages what figures say', () => {
    const pack = packOf(whole)
    const above = id('capacity-above')
    expect(pack.words['de']?.rules[above]).toMatch(/^Sie wird mit 2500 mAh verkauft/)
    expect(pack.words['es']?.rules[above]).toMatch(/^Se vende con 2500 mAh/)
    expect(pack.words['de']?.families['f-tried01']).toBe(aboutSentence(anyCell, settleFacts(whole)).de)
    expect(pack.letters?.['en']?.rules).toEqual({ [above]: 'This model is sold with 2500 mAh.' })
    expect(Object.keys(pack.letters ?? {})).toEqual(['en', 'de', 'es'])
    expect(pack.families[0]?.about).toBe(aboutSentence(anyCell, settleFacts(whole)).en)
  })
  test('is none of facts with a problem, or of nothing to hold against', () => {
    expect(derive(bare, anyCell)).toEqual({ ok: false, problems: [{ code: 'nothing-to-hold-against' }], dropped: [] })
    const wrong = { ...whole, figures: { capacity: { typical: 2400, least: 2450 } } }
    expect(derive(wrong, anyCell)).toMatchObject({ ok: false, problems: [{ code: 'least-above-typical' }] })
  })
  test('cuts what was written to what a rule may say, at a whole letter', () => {
    const long = (count: number) => {
      const facts = {
        ...whole,
        traits: traits({ legs: { against: [against(['four'], { says: 'x'.repeat(count) })] } }),
      }
      return packOf(facts).rules.find(one => one.id === id('legs-1'))?.says
    }
    expect(long(400)).toBe('x'.repeat(400))
    expect(long(401)).toBe(`${'x'.repeat(399)}…`)
  })
  test('has a case of each answer on which a rule fires, one where it is quiet, and one where nobody could tell', () => {
    const facts: Facts = {
      ...whole,
      traits: traits({
        legs: { made: ['three'], against: [against(['four', 'five'], { tells: 'strong' })] },
        'code-place': { made: ['can'], against: [against(['wrap'])] },
      }),
      figures: { mass: { middle: 45, cells: 1, from: 'sheet' } },
    }
    const derived = derive(facts, anyCell)
    const cases = derived.ok ? derived.cases : []
    const of = (name: string) => cases.filter(one => one.case.startsWith(`${id(name)} `))
    expect(of('legs-1')).toEqual([
      {
        case: `${id('legs-1')} fires`,
        family: 'f-tried01',
        answers: { legs: 'five' },
        rules: { [id('legs-1')]: 'fires' },
        verdict: 'doubtful',
      },
      {
        case: `${id('legs-1')} fires (2)`,
        family: 'f-tried01',
        answers: { legs: 'four' },
        rules: { [id('legs-1')]: 'fires' },
        verdict: 'doubtful',
      },
      {
        case: `${id('legs-1')} stays quiet`,
        family: 'f-tried01',
        answers: { legs: 'three' },
        rules: { [id('legs-1')]: 'quiet' },
      },
      {
        case: `${id('legs-1')} stays unknown`,
        family: 'f-tried01',
        answers: { legs: 'cant-tell' },
        rules: { [id('legs-1')]: 'unknown' },
      },
    ])
    expect(of('code-place-1')[0]?.verdict).toBe('ruled-out')
    expect(of('mass-off')[0]).not.toHaveProperty('verdict')
    expect(of('mass-x')[0]).not.toHaveProperty('verdict')
    expect(of('mass-far-off')[0]?.verdict).toBe('doubtful')
  })
})

describe('words', () => {
  test('a language that has none takes the English ones, or whatever was written', () => {
    expect(['en', 'de', 'es', 'fr'].map(one => toldIn('So.', one))).toEqual(['So.', 'So.', 'So.', 'So.'])
    expect(['en', 'de', 'es', 'fr'].map(one => toldIn({ en: 'E', de: 'D', es: 'S' }, one))).toEqual([
      'E',
      'D',
      'S',
      'E',
    ])
    expect(['de', 'es'].map(one => toldIn({ en: 'E' }, one))).toEqual(['E', 'E'])
  })
  test('name a feature shortly, or by its question without its marks', () => {
    expect(['en', 'de', 'es', 'fr'].map(one => featureName(anyCell, 'legs', one))).toEqual([
      'Legs',
      'Stege',
      'Patas',
      'Legs',
    ])
    const mass = anyCell.questions.find(one => one.id === 'mass')
    expect(featureName(anyCell, 'mass', 'en')).toBe(mass?.ask.replace(/\?$/, '').slice(0, 60))
    expect(featureName(anyCell, 'mass', 'es')).not.toMatch(/[¿?]/)
    expect(featureName(anyCell, 'no-such-thing', 'en')).toBe('no-such-thing')
    const asks = { ...anyCell, words: {}, questions: [{ ...mass!, ask: `¿${'x'.repeat(70)}?` }] }
    expect(featureName(asks, 'mass', 'de')).toBe('x'.repeat(60))
  })
  test('name an option by its label, in the reader’s language where there is one', () => {
    const legs = anyCell.questions.find(one => one.id === 'legs')?.answer
    const own = legs?.kind === 'options' ? legs.options[0]?.label : undefined
    expect(optionLabel(anyCell, 'legs', 'three', 'en')).toBe(own)
    expect(optionLabel(anyCell, 'legs', 'three', 'de')).toBe(
      anyCell.words['de']?.questions['legs']?.options['three']?.label,
    )
    expect(optionLabel(anyCell, 'legs', 'eleven', 'en')).toBe('eleven')
    expect(optionLabel(anyCell, 'mass', 'eleven', 'en')).toBe('eleven')
    expect(optionLabel(anyCell, 'wings', 'two', 'en')).toBe('two')
  })
  const label = (option: string, language: string) => optionLabel(anyCell, 'legs', option, language)
  test('quote each as its language does', () => {
    expect(labels(anyCell, 'legs', ['three', 'four'], 'en')).toBe(
      `“${label('three', 'en')}” or “${label('four', 'en')}”`,
    )
    expect(labels(anyCell, 'legs', ['three', 'four'], 'de')).toBe(
      `„${label('three', 'de')}“ oder „${label('four', 'de')}“`,
    )
    expect(labels(anyCell, 'legs', ['three', 'four'], 'es')).toBe(
      `«${label('three', 'es')}» o «${label('four', 'es')}»`,
    )
  })
  test('say how it is made where that is known, and else what speaks against it, three of it at most', () => {
    const three = (language: 'en' | 'de' | 'es') => labels(anyCell, 'legs', ['three'], language)
    expect(againstSentence(anyCell, 'legs', ['three'], ['four']).en).toBe(
      `Legs: this model is made with ${three('en')}, as this server describes it.`,
    )
    expect(againstSentence(anyCell, 'legs', ['three'], ['four']).de).toBe(
      `Stege: Dieses Modell ist mit ${three('de')} gemacht, so wie dieser Server es beschreibt.`,
    )
    expect(againstSentence(anyCell, 'legs', ['three'], ['four']).es).toBe(
      `Patas: este modelo se hace con ${three('es')}, según lo describe este servidor.`,
    )
    const all = ['three', 'four', 'five', 'other']
    const some = againstSentence(anyCell, 'legs', [], all)
    expect(some).toEqual({
      en: `Legs: ${labels(anyCell, 'legs', all.slice(0, 3), 'en')} speaks against it, as this server describes the model.`,
      de: `Stege: ${labels(anyCell, 'legs', all.slice(0, 3), 'de')} spricht dagegen, so wie dieser Server das Modell beschreibt.`,
      es: `Patas: ${labels(anyCell, 'legs', all.slice(0, 3), 'es')} habla en contra, según describe este servidor el modelo.`,
    })
    expect(remarkSentence(anyCell, 'legs', [...all, 'six'])).toEqual({
      en: `Legs: ${labels(anyCell, 'legs', all, 'en')} tells nothing about this model.`,
      de: `Stege: ${labels(anyCell, 'legs', all, 'de')} sagt bei diesem Modell nichts aus.`,
      es: `Patas: ${labels(anyCell, 'legs', all, 'es')} no dice nada en este modelo.`,
    })
  })
  test('say in one line what is known of how it is made', () => {
    expect(aboutSentence(anyCell, bare)).toEqual({
      en: 'Nothing is known of how it is made.',
      de: 'Wie sie gemacht ist, ist nicht bekannt.',
      es: 'No se sabe cómo está hecha.',
    })
    const facts = {
      ...bare,
      traits: traits({ legs: { made: ['three', 'four'] }, print: {}, 'code-place': { made: ['can'] } }),
    }
    const code = optionLabel(anyCell, 'code-place', 'can', 'de')
    expect(aboutSentence(anyCell, facts).de).toBe(
      `Stege: ${label('three', 'de')} oder ${label('four', 'de')} · Quadratischer Code: ${code}.`,
    )
    const many = {
      ...bare,
      traits: traits(Object.fromEntries(Array.from({ length: 20 }, (_, i) => [`f${i}`, { made: ['x'.repeat(20)] }]))),
    }
    expect(aboutSentence(anyCell, many).en).toHaveLength(300)
    expect(aboutSentence(anyCell, many).en.endsWith('…')).toBe(true)
  })
})
