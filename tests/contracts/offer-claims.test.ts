// Claims on forum posts: of everybody who hears of a post, one makes the offer, on every database.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openOfferClaims } from '../../src/stores/offer-claims.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { testSeal } from '../stores/test-seal.ts'

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    beforeAll(async () => {
      opened = await kind.open()
    })
    afterAll(() => opened?.close())

    test('a post is claimed once, whoever races and however often it is told again', async () => {
      const here = openOfferClaims(opened.db)
      const there = openOfferClaims(await opened.again())
      const claims = await Promise.all(
        Array.from({ length: 20 }, (_, i) => (i % 2 ? here : there).claim('s', 'p1', 100)),
      )
      expect(claims.filter(Boolean)).toHaveLength(1)
      expect(await here.claim('s', 'p1', 10_000)).toBe(false)
      expect(await there.claim('s', 'p2', 10_000)).toBe(true)
    })

    test('old claims are let go, and a server that leaves takes its own along', async () => {
      const claims = openOfferClaims(opened.db)
      expect(await claims.purge(101)).toBe(1)
      expect(await claims.purge(101)).toBe(0)
      await claims.claim('other', 'p3', 10_000)
      await openTraces(opened.db, testSeal).forgetServer('s')
      const left = await opened.db.selectFrom('offers').selectAll().execute()
      expect(left.map(one => one.post)).toEqual(['p3'])
    })
  })
