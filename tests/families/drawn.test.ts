// The drawing of a family shows what is said of its features: what is set to "not known" is not drawn, on no surface.
import { describe, expect, test } from 'vitest'
import { factsFrom } from '../../src/families/construction.ts'
import { derive } from '../../src/families/derive/derive.ts'
import { drawnOf } from '../../src/families/drawn.ts'
import { editDraft } from '../../src/families/edit.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { joinAlt } from '../../src/pictures/alt/join-alt.ts'
import { drawFacts } from '../../src/pictures/from-packs/draw-facts.ts'
import { sayAltFact } from '../../src/words/alt-words.ts'
import { sayIn } from '../../src/words/say.ts'
import { anyCell } from './base.ts'
import { draftOf } from './made-families.ts'

const { constructions } = await loadConstructions()
const built = (construction: string): Facts => {
  const found = constructions.find(one => one.construction === construction)
  if (!found) throw new Error(`no construction ${construction}`)
  const identity = { id: 'f-tried01', name: 'Tried', maker: 'Nobody', alsoCalled: [], format: '18650' as const }
  return factsFrom(found, { ...identity, kind: 'bare', chemistry: 'not-known' })
}
const without = (facts: Facts, feature: string): Facts => {
  const edited = editDraft(draftOf('1', facts, {}), facts, { is: 'not-known', feature }, 'tried')
  if (!edited.ok || !edited.family.draft) throw new Error('it was refused')
  return edited.family.draft
}

describe.each([
  ['dimples', ['dimples']],
  ['code-place', ['code']],
  ['lettering-place', ['lettering']],
  ['legs', ['legs']],
  ['vent-disc', ['vent', 'ventLines']],
])('%s, set to "not known",', (feature, parts) => {
  const facts = built('three-legs-lined-disc')

  test('leaves the drawing of the draft and that of the rules that judge by it', () => {
    expect(Object.keys(drawnOf(facts))).toEqual(expect.arrayContaining(parts))
    const after = without(facts, feature)
    for (const part of parts) expect(drawnOf(after)).not.toHaveProperty(part)
    const derived = derive(after, anyCell)
    if (!derived.ok) throw new Error(JSON.stringify(derived.problems))
    expect(derived.pack.families[0]?.show).toEqual(drawnOf(after))
  })
})

test('no words of a picture speak of dimples of which nothing is known', () => {
  const say = sayIn('en')
  const altOf = (facts: Facts) =>
    joinAlt(drawFacts(say, facts.identity, drawnOf(facts))?.about ?? [], (code, values) =>
      sayAltFact(say, code, values),
    )
  const facts = built('two-dimples-three-legs')
  expect(altOf(facts)).toMatch(/dimple/)
  expect(altOf(without(facts, 'dimples'))).not.toMatch(/dimple/)
  expect(altOf(without(facts, 'code-place'))).not.toMatch(/code/)
})

test('a feature of which several looks are normal has no one drawing; what no feature leads stays', () => {
  expect(drawnOf(built('five-legs-smooth-disc'))).toEqual({ format: '18650', code: 'can', legs: 5, vent: 'smooth' })
  expect(drawnOf(built('second-wrap-closed-top'))).toMatchObject({ board: true, contact: 'closed', top: 'button' })
})
