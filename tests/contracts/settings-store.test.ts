// The settings store's contract, held against every database the project can use.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { unsettled } from '../../src/server/settings.ts'
import type { SettingsStore } from '../../src/server/settings-store.ts'
import { openSettingsStore } from '../../src/stores/settings-store.ts'
import { databases, type Opened } from '../stores/databases.ts'

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let store: SettingsStore
    let other: SettingsStore
    beforeAll(async () => {
      opened = await kind.open()
      store = openSettingsStore(opened.db)
      other = openSettingsStore(await opened.again())
    })
    afterAll(() => opened?.close())

    test('a server that has decided nothing records, posts and offers nothing', async () => {
      expect(await store.load('s0')).toEqual(unsettled('s0'))
      expect(await store.load('s0')).toMatchObject({ outcomes: false, pooling: false, forumOffers: [] })
    })

    test('what was saved is read by another process', async () => {
      const first = { ...unsettled('s1'), revision: 1, language: 'de', moderatorRoles: ['r1'] }
      expect(await store.save(first)).toBe('saved')
      expect(await other.load('s1')).toEqual(first)
    })

    test('of two moderators who change the same settings at once, one is told', async () => {
      const base = { ...unsettled('s2'), revision: 1 }
      expect([await store.save(base), await other.save({ ...base, language: 'es' })]).toEqual(['saved', 'stale'])
      const both = await Promise.all([
        store.save({ ...base, revision: 2, language: 'de' }),
        other.save({ ...base, revision: 2, language: 'es' }),
      ])
      expect(both.toSorted()).toEqual(['saved', 'stale'])
      expect((await store.load('s2')).revision).toBe(2)
    })

    test('what was changed is kept with the change itself, newest first, and only where it was saved', async () => {
      const base = { ...unsettled('s4'), revision: 1 }
      const link = { id: 'l', url: 'https://shop.example/', title: 'A shop', addedAt: 1, reviewedAt: 1 }
      await store.save({ ...base, language: 'de' }, { by: 'ada', at: 10 })
      await other.save({ ...base, revision: 2, language: 'de', links: [link] }, { by: 'ben', at: 20 })
      expect(await store.save({ ...base, revision: 2, language: 'es' }, { by: 'ada', at: 30 })).toBe('stale')
      await other.save({ ...base, revision: 3, language: 'es', links: [link] }, { by: 'ben', at: 40, undoes: 1 })
      const ben = { by: 'ben', undoes: null, was: {}, is: {}, links: [] }
      expect(await store.history('s4')).toEqual([
        { ...ben, revision: 3, at: 40, undoes: 1, was: { language: 'de' }, is: { language: 'es' } },
        { ...ben, revision: 2, at: 20, links: [{ at: 0, was: null, is: link }] },
        { ...ben, revision: 1, by: 'ada', at: 10, was: { language: null }, is: { language: 'de' } },
      ])
      expect(await store.history('s0')).toEqual([])
      // Of two at once one is in it.
      const both = await Promise.all(
        ['de', 'en'].map((language, i) =>
          [store, other][i]?.save({ ...base, revision: 4, language }, { by: language, at: 50 }),
        ),
      )
      expect(both.toSorted()).toEqual(['saved', 'stale'])
      const [newest] = await store.history('s4')
      expect(newest?.by).toBe((await store.load('s4')).language)
    })

    test('a change is forgotten after its time, and a damaged history begins anew without holding a change up', async () => {
      const base = { ...unsettled('s5'), revision: 1 }
      await store.save(base, { by: 'ada', at: 10 })
      await store.save({ ...base, revision: 2, language: 'de' }, { by: 'ada', at: 1000 })
      await store.save({ ...base, revision: 3, language: 'es' }, { by: 'ada', at: 2000 })
      expect(await store.forgetChanges(1500)).toBeGreaterThan(0)
      expect((await store.history('s5')).map(one => one.revision)).toEqual([3])
      expect(await store.forgetChanges(1500)).toBe(0)
      await opened.db.updateTable('servers').set({ history: '{"v":9}' }).where('id', '=', 's5').execute()
      expect(await store.save({ ...base, revision: 4, language: 'en' }, { by: 'ben', at: 3000 })).toBe('saved')
      expect((await store.history('s5')).map(one => one.by)).toEqual(['ben'])
      for (const server of ['s4', 's5']) await store.forget(server)
    })

    test('a server that leaves is forgotten', async () => {
      await store.save({ ...unsettled('s3'), revision: 1 })
      await store.forget('s3')
      expect(await other.load('s3')).toEqual(unsettled('s3'))
      expect((await store.all()).map(one => one.server)).toEqual(['s1', 's2'])
    })
  })
