// Files from strangers: what is taken in, and what each hostile one is told.
import { expect, test } from 'vitest'
import { nameProblems, readsLikeLink, skeletonOf, tidyName } from '../../src/families/names.ts'
import { readFamilyFile, writeFamilyFile } from '../../src/packs/read-family-file.ts'
import { inventedFamilies } from './known-families.ts'

const heron = inventedFamilies['brindlewick-heron']
if (!heron) throw new Error('the heron is gone')
const good = writeFamilyFile(heron)
const refusal = (text: string): string => {
  const read = readFamilyFile(text, 'f-mine01')
  if (read.ok) return 'taken in'
  if ('tooLarge' in read) return 'too large'
  if ('yaml' in read) return `yaml: ${read.yaml}`
  return read.problems.map(one => one.code).join(' ')
}

test('what is written is taken in under an id of its own, byte for byte the same when it goes out again', () => {
  const read = readFamilyFile(good, 'f-mine01')
  if (!read.ok) throw new Error(JSON.stringify(read))
  expect(read.facts.identity).toMatchObject({ id: 'f-mine01', name: 'Brindlewick Heron' })
  const again = readFamilyFile(writeFamilyFile(read.facts), 'f-mine01')
  expect(again.ok && writeFamilyFile(again.facts)).toBe(writeFamilyFile(read.facts))
})

test.each([
  ['nothing', '', /empty/],
  ['something else', 'hello: world', /not-a-family/],
  ['a list', '- 1\n- 2', /not-a-family/],
  ['a newer format', good.replace('cellwary-family: 1', 'cellwary-family: 2'), /newer-format/],
  ['an alias', `a: &x [1, 2]\nb: *x\n${good}`, /anchor|alias/],
  ['aliases that grow', `a: &a [1,1]\nb: &b [*a,*a]\nc: &c [*b,*b]\n${good}`, /anchor|alias/],
  ['a tag', good.replace('facts: 1', 'facts: !!js/function 1'), /yaml/],
  ['a tag of its own', good.replace('facts: 1', 'facts: !thing 1'), /yaml/],
  ['two documents', `${good}\n---\n${good}`, /more than one/],
  ['a key twice', `${good}\nfacts: 1`, /yaml/],
  ['a tab for a space', 'cellwary-family: 1\n\tfacts: 1', /yaml/],
  ['an unclosed quote', `${good}\nx: "abc`, /yaml/],
  ['an unknown key', `${good}\nextra: 1`, /shape/],
  ['a prototype', `${good}\n__proto__: { polluted: true }`, /shape|taken in/],
  ['a depth without end', `cellwary-family: 1\nfacts: ${'['.repeat(40)}${']'.repeat(40)}`, /too-deep/],
  [
    'a link in its words',
    good.replace('name: Brindlewick Heron', 'name: "www.shop.com Heron"'),
    /name-reads-like-link/,
  ],
  [
    'a mention in its words',
    good.replace('name: Brindlewick Heron', 'name: "@everyone Heron"'),
    /name-reads-like-link/,
  ],
  ['letters of two alphabets', good.replace('name: Brindlewick Heron', 'name: Brindlеwick Heron'), /two-alphabets/],
])('%s is refused with what is wrong', (_, text, wanted) => {
  expect(refusal(text)).toMatch(wanted)
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
})

test('a file that is too large, or that names five hundred features, is refused by count', () => {
  expect(refusal(`${good}\n# ${'x'.repeat(70_000)}`)).toBe('too large')
  const many = Array.from({ length: 300 }, (_, i) => `  f${i}: {}`).join('\n')
  expect(refusal(`cellwary-family: 1\ntraits:\n${many}`)).toMatch(/too-many/)
  const more = Array.from({ length: 500 }, (_, i) => `  f${i}: {}`).join('\n')
  expect(refusal(`cellwary-family: 1\ntraits:\n${more}`)).toMatch(/too-many/)
})

test('names are compared by what the eye sees', () => {
  for (const [a, b] of [
    ['Larkmoor 10', 'LARKMOOR lO'],
    ['Larkmoor', 'Lаrkmoor'],
    ['Sandpiper', 'Sandpiper\u200b'],
    ['Curlew 1', 'Curlew I'],
    ['Merlin', 'rnerlin'],
  ] as const)
    expect(skeletonOf(a)).toBe(skeletonOf(b))
  expect(skeletonOf('Sandpiper 25')).not.toBe(skeletonOf('Sandpiper 30'))
  expect(tidyName('  a\u202eb\n c ')).toBe('ab c')
  // Two marks on a letter are writing, more are a heap.
  const acute = '\u0301'
  expect(tidyName(`q${acute}${acute}x`)).toBe(`q${acute}${acute}x`)
  expect(tidyName(`q${acute.repeat(9)}x${acute.repeat(3)}`)).toBe(`q${acute.repeat(2)}x${acute.repeat(2)}`)
  expect(tidyName(`abc${acute}`)).toBe(`abc${acute}`.normalize('NFKC'))
  expect(nameProblems('Größe Ñandú 25')).toEqual([])
  expect(nameProblems('Lаrk')).toMatchObject([{ code: 'name-of-two-alphabets' }])
})

test('what reads like a link or a mention is none of our words', () => {
  for (const text of ['https://x.y', 'www.x', '<@1>', '@here', '[a](b)', 'shop.com'])
    expect(readsLikeLink(text), text).toBe(true)
  for (const text of ['Made with 2.5 mm', 'See the ring. Then count.', 'INR18650-25'])
    expect(readsLikeLink(text), text).toBe(false)
})
