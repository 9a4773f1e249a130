// What the sureness of an answer rests on, sign by sign, on a few invented entries; and which of them a question finds first.
import { describe, expect, test } from 'vitest'
import { openBook } from '../../src/answers/book.ts'
import { confidenceOf, isSure, type Signs } from '../../src/answers/confidence.ts'
import { namesStranger, signsOfDanger as signsIn, speaksOfOtherThings } from '../../src/answers/danger.ts'
import { wordsIn } from '../../src/answers/known-words.ts'
import { openAnswerSearch } from '../../src/answers/search.ts'
import { spokenIn } from '../../src/answers/spoken-in.ts'
import { madeEntry } from './made-entry.ts'

const shelf = madeEntry(
  'shelf',
  'Keeping cells on a shelf',
  ['store cells over winter', 'garage too cold'],
  'Dry and cool.',
)
const drawer = madeEntry(
  'drawer',
  'Keeping cells in a drawer',
  ['drawer full of loose cells'],
  'Never store loose cells.',
)
const post = madeEntry('post', 'Sending a parcel', ['ship by courier', 'post them abroad'], 'Ask the courier first.')
const search = openAnswerSearch([shelf, drawer, post])
/** Signs of danger by the words alone, as if the entries named nothing. */
const signsOfDanger = (question: string, language: 'en') => signsIn(question, language, () => false)
const found = (question: string, among = search) => among.find(question, 'en')
const signsOf = (question: string, id: string, among = search): Signs => {
  const one = found(question, among).find(each => each.entry.id === id)
  if (!one) throw new Error(`${id} is not found by “${question}”`)
  return one.signs
}

describe('the order', () => {
  test('a title or a keyword counts before the same words in a body', () => {
    expect(found('loose')[0]?.entry.id).toBe('drawer')
    const quiet = madeEntry('quiet', 'Something else', ['another matter'], 'courier courier courier courier')
    expect(found('courier', openAnswerSearch([quiet, post]))[0]?.entry.id).toBe('post')
  })
  test('a whole phrasing counts before an entry that shares its words here and there', () => {
    const scattered = madeEntry(
      'scattered',
      'Cells store winter',
      ['cells cells cells', 'winter winter'],
      'store store cells',
    )
    for (const entries of [
      [shelf, scattered],
      [scattered, shelf],
    ])
      expect(found('store cells over winter', openAnswerSearch(entries))[0]?.entry.id).toBe('shelf')
  })
  test('never more than eight, the best of them all', () => {
    const many = Array.from({ length: 30 }, (_, i) =>
      madeEntry(`e${i}`, `Parcel ${i}`, ['parcel'], 'parcel '.repeat(i)),
    )
    const named = madeEntry('named', 'Parcel by courier', ['parcel courier'])
    const all = found('parcel courier', openAnswerSearch([...many, named]))
    expect(all).toHaveLength(8)
    expect(all[0]?.entry.id).toBe('named')
  })
  test('only those that may count, among which the best are taken', () => {
    const only = search.find('store cells over winter', 'en', one => one.id !== 'shelf')
    expect(only.map(one => one.entry.id)).not.toContain('shelf')
    expect(only[0]?.entry.id).toBe('drawer')
  })
  test('what stands after four hundred characters is not read', () => {
    expect(found(`${' '.repeat(400)}courier`)).toEqual([])
    expect(found(`${' '.repeat(393)}courier`)[0]?.entry.id).toBe('post')
  })
})

