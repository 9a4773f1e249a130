// Adding, editing, reviewing and removing links: what each does to the settings, and what it refuses.
import { expect, test } from 'vitest'
import {
  changeLinks,
  isOlderThanHalfAYear,
  isUnreviewed,
  type LinkChange,
  reviewEvery,
} from '../../src/server/change-links.ts'
import { mostLinks, type ServerSettings, unsettled } from '../../src/server/settings.ts'

const now = Date.UTC(2026, 10, 27)
const later = now + 1000
const shop = { is: 'add', id: 'a', url: 'https://shop.example', title: 'A shop' } as const

const after = (settings: ServerSettings, change: LinkChange, at = now): ServerSettings => {
  const changing = changeLinks(settings, change, at)
  if (!changing.ok) throw new Error(changing.refusal.code)
  return changing.settings
}
const codeOf = (settings: ServerSettings, change: LinkChange): string => {
  const changing = changeLinks(settings, change, now)
  return changing.ok ? 'ok' : changing.refusal.code
}
const one = after(unsettled('s'), shop)

test.each(['remove', 'still-good'] as const)('a link that is not there is left alone: %s', is => {
  expect(codeOf(one, { is, id: 'b' })).toBe('no-link')
})

test('a link is added, dated and reviewed now, and the revision grows by one', () => {
  expect(one.revision).toBe(1)
  expect(one.links).toEqual([{ id: 'a', url: 'https://shop.example/', title: 'A shop', addedAt: now, reviewedAt: now }])
})

test('another title leaves its dates; another address is a new link under the same name', () => {
  const renamed = after(one, { ...shop, is: 'edit', title: 'The shop' }, later)
  expect(renamed.links).toMatchObject([{ title: 'The shop', addedAt: now, reviewedAt: now }])
  const moved = after(one, { ...shop, is: 'edit', url: 'https://other.example' }, later)
  expect(moved.links).toMatchObject([{ id: 'a', url: 'https://other.example/', addedAt: later, reviewedAt: later }])
})

test('reviewing dates it again, removing takes it away, and neither touches another', () => {
  const two = after(one, { ...shop, id: 'b', url: 'https://other.example' })
  expect(after(two, { is: 'still-good', id: 'a' }, later).links.map(link => link.reviewedAt)).toEqual([later, now])
  expect(after(two, { is: 'remove', id: 'a' }).links.map(link => link.id)).toEqual(['b'])
})

test.each([
  ['https://www.shop.example', true],
  ['https://shop.example/#top', true],
  ['https://shop.example/?utm_source=x', true],
  ['https://shop.example/cells', false],
  ['https://shop.example/?page=2', false],
  ['https://shop.example/#/cells', false],
])('%s is the same page: %s', (url, same) => {
  expect(codeOf(one, { ...shop, id: 'b', url })).toBe(same ? 'link-there' : 'ok')
})

test('the same fields in another order, or a slash more, are the same page', () => {
  const two = after(one, { ...shop, id: 'b', url: 'https://shop.example/c/?size=1&sort=2' })
  expect(codeOf(two, { ...shop, id: 'd', url: 'https://shop.example/c?sort=2&size=1' })).toBe('link-there')
})

test('what is refused changes nothing', () => {
  expect(codeOf(one, { ...shop, id: 'b' })).toBe('link-there')
  expect(codeOf(one, { ...shop, id: 'b', url: 'http://other.example' })).toBe('link-not-https')
  expect(codeOf(one, { ...shop, id: 'b', url: 'https://other.example', title: 'shop.example' })).toBe(
    'title-names-host',
  )
  for (const is of ['still-good', 'remove'] as const) expect(codeOf(one, { is, id: 'gone' })).toBe('no-link')
  expect(codeOf(one, { ...shop, is: 'edit', id: 'gone' })).toBe('no-link')
  const links = Array.from({ length: mostLinks }, (_, i) => ({
    id: `l${i}`,
    url: `https://s${i}.example/`,
    title: 'x',
    addedAt: now,
    reviewedAt: now,
  }))
  expect(codeOf({ ...unsettled('s'), links }, shop)).toBe('too-many-links')
})

test('a link is shown as unreviewed after a year, and not before', () => {
  const [link] = one.links
  if (!link) throw new Error('no link')
  expect(isUnreviewed(link, now + reviewEvery)).toBe(false)
  expect(isUnreviewed(link, now + reviewEvery + 1)).toBe(true)
})

test('moderators are told of a link that nobody has looked at for more than 182 days', () => {
  const [link] = one.links
  if (!link) throw new Error('no link')
  const day = 24 * 3600_000
  expect(isOlderThanHalfAYear(link, now + 182 * day)).toBe(false)
  expect(isOlderThanHalfAYear(link, now + 182 * day + 1)).toBe(true)
})
