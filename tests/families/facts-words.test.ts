// What a family's page says: every feature and figure with what it does, in each language, and nothing that a rule contradicts.
import { describe, expect, test } from 'vitest'
import { featureMenu } from '../../src/discord/families/show/menus.ts'
import { atomsOf } from '../../src/engine/conditions.ts'
import { factsFrom } from '../../src/families/construction.ts'
import { derive } from '../../src/families/derive/derive.ts'
import type { Facts, Trait } from '../../src/families/facts/facts-schema.ts'
import { featuresOf } from '../../src/families/features.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { commonOf, sayCounts, sayFacts, sayFigures, sayLook, sayMade } from '../../src/words/family-facts-words.ts'
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
      for (const [feature, trait] of Object.entries(one.traits)) {
        const name = sayFeature(say, anyCell, feature)
        if (trait.made.length > 0) expect(made).toContain(`${name}: `)
        for (const option of trait.made) expect(made).toContain(sayLook(say, anyCell, feature, option))
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

test('of ways of building, what most have is said once, and of each the rest, so that none loses a feature', () => {
  const say = sayIn('en')
  const built = constructions.filter(one => one.formats.includes('18650') && one.kinds.includes('bare'))
  const common = commonOf(built)
  expect(sayMade(say, anyCell, common)).toBe('Legs: three · Square code: on the wrap · Lettering: on the metal can')
  const told = (id: string) => {
    const one = built.find(each => each.construction === id)
    return one ? sayMade(say, anyCell, one, common) : ''
  }
  expect(told('two-dimples-four-legs')).toBe('Legs: four · Dimples: two')
  expect(told('two-dimples-three-legs')).toBe('Dimples: two')
  expect(told('all-print-on-can')).toBe('Square code: on the metal can')
  for (const one of built)
    for (const [feature, { made }] of Object.entries(one.traits)) {
      const said = sayMade(say, anyCell, one, common).includes(`${sayFeature(say, anyCell, feature)}: `)
      if (made.length > 0 && !said) expect(common.traits[feature]?.made.toSorted()).toEqual(made.toSorted())
      // Of whom nothing is said, nothing is said in common either.
      if (made.length === 0) expect(common.traits).not.toHaveProperty(feature)
    }
  // Like the others in everything, one is told whole: a letter is never empty.
  const [first] = built
  expect(first && sayMade(say, anyCell, first, first)).toBe(first && sayMade(say, anyCell, first))
})

test('what counts only beside a test is said as what was found, and with which current', () => {
  const one = constructions.find(each => each.traits['measured-capacity']?.against.length)
  const trait = one?.traits['measured-capacity']
  if (!trait) throw new Error('no construction counts a measured capacity')
  const said = (language: string) => sayCounts(sayIn(language), anyCell, 'measured-capacity', trait)
  expect(said('en')).toBe('Less than 80 % of the claim, tested at 5 A or more: sign.')
  expect(said('de')).toBe('Weniger als 80 % der Angabe, mit 5 A oder mehr getestet: Zeichen.')
  expect(said('es')).toBe('Menos del 80 % de lo declarado, en una prueba a 5 A o más: señal.')
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
