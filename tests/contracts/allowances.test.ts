// Fair use among several processes on one PostgreSQL: the shared buckets are those of one process, and nobody gets two shares.
import fc from 'fast-check'
import { sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openBuckets, type Rate } from '../../src/services/fair-use/buckets.ts'
import { type FairUse, openFairUse, type Rates } from '../../src/services/fair-use/open-fair-use.ts'
import { type Shared, shareFairUse } from '../../src/services/fair-use/share-fair-use.ts'
import type { SharedBuckets } from '../../src/services/fair-use/shared-buckets.ts'
import { openAllowances } from '../../src/stores/allowances.ts'
import { databases, type Opened } from '../stores/databases.ts'

const kind = databases.find(one => one.name === 'PostgreSQL')
const key = async () => Buffer.alloc(32, 7)
const ordinary = fc.record({ burst: fc.integer({ min: 1, max: 12 }), every_ms: fc.integer({ min: 1, max: 900 }) })
const askings = fc.array(
  fc.record({
    after: fc.oneof(fc.integer({ min: 0, max: 50 }), fc.integer({ min: 0, max: 3000 })),
    tokens: fc.integer({ min: 1, max: 15 }),
    process: fc.integer({ min: 0, max: 1 }),
  }),
  { maxLength: 25 },
)