describe('a sign', () => {
  test('common: a quarter for each term of the question in title and keywords, four at most, none for the body', () => {
    expect(signsOf('courier', 'post').common).toBe(0.25)
    expect(signsOf('ship courier', 'post').common).toBe(0.5)
    expect(signsOf('ship courier abroad parcel sending post', 'post').common).toBe(1)
    expect(signsOf('dry', 'shelf').common).toBe(0)
  })
  test('close and exact: one of its own phrasings of two terms or more, in any order, and no other’s', () => {
    expect(signsOf('ship by courier', 'post')).toMatchObject({ exact: 1 })
    expect(signsOf('ship by courier', 'post').close).toBeCloseTo(1, 9)
    expect(signsOf('courier ship', 'post').exact).toBe(1)
    expect(signsOf('ship by courier tomorrow', 'post').exact).toBe(0)
    expect(signsOf('ship by courier tomorrow', 'post').close).toBeLessThan(1)
    const single = madeEntry('single', 'Something', ['courier'])
    expect(signsOf('courier', 'single', openAnswerSearch([single, shelf]))).toMatchObject({ exact: 0 })
    const twin = madeEntry('twin', 'Something', ['ship by courier'])
    expect(signsOf('ship by courier', 'twin', openAnswerSearch([post, twin])).exact).toBe(0)
  })
  test('agreed: all three rankings put it first, or none does', () => {
    expect(signsOf('ship by courier', 'post').agreed).toBe(1)
    expect(signsOf('store cells over winter', 'drawer').agreed).toBe(0)
  })
  test('lead: by how much Bayes puts it before the next, and nothing for who comes after', () => {
    expect(signsOf('store cells over winter', 'shelf').lead).toBeGreaterThan(0)
    expect(signsOf('store cells over winter', 'drawer').lead).toBe(0)
  })
  test('astray: what nobody knows anything of, unless a word shows that it is about cells', () => {
    expect(signsOf('courier', 'post').astray).toBe(0)
    expect(signsOf('courier zeppelin', 'post').astray).toBeGreaterThan(0.4)
    expect(signsOf('courier zeppelin quixotic', 'post').astray).toBeGreaterThan(
      signsOf('courier zeppelin', 'post').astray,
    )
    expect(signsOf('courier zeppelin cells', 'post').astray).toBe(0)
  })
  test('of more is surer, and of what is about other things less sure', () => {
    const none: Signs = { common: 0, close: 0, exact: 0, agreed: 0, astray: 0, lead: 0, elsewhere: 0 }
    const base = confidenceOf(none)
    for (const sign of ['common', 'close', 'exact', 'agreed', 'lead'] as const)
      expect(confidenceOf({ ...none, [sign]: 1 }), sign).toBeGreaterThan(base)
    for (const sign of ['astray', 'elsewhere'] as const)
      expect(confidenceOf({ ...none, [sign]: 1 }), sign).toBeLessThan(base)
    // One of an entry's own phrasings, typed as it stands, finds it.
    const own = { ...none, common: 0.5, close: 1, exact: 1, agreed: 1 }
    expect(isSure({ confidence: confidenceOf(own), signs: own }, 'line')).toBe(true)
  })
  test('one word in common is not enough, but for a near-exact phrasing; two are', () => {
    const signs = { ...signsOf('courier', 'post'), common: 0.25 }
    expect(isSure({ confidence: 0.99, signs: { ...signs, close: 0.89 } }, 'line')).toBe(false)
    expect(isSure({ confidence: 0.99, signs: { ...signs, close: 0.9 } }, 'line')).toBe(true)
    expect(isSure({ confidence: 0.99, signs: { ...signs, common: 0.5, close: 0 } }, 'line')).toBe(true)
  })
  test.each([
    ['line', 0.86],
    ['full', 0.86],
    ['emergency', 0.5],
  ] as const)('the line of %s is %d, and belongs to the answer', (caution, line) => {
    const signs = { ...signsOf('ship by courier', 'post'), common: 1 }
    expect(isSure({ confidence: line, signs }, caution)).toBe(true)
    expect(isSure({ confidence: line - 1e-9, signs }, caution)).toBe(false)
  })
})

describe('which language a question is in', () => {
  const knows = (en: number, de: number, es: number) => (language: 'en' | 'de' | 'es') => ({ en, de, es })[language]
  test('the one that knows most of its words, small ones counted whole', () => {
    expect(spokenIn('xx yy zz', ['en'], knows(0, 1, 0))).toBe('de')
    expect(spokenIn('xx yy zz', ['en'], knows(0, 0, 1))).toBe('es')
    expect(spokenIn('was ist das xx', ['es'], knows(0.5, 0, 0.5))).toBe('de')
  })
  test('what its writer reads, as long as no other knows more than half a word more', () => {
    expect(spokenIn('xx yy', ['de'], knows(0.24, 0, 0))).toBe('de')
    expect(spokenIn('xx yy', ['de'], knows(0.26, 0, 0))).toBe('en')
    expect(spokenIn('', ['es', 'de'], knows(0, 0, 0))).toBe('es')
    expect(spokenIn('', [], knows(0, 0, 0))).toBe('en')
  })
})

