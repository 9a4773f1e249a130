// The history of a server's settings: what differs is kept within its bounds, and every undo restores the exact state or says why not.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { changeSettings } from '../../src/server/change.ts'
import { changeLinks } from '../../src/server/change-links.ts'
import { changesKept, type History, mostChanges, withChange, withoutPerson } from '../../src/server/history.ts'
import { mostLinks, type ServerSettings, unsettled } from '../../src/server/settings.ts'
import { undo } from '../../src/server/undo.ts'

type Kept = { readonly settings: ServerSettings; readonly history: History }
const asked = { by: 'i', discordLanguage: null }
const begin: Kept = { settings: unsettled('s'), history: [] }

/** What people decide, without what says which change it was. */
const decided = ({ revision: _r, changedBy: _c, discordLanguage: _d, ...rest }: ServerSettings) => rest

const step = fc.record({
  by: fc.constantFrom('ada', 'ben'),
  does: fc.oneof(
    fc.record({ is: fc.constant('outcomes' as const), on: fc.boolean() }),
    fc.record({ is: fc.constant('pooling' as const), on: fc.boolean() }),
    fc.record({ is: fc.constant('language' as const), language: fc.constantFrom('de', 'es', null) }),
    fc.record({ is: fc.constant('keep-weeks' as const), weeks: fc.constantFrom(52, 104) }),
    fc.record({ is: fc.constant('reports-channel' as const), channel: fc.constantFrom('c1', 'c2', null) }),
    fc.record({ is: fc.constant('moderator-roles' as const), roles: fc.subarray(['r1', 'r2']) }),
    fc.record({
      is: fc.constantFrom('add' as const, 'edit' as const, 'still-good' as const, 'remove' as const),
      id: fc.constantFrom('a', 'b', 'c'),
      url: fc.constantFrom('https://one.example/', 'https://two.example/'),
      title: fc.constantFrom('A shop', 'Another'),
    }),
    fc.record({ is: fc.constant('undo' as const), of: fc.nat({ max: 12 }) }),
  ),
})
type Step = typeof step extends fc.Arbitrary<infer One> ? One : never

function take({ settings, history }: Kept, { by, does }: Step, at: number): Kept {
  const changing =
    does.is === 'undo'
      ? undo(settings, history, does.of, 'i')
      : 'id' in does
        ? does.is === 'add' && settings.links.some(link => link.id === does.id)
          ? { ok: false as const }
          : changeLinks(settings, does, at)
        : changeSettings(settings, does, asked)
  if (!changing.ok) return { settings, history }
  const made = { by, at, ...(does.is === 'undo' && { undoes: does.of }) }
  return { settings: changing.settings, history: withChange(history, settings, changing.settings, made) }
}

test('whatever people change: a change taken back at once restores exactly what was, and its undo what it was before that', () => {
  let undone = 0
  fc.assert(
    fc.property(fc.array(step, { maxLength: 14 }), step, (steps, last) => {
      const before = steps.reduce((kept, one, i) => take(kept, one, 1000 + i), begin)
      const after = take(before, last, 2000)
      if (after.settings === before.settings || after.history[0]?.revision !== after.settings.revision) return
      const back = undo(after.settings, after.history, after.settings.revision, 'i')
      if (!back.ok) throw new Error(back.refusal.code)
      expect(decided(back.settings)).toEqual(decided(before.settings))
      const made = { by: 'ben', at: 2001, undoes: after.settings.revision }
      const history = withChange(after.history, after.settings, back.settings, made)
      const again = undo(back.settings, history, after.settings.revision, 'i')
      expect(again).toMatchObject({ ok: false, refusal: { code: 'undone-already', by: 'ben', at: 2001 } })
      const forth = undo(back.settings, history, back.settings.revision, 'i')
      if (!forth.ok) throw new Error(forth.refusal.code)
      expect(decided(forth.settings)).toEqual(decided(after.settings))
      undone++
    }),
    { numRuns: 2000 },
  )
  expect(undone).toBeGreaterThan(500)
})

