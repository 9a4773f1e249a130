// Somebody who deletes their data while a check comes back to whoever started it: it comes back, and is not deleted.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openCheckStore } from '../../src/stores/check-store.ts'
import type { Seal } from '../../src/stores/seal.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testSeal } from '../stores/test-seal.ts'

const now = Date.UTC(2026, 10, 25)
const [starter, taker] = ['900000000000000401', '900000000000000402']
const handed = pausedCheck('handed1', {
  ...{ revision: 1, server: 'shed', holder: taker, phase: { is: 'done' }, startedAt: now, expiresAt: now + 1_000_000 },
  ...{ settled: true, custody: { starter, shares: false, history: [] } },
})

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    beforeAll(async () => {
      opened = await kind.open()
    })
    afterAll(() => opened?.close())

    test('changed meanwhile by another process, it is given back at the next look', async () => {
      const checks = openCheckStore(opened.db, testSeal)
      await checks.create(handed, 'i1')
      let first = true
      // Between reading the check and giving it back, somebody else's step is stored.
      const interrupted: Seal = {
        ...testSeal,
        async close(text, week) {
          if (first) {
            first = false
            expect(await checks.save({ ...handed, revision: 2 }, 1, 'i2')).toBe('saved')
          }
          return testSeal.close(text, week)
        },
      }
      await openTraces(opened.db, interrupted).forgetPerson(taker)
      expect(first).toBe(false)
      expect((await checks.load(handed.id))?.check.holder).toBe(starter)
    })
  })
