// Our Keyv adapter against @keyv/test-suite and against an injected clock, on every database.
import keyvTestSuite, { keyvIteratorTests } from '@keyv/test-suite'
import Keyv from 'keyv'
import * as vitest from 'vitest'
import { KeptValues } from '../../src/stores/cache-adapter.ts'
import { databases, type Opened } from '../stores/databases.ts'

/** Tests of the suite (2.1.2, written for Keyv 5) that Keyv 6 itself contradicts, with what changed. */
const changedInKeyv6: Record<string, string> = {
  '.deleteMany([keys]) with nonexistent keys resolves to false': 'Keyv 6 gives one flag per key',
  'value can be BigInt using other serializer/deserializer': 'Keyv 6 takes the serializer as an option only',
}
const only = (name: string, run: never, more: never) =>
  changedInKeyv6[name] ? vitest.test.skip(`${name} (${changedInKeyv6[name]})`, run, more) : vitest.test(name, run, more)
const fitting = { ...vitest, it: only, test: only }

const { afterAll, beforeAll, describe, expect, test } = vitest

for (const kind of databases) {
  describe.skipIf(kind.missing)(
    `kept values on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`,
    () => {
      let opened: Opened
      beforeAll(async () => {
        opened = await kind.open()
      })
      afterAll(() => opened.close())

      const store = () => new KeptValues(opened.db)
      keyvTestSuite(fitting as never, Keyv as never, store)
      keyvIteratorTests(fitting as never, Keyv as never, store)

      test('a value is gone at its expiry, and purge takes it off the disk', async () => {
        let now = 1000
        const kept = new KeptValues(opened.db, 'clock', () => now)
        await kept.set('a', '"x"', 2000)
        await kept.set('b', '"y"')
        expect(await kept.get('a')).toBe('"x"')
        now = 2000
        expect(await kept.get('a')).toBeUndefined()
        expect(await kept.getMany(['a', 'b'])).toEqual([undefined, '"y"'])
        expect(await kept.purge()).toBe(1)
        expect(await kept.has('b')).toBe(true)
      })

      test('clearing one namespace leaves a namespace with a similar name alone', async () => {
        const one = new KeptValues(opened.db, 'a_')
        const other = new KeptValues(opened.db, 'ab')
        await one.set('k', '1')
        await other.set('k', '2')
        await one.clear()
        expect(await one.get('k')).toBeUndefined()
        expect(await other.get('k')).toBe('2')
      })
    },
  )
}
