// Leases and the list of those who leave no outcomes, on every database.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openLeases } from '../../src/stores/lease.ts'
import { openOptOuts } from '../../src/stores/opt-outs.ts'
import { databases, type Opened } from '../stores/databases.ts'

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    beforeAll(async () => {
      opened = await kind.open()
    })
    afterAll(() => opened?.close())

    test('of many processes one has a lease; it can be prolonged, given back, and taken over once it is over', async () => {
      const here = openLeases(opened.db)
      const there = openLeases(await opened.again())
      const taken = await Promise.all(
        Array.from({ length: 10 }, (_, i) => (i % 2 ? here : there).take('week', `p${i}`, 100, 200)),
      )
      expect(taken.filter(Boolean)).toHaveLength(1)
      const holder = `p${taken.indexOf(true)}`
      expect(await there.take('week', 'other', 199, 300)).toBe(false)
      expect(await here.take('week', holder, 199, 300)).toBe(true)
      expect(await there.take('week', 'other', 200, 300)).toBe(false)
      expect(await there.take('week', 'other', 300, 400)).toBe(true)
      await here.giveBack('week', holder)
      expect(await here.take('week', holder, 301, 400)).toBe(false)
      await there.giveBack('week', 'other')
      expect(await here.take('week', holder, 301, 400)).toBe(true)
      expect(await there.take('another', 'other', 301, 400)).toBe(true)
    })

    test('who said no is known by a hash alone, until they say otherwise', async () => {
      const optOuts = openOptOuts(opened.db)
      await optOuts.add('900000000000000401')
      await optOuts.add('900000000000000401')
      expect(await optOuts.has('900000000000000401')).toBe(true)
      expect(await optOuts.has('900000000000000402')).toBe(false)
      const rows = await opened.db.selectFrom('opt_outs').selectAll().execute()
      expect(JSON.stringify(rows)).not.toContain('900000000000000401')
      await optOuts.remove('900000000000000401')
      expect(await optOuts.has('900000000000000401')).toBe(false)
    })
  })
