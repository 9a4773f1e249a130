// Which releases are still to be read for what they found: every week of each server, in order, until somebody has, and never the pool's.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openReleaseLog } from '../../src/stores/release-log.ts'
import type { ReleaseLog, Scope } from '../../src/trends/outcome-log.ts'
import { databases, type Opened } from '../stores/databases.ts'

const state = { first: '2026-W10', families: {}, series: {}, rises: [] }
const of = (server: string): Scope => ({ kind: 'server', server })

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let releases: ReleaseLog
    beforeAll(async () => {
      opened = await kind.open()
      releases = openReleaseLog(opened.db)
    })
    afterAll(() => opened?.close())

    test('a frozen release is unread until it is read, whoever froze it', async () => {
      const other = openReleaseLog(await opened.again())
      await releases.freeze(of('a'), '2026-W10', '{"a":10}', state)
      await releases.freeze(of('b'), '2026-W10', '{"b":10}', state)
      await releases.freeze({ kind: 'pool' }, '2026-W10', '{"pool":10}', state)
      expect(await other.unread()).toEqual([
        { server: 'a', week: '2026-W10' },
        { server: 'b', week: '2026-W10' },
      ])
      await other.markRead('a', '2026-W10')
      expect((await releases.unread()).map(one => one.server)).toEqual(['b'])
    })

    test('of several weeks that were closed at once each is read, the oldest first', async () => {
      const weeksOf = async (server: string) =>
        (await releases.unread()).filter(one => one.server === server).map(one => one.week)
      for (const week of ['2026-W11', '2026-W12']) await releases.freeze(of('a'), week, `{"${week}":1}`, state)
      expect(await weeksOf('a')).toEqual(['2026-W11', '2026-W12'])
      // Read while later ones were frozen: those are still to be read.
      await releases.freeze(of('a'), '2026-W13', '{"a":13}', state)
      await releases.markRead('a', '2026-W11')
      expect(await weeksOf('a')).toEqual(['2026-W12', '2026-W13'])
      await releases.markRead('a', '2026-W13')
      expect(await weeksOf('a')).toEqual([])
      expect(await weeksOf('b')).toEqual(['2026-W10'])
    })
  })
