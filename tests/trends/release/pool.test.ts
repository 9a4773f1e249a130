// Of a family the pool tells once three servers have brought five people each, within the weeks that a figure is about.
import { expect, test } from 'vitest'
import { enoughServers, type PoolContribution } from '../../../src/trends/release/pool.ts'

const week = '2026-W40'
const brought = (server: string, reporters: number, at = week, family = 'rook'): PoolContribution => ({
  ...{ week: at, family, server, reporters },
})
const three = ['here', 'there', 'yonder'].map(server => brought(server, 5))
const tells = (contributions: readonly PoolContribution[], after: string | null = null, upTo = week) =>
  enoughServers(contributions)('rook', after, upTo)

test('three servers with five people each are enough; two of any size, or one with four, are not', () => {
  expect(tells(three)).toBe(true)
  expect(tells([brought('here', 500), brought('there', 500)])).toBe(false)
  expect(tells([...three.slice(1), brought('here', 4)])).toBe(false)
  expect(tells([...three.slice(1), brought('here', 5, week, 'heron')])).toBe(false)
})

test('what a server brings in parts of a week, or week by week of one epoch, adds up', () => {
  expect(tells([...three.slice(1), brought('here', 2), brought('here', 3)])).toBe(true)
  expect(tells([...three.slice(1), brought('here', 2, '2026-W41'), brought('here', 3)], null, '2026-W41')).toBe(true)
})

test('people of other weeks than those asked about bring nothing', () => {
  expect(tells(three, week, '2026-W41')).toBe(false)
  expect(tells(three, '2026-W39')).toBe(true)
  expect(tells(three, null, '2026-W39')).toBe(false)
})
