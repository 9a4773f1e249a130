// Families on every database: one statement a save, versions only ever added, and limits.
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { limits } from '../../src/families/family.ts'
import { skeletonOf } from '../../src/families/names.ts'
import { openFamilyStore } from '../../src/stores/family-store.ts'
import { openTraces } from '../../src/stores/traces.ts'
import { draftOf, named, referenceOf, versionOf } from '../families/made-families.ts'
import { databases, type Opened } from '../stores/databases.ts'
import { testSeal } from '../stores/test-seal.ts'

for (const kind of databases)
  describe.skipIf(kind.missing)(`on ${kind.name}${kind.missing ? ` (skipped: ${kind.missing})` : ''}`, () => {
    let opened: Opened
    beforeAll(async () => {
      opened = await kind.open()
    })
    afterAll(() => opened?.close())
    const key = (name: string) => skeletonOf(name)
    const make = async (server: string, id: string, name: string) => {
      const store = openFamilyStore(opened.db)
      const draft = draftOf(server, named(id, name))
      expect(await store.create(draft, key(name))).toBe('saved')
      return { store, draft }
    }

    test('a draft is made once, however often its interaction is delivered; a look-alike name is refused', async () => {
      const { store, draft } = await make('s1', 'f-aaaaaa', 'Larkmoor 10')
      expect(await store.create({ ...draft, id: 'f-bbbbbb' }, key('Something else'))).toBe('saved')
      expect((await store.heads('s1')).map(one => one.id)).toEqual(['f-aaaaaa'])
      const twin = draftOf('s1', named('f-cccccc', 'Lаrkmoor lO'))
      expect(await store.create(twin, key('Lаrkmoor lO'))).toBe('name-taken')
      // Another server may call its own as it likes.
      expect(await store.create(draftOf('s2', named('f-aaaaaa', 'Larkmoor 10')), key('Larkmoor 10'))).toBe('saved')
      expect(await store.load('s2', 'f-aaaaaa')).toMatchObject({ server: 's2', draft: { facts: 1 } })
    })

    test('of two who save the same revision one is told that it is stale', async () => {
      const { store, draft } = await make('s3', 'f-aaaaaa', 'Curlew')
      const there = openFamilyStore(await opened.again())
      const next = (by: string) => ({ ...draft, revision: 2, changedBy: by })
      const done = await Promise.all([store.save(next('i1'), key('Curlew')), there.save(next('i2'), key('Curlew'))])
      expect(done.sort()).toEqual(['saved', 'stale'])
      expect(await store.load('s3', 'f-aaaaaa')).toMatchObject({ revision: 2 })
    })

    test('a version is put in force with its head or not at all, once, whoever races', async () => {
      const { store, draft } = await make('s4', 'f-aaaaaa', 'Plover')
      const facts = named('f-aaaaaa', 'Plover')
      const after = (by: string) => ({
        ...draft,
        state: 'in-force' as const,
        head: 1,
        revision: 2,
        draft: null,
        changedBy: by,
      })
      const there = openFamilyStore(await opened.again())
      const done = await Promise.all(
        Array.from({ length: 8 }, (_, i) =>
          (i % 2 ? store : there).putInForce(after(`i${i}`), key('Plover'), versionOf(facts, 1)),
        ),
      )
      expect(done.filter(one => one === 'saved')).toHaveLength(1)
      expect(await store.versions('s4', 'f-aaaaaa')).toHaveLength(1)
      const [head] = await there.heads('s4')
      expect(head).toMatchObject({ state: 'in-force', head: 1, digest: versionOf(facts, 1).digest })
      expect(await there.byDigest('s4', 'f-aaaaaa', versionOf(facts, 1).digest)).toMatchObject({ number: 1 })
      expect(await there.inForce('s4')).toMatchObject([{ number: 1, facts: { identity: { name: 'Plover' } } }])
      // Seen before another head: nothing changes.
      const late = { ...after('late'), head: 1, revision: 3 }
      expect(await store.putInForce(late, key('Plover'), versionOf(facts, 1))).toBe('stale')
      expect(await store.versions('s4', 'f-aaaaaa')).toHaveLength(1)
    })

    test('what waits for a second moderator is found, whether it is a first version or a further one, the longest first', async () => {
      const { store, draft } = await make('s-waits', 'f-aaaaaa', 'Dunlin')
      const other = draftOf('s-waits', named('f-bbbbbb', '"review":{ Knot'))
      expect(await store.create(other, key('Knot'))).toBe('saved')
      expect(await store.waiting('s-waits')).toEqual([])
      const asked = (at: number) => ({ by: '11', at, why: 'counted', digest: 'sha256:a' })
      const further = { ...draft, state: 'in-force' as const, revision: 2, changedBy: 'i1', review: asked(2000) }
      expect(await store.save(further, key('Dunlin'))).toBe('saved')
      const first = { ...other, state: 'in-review' as const, revision: 2, changedBy: 'i2', review: asked(1000) }
      expect(await store.save(first, key('Knot'))).toBe('saved')
      expect((await store.waiting('s-waits')).map(one => one.id)).toEqual(['f-bbbbbb', 'f-aaaaaa'])
      expect(await store.waiting('s-others')).toEqual([])
      expect(await store.save({ ...further, revision: 3, changedBy: 'i3', review: null }, key('Dunlin'))).toBe('saved')
      expect((await store.waiting('s-waits')).map(one => one.id)).toEqual(['f-bbbbbb'])
    })

    test('another version is added, the one before stays as it was', async () => {
      const store = openFamilyStore(opened.db)
      const facts = named('f-aaaaaa', 'Plover')
      const before = await store.load('s4', 'f-aaaaaa')
      if (!before) throw new Error('it is gone')
      const other = { ...facts, alsoEnough: ['size-far-18650'] }
      const next = { ...before, head: 2, revision: before.revision + 1, changedBy: 'second' }
      expect(await store.putInForce(next, key('Plover'), versionOf(other, 2))).toBe('saved')
      expect((await store.versions('s4', 'f-aaaaaa')).map(one => one.number)).toEqual([2, 1])
      expect(await store.version('s4', 'f-aaaaaa', 1)).toMatchObject({ facts: { alsoEnough: [] } })
    })

    test('so many families a server, so many drafts, and no more', async () => {
      const store = openFamilyStore(opened.db)
      const begin = (n: number) =>
        store.create(draftOf('full', named(`f-full${String(n).padStart(3, '0')}`, `Model ${n * 7} x`)), `model${n}`)
      const first: string[] = []
      for (let n = 0; n < limits.drafts + 4; n++) first.push(await begin(n))
      expect(first.filter(one => one === 'saved')).toHaveLength(limits.drafts)
      expect(first.filter(one => one === 'too-many-drafts')).toHaveLength(4)
      // Those in force count for the families, not for the drafts.
      await opened.db.updateTable('families').set({ state: 'in-force' }).where('server', '=', 'full').execute()
      const row = await opened.db
        .selectFrom('families')
        .selectAll()
        .where('server', '=', 'full')
        .executeTakeFirstOrThrow()
      for (let n = limits.drafts; n < limits.families; n++)
        await opened.db
          .insertInto('families')
          .values({ ...row, id: `f-more${n}`, name_key: `more${n}`, opened_by: `more${n}` })
          .execute()
      expect(await begin(900)).toBe('too-many-families')
    })

    test('references and photographs keep to their limits and go with the server', async () => {
      const { store } = await make('s5', 'f-aaaaaa', 'Dunlin')
      expect(await store.keepReference('s5', 'f-aaaaaa', referenceOf('r1'), 2)).toBe('kept')
      expect(await store.keepReference('s5', 'f-aaaaaa', referenceOf('r2'), 2)).toBe('kept')
      expect(await store.keepReference('s5', 'f-aaaaaa', referenceOf('r3'), 2)).toBe('too-many')
      expect(await store.keepReference('s5', 'f-aaaaaa', referenceOf('r1', { state: 'withdrawn' }), 2)).toBe('kept')
      expect(await store.references('s5', 'f-aaaaaa')).toMatchObject([{ state: 'withdrawn' }, { state: 'accepted' }])
      const photo = {
        ...{ id: 'p1', server: 's5', family: 'f-aaaaaa', feature: 'legs', option: 'three', genuine: true },
        ...{ alt: 'three legs', by: '11', at: 5, bytes: new Uint8Array([1, 2, 3]) },
      }
      expect(await store.keepPhoto(photo, 1)).toBe('kept')
      expect(await store.keepPhoto({ ...photo, id: 'p2' }, 1)).toBe('too-many')
      // Delivered again, the last one is there; of a family that went meanwhile none is kept.
      expect(await store.keepPhoto(photo, 1)).toBe('kept')
      expect(await store.keepPhoto({ ...photo, id: 'p2', family: 'f-bbbbbb' }, 9)).toBe('gone')
      expect(await store.photos('s5', 'f-aaaaaa')).toMatchObject([
        { id: 'p1', genuine: true, alt: 'three legs', size: 3 },
      ])
      expect((await store.photo('s5', 'p1'))?.bytes).toEqual(new Uint8Array([1, 2, 3]))
      expect(await store.photo('other', 'p1')).toBeUndefined()
      await openTraces(opened.db, testSeal).forgetServer('s5')
      expect(await store.heads('s5')).toEqual([])
      expect(await store.photos('s5', 'f-aaaaaa')).toEqual([])
      expect(await store.heads('s4')).not.toEqual([])
    })

    test('six trials a week, counted together by all processes', async () => {
      const stores = [openFamilyStore(opened.db), openFamilyStore(await opened.again())]
      const made = await Promise.all(
        Array.from({ length: 10 }, (_, i) => stores[i % 2]?.countTrial('s6', '2026-W48', 6)),
      )
      expect(made.filter(Boolean)).toHaveLength(6)
      expect(await stores[0]?.countTrial('s6', '2026-W49', 6)).toBe(true)
    })

    test('who has their name taken out is in no family any more, and what they said of cells stays', async () => {
      const { store, draft } = await make('s7', 'f-aaaaaa', 'Godwit')
      const facts = named('f-aaaaaa', 'Godwit')
      const review = { by: '77', at: 1, why: 'I counted', digest: 'x' }
      await store.save({ ...draft, revision: 2, state: 'in-review', review, changedBy: 'i' }, key('Godwit'))
      const now = await store.load('s7', 'f-aaaaaa')
      if (!now) throw new Error('it is gone')
      const put = { ...now, revision: 3, head: 1, state: 'in-force' as const, changedBy: 'j' }
      await store.putInForce(put, key('Godwit'), versionOf(facts, 1, { by: '77', agreedBy: '88', why: 'mine' }))
      for (const id of ['a', 'b'])
        await store.keepReference('s7', 'f-aaaaaa', referenceOf(id, { by: '77', acceptedBy: '88' }), 9)
      const traces = openTraces(opened.db, testSeal)
      expect((await traces.of('77')).families).toHaveLength(4)
      expect((await traces.forgetPerson('77')).families).toBeGreaterThan(2)
      expect((await traces.of('77')).families).toEqual([])
      expect(await store.version('s7', 'f-aaaaaa', 1)).toMatchObject({ by: '', agreedBy: '88', why: '' })
      const cells = await store.references('s7', 'f-aaaaaa')
      expect(new Set(cells.map(one => one.by)).size).toBe(1)
      expect(cells[0]?.by).not.toContain('77')
      expect((await store.load('s7', 'f-aaaaaa'))?.review).toMatchObject({ by: '', why: '' })
      expect((await traces.forgetPerson('77')).families).toBe(0)
    })
  })
