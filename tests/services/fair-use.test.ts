// The buckets of fair use, as laws over any sequence of asking, and what each counts.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openBuckets, type Rate } from '../../src/services/fair-use/buckets.ts'
import { openFairUse } from '../../src/services/fair-use/open-fair-use.ts'

const rates = fc.record({ burst: fc.integer({ min: 1, max: 20 }), every_ms: fc.integer({ min: 1, max: 2000 }) })
/** Gaps between one asking and the next, mostly short enough that the bucket runs dry. */
const gaps = fc.array(fc.oneof(fc.integer({ min: 0, max: 50 }), fc.integer({ min: 0, max: 5000 })), { maxLength: 200 })

/** Asks after each gap, and takes a token where there is one; the times at which there was. */
function granted(rate: Rate, waits: readonly number[], start = 0): number[] {
  const buckets = openBuckets(rate)
  const times: number[] = []
  let now = start
  for (const wait of waits) {
    now += wait
    if (buckets.wait('a', now) > 0) continue
    buckets.take('a', now)
    times.push(now)
  }
  return times
}

describe('a bucket', () => {
  test('never gives more in any window than its burst and what came back in it', () => {
    fc.assert(
      fc.property(rates, gaps, (rate, waits) => {
        const times = granted(rate, waits)
        for (const [from, start] of times.entries())
          for (let to = from; to < times.length; to++)
            expect(to - from + 1).toBeLessThanOrEqual(
              rate.burst + Math.floor(((times[to] ?? 0) - start) / rate.every_ms),
            )
      }),
    )
  })

  test('gives as much as that to whoever asks all the time, as one that counts token by token does', () => {
    fc.assert(
      fc.property(rates, gaps, (rate, waits) => {
        // The textbook's bucket: a number of tokens, poured in as time goes by.
        let [tokens, last, now] = [rate.burst, 0, 0]
        const times: number[] = []
        for (const wait of waits) {
          now += wait
          tokens = Math.min(rate.burst, tokens + (now - last) / rate.every_ms)
          last = now
          // Its sums are not exact; what is a token but for the last digits is one.
          if (tokens < 1 - 1e-6) continue
          tokens = Math.max(0, tokens - 1)
          times.push(now)
        }
        expect(granted(rate, waits)).toEqual(times)
      }),
    )
  })

  test('keeps its word: whoever comes back after the wait finds a token, and not a millisecond before', () => {
    fc.assert(
      fc.property(rates, gaps, (rate, waits) => {
        const buckets = openBuckets(rate)
        let now = 0
        for (const wait of waits) {
          now += wait
          const told = buckets.wait('a', now)
          expect(told).toBeLessThanOrEqual(rate.every_ms)
          if (told === 0) buckets.take('a', now)
          else {
            expect(buckets.wait('a', now + told)).toBe(0)
            expect(buckets.wait('a', now + told - 1)).toBe(1)
          }
        }
      }),
    )
  })

  test('a refusal costs nothing: without the askings that were refused, the same ones are granted', () => {
    fc.assert(
      fc.property(rates, gaps, (rate, waits) => {
        const times = granted(rate, waits)
        expect(
          granted(
            rate,
            times.map((time, at) => time - (times[at - 1] ?? 0)),
          ),
        ).toEqual(times)
      }),
    )
  })

  test('a clock that goes back, by however much, makes nobody wait longer than for one token, and is no gift', () => {
    fc.assert(
      fc.property(rates, gaps, gaps, fc.integer({ min: 0, max: 1e12 }), (rate, before, after, back) => {
        const buckets = openBuckets(rate)
        let now = 2e12
        for (const wait of before) {
          now += wait
          if (buckets.wait('a', now) === 0) buckets.take('a', now)
        }
        const had = Math.max(0, buckets.wait('a', now))
        now -= back
        expect(buckets.wait('a', now)).toBeLessThanOrEqual(rate.every_ms)
        expect(buckets.wait('a', now)).toBeGreaterThanOrEqual(had)
        let given = 0
        const from = now
        for (const wait of after) {
          now += wait
          if (buckets.wait('a', now) > 0) continue
          buckets.take('a', now)
          given++
        }
        expect(given).toBeLessThanOrEqual(rate.burst + Math.floor((now - from) / rate.every_ms))
      }),
    )
  })

  test('after a clock that went back by an hour, whoever waits as told finds a token', () => {
    const buckets = openBuckets({ burst: 2, every_ms: 1000 })
    buckets.take('a', 3_600_000)
    expect(buckets.wait('a', 0)).toBe(1000)
    expect(buckets.wait('a', 1000)).toBe(0)
  })

  test('keys do not know of each other', () => {
    const buckets = openBuckets({ burst: 1, every_ms: 1000 })
    buckets.take('a', 0)
    expect([buckets.wait('a', 0), buckets.wait('b', 0)]).toEqual([1000, 0])
  })

  test('buckets that are full again are let go, those in use are kept', () => {
    const buckets = openBuckets({ burst: 2, every_ms: 1000 })
    for (let i = 0; i < 50_000; i++) buckets.take(`person ${i}`, i)
    expect(buckets.size).toBeLessThan(3_500)
    expect(buckets.wait('person 49999', 49_999)).toBe(0)
    buckets.take('person 49999', 49_999)
    expect(buckets.wait('person 49999', 49_999)).toBe(1000)
  })
})

