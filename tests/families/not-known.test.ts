// What moderators say that they do not know, and where each feature of a draft comes from.
import { describe, expect, test } from 'vitest'
import { bareFacts, factsFrom } from '../../src/families/construction.ts'
import { editDraft } from '../../src/families/edit.ts'
import type { Construction, Facts } from '../../src/families/facts/facts-schema.ts'
import { type Begun, sayable } from '../../src/families/not-known.ts'
import { originOf } from '../../src/families/origin.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { anyCell } from './base.ts'
import { draftOf, someFacts } from './made-families.ts'

const { constructions } = await loadConstructions()
const construction = constructions.find(one => one.construction === 'two-dimples-three-legs') as Construction
const built = factsFrom(construction, someFacts.identity)
const begun: Begun = { construction, inForce: undefined }

function ticking(facts: Facts, features: readonly string[], from = begun): Facts {
  const all = sayable(anyCell, facts, from, 25)
  const editing = editDraft(draftOf('s', facts), facts, { is: 'all-not-known', features, all, begun: from }, 'i1')
  if (!editing.ok || !editing.family.draft) throw new Error(JSON.stringify(editing))
  return editing.family.draft
}
const offered = (facts: Facts, from = begun) =>
  sayable(anyCell, facts, from, 25).map(one => (one.notKnown ? `not ${one.feature}` : one.feature))
const made = (facts: Facts, feature: string, ...options: readonly string[]): Facts => {
  const all = ['three', 'four', 'five', 'other']
  const editing = editDraft(draftOf('s', facts), facts, { is: 'made', feature, options, all }, 'i1')
  if (!editing.ok || !editing.family.draft) throw new Error(JSON.stringify(editing))
  return editing.family.draft
}

describe('what is not known', () => {
  test('is whatever is ticked of all that tells something, and is offered ticked from then on', () => {
    expect(offered(built)).toEqual(['legs', 'code-place', 'lettering-place', 'measured-capacity', 'dimples'])
    const after = ticking(built, ['legs', 'dimples'])
    expect(Object.keys(after.traits).sort()).toEqual(
      Object.keys(built.traits)
        .filter(one => one !== 'legs' && one !== 'dimples')
        .sort(),
    )
    expect(offered(after)).toEqual(['not legs', 'code-place', 'lettering-place', 'measured-capacity', 'not dimples'])
  })

  test('comes back as the construction has it, and what was ticked stays so', () => {
    const both = ticking(built, ['legs', 'dimples'])
    const one = ticking(both, ['dimples'])
    expect(one.traits['legs']).toEqual(construction.traits['legs'])
    expect(one.traits['dimples']).toBeUndefined()
    expect(ticking(one, [])).toEqual(built)
  })

  test('leaves alone what is set otherwise and not ticked', () => {
    const four = made(built, 'legs', 'four')
    expect(ticking(four, ['dimples']).traits['legs']).toEqual(four.traits['legs'])
    expect(ticking(ticking(four, ['dimples']), []).traits['legs']).toEqual(four.traits['legs'])
  })

  test('comes back as it was in force, where it was', () => {
    const four = made(built, 'legs', 'four')
    const from: Begun = { construction, inForce: four }
    expect(ticking(ticking(four, ['legs'], from), [], from)).toEqual(four)
  })

  test('of a feature that nothing stood for at first is no more than what nothing is said of', () => {
    const own = made(bareFacts(someFacts.identity), 'legs', 'three')
    const from: Begun = { construction: undefined, inForce: undefined }
    expect(offered(own, from)).toEqual(['legs'])
    const after = ticking(own, ['legs'], from)
    expect(after.traits).toEqual({})
    expect(offered(after, from)).toEqual([])
  })

  test('is nothing that the menu did not offer', () => {
    expect(ticking(built, ['lettering-look', 'no-such-feature'])).toEqual(built)
  })
})

describe('where a feature comes from', () => {
  test('is the construction, until it is set here', () => {
    expect(originOf(built, constructions)).toEqual({
      is: 'built',
      construction: 'two-dimples-three-legs',
      set: new Set(),
    })
    const changed = made(made(built, 'legs', 'four'), 'vent-disc', 'four')
    expect(originOf(changed, constructions)).toMatchObject({ set: new Set(['legs', 'vent-disc']) })
    // Set back to what it was, it is the construction's again.
    expect(originOf({ ...changed, traits: built.traits }, constructions)).toMatchObject({ set: new Set() })
  })
  test('is none that was said not to be known', () => {
    expect(originOf(ticking(built, ['legs']), constructions)).toMatchObject({ set: new Set() })
  })
  test('is this server where there was no construction', () => {
    expect(originOf(made(bareFacts(someFacts.identity), 'legs', 'three'), constructions)).toEqual({ is: 'own' })
  })
  test('cannot be told where the construction is gone, or another than it was', () => {
    expect(originOf(built, [])).toBeUndefined()
    expect(originOf(built, [{ ...construction, version: '9.0.0' }])).toBeUndefined()
  })
})
