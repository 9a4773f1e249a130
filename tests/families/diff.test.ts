// What a diff of two versions says: each kind of change by its name, nothing where nothing changed, and the same whatever the order of writing.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { diffFacts } from '../../src/families/diff.ts'
import { type Facts, type Figures, factsSchema, type Trait } from '../../src/families/facts/facts-schema.ts'
import { settleFacts } from '../../src/families/facts/settle-facts.ts'
import { arbitraryFacts } from './arbitrary.ts'
import { someFacts } from './made-families.ts'

const legs: Trait = {
  made: ['three'],
  against: [
    { options: ['four', 'five'], tells: 'must', means: 'another-cell', from: 'moderator' },
    { options: ['one-or-two'], tells: 'weak', from: 'moderator' },
  ],
  remarks: [],
}
const fake = { id: 'k1', title: 'grey ring', since: '2026-W45', look: { legs: ['four'] }, says: 'a grey ring' }
const before: Facts = factsSchema.parse({ ...someFacts, traits: { legs }, figures: {}, fakes: [fake] })
const having = (change: Partial<Facts>): Facts => factsSchema.parse({ ...before, ...change })
const withLegs = (change: Partial<Trait>): Facts => having({ traits: { legs: { ...legs, ...change } } })
const [must, weak] = legs.against as [Trait['against'][number], Trait['against'][number]]
const named = before.identity

describe('a diff tells', () => {
  const { name } = named
  test.each([
    [
      'another name',
      having({ identity: { ...named, name: 'Plover' } }),
      [{ is: 'name', before: name, after: 'Plover' }],
    ],
    ['another kind', having({ identity: { ...named, kind: 'protected' } }), [{ is: 'identity' }]],
    ['a further rule that is enough', having({ alsoEnough: ['mass-light'] }), [{ is: 'enough' }]],
    ['another drawing', having({ show: { legs: 4 } }), [{ is: 'drawing' }]],
    ['a feature that is gone', having({ traits: {} }), [{ is: 'feature-gone', feature: 'legs', made: ['three'] }]],
    ['how it is made', withLegs({ made: [] }), [{ is: 'made', feature: 'legs', before: ['three'], after: [] }]],
    [
      'how strongly it tells, alike changes together',
      withLegs({ against: [{ ...must, tells: 'strong' }, weak] }),
      [{ is: 'tells', feature: 'legs', options: ['five', 'four'], before: 'must', after: 'strong' }],
    ],
    [
      'what tells nothing any more',
      withLegs({ against: [must] }),
      [{ is: 'tells', feature: 'legs', options: ['one-or-two'], before: 'weak', after: 'nothing' }],
    ],
    [
      'a new exception',
      withLegs({ against: [{ ...must, unless: 'open-rewrap' }, weak] }),
      [{ is: 'exception', feature: 'legs', unless: 'open-rewrap', now: true }],
    ],
    ['a remark', withLegs({ remarks: [{ options: ['other'] }] }), [{ is: 'remarks', feature: 'legs' }]],
    [
      'other words for the same',
      withLegs({ against: [{ ...must, says: 'Count them with a lens.' }, weak] }),
      [{ is: 'words', feature: 'legs' }],
    ],
    [
      'a new known fake',
      having({ fakes: [...before.fakes, { ...before.fakes[0]!, id: 'k2', title: 'blue ring' }] }),
      [{ is: 'fake-new', title: 'blue ring' }],
    ],
    ['a fake taken out', having({ fakes: [] }), [{ is: 'fake-gone', title: 'grey ring' }]],
    [
      'a fake that is seen no more',
      having({ fakes: [{ ...before.fakes[0]!, state: 'retired' }] }),
      [{ is: 'fake-gone', title: 'grey ring' }],
    ],
    [
      'a fake told otherwise',
      having({ fakes: [{ ...before.fakes[0]!, says: 'a dark grey ring' }] }),
      [{ is: 'fake-changed', title: 'grey ring' }],
    ],
  ])('%s', (_what, after, told) => {
    expect(diffFacts(before, after)).toEqual(told)
  })

  const figures: Required<Figures> = {
    capacity: { typical: 2500 },
    currents: [{ amps: 20, cutOff: 'none' }],
    mass: { middle: 45, cells: 3, from: 'references' },
    size: { diameter: 18.3, length: 65 },
    resistance: { usual: 12 },
  }
  test.each(Object.keys(figures) as (keyof Figures)[])('a figure by its name: %s', figure => {
    const after = having({ figures: { [figure]: figures[figure] } })
    expect(diffFacts(before, after)).toEqual([{ is: 'figure', figure }])
    expect(diffFacts(after, before)).toEqual([{ is: 'figure', figure }])
  })

  test('of a first version everything but its name', () => {
    expect(diffFacts(undefined, before)).toEqual([
      { is: 'feature-new', feature: 'legs', made: ['three'] },
      { is: 'tells', feature: 'legs', options: ['five', 'four'], before: 'nothing', after: 'must' },
      { is: 'tells', feature: 'legs', options: ['one-or-two'], before: 'nothing', after: 'weak' },
      { is: 'fake-new', title: 'grey ring' },
    ])
  })
})

test('a diff is empty for the same facts, however they are written, and for no others', () => {
  fc.assert(
    fc.property(arbitraryFacts({ figures: true }), arbitraryFacts({ figures: true }), (one, another) => {
      const turned = { ...one, traits: Object.fromEntries(Object.entries(one.traits).reverse()) }
      expect(diffFacts(one, turned)).toEqual([])
      const { id: _one, ...a } = settleFacts(one).identity
      const { id: _another, ...b } = settleFacts(another).identity
      const alike = JSON.stringify([a, settleFacts(one).traits]) === JSON.stringify([b, settleFacts(another).traits])
      if (!alike) expect(diffFacts(one, another)).not.toEqual([])
    }),
    { numRuns: 60 },
  )
})
