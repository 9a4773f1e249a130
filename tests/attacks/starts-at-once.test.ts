// Many starts of one person at once, in several processes: no more checks are open than one after the other would open.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { CheckStore } from '../../src/check/store.ts'
import { openCheckStore } from '../../src/stores/check-store.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { pausedCheck } from '../stores/paused-check.ts'
import { testSeal } from '../stores/test-seal.ts'

const now = Date.UTC(2026, 10, 25)
const check = (id: string, holder: string) =>
  pausedCheck(id, { holder, phase: { is: 'asking', question: 'heat' }, startedAt: now, expiresAt: now + 1_000_000 })

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let stores: CheckStore[]
    beforeAll(async () => {
      opened = await kind.open()
      const dbs = [opened.db, await opened.again(), await opened.again()]
      stores = dbs.map(db => openCheckStore(db, testSeal) as CheckStore)
    })
    afterAll(() => opened?.close())

    test('thirty starts open ten', async () => {
      const done = await Promise.all(
        Array.from({ length: 30 }, (_, i) =>
          (stores[i % 3] as CheckStore).create(check(`many${i}`, 'ada'), `i${i}`, 10),
        ),
      )
      expect(done.filter(one => one === 'saved')).toHaveLength(10)
      expect(done.filter(one => one === 'full')).toHaveLength(20)
      expect(await stores[0]?.heldBy('ada', now)).toHaveLength(10)
    })

    test('one that was refused can be started once there is room, by the same interaction', async () => {
      const [first] = (await stores[0]?.heldBy('ada', now)) ?? []
      if (!first) throw new Error('nobody holds a check')
      await stores[0]?.save({ ...first, revision: 1, phase: { is: 'closed' } }, 0, 'closing')
      expect(await stores[1]?.create(check('later', 'ada'), 'i-later', 10)).toBe('saved')
      expect(await stores[1]?.create(check('later2', 'ada'), 'i-later', 10)).toBe('seen')
      expect(await stores[2]?.create(check('another', 'grace'), 'i-grace', 10)).toBe('saved')
    })
  })
