// CELLWARY_SHARDS: what it may say, what is wrong with the rest, and that parts share out every connection once.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readConfig } from '../../src/bin/config.ts'
import { readShards } from '../../src/bin/read-shards.ts'

test.each([
  ['0-3/16', [0, 1, 2, 3]],
  ['5/16', [5]],
  ['1of4/16', [4, 5, 6, 7]],
  [' 0 of 2 / 3 ', [0]],
  ['0/1', [0]],
])('%s', (text, ids) => {
  expect(readShards(text)).toMatchObject({ ok: true, range: { ids } })
})

test.each([
  ['all', /“all” is no range/],
  ['1-2', /no range.*0-3\/16/],
  ['-1/4', /no range/],
  ['4/4', /numbered from 0 to 3; there is no 4/],
  ['3-1/4', /wrong way round/],
  ['4of4/16', /numbered from 0 to 3; there is no 4/],
  ['0of5/4', /5 processes cannot share 4/],
  ['0/0', /between 1 and 10000/],
  ['0/99999', /between 1 and 10000/],
])('%s is refused with a sentence', (text, why) => {
  expect(readShards(text)).toEqual({ ok: false, why: expect.stringMatching(why) })
})

test('the parts of several processes hold every connection, each once, and share them evenly', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 200 }), (count, more) => {
      const parts = Math.min(count, more)
      const shares = Array.from({ length: parts }, (_, i) => {
        const read = readShards(`${i}of${parts}/${count}`)
        return read.ok ? read.range.ids : []
      })
      expect(shares.flat()).toEqual(Array.from({ length: count }, (_, i) => i))
      const sizes = shares.map(one => one.length)
      expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1)
    }),
  )
})

test('in the settings: the variable is named; a part of the connections needs a database for all processes', () => {
  const token = { DISCORD_TOKEN: 'x' }
  expect(readConfig({ ...token, CELLWARY_SHARDS: 'x' })).toMatchObject({
    ok: false,
    sentences: [expect.stringMatching(/^CELLWARY_SHARDS: “x” is no range/)],
  })
  expect(readConfig({ ...token, CELLWARY_SHARDS: '0/2' })).toMatchObject({
    ok: false,
    sentences: [expect.stringMatching(/DATABASE_URL/)],
  })
  const together = { ...token, CELLWARY_SHARDS: '0/2', DATABASE_URL: 'postgres://h/d' }
  expect(readConfig(together)).toMatchObject({ ok: true, config: { shards: { ids: [0], count: 2 } } })
  expect(readConfig({ ...token, CELLWARY_SHARDS: '0-1/2' })).toMatchObject({ ok: true })
  expect(readConfig(token)).toMatchObject({ ok: true, config: { shards: undefined } })
})