describe('fair use', () => {
  const one = { burst: 1, every_ms: 1000 }
  const two = { burst: 2, every_ms: 1000 }
  const small = openFairUse.bind(null, {
    person: { act: two, file: one, suggestions: two },
    server: { act: { burst: 3, every_ms: 500 }, file: two, suggestions: two },
    posts: { person: { burst: 3, every_ms: 1000 }, channel: two },
  })
  const at = (refusal: { at: number } | undefined) => refusal?.at

  test('a person waits for their own bucket, others do not', () => {
    const fairUse = small()
    for (let i = 0; i < 2; i++) expect(fairUse.admit('act', 'wren', null, 0)).toBeUndefined()
    expect(fairUse.admit('act', 'wren', null, 0)).toEqual({ code: 'too-fast', at: 1 })
    expect(fairUse.admit('act', 'tomas', null, 0)).toBeUndefined()
    expect(fairUse.admit('act', 'wren', null, 1000)).toBeUndefined()
  })

  test('a server waits together, other servers and private messages do not', () => {
    const fairUse = small()
    for (const who of ['a', 'b', 'c']) expect(fairUse.admit('act', who, 'harbour', 0)).toBeUndefined()
    expect(fairUse.admit('act', 'd', 'harbour', 0)).toEqual({ code: 'server-too-fast', at: 1 })
    expect(fairUse.admit('act', 'd', 'elsewhere', 0)).toBeUndefined()
    expect(fairUse.admit('act', 'd', null, 0)).toBeUndefined()
  })

  test('whoever is refused for the server’s sake has lost nothing of their own, and the other way round', () => {
    const fairUse = small()
    for (const who of ['a', 'b', 'c']) fairUse.admit('act', who, 'harbour', 0)
    for (let i = 0; i < 9; i++) expect(at(fairUse.admit('act', 'd', 'harbour', 0))).toBe(1)
    for (let i = 0; i < 2; i++) expect(fairUse.admit('act', 'd', null, 0)).toBeUndefined()
    for (let i = 0; i < 9; i++) expect(fairUse.admit('act', 'd', 'elsewhere', 0)?.code).toBe('too-fast')
    for (const who of ['a', 'b']) expect(fairUse.admit('act', who, 'elsewhere', 0)).toBeUndefined()
  })

  test('clicks, files and suggestions are counted apart', () => {
    const fairUse = small()
    expect(fairUse.admit('file', 'wren', null, 0)).toBeUndefined()
    expect(fairUse.admit('file', 'wren', null, 0)).toEqual({ code: 'too-many-files', at: 1 })
    for (const asked of ['act', 'act', 'suggestions', 'suggestions'] as const)
      expect(fairUse.admit(asked, 'wren', null, 0)).toBeUndefined()
  })

  test('posts are counted by channel, and by whoever has them posted', () => {
    const fairUse = small()
    for (const who of ['a', 'b']) expect(fairUse.admitPost(who, 'lobby', 0)).toBeUndefined()
    expect(fairUse.admitPost('c', 'lobby', 0)).toEqual({ code: 'channel-too-fast', at: 1 })
    for (const channel of ['quay', null]) expect(fairUse.admitPost('a', channel, 0)).toBeUndefined()
    expect(fairUse.admitPost('a', 'elsewhere', 0)).toEqual({ code: 'too-many-posts', at: 1 })
    expect(fairUse.admitPost('c', 'elsewhere', 0)).toBeUndefined()
  })

  test.each([
    ['ten presses a second through the 60 questions of a check', 100, 60],
    ['four presses a second through five checks in a row', 250, 300],
    ['two presses a second for an hour', 500, 7200],
  ])('ordinary use is never turned away: %s', (_what, gap, presses) => {
    const fairUse = openFairUse()
    let turnedAway = 0
    for (let i = 0; i < presses; i++) if (fairUse.admit('act', 'wren', 'harbour', i * gap)) turnedAway++
    expect(turnedAway).toBe(0)
  })
})
