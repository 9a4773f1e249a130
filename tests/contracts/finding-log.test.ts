// The contract of the log of findings, held against every database the project can use.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openFindingLog } from '../../src/stores/finding-log.ts'
import { decide } from '../../src/trends/findings/decide.ts'
import type { Finding, NewFinding } from '../../src/trends/findings/finding.ts'
import type { FindingLog } from '../../src/trends/findings/finding-log.ts'
import { databases, type Opened } from '../stores/databases.ts'

const rise = (key: string, week = '2026-W40'): NewFinding => ({
  key,
  family: 'heron',
  week,
  parts: [{ is: 'rise', rise: { family: 'heron', rule: null, week, standsOut: true } }],
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
      const [finding] = await log.due(server, '2026-W41')
      const next = finding && decide(finding, { is: 'told', post: { channel: 'c', message: 'm' } }, now)
      if (!next) throw new Error('nothing to tell')
      await log.save(next)
      return next
    }

    test('what two processes find at once is kept once, and again in no later week', async () => {
      await Promise.all([log.add('a', [rise('one'), rise('two')], newId), other.add('a', [rise('one')], newId)])
      await other.add('a', [rise('two', '2026-W41')], newId)
      expect((await log.due('a', '2026-W41')).map(one => [one.key, one.week])).toEqual([
        ['one', '2026-W40'],
        ['two', '2026-W40'],
      ])
      expect(await log.due('b', '2026-W41')).toEqual([])
    })

    test('servers in which something is to be told or posted are found at once, and no others', async () => {
      await log.add('w1', [rise('one')], newId)
      await log.add('w2', [rise('one')], newId)
      const first = await told('w2')
      const waiting = async (week: string) => (await log.serversWaiting(week)).filter(one => one.startsWith('w'))
      expect(await waiting('2026-W41')).toEqual(['w1'])
      const behind = decide(first, { is: 'put-off', by: 'p', until: '2026-W43' }, now) as Finding
      const off = decide(behind, { is: 'shown', post: null }, now) as Finding
      await log.save(behind)
      expect(await waiting('2026-W42')).toEqual(['w1', 'w2'])
      await log.save(off)
      expect(await waiting('2026-W42')).toEqual(['w1'])
      expect(await waiting('2026-W43')).toEqual(['w1', 'w2'])
      await log.save(decide(off, { is: 'warn', by: 'p', channel: 'c', text: 't' }, now) as Finding)
      expect(await waiting('2026-W41')).toEqual(['w1', 'w2'])
    })

    test('what was told is due again when its post is behind, or when the week has come until which it was watched', async () => {
      await log.add('c', [rise('one')], newId)
      const first = await told('c')
      expect(await log.due('c', '2026-W60')).toEqual([])
      const behind = decide(first, { is: 'put-off', by: 'p', until: '2026-W43' }, now) as Finding
      await log.save(behind)
      expect(await other.due('c', '2026-W42')).toEqual([behind])
      const off = decide(behind, { is: 'shown', post: null }, now)
      await log.save(off as Finding)
      expect(await log.due('c', '2026-W42')).toEqual([])
      expect(await other.due('c', '2026-W43')).toEqual([off])
    })

    test('of two decisions at once one counts, and a warning waits until it is posted', async () => {
      await log.add('d', [rise('one')], newId)
      const first = await told('d')
      const warn = decide(first, { is: 'warn', by: 'p', channel: 'c', text: 't' }, now) as Finding
      const dismiss = decide(first, { is: 'dismiss', by: 'q', why: 'w' }, now) as Finding
      expect([await log.save(warn), await other.save(dismiss)]).toEqual(['saved', 'stale'])
      expect(await other.unposted('d')).toEqual([warn])
      await log.save(decide(warn, { is: 'warning-posted', message: 'm' }, now) as Finding)
      expect(await log.unposted('d')).toEqual([])
      expect((await log.load(warn.id))?.decisions).toMatchObject([{ by: 'p', at: now, did: 'warned', why: 't' }])
    })

    test('a server has all of its own, the latest first, and a warning that is withdrawn waits until that is posted, too', async () => {
      await log.add('e', [rise('one', '2026-W40'), rise('two', '2026-W41')], newId)
      expect((await other.of('e')).map(one => one.key)).toEqual(['two', 'one'])
      const [finding] = (await log.of('e')) as [Finding]
      let now_ = finding
      for (const event of [
        { is: 'told', post: null },
        { is: 'warn', by: 'p', channel: 'c', text: 't' },
        { is: 'warning-posted', message: 'm' },
        { is: 'undo', by: 'q', of: 1, why: 'sorry' },
      ] as const) {
        now_ = decide(now_, event, now) as Finding
        expect(await log.save(now_)).toBe('saved')
      }
      expect(await other.unposted('e')).toEqual([now_])
      await log.save(decide(now_, { is: 'withdrawal-posted' }, now) as Finding)
      expect(await other.unposted('e')).toEqual([])
    })

    test('a server that leaves takes its findings along', async () => {
      await log.forget('a')
      expect(await log.due('a', '2026-W41')).toEqual([])
    })
  })
