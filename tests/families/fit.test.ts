// Facts against a project that has moved on, and against themselves: what is gone is named and left out, what cannot be is refused.
import { describe, expect, test } from 'vitest'
import { bareFacts } from '../../src/families/construction.ts'
import { derive } from '../../src/families/derive/derive.ts'
import type { Facts, Figures, KnownFake, Trait } from '../../src/families/facts/facts-schema.ts'
import { fitFacts } from '../../src/families/facts/settle-facts.ts'
import { featuresOf } from '../../src/families/features.ts'
import { anyCell } from './base.ts'
import { someFacts } from './made-families.ts'

const bare = bareFacts(someFacts.identity)
const trait = (made: readonly string[], against: readonly object[] = [], remarks: readonly object[] = []): Trait =>
  ({ made, against, remarks }) as unknown as Trait
const entry = (options: readonly string[], together?: Readonly<Record<string, readonly string[]>>) => ({
  ...{ options, tells: 'weak', from: 'moderator' },
  ...(together && { together }),
})
const fake = (look: Readonly<Record<string, readonly string[]>>, id = 'k1', state = 'seen'): KnownFake =>
  ({ id, title: `Fake ${id}`, since: '2026-W45', look, copies: [], says: 'Look.', state }) as unknown as KnownFake
const fitted = (more: Partial<Facts>) => fitFacts({ ...bare, ...more }, anyCell)

describe('what the project does not know any more', () => {
  test('is a feature, with all that was said of it', () => {
    const { facts, dropped } = fitted({ traits: { legs: trait(['three']), wings: trait(['two'], [entry(['four'])]) } })
    expect(Object.keys(facts.traits)).toEqual(['legs'])
    expect(dropped).toEqual([{ feature: 'wings' }])
  })
  test('is an option: the others stay, and an entry of none of them goes', () => {
    const { facts, dropped } = fitted({
      traits: { legs: trait(['three', 'seven'], [entry(['four', 'eight']), entry(['nine'])], [{ options: ['nine'] }]) },
    })
    expect(facts.traits['legs']).toEqual(trait(['three'], [entry(['four'])], []))
    expect(dropped.map(one => one.option)).toEqual(['seven', 'eight', 'nine', 'nine'])
  })
  test('is what an entry counts together with: then it cannot count, and goes', () => {
    const kept = entry(['four'], { 'lettering-place': ['can'] })
    const { facts, dropped } = fitted({
      traits: {
        legs: trait(
          ['three'],
          [
            ...[kept, entry(['four'], { wings: ['two'] }), entry(['four'], { 'lettering-place': ['moon'] })],
            // Nothing counts together with itself.
            entry(['four'], { legs: ['three'] }),
          ],
        ),
      },
    })
    expect(facts.traits['legs']?.against).toEqual([kept])
    expect(dropped).toEqual([{ feature: 'wings' }, { feature: 'lettering-place', option: 'moon' }])
  })
  test('takes a known fake along that has lost a part of its look, which would match more cells than were meant', () => {
    const { facts } = fitted({
      fakes: [
        ...[fake({ legs: ['four'] }), fake({ legs: ['four'], wings: ['two'] }, 'k2')],
        ...[fake({ legs: ['four', 'nine'] }, 'k3'), fake({ legs: ['nine'] }, 'k4')],
      ],
    })
    expect(facts.fakes.map(one => [one.id, one.look])).toEqual([
      ['k1', { legs: ['four'] }],
      ['k3', { legs: ['four'] }],
    ])
  })
  test('is a rule that was to be enough', () => {
    const known = anyCell.rules[0]?.id as string
    const { facts, dropped } = fitted({ alsoEnough: [known, 'no-such-rule'] })
    expect(facts.alsoEnough).toEqual([known])
    expect(dropped).toEqual([{ feature: 'no-such-rule' }])
  })
  test('is nothing of facts that fit', () => {
    expect(fitFacts(someFacts, anyCell)).toEqual({ facts: someFacts, dropped: [] })
  })
})

