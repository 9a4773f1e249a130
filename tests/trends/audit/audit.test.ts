// Nobody is singled out: a thousand random streams, asked for in any order, before and after deletions, audited by linear programming.
import { expect, test } from 'vitest'
import { verdicts } from '../../../src/ground/verdicts.ts'
import { minimumReporters } from '../../../src/trends/fives.ts'
import { base } from '../base-outcome.ts'
import { audit, puzzleOf, truthOf } from './audit.ts'
import { cellsOf, insights, type Publication, publish, statementsOf } from './publish.ts'
import { type Kind, randomStream, type Stream } from './streams.ts'
import { extreme, type Statement } from './worlds.ts'

const thousand = Array.from({ length: 1000 }, (_, i) => i + 1)

test('from the published numbers no one to four people are pinned, in a thousand streams', async () => {
  let asked = 0
  let shown = 0
  let patterns = 0
  for (const seed of thousand) {
    const stream = randomStream(seed, false)
    const publication = await publish(stream)
    sameBytesEachTime(publication)
    onlyFives(publication)
    for (const family of stream.families) {
      const statements = statementsOf(stream, publication, family)
      const found = audit(puzzleOf(stream, statements), truthOf(stream, family), seed)
      expect({ seed, family, pinned: found.pinned, undecided: found.undecided }).toEqual({
        seed,
        family,
        pinned: [],
        undecided: 0,
      })
      asked += found.quantities
      if (statements.length > 0) shown++
    }
    patterns += publication.releases.reduce((sum, r) => sum + r.patterns.length, 0)
  }
  // Not vacuous: most families are shown, and patterns are among what is audited.
  expect(shown).toBeGreaterThan(1000)
  expect(patterns).toBeGreaterThan(50)
  expect(asked).toBeGreaterThan(1_000_000)
}, 300_000)

test('nor with deletions between the weeks, and no shown number falls', async () => {
  let possible = 0
  let families = 0
  for (const seed of thousand) {
    const stream = randomStream(seed, true)
    const publication = await publish(stream)
    sameBytesEachTime(publication)
    onlyFives(publication)
    for (const family of stream.families) {
      const found = audit(puzzleOf(stream, statementsOf(stream, publication, family)), null, seed)
      expect({ seed, family, pinned: found.pinned, undecided: found.undecided }).toEqual({
        seed,
        family,
        pinned: [],
        undecided: 0,
      })
      families++
      if (found.possible) possible++
    }
  }
  // Where a deletion makes the published numbers contradict each other, an attacker learns only that there was one.
  expect(possible / families).toBeGreaterThan(0.95)
}, 300_000)

test('nor for one who knows how releases are made, and which cells waited when', async () => {
  for (const seed of thousand.slice(0, 100)) {
    const stream = randomStream(seed, false)
    const publication = await publish(stream)
    for (const family of stream.families) {
      const statements = [...statementsOf(stream, publication, family), ...insights(stream, publication, family)]
      const found = audit(puzzleOf(stream, statements), truthOf(stream, family), seed)
      expect({ seed, family, pinned: found.pinned, undecided: found.undecided }).toEqual({
        seed,
        family,
        pinned: [],
        undecided: 0,
      })
    }
  }
})

const five = ['a', 'b', 'c', 'd', 'e']
test.each<[string, Kind[]]>([
  ['places', five.map(p => ({ verdict: 'ruled-out', fired: ['must-a'], bought: `place-${p}` }))],
  ['rules', five.map(m => ({ verdict: 'ruled-out', fired: [`must-${m}`], bought: 'market' }))],
  ['verdicts', verdicts.map(verdict => ({ verdict, fired: [], bought: 'market' }))],
])('four people in each of five %s do not add up to twenty', async (_, kinds) => {
  const stream = crafted(kinds, 4)
  const publication = await publish(stream)
  const statements = [...statementsOf(stream, publication, 'harrow-30'), ...insights(stream, publication, 'harrow-30')]
  expect(audit(puzzleOf(stream, statements), truthOf(stream, 'harrow-30'), 1).pinned).toEqual([])
})

test('the audit finds the leak where cells are only withheld under five and counts are exact', () => {
  let leaking = 0
  for (const seed of thousand.slice(0, 20)) {
    const stream = randomStream(seed, false)
    const found = audit(puzzleOf(stream, exactCounts(stream, 'harrow-30')), truthOf(stream, 'harrow-30'), seed, 1)
    if (found.pinned.length > 0) leaking++
  }
  expect(leaking).toBeGreaterThan(10)
})

