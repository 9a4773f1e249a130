// What anybody may send in costs no more a character the longer it is: texts, files and packs, filled with what is hard to read.
//
// Processor time is held in a ratio of a length to four times as much: 4 where every character costs the same, 16 where each is held
// against all others. What costs next to nothing at the longest that is taken is not looked at.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openBook } from '../../src/answers/book.ts'
import { decodeFacts } from '../../src/custom-ids/facts-codec.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { nameProblems, readsLikeLink, skeletonOf, tidyName } from '../../src/families/names.ts'
import { readFigures } from '../../src/families/read-figures.ts'
import { readAnswer } from '../../src/packs/load-answers.ts'
import { readFamilyFile } from '../../src/packs/read-family-file.ts'
import { parseYaml } from '../../src/packs/read-yaml.ts'
import { kindOfFile } from '../../src/readers/photo/kind-of-file.ts'
import { readBatch } from '../../src/readings/batch/read-batch.ts'
import { openLog } from '../../src/readings/open-log.ts'
import { readClaims } from '../../src/readings/read-claims.ts'
import { readTyped } from '../../src/readings/read-typed.ts'
import { weighClaims } from '../../src/readings/weigh-claims.ts'
import { readSettingsFile } from '../../src/server/exchange.ts'
import { readAddress, readTitle } from '../../src/server/links.ts'
import { accusationIn } from '../../src/words/accusing.ts'
import { sayClaimFinding, sayFact } from '../../src/words/claim-words.ts'
import { bare, plain, plainLines, unmarked } from '../../src/words/plain.ts'
import { sayIn } from '../../src/words/say.ts'
import { shippedAnswers } from '../answers/questions.ts'

/** Below this nothing is measured, in ms: it is noise, and nobody waits for it. */
const least = 4
const mostRatio = 9

const book = openBook(await shippedAnswers())
const say = sayIn('de')
const bytes = (text: string) => new TextEncoder().encode(text)

type Input = { readonly read: (text: string) => unknown; readonly longest: number }
/** `longest`: what Discord or we take of it. */
const inputs: Readonly<Record<string, Input>> = {
  'a claim, read, weighed and said': {
    longest: 6_000,
    read(text) {
      const facts = readClaims(text, 'de')
      for (const fact of facts) sayFact(say, fact, text)
      for (const finding of weighClaims(facts, '2026-12-01').findings) sayClaimFinding(say, finding)
    },
  },
  'a typed reading': { longest: 4_000, read: text => readTyped(text, 'capacity', 'es') },
  'readings of a batch': { longest: 4_000, read: text => readBatch(text, 'mass', 'en') },
  'a question': { longest: 400, read: text => ['en', 'de', 'es'].map(own => book.lookUp(text, [own as 'en'])) },
  'text shown again': {
    longest: 6_000,
    read: text => [bare(text), plain(text), plainLines(text), unmarked(text), accusationIn(text)],
  },
  'the address of a link and its title': {
    longest: 4_000,
    read: text => [readAddress(text), readTitle(text, 'x.example')],
  },
  'a name': {
    longest: 4_000,
    read: text => [tidyName(text), skeletonOf(text), nameProblems(text), readsLikeLink(text)],
  },
  'what is printed on a cell': { longest: 4_000, read: text => readFigures(text) },
  'facts that a button carries': { longest: 4_000, read: decodeFacts },
  'a discharge log': {
    longest: 256_000,
    read(text) {
      const log = openLog({ instrument: { kind: 'hobby-load' } })
      const all = bytes(text)
      for (let at = 0; at < all.length; at += 65_536) if (log.push(all.subarray(at, at + 65_536)) === 'enough') break
      log.end()
    },
  },
  'a file of settings': { longest: 64_000, read: readSettingsFile },
  'a family as a file': { longest: 16_000, read: text => readFamilyFile(text, 'f1') },
  'YAML of a pack': { longest: 32_000, read: text => readPack(parseYaml(text).data, []) },
  'an answer': { longest: 32_000, read: text => readAnswer(`---\n${text}\n---\n${text}`, 'an-answer') },
  'the first bytes of a photo': { longest: 256_000, read: text => kindOfFile(bytes(text)) },
}

