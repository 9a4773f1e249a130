// The contract of what is counted of people's help, on every database; and what moderators see of it.
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type HelperLog, shownHelp } from '../../src/server/helper-log.ts'
import { openHelperLog } from '../../src/stores/helper-log.ts'
import { openOptOuts } from '../../src/stores/opt-outs.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { testSeal } from '../stores/test-seal.ts'

for (const kind of databases)
  describe.skipIf(kind.missing)(`help on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let here: HelperLog
    let there: HelperLog
    beforeAll(async () => {
      opened = await kind.open()
      here = openHelperLog(opened.db)
      there = openHelperLog(await opened.again())
    })
    afterAll(() => opened?.close())

    test('is counted by server, person and week, by many processes at once, and summed over weeks', async () => {
      await Promise.all(Array.from({ length: 12 }, (_, i) => (i % 2 ? here : there).count('shed', 'ada', '2026-W40')))
      await here.count('shed', 'ada', '2026-W41')
      await here.count('shed', 'ben', '2026-W41')
      await here.count('barn', 'ada', '2026-W41')
      expect(await there.sums('shed', '2026-W40', '2026-W41')).toEqual([
        { person: 'ada', count: 13 },
        { person: 'ben', count: 1 },
      ])
      expect(await there.sums('shed', '2026-W41', '2026-W48')).toMatchObject([{ count: 1 }, { count: 1 }])
    })

    test('is not counted of whoever says no, in no server, from then on and before; whether their checks are is another matter', async () => {
      await here.sayNo('ada')
      expect([await there.saidNo('ada'), await openOptOuts(opened.db).has('ada')]).toEqual([true, false])
      await there.count('shed', 'ada', '2026-W42')
      expect(await here.sums('shed', '2026-W01', '2026-W53')).toEqual([{ person: 'ben', count: 1 }])
      expect(await here.sums('barn', '2026-W01', '2026-W53')).toEqual([])
      await here.sayYes('ada')
      await here.count('shed', 'ada', '2026-W43')
      expect(await here.sums('shed', '2026-W43', '2026-W43')).toEqual([{ person: 'ada', count: 1 }])
    })

    test('goes when it is old, and with the person and the server', async () => {
      expect(await here.purgeBefore('2026-W42')).toBe(1)
      expect(await here.sums('shed', '2026-W01', '2026-W53')).toEqual([{ person: 'ada', count: 1 }])
      const traces = openTraces(opened.db, testSeal)
      expect((await traces.of('ada')).helped).toEqual([{ server: 'shed', week: '2026-W43', count: 1 }])
      await traces.forgetPerson('ada')
      expect((await traces.of('ada')).helped).toEqual([])
      await here.count('shed', 'cleo', '2026-W44')
      await traces.forgetServer('shed')
      expect(await here.sums('shed', '2026-W01', '2026-W53')).toEqual([])
    })
  })

test('moderators see steps of five from five on, and no sum from which whoever is not shown could be told', () => {
  const sums = fc.uniqueArray(
    fc.record({ person: fc.string({ minLength: 1 }), count: fc.integer({ min: 1, max: 60 }) }),
    {
      selector: one => one.person,
    },
  )
  fc.assert(
    fc.property(sums, all => {
      const shown = shownHelp(all)
      for (const { person, count } of shown) {
        expect(count % 5).toBe(0)
        const real = all.find(one => one.person === person)?.count ?? 0
        expect(real - count).toBeGreaterThanOrEqual(0)
        expect(real - count).toBeLessThan(5)
      }
      // What is shown is the same, whatever those did of whom nothing is: nothing can be taken off to learn of them.
      const others = all.filter(one => one.count < 5)
      expect(shownHelp(all.filter(one => !others.includes(one)))).toEqual(shown)
    }),
  )
})