describe('facts that cannot be', () => {
  const problems = (more: Partial<Facts>) => {
    const derived = derive({ ...someFacts, ...more }, anyCell)
    return derived.ok ? [] : derived.problems
  }
  const figures = (of: Figures) => problems({ figures: of }).map(one => one.code)
  test.each<[Figures, string[]]>([
    [{ capacity: { typical: 2500, least: 2400 } }, []],
    [{ capacity: { typical: 2500, least: 2500 } }, []],
    [{ capacity: { typical: 2500, least: 2501 } }, ['least-above-typical']],
    [{ capacity: { typical: 500_000 } }, ['figure-out-of-range']],
    [{ currents: [{ amps: 20, cutOff: 'none' }] }, []],
    [{ currents: [{ amps: 5000, cutOff: 'none' }] }, ['figure-out-of-range']],
    [{ mass: { middle: 45, cells: 3, from: 'references' } }, []],
    [{ mass: { middle: 5, cells: 3, from: 'references' } }, ['figure-out-of-range']],
    [{ size: { diameter: 18.4, length: 65 } }, []],
    [{ size: { diameter: 18.4, length: 1000 } }, ['figure-out-of-range']],
    [{ resistance: { usual: 20 } }, []],
    [{ resistance: { usual: 50_000 } }, ['figure-out-of-range']],
  ])('%j: %j', (of, codes) => {
    expect(figures(of)).toEqual(codes)
  })
  test('an answer that speaks against what is made so, that does so twice, or a look that always speaks', () => {
    const traits = (made: readonly string[], ...against: readonly object[]) => ({
      traits: { legs: trait(made, against) },
    })
    const clash = (option: string) => [{ code: 'contradictory', feature: 'legs', option }]
    expect(problems(traits(['three'], entry(['four', 'five'])))).toEqual([])
    expect(problems(traits(['three'], entry(['four', 'three'])))).toEqual(clash('three'))
    expect(problems(traits(['three'], entry(['four']), entry(['five', 'four'])))).toEqual(clash('four'))
    // Together with another answer it may tell what alone it does not.
    const beside = entry(['three'], { 'lettering-place': ['wrap'] })
    expect(problems(traits(['three'], entry(['four']), beside))).toEqual([])
    expect(problems(traits(['three'], beside))).toEqual([])
    const all =
      featuresOf(anyCell)
        .get('legs')
        ?.answer.options.map(one => one.id) ?? []
    expect(problems(traits([], entry(all)))).toEqual([{ code: 'always-speaks', feature: 'legs' }])
    expect(problems(traits([], entry(all.slice(1))))).toEqual([])
  })
  test('two known fakes of one id, and one that a genuine cell would match', () => {
    const [made] = someFacts.traits['legs']?.made ?? []
    const genuine = fake({ legs: [made as string] }, 'k2')
    expect(problems({ fakes: [fake({ legs: ['four'] }), fake({ legs: ['four'] })] })).toContainEqual({
      ...{ code: 'twice', what: 'fake', name: 'k1' },
    })
    expect(problems({ fakes: [genuine] })).toEqual([{ code: 'fake-looks-genuine', fake: 'Fake k2' }])
    // One that is retired is held against no cell any more.
    expect(problems({ fakes: [{ ...genuine, state: 'retired' }] })).toEqual([])
  })
  test('a family has a rule for each side of its size, and one for its resistance at four wires', () => {
    const derived = derive(
      { ...someFacts, figures: { size: { diameter: 18.4, length: 65 }, resistance: { usual: 20 } } },
      anyCell,
    )
    if (!derived.ok) throw new Error(JSON.stringify(derived.problems))
    const rule = (name: string) => derived.pack.rules.find(one => one.id.endsWith(name))
    expect(rule('-diameter-off')).toMatchObject({ kind: 'sign', strength: 'weak' })
    expect(rule('-length-off')).toMatchObject({ kind: 'sign', strength: 'weak' })
    // Twice the usual: contact and meter differ that much.
    expect(JSON.stringify(rule('-resistance-off')?.when)).toMatch(/"limit":40\b/)
    expect(JSON.stringify(rule('-diameter-off')?.when)).toMatch(/"limit":18\b.*"limit":18\.8\b/)
    expect(JSON.stringify(rule('-length-off')?.when)).toMatch(/"limit":64\.2\b.*"limit":65\.8\b/)
  })
})