// A 3x3 table with margins and hidden cells: bounds by SciPy 1.10.1 linprog. Rule of five respondents a cell: UNECE/OECD Glossary of
// Statistical Disclosure Control (2005).
test.each([
  ['the small cell alone', [[0, 1]], [[3, 3]]],
  [
    'one partner in its row',
    [
      [0, 1],
      [0, 2],
    ],
    [
      [3, 3],
      [9, 9],
    ],
  ],
  [
    'a rectangle',
    [
      [0, 1],
      [0, 2],
      [1, 1],
      [1, 2],
    ],
    [
      [0, 12],
      [0, 12],
      [6, 18],
      [3, 15],
    ],
  ],
] as const)('bounds of hidden cells: %s', (_, hidden, bounds) => {
  const table = [
    [12, 3, 9],
    [8, 15, 6],
    [20, 7, 11],
  ]
  const kinds: Kind[] = ['a', 'b', 'c'].map(bought => ({ verdict: 'open', fired: [], bought }))
  const column = (kind: Kind) => kinds.indexOf(kind)
  const exactly = (size: number, at: (row: number, col: number) => boolean): Statement => ({
    group: (kind, week) => at(week, column(kind)),
    least: size,
    most: size,
  })
  const isHidden = (row: number, col: number) => hidden.some(([r, c]) => r === row && c === col)
  const statements = [0, 1, 2].flatMap(i => [
    exactly(
      table[i]!.reduce((a, b) => a + b),
      row => row === i,
    ),
    exactly(
      table.reduce((sum, row) => sum + row[i]!, 0),
      (_, col) => col === i,
    ),
    ...[0, 1, 2].flatMap(j => (isHidden(i, j) ? [] : [exactly(table[i]![j]!, (row, col) => row === i && col === j)])),
  ])
  for (const [i, [row, col]] of hidden.entries()) {
    const cell = (kind: Kind, week: number) => (week === row && column(kind) === col ? 1 : 0)
    const puzzle = { kinds, weeks: 3, statements }
    const range = (['minimize', 'maximize'] as const).map(way => extreme(puzzle, cell, way))
    expect(range.map(found => (found.status === 'found' ? found.value : found.status))).toEqual(bounds[i])
  }
})

function crafted(kinds: readonly Kind[], each: number): Stream {
  const outcomes = kinds
    .flatMap(kind => Array.from({ length: each }, () => kind))
    .map((kind, i) => ({ ...base, ...kind, week: '2026-W14', reporter: i.toString(16).padStart(64, '0') }))
  return { seed: 1, families: ['harrow-30'], kinds, first: '2026-W14', weeks: 1, outcomes, deletions: [] }
}

/** What a release would say that shows each cell of five or more exactly, and the family's total. */
function exactCounts(stream: Stream, family: string): Statement[] {
  const truth = truthOf(stream, family)
  const cells = [{ has: () => true }, ...cellsOf(stream.kinds)]
  return Array.from({ length: stream.weeks }, (_, now) =>
    cells.flatMap(({ has }): Statement[] => {
      const group = (kind: Kind, week: number) => has(kind) && week <= now
      const size = truth.reduce((sum, n, i) => {
        const kinds = stream.kinds.length
        return group(stream.kinds[i % kinds]!, Math.floor(i / kinds)) ? sum + n : sum
      }, 0)
      return size < minimumReporters ? [] : [{ group, least: size, most: size }]
    }),
  ).flat()
}

/** Whoever asked for a week, and whenever: the same bytes. */
function sameBytesEachTime({ answers }: Publication): void {
  const first = new Map<string, string>()
  for (const { week, bytes } of answers) {
    expect(first.get(week) ?? bytes).toBe(bytes)
    first.set(week, bytes)
  }
}

/** Every count anyone was ever shown is a multiple of five, so no two differ by one to four; and none ever falls. */
function onlyFives({ releases }: Publication): void {
  const numbers = releases.flatMap(countsIn)
  for (const number of new Set(numbers)) expect(number % minimumReporters).toBe(0)
  for (const release of releases)
    for (const part of [
      release,
      ...release.families,
      ...release.families.flatMap(f => [...f.verdicts, ...f.rules, ...f.bought]),
    ])
      expect(part.more).toBeGreaterThanOrEqual(0)
}

/** All whole-number counts anywhere in a release, but for its format and the growth worked out from them. */
function countsIn(value: unknown): number[] {
  if (Array.isArray(value)) return value.flatMap(countsIn)
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => {
    if (['format', 'growth', 'share'].includes(key)) return []
    return typeof inner === 'number' ? [inner] : countsIn(inner)
  })
}
