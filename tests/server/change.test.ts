// One change at a time: what it does to the settings, what it leaves alone, and what is refused.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Change, changeSettings } from '../../src/server/change.ts'
import {
  leastKeepWeeks,
  mostForums,
  mostKeepWeeks,
  publicLanguage,
  reminderHours,
  type ServerSettings,
  unsettled,
} from '../../src/server/settings.ts'

const asked = { by: 'i1', discordLanguage: 'de' }
const after = (settings: ServerSettings, change: Change): ServerSettings => {
  const changing = changeSettings(settings, change, asked)
  if (!changing.ok) throw new Error(changing.refusal.code)
  return changing.settings
}
const refusal = (settings: ServerSettings, change: Change) => {
  const changing = changeSettings(settings, change, asked)
  return changing.ok ? undefined : changing.refusal.code
}

const forum = fc.constantFrom('f', 'g', 'h', 'i', 'j', 'k')
const tags = fc.array(fc.constantFrom('t', 'u', 'v'), { maxLength: 4 })
const changes: fc.Arbitrary<Change> = fc.oneof(
  fc.record({
    is: fc.constantFrom('reports-channel', 'review-channel'),
    channel: fc.option(fc.string({ minLength: 1 })),
  }),
  fc.record({
    is: fc.constant('moderator-roles'),
    roles: fc.array(fc.constantFrom('s', 'a', 'b', 'c'), { maxLength: 12 }),
  }),
  fc.record({ is: fc.constant('reminders'), hours: fc.option(fc.oneof(fc.integer(), fc.constantFrom(1, 6, 48))) }),
  fc.record({ is: fc.constant('reminder-role'), role: fc.option(fc.constantFrom('s', 'a')) }),
  fc.record({ is: fc.constant('language'), language: fc.option(fc.constantFrom('de', 'en')) }),
  fc.record({ is: fc.constantFrom('outcomes', 'pooling'), on: fc.boolean() }),
  fc.record({ is: fc.constant('keep-weeks'), weeks: fc.oneof(fc.integer({ min: -10, max: 400 }), fc.double()) }),
  fc.record({ is: fc.constant('forum-offers'), offers: fc.array(fc.record({ forum, tags }), { maxLength: 8 }) }),
  fc.record({ is: fc.constant('offers-in'), forum, tags }),
)

test('whatever is changed in whatever order: one revision a change, and the settings stay ones that may be', () => {
  fc.assert(
    fc.property(fc.array(changes, { maxLength: 20 }), list => {
      let settings = unsettled('s')
      for (const change of list) {
        const changing = changeSettings(settings, change, asked)
        if (!changing.ok) continue
        expect(changing.settings.revision).toBe(settings.revision + 1)
        settings = changing.settings
        expect(settings.changedBy).toBe('i1')
        expect(settings.pooling && !settings.outcomes).toBe(false)
        expect(settings.moderatorRoles).not.toContain('s')
        expect(settings.moderatorRoles.length).toBeLessThanOrEqual(10)
        expect(Number.isInteger(settings.keepWeeks)).toBe(true)
        expect(settings.keepWeeks).toBeGreaterThanOrEqual(leastKeepWeeks)
        expect(settings.keepWeeks).toBeLessThanOrEqual(mostKeepWeeks)
        const forums = settings.forumOffers.map(one => one.forum)
        expect(new Set(forums).size).toBe(forums.length)
        expect(forums.length).toBeLessThanOrEqual(mostForums)
        for (const one of settings.forumOffers) {
          expect(one.tags.length).toBeGreaterThan(0)
          expect(new Set(one.tags).size).toBe(one.tags.length)
        }
        expect(settings.links).toEqual([])
        expect([null, ...reminderHours]).toContain(settings.reminders?.hours ?? null)
        expect(settings.reminders?.role).not.toBe('s')
      }
    }),
  )
})

test('a change touches nothing but what it names', () => {
  const before = { ...unsettled('s'), revision: 4, language: 'es', reportsChannel: 'c', outcomes: true, pooling: true }
  expect(after(before, { is: 'keep-weeks', weeks: 30 })).toEqual({
    ...before,
    revision: 5,
    changedBy: 'i1',
    discordLanguage: 'de',
    keepWeeks: 30,
  })
})

