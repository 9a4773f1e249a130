// What a family's page says: every feature and figure with what it does, in each language, and nothing that a rule contradicts.
import { describe, expect, test } from 'vitest'
import { featureMenu } from '../../src/discord/families/show/menus.ts'
import { atomsOf } from '../../src/engine/conditions.ts'
import { factsFrom } from '../../src/families/construction.ts'
import { derive } from '../../src/families/derive/derive.ts'
import type { Facts, Trait } from '../../src/families/facts/facts-schema.ts'
import { featuresOf } from '../../src/families/features.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import {
  countedBesides,
  sayCounts,
  sayFacts,
  sayFigures,
  sayLook,
  sayMade,
  unlikeMost,
} from '../../src/words/family-facts-words.ts'
import { sayFeature } from '../../src/words/family-words.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { anyCell } from './base.ts'

const { constructions } = await loadConstructions()
const identity = {
  ...{ id: 'f-tried01', name: 'Tried', maker: 'Nobody', alsoCalled: [], format: '18650' as const },
  ...{ kind: 'bare' as const, chemistry: 'not-known' as const },
}
const figures: Facts['figures'] = {
  capacity: { typical: 2500, least: 2450 },
  currents: [
    { amps: 20, cutOff: 'none' },
    { amps: 30, cutOff: 75 },
  ],
  mass: { middle: 45, cells: 1, from: 'sheet' },
  size: { diameter: 18.3, length: 65 },
  resistance: { usual: 12 },
}

describe.each(languages)('in %s', language => {
  const say = sayIn(language)
  const nothing = say('families.tells.no-bearing')

  test.each(constructions)(
    '$construction is chosen by a line that names every feature it fixes, with what a good one shows',
    one => {
      const made = sayMade(say, anyCell, one)
      const besides = countedBesides(say, anyCell, one)
      for (const [feature, trait] of Object.entries(one.traits)) {
        const name = sayFeature(say, anyCell, feature)
        if (trait.made.length > 0) expect(made).toContain(`${name}: `)
        for (const option of trait.made) expect(made).toContain(sayLook(say, anyCell, feature, option))
        if (trait.made.length === 0 && trait.against.length > 0) expect(besides).toContain(name)
      }
    },
  )

  test.each(constructions)(
    'the page of $construction says of no feature that it proves nothing where it gives a rule',
    one => {
      const facts = { ...factsFrom(one, identity), figures }
      const lines = sayFacts(say, anyCell, facts)
      for (const [feature, trait] of Object.entries(facts.traits)) {
        const name = `**${sayFeature(say, anyCell, feature)}:**`
        const line = lines.find(each => each.startsWith(name))
        expect(line !== undefined, name).toBe(trait.made.length > 0 || trait.against.length > 0)
        if (trait.against.length > 0) expect(line).not.toContain(nothing)
      }
    },
  )

  test('each figure says what is expected, and every limit of the rules it gives', () => {
    const facts: Facts = { ...factsFrom(constructions[0] as never, identity), traits: {}, figures }
    const derived = derive(facts, anyCell)
    if (!derived.ok) throw new Error(JSON.stringify(derived.problems))
    const said = sayFigures(say, facts).join('\n')
    const shown = (value: number) => new Intl.NumberFormat(language, { maximumFractionDigits: 1 }).format(value)
    for (const expected of [2500, 20, 30, 75, 45, 18.3, 65, 12]) expect(said).toContain(shown(expected))
    const limits = derived.pack.rules
      .filter(rule => rule.kind !== 'no-bearing')
      .flatMap(rule => atomsOf(rule.when))
      .flatMap(atom => ('limit' in atom && atom.question !== 'room-temperature' ? [atom.limit] : []))
    expect(limits.length).toBeGreaterThan(10)
    // Grouping of four digits differs from language to language, and is none of this test's matter.
    const plain = (text: string) => text.replace(/(\d)[.,\u202f\u00a0](?=\d{3}\b)/g, '$1')
    for (const limit of limits) expect(plain(said)).toContain(plain(shown(limit)))
    expect(said).not.toContain(nothing)
  })

  test('a weight is said not to count against protected cells, and readings to count beyond their instrument alone', () => {
    const facts = { ...factsFrom(constructions[0] as never, identity), figures }
    const lines = sayFacts(say, anyCell, facts)
    expect(lines).toContain(`-# ${say('families.guard', { bare: 'yes' })}`)
    const protectedOne = { ...facts, identity: { ...identity, kind: 'protected' as const } }
    expect(sayFacts(say, anyCell, protectedOne)).toContain(`-# ${say('families.guard', { bare: 'no' })}`)
  })

  test('every feature has a short name of its own', () => {
    const asked = [...featuresOf(anyCell).values()].filter(one => sayFeature(say, anyCell, one.id).length > 40)
    expect(asked.map(one => one.id)).toEqual([])
    for (const one of featuresOf(anyCell).values())
      expect(sayFeature(say, anyCell, one.id)).not.toBe(one.ask.replace(/\?$/, '').slice(0, 60))
  })
})

test('of ways of building, bold is what is unlike most of them, and nothing of one that is like most', () => {
  const built = constructions.filter(one => one.formats.includes('18650') && one.kinds.includes('bare'))
  const told = (id: string) => {
    const one = built.find(each => each.construction === id)
    return one ? sayMade(sayIn('en'), anyCell, one, unlikeMost(built, one)) : ''
  }
  expect(told('two-dimples-four-legs')).toMatch(/\*\*Legs: four\*\*.*[^*]Dimples: two$/)
  expect(told('three-legs-button-disc')).toContain('**Vent disc: a raised button**')
  expect(told('two-dimples-three-legs')).not.toContain('**')
})

test('a menu says of what counts only beside something else what the page says', () => {
  const one = constructions.find(each => each.traits['measured-capacity']?.against.length)
  if (!one) throw new Error('no construction counts a measured capacity')
  const said = sayCounts(sayIn('en'), anyCell, 'measured-capacity', one.traits['measured-capacity'] as Trait)
  expect(sayFacts(sayIn('en'), anyCell, factsFrom(one, identity)).join('\n')).toContain(said)
  const menu = featureMenu(sayIn('en'), anyCell, 'x', factsFrom(one, identity)).components[0]
  const line = menu?.options.find(each => each.value === 'measured-capacity')
  expect(line?.description).not.toMatch(/proves nothing/i)
})
