// The answers that come with the project: checked like rules, complete, and every kind of mistake said in a sentence.
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { checkEntries } from '../../src/answers/check-entries.ts'
import { languageOf, textFor } from '../../src/answers/entry.ts'
import { answersIn, loadAnswers, readAnswer } from '../../src/packs/load-answers.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'
import { shippedAnswers } from './questions.ts'

const entries = await shippedAnswers()
let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'cellwary-answers-'))
})
afterAll(() => rm(folder, { recursive: true, force: true }))

test('the shipped answers have no problem, and there are at least 40', async () => {
  const { problems } = await loadAnswers(answersIn(shippedRules))
  expect(problems.map(({ file, problem }) => `${file}: ${sayProblem(sayIn('en'), problem)}`)).toEqual([])
  expect(entries.length).toBeGreaterThanOrEqual(40)
})

test('every entry is reached from another, so that nobody is stuck with the wrong one', () => {
  const reached = new Set(entries.flatMap(entry => entry.related))
  expect(entries.filter(entry => !reached.has(entry.id)).map(entry => entry.id)).toEqual([])
})

test('the advice of the safety authorities stands unsoftened where loose cells are the subject', () => {
  const [loose] = entries.filter(entry => entry.id === 'loose-cells')
  expect(loose?.texts.en.body).toMatch(/do not buy or use loose 18650 cells \(8 January 2021\)/)
  expect(loose?.caution).toBe('full')
})

test('figures from memory are said to be, in the text and among the sources', () => {
  for (const { id, texts, sources } of entries)
    expect(/from memory/.test(texts.en.body), id).toBe(sources.some(source => source.kind === 'memory'))
})

const good = (change: (text: string) => string = text => text): string =>
  change(
    [
      '---',
      'id: one',
      'caution: full',
      'related: []',
      'sources:',
      "  - published: 'An authority, 2021'",
      'title:',
      '  en: What is one?',
      'keywords:',
      '  en: [one, two, three, four, five]',
      '---',
      '',
      '# en',
      '',
      'One is one. Nothing shows that a cell is safe.',
      '',
    ].join('\n'),
  )

const problemsOf = (text: string): string[] => {
  const { entry, problems } = readAnswer(text, 'one')
  const all = [...problems, ...(entry ? checkEntries([entry]) : [])]
  return all.map(problem => sayProblem(sayIn('en'), problem))
}

test('a well-made entry has no problem', () => {
  expect(problemsOf(good())).toEqual([])
})

test.each<[string, (text: string) => string, RegExp]>([
  [
    'a masked link in its body',
    text => text.replace('One is one.', '[One](https://x.example) is one.'),
    /write a link as it is/,
  ],
  [
    'a masked link in its title',
    text => text.replace('What is one?', '"[What](https://x.example) is one?"'),
    /write a link as it is/,
  ],
  [
    'a masked link in a source',
    text => text.replace('An authority', '[One](https://x.example)'),
    /write a link as it is/,
  ],
  ['a keyword that turns around', text => text.replace('two,', '"tw\u202eo",'), /characters that nobody sees/],
  [
    'a body that hides something',
    text => text.replace('One is one.', 'One\u200bis one.'),
    /characters that nobody sees/,
  ],
  [
    'the same in another language',
    text => `${text}\n# de\n\n[Eins](https://x.example) ist eins.\n`,
    /write a link as it is/,
  ],
  ['no front matter', text => text.slice(4), /does not begin with YAML/],
  ['broken YAML', text => text.replace('related: []', 'related: ['), /not valid YAML/],
  [
    'a key nobody knows',
    text => text.replace('related: []', 'related: []\ncolour: red'),
    /nothing here is called “colour”/,
  ],
  ['a caution there is not', text => text.replace('full', 'loud'), /caution/],
  [
    'another id than the file',
    text => text.replace('id: one', 'id: other'),
    /its id is “other”, but its file says “one”/,
  ],
  ['no English body', text => text.replace('# en', '# de'), /no English text/],
  [
    'half a language',
    text => text.replace('  en: What is one?', '  en: What is one?\n  de: Was ist eins?'),
    /in “de” it lacks: keywords, body/,
  ],
  ['no source', text => text.replace(/sources:\n.*\n/, 'sources: []\n'), /no source is named/],
  ['a source without a year', text => text.replace(', 2021', ''), /has no year/],
  ['related to nothing', text => text.replace('related: []', 'related: [two]'), /no entry “two”/],
  ['related to itself', text => text.replace('related: []', 'related: [one]'), /related to itself/],
  ['too long', text => text.replace('One is one.', 'One is one. '.repeat(250)), /at most 2,500 can be read/],
  ['a title too long', text => text.replace('What is one?', 'What is one? '.repeat(8)), /at most 80 fit/],
  ['few keywords', text => text.replace(', four, five', ''), /at least 5 keywords/],
  [
    'it vouches for a cell',
    text => text.replace('One is one.', 'One is one. This cell is safe.'),
    /vouches for a cell \(“This cell is safe.”\)/,
  ],
  ['too weak a caution', text => text.replace('full', 'line').replace('One is one.', 'Charge it.'), /needs “full”/],
])('%s is said in a sentence', (_, change, sentence) => {
  expect(problemsOf(good(change)).join('\n')).toMatch(sentence)
})

test('what holds of one language holds of the others', () => {
  const german = (body: string) =>
    good(text =>
      text
        .replace('  en: What is one?', '  en: What is one?\n  de: Was ist eins?')
        .replace('  en: [one', '  de: [a1, b1, c1, d1, e1]\n  en: [one')
        .concat(`\n# de\n\n${body}\n`),
    )
  expect(problemsOf(german('Nichts zeigt, dass eine Zelle echt ist.'))).toEqual([])
  expect(problemsOf(german('Diese Zelle ist sicher.')).join()).toMatch(/in “de” the word “sicher” vouches/)
})

describe('a folder', () => {
  test('gives the sound entries and names the file of each problem', async () => {
    await writeFile(join(folder, 'one.md'), good())
    await writeFile(join(folder, 'two.md'), 'nothing')
    const { entries, problems } = await loadAnswers(folder)
    expect(entries.map(entry => entry.id)).toEqual(['one'])
    expect(problems.map(one => one.file)).toEqual([join(folder, 'two.md')])
  })

  test('says what is wrong with the names of its sources, and keeps the entries', async () => {
    await writeFile(join(folder, 'sources.yaml'), 'An authority, 2021: { fr: Une autorité }')
    const { entries, problems } = await loadAnswers(folder)
    expect(entries.map(entry => entry.id)).toEqual(['one'])
    expect(problems.map(one => one.file)).toContain(join(folder, 'sources.yaml'))
    await writeFile(join(folder, 'sources.yaml'), 'An authority, 2021: { de: "Eine Behörde, 2021" }')
    const [entry] = (await loadAnswers(folder)).entries
    expect(entry?.sources).toMatchObject([{ told: { de: 'Eine Behörde, 2021' } }])
  })

  test('that is not there has no answers', async () => {
    expect(await loadAnswers(join(folder, 'nowhere'))).toEqual({ entries: [], problems: [] })
  })
})

test('a language that is missing falls back to English, and says so', () => {
  const { entry } = readAnswer(good(), 'one')
  expect(entry && textFor(entry, 'de')).toMatchObject({ language: 'en', title: 'What is one?' })
  expect([languageOf('es-419'), languageOf('de'), languageOf('tlh')]).toEqual(['es', 'de', 'en'])
})
