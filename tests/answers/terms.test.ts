// What a text is searched by: words as they are typed in a hurry, one for all that mean the same, parts of long ones, kinds of figures.
import { describe, expect, test } from 'vitest'
import { distinctTerms, nearest, share, toPhrasing, weigh } from '../../src/answers/closeness.ts'
import { bare, openTerms, wordsOf } from '../../src/answers/terms.ts'
import { vocabularies } from '../../src/answers/words/vocabularies.ts'
import type { Vocabulary } from '../../src/answers/words/vocabulary.ts'

const vocabulary: Vocabulary = {
  ...vocabularies.en,
  small: 'the of',
  same: ['cell battery accu', 'ring battery'],
  together: [[/rest ?voltage/g, ' restvolt ']],
  compounds: true,
  stem: word => word.replace(/s$/, ''),
}
const texts = ['The courier charges cells', 'Kleber zellen pole arbeit wickel']
const opened = () => openTerms(vocabulary, texts)
const asked = (text: string) =>
  opened()
    .ofQuery(text)
    .map(({ term, guessed }) => (guessed ? `${term}?` : term))

test('lower case, no accents and no apostrophes; what is drawn out is shortened', () => {
  expect(bare('Größe ÑANDÚ')).toBe('grosse nandu')
  expect(bare("don't it’s 'quoted'")).toBe("dont its 'quoted'")
  expect(bare('hisssss fireeee aa')).toBe('hiss firee aa')
  expect(wordsOf('a-b, c3 … d')).toEqual(['a', 'b', 'c3', 'd'])
  expect(wordsOf('…')).toEqual([])
})

describe('terms', () => {
  test('are the words without small ones and endings, those that mean the same as one', () => {
    expect(opened().ofText('The battery of couriers, accus')).toEqual(['cell', 'courier', 'cell'])
    expect(opened().ofWord('batterys')).toBe('cell')
    expect(opened().ofWord('unheard')).toBe('unheard')
    expect(opened().ofText('')).toEqual([])
  })
  test('words that mean something only together are one', () => {
    expect(opened().ofText('rest voltage, restvoltage')).toEqual(['restvolt', 'restvolt'])
  })
  test('a long word of two that are known is its parts as well, with what joins them', () => {
    expect(opened().ofText('zellenkleber')).toEqual(['zellenkleber', 'zellen', 'kleber'])
    expect(opened().ofText('arbeitswickel')).toEqual(['arbeitswickel', 'arbeit', 'wickel'])
    expect(opened().ofText('kleberzeppelin')).toEqual(['kleberzeppelin'])
    expect(opened().ofText('polepole')).toEqual(['polepole', 'pole', 'pole'])
    const whole = openTerms({ ...vocabulary, compounds: false }, texts)
    expect(whole.ofText('zellenkleber')).toEqual(['zellenkleber'])
    // Of what is typed, the parts stand for a word that nobody has written.
    expect(asked('zellenkleber')).toEqual(['zellen', 'kleber'])
    expect(openTerms(vocabulary, [...texts, 'zellenkleber']).ofQuery('zellenkleber')).toEqual(
      ['zellenkleber', 'zellen', 'kleber'].map(term => ({ term, guessed: false })),
    )
  })
  test('a word that nobody knows is taken for a known one that is a slip away, of long ones two', () => {
    expect(asked('courier')).toEqual(['courier'])
    expect(asked('curier')).toEqual(['courier?'])
    expect(asked('kourrier')).toEqual(['courier?'])
    expect(asked('kurrier')).toEqual(['kurrier'])
    expect(asked('curieer')).toEqual(['curieer'])
    expect(asked('klebr')).toEqual(['kleber?'])
    expect([asked('batery'), asked('accuo')]).toEqual([['cell?'], ['cell?']])
    expect(asked('accus')).toEqual(['cell'])
    // Short words and figures are as they stand.
    expect(asked('pule')).toEqual(['pule'])
    expect(asked('cour1er')).toEqual(['cour1er'])
    expect(asked('charges')).toEqual(['charge'])
  })
})

test.each([
  ['2500 mAh', 'mah'],
  ['5900mah', 'mah'],
  ['9900 mah', 'mah hugecapacity'],
  ['2.4 V', 'volt emptyvolt'],
  ['2,5 volts', 'volt'],
  ['4.2v', 'volt'],
  ['4.35 v', 'volt overvolt'],
  ['4.6 v', 'volt'],
  ['20 A', 'ampere'],
  ['45 g', 'gram'],
  ['18 mm', 'millimetre'],
  ['12 mohm', 'milliohm'],
  ['60 °C', 'degree'],
  ['3.62', 'volt'],
  ['18650', '18650'],
  ['2024', 'yearfigure'],
  ['1989', 'mah'],
  ['2031', 'mah'],
  ['5900', 'mah'],
  ['5901', 'mah hugecapacity'],
])('the figure %s is %s', (typed, kind) => {
  expect(openTerms({ ...vocabulary, small: '' }, []).ofText(typed)).toEqual(kind.split(' '))
})

describe('how close a question comes', () => {
  const tells = (term: string) => ({ a: 1, b: 2, c: 4 })[term] ?? 8
  const of = (...some: string[]) =>
    distinctTerms(some.map(term => ({ term: term.replace('?', ''), guessed: term.endsWith('?') })))
  test('each term counts once, whole where it was typed so, and less where it was guessed', () => {
    expect(of('a', 'b?', 'a?', 'b?')).toEqual([
      { term: 'a', counts: 1 },
      { term: 'b', counts: 0.8 },
    ])
    expect(of('a?', 'a')).toEqual([{ term: 'a', counts: 1 }])
  })
  test('weighed by what each tells, or by what some of them tell', () => {
    expect(weigh(of('a', 'b?', 'c'), tells)).toBe(7)
    expect(weigh(of('a', 'b?', 'c'), tells, new Set(['b', 'c']))).toBeCloseTo(5.6, 12)
    expect(share(of('a', 'b?', 'c'), new Set(['b', 'c']), tells)).toBeCloseTo(0.8, 12)
    expect(share([], new Set(['a']), tells)).toBe(0)
    expect(toPhrasing(['a', 'b', 'a'], tells)).toEqual({ terms: new Set(['a', 'b']), tells: 3 })
  })
  test('the nearest phrasing shares most of both, the first of two alike', () => {
    const phrasings = [['c', 'z'], ['a', 'b'], ['b', 'a', 'a'], ['a']].map(one => toPhrasing(one, tells))
    expect(nearest(of('a', 'b'), phrasings, tells)).toEqual({ close: 1, shared: 2 })
    expect(nearest(of('a', 'c'), phrasings, tells)).toEqual({ close: 8 / 17, shared: 1 })
    expect(nearest(of('y'), phrasings, tells)).toEqual({ close: 0, shared: 0 })
    expect(nearest(of('a'), [toPhrasing([], tells)], tells)).toEqual({ close: 0, shared: 0 })
    expect(nearest(of('a', 'b'), [], tells)).toEqual({ close: 0, shared: 0 })
  })
})