describe('getting away', () => {
  const fire = madeEntry('fire', 'It is hot or smoking', ['cell smokes', 'it hisses'], 'Get away.', 'emergency')
  const book = openBook([shelf, drawer, post, fire])
  test('is the answer where a cell is named and it comes first, though a single word is in common', () => {
    const eye = madeEntry(
      'eye',
      'Something got into an eye',
      ['splash in the face', 'rinse with water'],
      '',
      'emergency',
    )
    const hurt = openBook([post, eye])
    expect(hurt.lookUp('battery splash yesterday', ['en']).answer?.id).toBe('eye')
    expect(hurt.lookUp('splash yesterday evening garden', ['en']).answer).toBeUndefined()
    expect(hurt.lookUp('splash battery courier', ['en']).answer).toBeUndefined()
    const calm = openBook([post, { ...eye, caution: 'line' }])
    expect(calm.lookUp('battery splash yesterday', ['en']).answer).toBeUndefined()
  })
  test('rests on the whole words that are signs of it', () => {
    expect(signsOfDanger('help it smokes', 'en')).toEqual(['smokes'])
    expect(signsOfDanger('dark smoke, hissing cell', 'en')).toEqual(['smoke', 'hissing'])
    expect(signsOfDanger('smoking', 'en')).toEqual(['smoking'])
    // The sign itself may be what the sentence is about; anything else that smokes is none.
    expect(signsOfDanger('the smoke is everywhere', 'en')).toEqual(['smoke'])
    expect(signsOfDanger('the hissing is getting louder', 'en')).toEqual(['hissing'])
    expect(signsOfDanger('my charger smokes', 'en')).toEqual(['smokes'])
    for (const other of ['the toaster smokes', 'my kettle hisses']) expect(signsOfDanger(other, 'en')).toEqual([])
  })
  test('is told by what happens to a thing that has a cell in it, slips and all, and is not by the same of other things', () => {
    for (const [sign, ...things] of [
      ['is spitting', 'speaker', 'powerbank', 'cell'],
      ['is warped', 'phone', 'flashlght', 'battery'],
      ['goes tsssss', 'charger', 'drone'],
    ])
      for (const thing of things)
        expect(signsOfDanger(`the ${thing} ${sign}`, 'en'), `${thing} ${sign}`).not.toEqual([])
    for (const other of ['the kitten is spitting', 'the record is warped', 'the bicycle pump goes tsssss'])
      expect(signsOfDanger(other, 'en'), other).toEqual([])
    expect(signsIn('der handydeckel hebt sich', 'de', () => false)).not.toEqual([])
    expect(signsIn('el aparatito humea', 'es', () => false)).not.toEqual([])
  })
  test('is not told by a thing that nobody here knows, unless an entry names it or it is where it happens', () => {
    const signs = (question: string, known = '') => signsIn(question, 'en', word => word === known)
    expect(signs('smoke comes out of the zeppelin')).toEqual([])
    expect(signs('smoke comes out of the zeppelin', 'zeppelin')).not.toEqual([])
    expect(signs('smoke comes out of the drawer')).not.toEqual([])
    expect(signs('smoke comes out of the zeppelin and the cell is hot')).not.toEqual([])
    // Without an article it may be any word.
    expect(signs('smoke comes out quixotically')).not.toEqual([])
  })
  test('is the answer to any sign of danger, however it is put', () => {
    expect(book.lookUp('my cell is smoking in the drawer', ['en']).answer?.id).toBe('fire')
    expect(openBook([shelf, post]).lookUp('my cell is smoking on the shelf', ['en']).answer?.id).toBe('shelf')
  })
})

describe('a thing that nobody here knows', () => {
  const names = (word: string) => ['shelf', 'courier'].includes(word)
  test('stands after an article or the like, and no cell is named', () => {
    for (const question of ['does the zeppelin ship by courier', 'put it on a zeppelin'])
      expect(namesStranger(question, 'en', names), question).toBe(true)
    for (const question of [
      'put it on the shelf',
      'quixotic shelf',
      'the zeppelin has a cell',
      'the torch is on a shelf',
    ])
      expect(namesStranger(question, 'en', names), question).toBe(false)
    expect(namesStranger('la pongo ahí', 'es', names)).toBe(false)
    expect(namesStranger('la zarzuela', 'es', names)).toBe(true)
  })
  test('of every day is another matter, wherever it stands, unless an entry names it', () => {
    expect(speaksOfOtherThings('grade b diploma', 'en', () => false)).toBe(true)
    expect(speaksOfOtherThings('grade b diploma', 'en', word => word === 'diploma')).toBe(false)
    expect(speaksOfOtherThings('bratpfanne sauber machen', 'de', () => false)).toBe(true)
  })
  test('leaves only what is very sure as the answer', () => {
    const book = openBook([shelf, drawer, post])
    const asked = (question: string) => book.lookUp(question, ['en'])
    // As sure as each other; only one has a thing after an article.
    expect(asked('ship by courier zeppelin').answer?.id).toBe('post')
    expect(asked('ship by courier in a zeppelin').answer).toBeUndefined()
    expect(asked('ship by courier in a zeppelin').near[0]?.id).toBe('post')
    expect(asked('sending parcel by courier in a zeppelin').answer?.id).toBe('post')
  })
})

describe('the words of a language', () => {
  const words = wordsIn([shelf, post], 'en')
  test('are those of titles and keywords and those for cells; small ones are left out', () => {
    expect(words.share('ship my parcel')).toBe(1)
    expect(words.share('ship my zeppelin')).toBe(0.5)
    expect(words.share('the battery')).toBe(1)
    expect(words.share('the my of')).toBe(0)
    // A body names nothing.
    expect(words.share('first')).toBe(0)
  })
  test('are known in one and in many', () => {
    for (const word of ['shelf', 'parcels', 'couriers', 'cell', 'cells']) expect(words.names(word), word).toBe(true)
    expect(words.names('zeppelin')).toBe(false)
  })
  test('of a language that no entry is in are those for cells alone', () => {
    expect(wordsIn([shelf, post], 'de').share('courier')).toBe(0)
    expect(wordsIn([shelf, post], 'de').share('akku')).toBe(1)
  })
})
