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
      expect(await store.load('s0')).toMatchObject({ outcomes: false, pooling: false, forumOffers: null })
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

    test('a server that leaves is forgotten', async () => {
      await store.save({ ...unsettled('s3'), revision: 1 })
      await store.forget('s3')
      expect(await other.load('s3')).toEqual(unsettled('s3'))
      expect((await store.all()).map(one => one.server)).toEqual(['s1', 's2'])
    })
  })
