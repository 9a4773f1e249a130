// The drawing of a family shows what is said of its features: what is set to "not known" is not drawn, on no surface.
import { describe, expect, test } from 'vitest'
import { factsFrom } from '../../src/families/construction.ts'
import { derive } from '../../src/families/derive/derive.ts'
import { drawnOf, firstDrawnOf, orElse } from '../../src/families/drawn.ts'
import { editDraft } from '../../src/families/edit.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { joinAlt } from '../../src/pictures/alt/join-alt.ts'
import { drawBuilt, drawFacts } from '../../src/pictures/from-packs/draw-facts.ts'
import { sayAltFact } from '../../src/words/alt-words.ts'
import { sayLooks, sayMade } from '../../src/words/family-facts-words.ts'
import { languages, sayIn } from '../../src/words/say.ts'
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

test.each(constructions)(
  'to choose $construction by, whatever it expects is drawn, and what is as normal is told',
  one => {
    const shown = firstDrawnOf({ ...one, identity: { format: '18650' } })
    const parts = { legs: 'legs', 'vent-disc': 'vent', 'lettering-place': 'lettering', 'code-place': 'code' }
    for (const [feature, part] of Object.entries(parts)) {
      const made = one.traits[feature]?.made ?? []
      expect(part in shown, feature).toBe(made.length > 0)
      expect(orElse(one, feature)).toHaveLength(Math.max(0, made.length - 1))
      // What may be missing is drawn as it is where it is there.
      if (made.length > 1) expect(String((shown as Record<string, unknown>)[part])).not.toBe('none')
    }
  },
)

test.each(languages)(
  'in %s, the words of the ways to choose from say the whole of each, what may be missing too',
  language => {
    const say = sayIn(language)
    const built = constructions.filter(one => one.formats.includes('18650') && one.kinds.includes('bare'))
    const rows = built.map(one => ({
      ...{ show: firstDrawnOf({ ...one, identity: { format: '18650' } }), label: sayMade(say, anyCell, one) },
      or: ['', '', '', ''] as const,
    }))
    const alt = joinAlt(drawBuilt(rows, ['', '', '', '']).about, (code, values) => sayAltFact(say, code, values))
    for (const { label } of rows) expect(alt).toContain(label)
    expect(alt).toContain(sayLooks(say, anyCell, 'lettering-place', ['wrap', 'nowhere']))
  },
)
