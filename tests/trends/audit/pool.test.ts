// A moderator sees the pool and their own server: taking one off the other tells of no one to four people, theirs or others'.
import { expect, test } from 'vitest'
import { weeksFrom } from '../../../src/trends/week.ts'
import { audit, puzzleOf } from './audit.ts'
import { type Publication, publish, statementsOf } from './publish.ts'
import { type Kind, randomStream, type Stream } from './streams.ts'
import { type Statement, unknownsOf, type World } from './worlds.ts'

const server = { kind: 'server', server: 'here' } as const
const pool = { kind: 'pool' } as const

/** Where a check was made stands in its kind like a failed check that no release ever tells of, so that it is asked about too. */
const at = (kind: Kind, where: string): Kind => ({ ...kind, fired: [...kind.fired, `at-${where}`] })
const isHere = (kind: Kind): boolean => kind.fired.includes('at-here')

/** A random stream whose people check on two servers that pool. */
function pooledStream(seed: number): Stream {
  const stream = randomStream(seed, false)
  const outcomes = stream.outcomes.map((outcome, i) => ({
    ...outcome,
    server: (i * 7 + seed) % 3 === 0 ? 'there' : 'here',
    pooled: outcome.reporter,
  }))
  return { ...stream, outcomes, kinds: stream.kinds.flatMap(kind => [at(kind, 'here'), at(kind, 'there')]) }
}

function truthOf(stream: Stream, family: string): World {
  const name = ({ verdict, fired, bought }: Kind) => `${verdict} ${fired.join()} ${bought}`
  const own = stream.outcomes.filter(one => one.family === family)
  const people = new Map<string, number>()
  for (const one of own) {
    const key = `${weeksFrom(stream.first, one.week)} ${name(at(one, one.server))}`
    people.set(key, (people.get(key) ?? 0) + 1)
  }
  const names = stream.kinds.map(name)
  return unknownsOf(stream).map(({ kind, week }) => people.get(`${week} ${names[kind]}`) ?? 0)
}

const only = (statements: readonly Statement[], holds: (kind: Kind) => boolean): Statement[] =>
  statements.map(one => ({ ...one, group: (kind, week) => holds(kind) && one.group(kind, week) }))

test('from the pool and the own server together no one to four people are pinned', async () => {
  let both = 0
  for (let seed = 1; seed <= 400; seed++) {
    const stream = pooledStream(seed)
    const [own, pooled] = (await Promise.all([publish(stream, server), publish(stream, pool)])) as [
      Publication,
      Publication,
    ]
    for (const family of stream.families) {
      const told = [only(statementsOf(stream, own, family), isHere), statementsOf(stream, pooled, family)] as const
      if (told.every(statements => statements.length > 0)) both++
      const found = audit(puzzleOf(stream, told.flat()), truthOf(stream, family), seed)
      expect({ seed, family, pinned: found.pinned, undecided: found.undecided }).toEqual({
        seed,
        family,
        pinned: [],
        undecided: 0,
      })
    }
  }
  expect(both).toBeGreaterThan(250)
}, 300_000)

test('the audit finds it where the pool and the own server tell exact totals', () => {
  let leaking = 0
  for (let seed = 1; seed <= 20; seed++) {
    const stream = pooledStream(seed)
    const [family = ''] = stream.families
    const truth = truthOf(stream, family)
    const exactly = (group: Statement['group']): Statement => {
      const size = unknownsOf(stream).reduce(
        (sum, { kind, week }, i) => (group(stream.kinds[kind]!, week) ? sum + truth[i]! : sum),
        0,
      )
      return { group, least: size, most: size }
    }
    const totals = Array.from({ length: stream.weeks }, (_, now) => [
      exactly((_, week) => week <= now),
      exactly((kind, week) => isHere(kind) && week <= now),
    ]).flat()
    if (audit(puzzleOf(stream, totals), truth, seed, 1).pinned.length > 0) leaking++
  }
  expect(leaking).toBeGreaterThan(10)
})