test('whoever stops recording stops pooling, and recording again does not pool again', () => {
  const pooled = { ...unsettled('s'), outcomes: true, pooling: true }
  const stopped = after(pooled, { is: 'outcomes', on: false })
  expect(stopped).toMatchObject({ outcomes: false, pooling: false })
  expect(after(stopped, { is: 'outcomes', on: true })).toMatchObject({ outcomes: true, pooling: false })
})

test.each<[Change, string]>([
  [{ is: 'moderator-roles', roles: ['s'] }, 'everyone-as-moderator'],
  [{ is: 'moderator-roles', roles: Array.from({ length: 11 }, (_, i) => `r${i}`) }, 'too-many-roles'],
  [{ is: 'helper-roles', roles: ['s'] }, 'everyone-as-helper'],
  [{ is: 'helper-roles', roles: Array.from({ length: 11 }, (_, i) => `r${i}`) }, 'too-many-roles'],
  [{ is: 'pooling', on: true }, 'nothing-to-pool'],
  [{ is: 'keep-weeks', weeks: 25 }, 'weeks-out-of-range'],
  [{ is: 'keep-weeks', weeks: 261 }, 'weeks-out-of-range'],
  [{ is: 'keep-weeks', weeks: 52.5 }, 'weeks-out-of-range'],
])('%j is refused: %s', (change, code) => {
  expect(refusal(unsettled('s'), change)).toBe(code)
})

test('offers in one forum change there and nowhere else; in a forum without any they are added, and go with the last tag', () => {
  const before = {
    ...unsettled('s'),
    forumOffers: [
      { forum: 'f', tags: ['t'] },
      { forum: 'g', tags: ['u'] },
    ],
  }
  const offers = (forum: string, tags: readonly string[]) => after(before, { is: 'offers-in', forum, tags }).forumOffers
  expect(offers('f', ['v', 'w'])).toEqual([
    { forum: 'f', tags: ['v', 'w'] },
    { forum: 'g', tags: ['u'] },
  ])
  expect(offers('h', ['v'])).toEqual([...before.forumOffers, { forum: 'h', tags: ['v'] }])
  expect(offers('f', [])).toEqual([{ forum: 'g', tags: ['u'] }])
})

test('ten roles may moderate, and ten help; each is kept once', () => {
  const ten = Array.from({ length: 10 }, (_, i) => `r${i}`)
  expect(after(unsettled('s'), { is: 'moderator-roles', roles: ten }).moderatorRoles).toEqual(ten)
  expect(after(unsettled('s'), { is: 'helper-roles', roles: ten }).helperRoles).toEqual(ten)
  expect(after(unsettled('s'), { is: 'helper-roles', roles: ['a', 'b', 'a'] }).helperRoles).toEqual(['a', 'b'])
})

test('everybody is spoken to in the language that was chosen, else in the one Discord was told, the newest word first', () => {
  const none = { language: null, discordLanguage: null }
  expect(publicLanguage(none)).toBeUndefined()
  expect(publicLanguage({ ...none, discordLanguage: 'es-ES' })).toBe('es-ES')
  expect(publicLanguage({ ...none, discordLanguage: 'es-ES' }, 'de')).toBe('de')
  expect(publicLanguage({ language: 'en', discordLanguage: 'es-ES' }, 'de')).toBe('en')
})

test('reminders: a time of the menu, a role only where there are any, never the one that everybody has', () => {
  const none = unsettled('s')
  expect(refusal(none, { is: 'reminder-role', role: 'r' })).toBe('no-reminders')
  // A time that the menu does not have is the shortest it has.
  expect(after(none, { is: 'reminders', hours: 7 }).reminders?.hours).toBe(Math.min(...reminderHours))
  const six = after(none, { is: 'reminders', hours: 6 })
  const pinging = after(six, { is: 'reminder-role', role: 'r' })
  expect(pinging.reminders).toEqual({ hours: 6, role: 'r' })
  expect(refusal(pinging, { is: 'reminder-role', role: 's' })).toBe('everyone-as-pinged')
  expect(after(pinging, { is: 'reminders', hours: 12 }).reminders).toEqual({ hours: 12, role: 'r' })
  expect(after(pinging, { is: 'reminders', hours: null }).reminders).toBeNull()
})
