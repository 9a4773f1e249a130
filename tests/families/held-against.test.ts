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

const made = (id: string, traits: Facts['traits'], more: Partial<Facts> = {}): Candidate =>
  candidate({
    ...named(id, id, unnamedFamilies['unnamed-18650-c']),
    traits,
    figures: {},
    fakes: [],
    alsoEnough: [],
    ...more,
  })
const trait = (good: string[], ...against: [string[], 'must' | 'strong' | 'moderate' | 'weak'][]) => ({
  made: good,
  against: against.map(([options, tells]) => ({ options, tells, from: 'moderator' as const })),
  remarks: [],
})

test('contradicted by what tells most first; a weak sign contradicts nothing, and a must says that it is one', () => {
  const one = made('f-held01', {
    print: trait(['clean'], [['poor'], 'weak']),
    'code-place': trait(['wrap'], [['can'], 'moderate']),
    'vent-disc': trait(['smooth'], [['four-lines'], 'strong']),
    legs: trait(['three'], [['four'], 'must']),
  })
  const wrong = { print: 'poor', 'code-place': 'can', 'vent-disc': 'four-lines' }
  expect(holdAgainst(one, said(wrong))).toEqual({
    ...{ candidate: one, contradicts: ['vent-disc', 'code-place'], must: false, asMade: [], fakes: [] },
  })
  expect(holdAgainst(one, said({ ...wrong, legs: 'four' }))).toMatchObject({
    ...{ contradicts: ['legs', 'vent-disc', 'code-place'], must: true },
  })
  expect(holdAgainst(one, said({ legs: 'three', print: 'clean' })).asMade.toSorted()).toEqual(['legs', 'print'])
})

test('a known fake that matches is named, and contradicts no feature', () => {
  const fake = {
    ...{ id: 'seen', title: 'Seen', since: '2026-W45', copies: [], says: 'x', state: 'seen' as const },
    look: { legs: ['four'] },
  }
  const one = made(
    'f-held02',
    { legs: { ...trait(['three']), against: [] } },
    { fakes: [fake, { ...fake, id: 'other', look: { legs: ['five'] } }] },
  )
  expect(holdAgainst(one, said({ legs: 'four' }))).toMatchObject({
    fakes: [{ id: 'seen' }],
    contradicts: [],
    must: false,
  })
})

test('made alike are those of one size with the same looks and the same that counts against them', () => {
  const of = (id: string, ...against: [string[], 'must' | 'weak'][]) => made(id, { legs: trait(['three'], ...against) })
  const plain = of('f-alike1', [['four'], 'must'])
  expect(groupsOf([plain, of('f-alike2', [['four'], 'must'])])).toHaveLength(1)
  expect(groupsOf([plain, of('f-alike3', [['four'], 'must'], [['five'], 'weak'])])).toHaveLength(1)
  expect(groupsOf([plain, of('f-alike4', [['four', 'five'], 'must'])])).toHaveLength(2)
  expect(groupsOf([plain, made('f-alike5', { legs: trait(['three', 'other'], [['four'], 'must']) })])).toHaveLength(2)
  const untold = { print: { made: [], against: [], remarks: [] } }
  expect(groupsOf([plain, made('f-alike6', { legs: trait(['three'], [['four'], 'must']), ...untold })])).toHaveLength(1)
  const other = { ...plain.facts, identity: { ...plain.facts.identity, format: '21700' as const } }
  expect(groupsOf([plain, { ...plain, facts: other }])).toHaveLength(2)
})

test('held against are those of its size, and all where its size is not known', () => {
  const one = made('f-sized1', { legs: trait(['three'], [['four'], 'must']) })
  const facts = { ...one.facts, identity: { ...one.facts.identity, format: '21700' as const } }
  const other = { ...one, facts }
  expect(againstAll([one, other], said({ legs: 'three' }))).toMatchObject({
    is: 'fits',
    of: 1,
    fit: [{ candidate: one }],
  })
  expect(againstAll([one, other], { legs: option('three') })).toMatchObject({ is: 'fits-several', of: 2 })
  expect(againstAll([one], said({ legs: 'four' }))).toMatchObject({ is: 'fits-none', why: [{ contradicts: ['legs'] }] })
  expect(againstAll([], said({}))).toEqual({ is: 'nothing-to-say' })
})

test('a look is worth what it parts for its effort; one that is answered, lifts a ring, or is no look is not asked', () => {
  const a = made('f-worth1', {
    legs: trait(['three'], [['four'], 'must']),
    print: trait(['clean'], [['poor'], 'must']),
    dimples: trait(['two'], [['none'], 'must']),
  })
  const b = made('f-worth2', { legs: trait(['four'], [['three'], 'must']) })
  const among = ['print', 'dimples', 'legs', 'mass', 'no-such-question']
  const legs = featuresOf(anyCell).get('legs')
  if (!legs) throw new Error('no legs')
  const odds = (id: string) => legs.answer.options.find(one => one.id === id)?.odds ?? 0
  const total = legs.answer.options.reduce((sum, one) => sum + one.odds, legs.unsureOdds)
  const next = nextLook([[a], [b]], anyCell, said({}), among)
  expect(next?.question).toBe('legs')
  expect(next?.worth).toBeCloseTo((odds('four') + odds('three')) / total / legs.effort, 12)
  expect(nextLook([[a], [b]], anyCell, said({ legs: 'other' }), among)?.question).toBe('print')
  expect(nextLook([[a], [b]], anyCell, said({ legs: 'three', print: 'clean' }), among)).toBeUndefined()
  // Of those that are contradicted already, nothing more is asked.
  expect(nextLook([[b]], anyCell, said({ legs: 'three' }), ['legs', 'print'])).toBeUndefined()
  expect(nextLook([[]], anyCell, said({}), among)).toBeUndefined()
})
