// Which photographs stand beside a family, a question and a known fake; good ones and false ones never in one gallery.
import { expect, test } from 'vitest'
import { photosOfFake, photosOfFamily, photosOfQuestion } from '../../src/families/photos.ts'

type Photo = { readonly id: string; readonly feature: string; readonly option: string; readonly genuine: boolean }
const photo = (id: string, feature: string, option: string, genuine = true): Photo => ({ id, feature, option, genuine })
const ids = (list: readonly Photo[]) => list.map(one => one.id).join(' ')

test('beside a family: by its features in their order, nine of a kind, nothing of what is not known', () => {
  const photos = [
    ...[photo('a', 'top', 'flat'), photo('b', 'legs', 'three'), photo('c', 'legs', 'four', false)],
    ...[photo('d', 'colour', 'red'), photo('e', 'top', 'button', false)],
  ]
  const shown = photosOfFamily(photos, ['legs', 'top'])
  expect(ids(shown.good)).toBe('b a')
  expect(ids(shown.false)).toBe('c e')
  const many = Array.from({ length: 12 }, (_, i) => photo(`p${i}`, 'legs', 'three', i % 4 > 0))
  expect(photosOfFamily(many, ['legs']).good).toHaveLength(9)
  expect(photosOfFamily([...many, ...many], ['legs']).good).toHaveLength(9)
})

test('beside a question: its own alone, two of a kind, two that differ before two of the same', () => {
  const photos = [
    ...[photo('a', 'legs', 'three'), photo('b', 'legs', 'three'), photo('c', 'legs', 'two')],
    ...[photo('d', 'legs', 'four', false), photo('e', 'legs', 'four', false), photo('f', 'legs', 'five', false)],
    ...[photo('g', 'legs', 'three', false), photo('h', 'top', 'flat')],
  ]
  const shown = photosOfQuestion(photos, 'legs')
  expect(ids(shown.good)).toBe('a c')
  expect(ids(shown.false)).toBe('d f')
  expect(ids(photosOfQuestion(photos.slice(0, 2), 'legs').good)).toBe('a b')
  expect(ids(photosOfQuestion([...photos].reverse(), 'legs').good)).toBe('c b')
  expect(photosOfQuestion(photos, 'colour')).toEqual({ good: [], false: [] })
})

test('beside a known fake: false ones alone, of an option of its look, two at most', () => {
  const photos = [
    ...[photo('a', 'legs', 'four'), photo('b', 'legs', 'four', false), photo('c', 'legs', 'three', false)],
    ...[photo('d', 'top', 'flat', false), photo('e', 'code', 'wrap', false), photo('f', 'legs', 'five', false)],
  ]
  expect(ids(photosOfFake(photos, { look: { legs: ['four', 'five'], top: ['flat'] } }))).toBe('b d')
})
