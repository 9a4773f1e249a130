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
  sayCounts,
  sayFacts,
  sayFigures,
  sayLook,
  sayLooks,
  sayMade,
  sayWays,
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

describe('ways of building, as a key to choose by', () => {
  const say = sayIn('en')
  const built = constructions.filter(one => one.formats.includes('18650') && one.kinds.includes('bare'))
  const ways = built.map(({ traits }, i) => ({ letter: String.fromCharCode(65 + i), traits }))

  test('name a feature once, with the letters of each look, and what most of all have last', () => {
    expect(sayWays(say, anyCell, ways)).toEqual([
      '**Legs:** C: five · F: four · others: three',
      '**Square code:** A, C: on the can · B: on the wrap or none · others: on the wrap',
      '**Lettering:** B: on the wrap or none · C: on the can or on the wrap · others: on the can',
      '**Vent disc:** C: smooth · D: a raised button · E: four lines',
      '**Small weld marks:** D, E: none',
      '**Dimples:** D, E, F, G: two',
    ])
  })

  test.each(languages)('in %s, lose no feature of any, and say nothing of a letter that is silent', language => {
    const spoken = sayIn(language)
    const lines = sayWays(spoken, anyCell, ways)
    const others = spoken('families.built.others', { made: '' })
    for (const { letter, traits } of ways)
      for (const [feature, { made }] of Object.entries(traits)) {
        const line = lines.find(one => one.startsWith(`**${sayFeature(spoken, anyCell, feature)}:** `)) ?? ''
        const entries = line.replace(/^.*?:\*\* /, '').split(' · ')
        const own = entries.find(one => one.split(': ')[0]?.split(', ').includes(letter))
        const said = own ?? entries.find(one => one.startsWith(others))
        if (made.length === 0) expect(said, `${letter} ${feature}`).toBeUndefined()
        else expect(said?.endsWith(`: ${sayLooks(spoken, anyCell, feature, made)}`), `${letter} ${feature}`).toBe(true)
      }
  })

  test('say of one alone only what it has, and of several that are alike no letters', () => {
    const [first] = ways
    if (!first) throw new Error('no constructions')
    const alike = sayWays(say, anyCell, [first, { ...first, letter: 'B' }])
    expect(alike).toEqual(['**Legs:** three', '**Square code:** on the can', '**Lettering:** on the can'])
    expect(sayWays(say, anyCell, [first])).toEqual(alike)
  })
})

test('what "none" does is said where a place has none and nothing is said of it', () => {
  const say = sayIn('en')
  const of = (made: string[], options: string[]) =>
    sayCounts(say, anyCell, 'code-place', { made, against: [{ options, tells: 'strong', from: 'moderator' }] })
  expect(of(['can'], ['wrap'])).toBe('on the wrap: strong sign; none alone: no sign')
  expect(of(['can', 'nowhere'], ['wrap'])).toBe('on the wrap: strong sign')
  expect(of(['can'], ['wrap', 'nowhere'])).toBe('on the wrap or none: strong sign')
})

test('what does not hold for open rewraps is marked where it stands, and the mark is told once', () => {
  const say = sayIn('en')
  const [one] = constructions
  if (!one) throw new Error('no constructions')
  const lines = sayFacts(say, anyCell, factsFrom(one, identity))
  expect(lines).toContain('**Square code:** on the can · on the wrap: ruled out†; none alone: no sign')
  expect(lines).toContain('**Legs:** three · four or five: ruled out')
  expect(lines.filter(each => each.includes('†') && each.startsWith('-# '))).toEqual([
    '-# † Not against openly rewrapped cells.',
  ])
})

test('a weight says whence it is only where it was weighed', () => {
  const said = (mass: Facts['figures']['mass']) => sayFigures(sayIn('en'), { figures: { mass } }).join()
  expect(said({ middle: 46, cells: 1, from: 'sheet' })).toMatch(
    /^\*\*Weight:\*\* about 46 g · outside 44.9–47.1 g: weak/,
  )
  expect(said({ middle: 46, cells: 3, from: 'references' })).toMatch(
    /^\*\*Weight:\*\* about 46 g, from 3 good cells · /,
  )
})

test('what counts only beside a test is said as what was found, and with which current', () => {
  const one = constructions.find(each => each.traits['measured-capacity']?.against.length)
  const trait = one?.traits['measured-capacity']
  if (!trait) throw new Error('no construction counts a measured capacity')
  const said = (language: string) => sayCounts(sayIn(language), anyCell, 'measured-capacity', trait)
  expect(said('en')).toBe('less than 80% of the claim, tested at 5 A or more: sign')
  expect(said('de')).toBe('weniger als 80 % der Angabe, mit 5 A oder mehr getestet: mittleres Zeichen')
  expect(said('es')).toBe('menos del 80 % de lo declarado, en una prueba a 5 A o más: señal media')
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