test('whatever was changed after: an undo puts back its own things and touches nothing else, or says why not', () => {
  let [done, refused] = [0, 0]
  fc.assert(
    fc.property(fc.array(step, { minLength: 3, maxLength: 16 }), fc.nat({ max: 16 }), (steps, of) => {
      const { settings, history } = steps.reduce((kept, one, i) => take(kept, one, 1000 + i), begin)
      const change = history.find(one => one.revision === of)
      const back = undo(settings, history, of, 'i')
      if (!change || !back.ok) {
        if (!back.ok && back.refusal.code === 'changed-since') {
          expect(back.refusal.at).toBeGreaterThan(change?.at ?? 0)
          refused++
        }
        expect(back.ok).toBe(false)
        return
      }
      done++
      const touched = new Set(change.links.map(({ was, is }) => (was ?? is)?.id))
      const others = (all: ServerSettings) => all.links.filter(link => !touched.has(link.id))
      expect({ ...back.settings, links: [] }).toEqual({
        ...{ ...settings, ...change.was, links: [] },
        ...{ revision: settings.revision + 1, changedBy: 'i' },
      })
      expect(others(back.settings)).toEqual(others(settings))
      for (const { was, is } of change.links)
        expect(back.settings.links.find(link => link.id === (was ?? is)?.id) ?? null).toEqual(was)
      expect(new Set(back.settings.links.map(link => link.url)).size).toBe(back.settings.links.length)
      expect(back.settings.pooling && !back.settings.outcomes).toBe(false)
    }),
    { numRuns: 4000 },
  )
  expect(Math.min(done, refused)).toBeGreaterThan(100)
})

test('who has changed the same thing after is named, also where the links are full or the address is here again', () => {
  const one = take(begin, { by: 'ada', does: { is: 'language', language: 'de' } }, 1)
  const two = take(one, { by: 'ben', does: { is: 'language', language: 'es' } }, 2)
  expect(undo(two.settings, two.history, 1, 'i')).toEqual({
    ok: false,
    refusal: { code: 'changed-since', by: 'ben', at: 2 },
  })
  const link = { id: 'a', url: 'https://one.example/', title: 'A shop' } as const
  const added = take(begin, { by: 'ada', does: { is: 'add', ...link } }, 1)
  const gone = take(added, { by: 'ada', does: { is: 'remove', ...link } }, 2)
  const twin = take(gone, { by: 'ben', does: { is: 'add', ...link, id: 'b' } }, 3)
  expect(undo(twin.settings, twin.history, 2, 'i')).toMatchObject({ ok: false, refusal: { code: 'link-there' } })
  const links = Array.from({ length: mostLinks }, (_, i) => ({
    ...{ ...link, id: `l${i}`, url: `https://s${i}.example/` },
    ...{ addedAt: 1, reviewedAt: 1 },
  }))
  expect(undo({ ...gone.settings, links }, gone.history, 2, 'i')).toMatchObject({ refusal: { code: 'too-many-links' } })
  expect(undo(begin.settings, [], 1, 'i')).toMatchObject({ refusal: { code: 'change-forgotten' } })
})

test('a link that was removed stands again where it stood', () => {
  const shop = { title: 'A shop' } as const
  const two = [
    { is: 'add', id: 'a', url: 'https://one.example/', ...shop } as const,
    { is: 'add', id: 'b', url: 'https://two.example/', ...shop } as const,
  ].reduce((kept, does, i) => take(kept, { by: 'ada', does }, i), begin)
  const one = take(two, { by: 'ben', does: { is: 'remove', id: 'a', url: 'https://one.example/', ...shop } }, 3)
  const back = undo(one.settings, one.history, 3, 'i')
  expect(back.ok && back.settings.links).toEqual(two.settings.links)
})

test('recording is not taken back under pooling that was turned on after it', () => {
  const one = take(begin, { by: 'ada', does: { is: 'outcomes', on: true } }, 1)
  const two = take(one, { by: 'ben', does: { is: 'pooling', on: true } }, 2)
  expect(undo(two.settings, two.history, 1, 'i')).toEqual({ ok: false, refusal: { code: 'pooling-since' } })
})

test('only so many are kept, none longer than a year, and nothing where nothing has changed', () => {
  let kept = begin
  for (let i = 0; i < mostChanges + 20; i++)
    kept = take(kept, { by: 'ada', does: { is: 'language', language: i % 2 ? 'de' : 'es' } }, i)
  expect(kept.history).toHaveLength(mostChanges)
  expect(kept.history[0]?.revision).toBe(mostChanges + 20)
  const later = take(kept, { by: 'ben', does: { is: 'pooling', on: false } }, changesKept + mostChanges + 10)
  expect(later.history.map(one => one.revision)).toEqual(
    kept.history.filter(one => one.at >= mostChanges + 10).map(one => one.revision),
  )
})

test('a person who has their name deleted leaves what they changed', () => {
  const { history } = take(begin, { by: 'ada', does: { is: 'language', language: 'de' } }, 1)
  expect(withoutPerson(history, 'ada')).toEqual([{ ...history[0], by: '' }])
  expect(withoutPerson(history, 'ben')).toEqual(history)
})