describe.skipIf(kind?.missing)(`on PostgreSQL${kind?.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
  let opened: Opened
  const clock = { at: 1_000_000 }
  let two: readonly ReturnType<typeof openAllowances>[]
  let fresh = 0
  beforeAll(async () => {
    opened = await (kind as NonNullable<typeof kind>).open()
    two = [opened.db, await opened.again()].map(db => openAllowances(db, key, () => sql<number>`${clock.at}::bigint`))
  })
  afterAll(() => opened?.close())
  const [one, other] = [0, 1].map(i => ({
    take: (...asked: Parameters<SharedBuckets['take']>) => (two[i] as SharedBuckets).take(...asked),
    giveBack: (...asked: Parameters<SharedBuckets['giveBack']>) => (two[i] as SharedBuckets).giveBack(...asked),
  })) as [SharedBuckets, SharedBuckets]

  test('whatever is asked of whichever of them, each is told what one process would have told', async () => {
    await fc.assert(
      fc.asyncProperty(ordinary, askings, async (rate, asked) => {
        const of = `bucket ${fresh++}`
        const alone = openBuckets(rate)
        for (const { after, tokens, process } of asked) {
          clock.at += after
          const wait = alone.wait('a', clock.at, tokens)
          if (wait === 0) alone.take('a', clock.at, tokens)
          expect(await (process ? other : one).take([{ of, rate, tokens }])).toEqual([wait])
        }
      }),
      { numRuns: 25 },
    )
  })

  test('what is only counted is counted also where there is none, and says whether there was', async () => {
    const of = `bucket ${fresh++}`
    const rate = { burst: 3, every_ms: 1000 }
    const counted = async () => (await one.take([{ of, rate, tokens: 1, always: true }]))[0] === 0
    expect([await counted(), await counted(), await counted(), await counted(), await counted()]).toEqual([
      true,
      true,
      true,
      false,
      false,
    ])
    clock.at += 1000
    expect(await counted()).toBe(false)
    clock.at += 1001
    expect(await counted()).toBe(true)
  })

  test('of a hundred at the same moment from two processes as many are let through as the bucket holds', async () => {
    const of = `bucket ${fresh++}`
    const rate = { burst: 10, every_ms: 1000 }
    const waits = await Promise.all(
      Array.from({ length: 100 }, (_, i) => (i % 2 ? one : other).take([{ of, rate, tokens: 1 }])),
    )
    expect(waits.filter(([wait]) => wait === 0)).toHaveLength(10)
  })

  test('a clock that goes back by an hour leaves an empty bucket that fills', async () => {
    const of = `bucket ${fresh++}`
    const rate = { burst: 2, every_ms: 1000 }
    const take = async () => (await one.take([{ of, rate, tokens: 1 }]))[0]
    await take()
    clock.at -= 3_600_000
    await take()
    expect(await take()).toBe(1000)
    clock.at += 1000
    expect(await take()).toBe(0)
  })

  test('nobody is named in the database, and what is full again goes', async () => {
    await one.take([{ of: 'act person 900000000000000401', rate: { burst: 2, every_ms: 1000 }, tokens: 1 }])
    const rows = await opened.db.selectFrom('allowances').selectAll().execute()
    expect(rows.length).toBeGreaterThan(0)
    expect(JSON.stringify(rows)).not.toContain('900000000000000401')
    clock.at += 2 * 3_600_000
    await two[0]?.purge()
    expect(await opened.db.selectFrom('allowances').selectAll().execute()).toEqual([])
  })

  const rate = (burst: number): Rate => ({ burst, every_ms: 1000 })
  const each = (burst: number) => ({ act: rate(burst), file: rate(burst), suggestions: rate(burst) })
  const rates: Rates = {
    person: each(4),
    server: each(6),
    quiet: { person: rate(2), server: rate(3) },
    posts: { person: rate(2), channel: rate(3) },
  }
  const processes = (shared: Shared, buckets: readonly SharedBuckets[] = [one, other]) =>
    buckets.map(some =>
      shareFairUse(
        openFairUse(rates),
        some,
        shared,
        error => {
          throw error
        },
        rates,
      ),
    ) as [FairUse, FairUse]

  test.each(['people', 'all'] as const)('a person has one share among two processes (%s)', async shared => {
    const [here, there] = processes(shared)
    const who = `p${fresh++}`
    const said = []
    for (let i = 0; i < 10; i++) said.push(await (i % 2 ? here : there).admit('act', who, null, clock.at))
    expect(said.filter(Boolean)).toHaveLength(6)
    expect(said.at(-1)).toEqual({ code: 'too-fast', at: Math.ceil((clock.at + 1000) / 1000) })
    clock.at += 1000
    expect(await here.admit('act', who, null, clock.at)).toBeUndefined()
  })

  test('behind a load balancer a server has one share, and whoever is refused for its sake has lost nothing', async () => {
    const [here, there] = processes('all')
    const server = `s${fresh++}`
    const file = (p: FairUse, who: string) => p.admit('file', who, server, clock.at)
    for (const who of ['a', 'b', 'c'])
      for (const p of [here, there]) expect(await file(p, `${server}${who}`)).toBeUndefined()
    const late = `${server}d`
    for (const p of [here, there, here, there]) expect(await file(p, late)).toMatchObject({ code: 'server-too-fast' })
    for (const p of [here, there, here, there]) expect(await p.admit('file', late, null, clock.at)).toBeUndefined()
    expect(await here.admit('file', late, null, clock.at)).toMatchObject({ code: 'too-many-files' })
  })

  test('a crowd on two processes locks a quiet member out of neither, and gets no more than is kept back', async () => {
    const [here, there] = processes('all')
    const server = `s${fresh++}`
    const act = (p: FairUse, who: string) => p.admit('act', `${server}${who}`, server, clock.at)
    let admitted = 0
    for (let i = 0; i < 40; i++) for (const who of ['a', 'b']) if (!(await act(i % 2 ? here : there, who))) admitted++
    expect(admitted).toBeLessThanOrEqual(6 + 3)
    expect(await act(here, 'quiet')).toBeUndefined()
    expect(await act(there, 'quiet')).toBeUndefined()
    // Two is what a quiet person has asked for who still is one.
    expect(await act(here, 'quiet')).toMatchObject({ code: 'server-too-fast' })
  })

  test('what is at home in one process is asked of no database: a server where its connection is', async () => {
    const asked: string[] = []
    const listening: SharedBuckets = {
      ...one,
      take: wanted => {
        asked.push(...wanted.map(each => each.of))
        return one.take(wanted)
      },
    }
    const [here] = processes('people', [listening])
    const who = `p${fresh++}`
    await here.admit('act', who, 'harbour', clock.at)
    await here.admitPost(who, 'lobby', clock.at)
    expect(asked).toEqual([`act person ${who}`, `post person ${who}`])
    const [alone] = processes('posts', [listening])
    await alone.admit('act', who, 'harbour', clock.at)
    await alone.admitPost(who, 'lobby', clock.at)
    expect(asked.slice(2)).toEqual([`post person ${who}`])
  })

  test('whoever presses on while they wait costs no statement', async () => {
    let statements = 0
    const counting: SharedBuckets = {
      ...one,
      take: wanted => {
        statements++
        return one.take(wanted)
      },
    }
    const [here, there] = processes('people', [counting, other])
    const who = `p${fresh++}`
    for (let i = 0; i < 4; i++) await there.admit('act', who, null, clock.at)
    for (let i = 0; i < 50; i++) expect(await here.admit('act', who, null, clock.at)).toBeDefined()
    expect(statements).toBe(1)
  })

  test('posts: one share a person, and behind a load balancer one a channel', async () => {
    const [here, there] = processes('all')
    const [who, lobby] = [`p${fresh++}`, `c${fresh}`]
    for (const p of [here, there]) expect(await p.admitPost(who, lobby, clock.at)).toBeUndefined()
    expect(await here.admitPost(who, 'quay', clock.at)).toMatchObject({ code: 'too-many-posts' })
    expect(await there.admitPost(`${who}b`, lobby, clock.at)).toBeUndefined()
    expect(await here.admitPost(`${who}c`, lobby, clock.at)).toMatchObject({ code: 'channel-too-fast' })
  })
})

test('while the database is away each process counts for itself, and says so', async () => {
  const told: unknown[] = []
  const away: SharedBuckets = {
    take: () => Promise.reject(new Error('away')),
    giveBack: () => Promise.reject(new Error('away')),
  }
  const fairUse = shareFairUse(openFairUse(), away, 'all', error => void told.push(error))
  const said = []
  for (let i = 0; i < 101; i++) said.push(await fairUse.admit('act', 'wren', 'harbour', 0))
  expect(said.filter(Boolean)).toHaveLength(1)
  expect(told).toHaveLength(100)
  expect(await fairUse.admitPost('wren', 'lobby', 0)).toBeUndefined()
})
