// The contract of notices, held against every database the project can use.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Notice, NoticeStore } from '../../src/check/notice-store.ts'
import { openNoticeStore } from '../../src/stores/notice-store.ts'
import { databases, type Opened } from '../stores/databases.ts'

const panel: Notice = { check: 'a', kind: 'panel', channel: 'c', message: 'm1', until: 100 }

for (const kind of databases) {
  describe.skipIf(kind.missing)(`notices on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    let store: NoticeStore
    beforeAll(async () => {
      opened = await kind.open()
      store = openNoticeStore(opened.db)
    })
    afterAll(() => opened.close())

    test('keeps one of each kind, and gives back the message it takes the place of', async () => {
      expect(await store.put(panel)).toBeUndefined()
      expect(await store.put({ ...panel, kind: 'help-request', until: 50 })).toBeUndefined()
      expect(await store.put({ ...panel, until: 120 })).toBeUndefined()
      expect(await store.put({ ...panel, message: 'm2', until: 120 })).toEqual({ ...panel, until: 120 })
      expect(await store.of('a')).toEqual([
        { ...panel, kind: 'help-request', until: 50 },
        { ...panel, message: 'm2', until: 120 },
      ])
    })

    test('tells whose time has come, and drops only the message that was meant', async () => {
      await store.put({ ...panel, check: 'b', until: 80 })
      expect((await store.expired(80, 10)).map(one => [one.check, one.kind])).toEqual([
        ['a', 'help-request'],
        ['b', 'panel'],
      ])
      expect(await store.expired(80, 1)).toHaveLength(1)
      expect((await store.ofKind('panel', 10)).map(one => one.check)).toEqual(['b', 'a'])
      expect(await store.ofKind('panel', 1)).toHaveLength(1)
      await store.drop({ ...panel, check: 'b', message: 'another' })
      expect(await store.of('b')).toHaveLength(1)
      await store.drop({ ...panel, check: 'b' })
      expect(await store.of('b')).toEqual([])
    })
  })
}
