// A cell held against every family: what contradicts each, which are alike, and when another one may be named.
import { expect, test } from 'vitest'
import { type Answers, option } from '../../src/engine/answers.ts'
import { derive } from '../../src/families/derive/derive.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { featuresOf, isKept, isLook } from '../../src/families/features.ts'
import {
  againstAll,
  type Candidate,
  groupsOf,
  holdAgainst,
  looksLikeAnother,
  nextLook,
} from '../../src/families/weigh/held-against.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'
import { anyCell } from './base.ts'
import { inventedFamilies, unnamedFamilies } from './known-families.ts'
import { named } from './made-families.ts'

const candidate = (facts: Facts | undefined): Candidate => {
  const derived = facts && derive(facts, anyCell)
  if (!facts || !derived?.ok) throw new Error('it does not derive')
  return { facts, pack: derived.pack }
}
const heron = candidate(inventedFamilies['brindlewick-heron'])
const rook = candidate(inventedFamilies['brindlewick-rook'])
const amber = candidate(inventedFamilies['tarnhollow-amber'])
const c = candidate(unnamedFamilies['unnamed-18650-c'])
const twin = candidate(named('f-twin01', 'Twin', unnamedFamilies['unnamed-18650-c']))
const all = [heron, rook, amber]
const said = (answers: Record<string, string>): Answers => ({
  format: option('18650'),
  ...Object.fromEntries(Object.entries(answers).map(([id, one]) => [id, option(one)])),
})

test('names for each what contradicts it, the strongest first, and what is as made', () => {
  const held = holdAgainst(heron, said({ legs: 'three', 'vent-disc': 'smooth', 'code-place': 'wrap' }))
  expect(held).toMatchObject({ contradicts: ['legs', 'vent-disc'], must: true, asMade: ['code-place'] })
  expect(holdAgainst(heron, {}).contradicts).toEqual([])
})

test('fits none, one or several; nothing to say where nothing was looked at', () => {
  expect(againstAll(all, {})).toEqual({ is: 'nothing-to-say' })
  expect(againstAll(all, said({ legs: 'other', 'code-place': 'nowhere' }))).toMatchObject({ is: 'fits-none', of: 3 })
  expect(againstAll(all, said({ legs: 'five', 'code-place': 'can' }))).toMatchObject({ is: 'fits', of: 3 })
  expect(againstAll([heron, rook], said({ 'code-place': 'wrap' }))).toMatchObject({ is: 'fits-several' })
  expect(againstAll([c, twin], said({ legs: 'three' }))).toMatchObject({ is: 'fits', fit: [{}, {}] })
})

test('families made alike are one group', () => {
  expect(groupsOf([c, twin])).toHaveLength(1)
  expect(groupsOf([c, twin, heron, rook])).toHaveLength(3)
})

const asRook = said({ legs: 'three', 'vent-disc': 'four-lines', 'code-place': 'wrap' })
test('another one is named by two answers looked at twice, and by nothing less', () => {
  const both = new Set(['legs', 'vent-disc'])
  expect(looksLikeAnother(heron, all, asRook, both).map(one => one.candidate.facts.identity.name)).toEqual([
    'Brindlewick Rook',
  ])
  expect(looksLikeAnother(heron, all, asRook, new Set(['legs']))).toEqual([])
  expect(looksLikeAnother(heron, all, asRook, new Set())).toEqual([])
  // A must of it that is contradicted keeps it from being named.
  expect(looksLikeAnother(heron, all, { ...asRook, 'code-place': option('can') }, both)).toEqual([])
  // Families made alike are named together.
  const rookTwin = candidate(named('f-twin02', 'Rook twin', inventedFamilies['brindlewick-rook']))
  expect(looksLikeAnother(heron, [...all, rookTwin], asRook, both)).toHaveLength(2)
})

test('what is looked at next parts the families, and nothing is asked where nothing is left to part', () => {
  const groups = groupsOf(all)
  const first = nextLook(groups, anyCell, said({}), ['legs', 'vent-disc', 'code-place'])
  expect(first?.question).toBe('legs')
  expect(nextLook(groups, anyCell, said({ legs: 'other' }), ['vent-disc'])).toBeUndefined()
  // A look that nothing is said of parts nobody.
  const untold = [...featuresOf(anyCell).values()].find(
    one => isLook(one) && all.every(({ facts }) => facts.traits[one.id] === undefined),
  )
  expect(nextLook(groups, anyCell, said({}), [untold?.id ?? ''])).toBeUndefined()
  expect(
    nextLook(groups, anyCell, said({ legs: 'four', 'vent-disc': 'raised-button' }), ['legs', 'vent-disc']),
  ).toBeUndefined()
})

test('features are looks that no hazard reads and that say how a cell is made; outcomes keep them and what it was sold as', () => {
  const features = featuresOf(anyCell)
  expect(features.has('legs')).toBe(true)
  for (const id of ['where-bought', 'mass', 'swollen', 'ring', 'sold-as']) expect(features.has(id), id).toBe(false)
  const program = shippedProgram()
  for (const id of ['legs', 'format', 'sold-as']) expect(isKept(program, id), id).toBe(true)
  for (const id of ['where-bought', 'mass', 'swollen', 'no-such-question']) expect(isKept(program, id), id).toBe(false)
  expect(featuresOf(anyCell)).toBe(features)
})