const units = [
  ...['1A ', '18650 ', '3000mAh', '9', '9,', '1.', '1e', '-', '±', '3V3', '2h3m', 'a', 'xq wjz ', 'ab', 'é̵̡͍', '\u202e'],
  ...[
    '(',
    '[',
    '{',
    '"',
    "'",
    '`',
    '*',
    '_',
    '<@',
    '|',
    '\\',
    '#',
    '&a *a ',
    '- ',
    '? ',
    ': ',
    'a: b\n',
    '\n',
    ' ',
    '\t',
  ],
  ...[
    ',',
    ';',
    '1;2;3\n',
    'time,voltage,current\n',
    '"a,',
    '%%%',
    '../',
    'http://',
    'a.',
    'a-',
    '-a',
    '@',
    '\0',
    '🎲',
    '---\n',
    '[[',
    '{a: ',
  ],
]

/** The least of so many runs, in ms of processor time: what else the machine does only adds to it. */
function cost(read: Input['read'], text: string, runs: number): number {
  let lowest = Number.POSITIVE_INFINITY
  for (let i = 0; i < runs; i++) {
    const before = process.cpuUsage()
    read(text)
    const { user } = process.cpuUsage(before)
    lowest = Math.min(lowest, user / 1000)
  }
  return lowest
}

const filled = (fill: string, length: number, end: string): string =>
  fill.repeat(Math.ceil(length / fill.length)).slice(0, length) + end

/** How many times as much four times the length costs; undefined where that is next to nothing. */
function growth({ read, longest }: Input, fill: string, end: string): number | undefined {
  let length = Math.min(500, longest)
  while (length < longest && cost(read, filled(fill, length, end), 1) < least) length *= 2
  const [short, long] = [length, length * 4].map(some => filled(fill, some, end)) as [string, string]
  if (cost(read, short, 1) < least && cost(read, long, 1) < 4 * least) return undefined
  // Run twice by then, both are as quick as the engine makes them; what still looks bad is measured again.
  for (const runs of [2, 4, 8]) {
    const ratio = cost(read, long, runs) / Math.max(cost(read, short, runs), least / 2)
    if (ratio <= mostRatio || runs === 8) return ratio
  }
  return undefined
}

describe.each(Object.entries(inputs))('%s', (_, input) => {
  test('filled with any one thing', () => {
    const grown = units.flatMap(unit =>
      ['!', 'a'].flatMap(end => {
        const ratio = growth(input, unit, end)
        return ratio !== undefined && ratio > mostRatio ? [`${JSON.stringify(unit)}: ${ratio.toFixed(1)}`] : []
      }),
    )
    expect(grown).toEqual([])
  }, 300_000)

  test('filled with any two things, and any end', () => {
    const some = fc.constantFrom(...units)
    fc.assert(
      fc.property(some, some, some, (a, b, end) => {
        expect(growth(input, a + b, end) ?? 0).toBeLessThanOrEqual(mostRatio)
      }),
      { numRuns: 25 },
    )
  }, 300_000)
})

test('a pack of four times as many questions and rules is read in about four times the time', () => {
  const packOf = (count: number) => ({
    ...{ pack: 'mine', version: '1.0.0', title: 'Mine', about: 'Made up.', written: '2026-11-01' },
    sources: { mine: { kind: 'memory', text: 'Made up.' } },
    questions: Array.from({ length: count }, (_, i) => ({
      ...{ id: `q${i}`, ask: `Is it so (${i})?`, care: 'look', effort: 1 },
      options: ['yes', 'no'].map(id => ({ id, label: id })),
    })),
    rules: Array.from({ length: count }, (_, i) => ({
      ...{ id: `r${i}`, kind: 'must', means: 'counterfeit', says: `It is not so (${i}).`, source: ['mine'] },
      when: { [`q${i}`]: 'no' },
    })),
  })
  const read = (count: string) => readPack(packOf(Number(count)), [])
  expect(read('10')).toMatchObject({ ok: true })
  const [short, long] = [cost(read, '2000', 5), cost(read, '8000', 5)]
  expect(long / Math.max(short, least / 2)).toBeLessThanOrEqual(mostRatio)
})

test('a key that is itself a map, in a map, in a map, is refused before it is written down', () => {
  // 250 of them took the library three seconds, 400 thirty.
  const deep = `${'? '.repeat(400)}a`
  expect(parseYaml(deep).problems).toMatchObject([{ says: 'A key has to be a plain word' }])
  expect(readFamilyFile(deep, 'f1')).toEqual({ ok: false, yaml: 'A key has to be a plain word' })
})

test('what grows faster than its length is found', () => {
  // The whole text is looked through for each of its characters, by a way that takes no warming up.
  const square: Input = {
    longest: 64_000,
    read(text) {
      let met = 0
      for (let i = 0; i < text.length; i++) if (text.indexOf('z') >= 0) met++
      return met
    },
  }
  expect(growth(square, 'ab', '!')).toBeGreaterThan(mostRatio)
})
