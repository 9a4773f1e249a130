// The contract of the log of findings, held against every database the project can use.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openFindingLog } from '../../src/stores/finding-log.ts'
import { decide, type Finding, type NewFinding } from '../../src/trends/finding.ts'
import type { FindingLog } from '../../src/trends/finding-log.ts'
import { databases, type Opened } from '../stores/databases.ts'

const rise = (key: string, week = '2026-W40'): NewFinding => ({
  key,
  week,
  found: { is: 'rise', rise: { family: 'heron', rule: null, week, standsOut: true } },
})
let ids = 0
const newId = () => `finding${ids++}`
const now = Date.UTC(2026, 10, 25)

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let log: FindingLog
    let other: FindingLog
    beforeAll(async () => {
      opened = await kind.open()
      log = openFindingLog(opened.db)
      other = openFindingLog(await opened.again())
    })
    afterAll(() => opened?.close())
    const told = async (server: string): Promise<Finding> => {
      const [finding] = await log.untold(server, '2026-W41')
      const next = finding && decide(finding, { is: 'told' }, now)
      if (!next) throw new Error('nothing to tell')
      await log.save(next)
      return next
    }

    test('what two processes find at once is kept once, and again in no later week', async () => {
      await Promise.all([log.add('a', [rise('one'), rise('two')], newId), other.add('a', [rise('one')], newId)])
      await other.add('a', [rise('two', '2026-W41')], newId)
      expect((await log.untold('a', '2026-W41')).map(one => [one.key, one.week])).toEqual([
        ['one', '2026-W40'],
        ['two', '2026-W40'],
      ])
      expect(await log.untold('b', '2026-W41')).toEqual([])
    })

    test('servers in which something is to be told or posted are found at once, and no others', async () => {
      await log.add('w1', [rise('one')], newId)
      await log.add('w2', [rise('one')], newId)
      const first = await told('w2')
      const waiting = async (week: string) => (await log.serversWaiting(week)).filter(one => one.startsWith('w'))
      expect(await waiting('2026-W41')).toEqual(['w1'])
      const off = decide(first, { is: 'put-off', by: 'p', until: '2026-W43' }, now) as Finding
      await log.save(off)
      expect(await waiting('2026-W42')).toEqual(['w1'])
      expect(await waiting('2026-W43')).toEqual(['w1', 'w2'])
      await log.save(decide(off, { is: 'warn', by: 'p', channel: 'c', text: 't' }, now) as Finding)
      expect(await waiting('2026-W41')).toEqual(['w1', 'w2'])
    })

    test('what was told is due again only when it was put off to that week', async () => {
      await log.add('c', [rise('one')], newId)
      const first = await told('c')
      expect(await log.untold('c', '2026-W60')).toEqual([])
      const off = decide(first, { is: 'put-off', by: 'p', until: '2026-W43' }, now)
      await log.save(off as Finding)
      expect(await log.untold('c', '2026-W42')).toEqual([])
      expect(await other.untold('c', '2026-W43')).toEqual([off])
    })

    test('of two decisions at once one counts, and a warning waits until it is posted', async () => {
      await log.add('d', [rise('one')], newId)
      const first = await told('d')
      const warn = decide(first, { is: 'warn', by: 'p', channel: 'c', text: 't' }, now) as Finding
      const dismiss = decide(first, { is: 'dismiss', by: 'q', why: 'w' }, now) as Finding
      expect([await log.save(warn), await other.save(dismiss)]).toEqual(['saved', 'stale'])
      expect(await other.unposted('d')).toEqual([warn])
      await log.save(decide(warn, { is: 'warning-posted' }, now) as Finding)
      expect(await log.unposted('d')).toEqual([])
      expect((await log.load(warn.id))?.decisions).toEqual([{ by: 'p', at: now, did: 'warned', why: 't' }])
    })

    test('a server that leaves takes its findings along', async () => {
      await log.forget('a')
      expect(await log.untold('a', '2026-W41')).toEqual([])
    })
  })
