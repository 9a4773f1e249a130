// Facts in one order, and as far as the project knows them.
import { describe, expect, test } from 'vitest'
import type { Facts, KnownFake, Trait } from '../../src/families/facts/facts-schema.ts'
import { fitFacts, settleFacts } from '../../src/families/facts/settle-facts.ts'
import { against, bare, traits } from './bare-family.ts'
import { anyCell } from './base.ts'

describe('what is known of a base that has changed', () => {
  const fitted = (facts: Partial<Facts>) => fitFacts({ ...bare, ...facts }, anyCell)
  test('stays as far as it is known, and what is gone is named', () => {
    const { facts, dropped } = fitted({
      traits: traits({
        legs: {
          made: ['three', 'six'],
          against: [against(['four', 'seven']), against(['eight'])],
          remarks: [{ options: ['nine'] }],
        },
        wings: { made: ['two'] },
      }),
      alsoEnough: ['torn-wrap', 'no-such-rule'],
    })
    expect(facts.traits).toEqual(traits({ legs: { made: ['three'], against: [against(['four'])] } }))
    expect(facts.alsoEnough).toEqual(['torn-wrap'])
    expect(dropped).toEqual([
      { feature: 'legs', option: 'six' },
      { feature: 'legs', option: 'seven' },
      { feature: 'legs', option: 'eight' },
      { feature: 'legs', option: 'nine' },
      { feature: 'wings' },
      { feature: 'no-such-rule' },
    ])
  })
  test('what counts only beside something that is gone, or beside itself, goes with it', () => {
    const beside = (together: Record<string, string[]>) => {
      const { facts, dropped } = fitted({ traits: traits({ legs: { against: [against(['four'], { together })] } }) })
      return [facts.traits['legs']?.against, dropped]
    }
    const kept = { print: ['poor'] }
    expect(beside(kept)).toEqual([[against(['four'], { together: kept })], []])
    expect(beside({ print: ['poor', 'pale'] })).toEqual([
      [against(['four'], { together: kept })],
      [{ feature: 'print', option: 'pale' }],
    ])
    expect(beside({ print: ['pale'] })).toEqual([[], [{ feature: 'print', option: 'pale' }]])
    expect(beside({ wings: ['two'], ...kept })).toEqual([[], [{ feature: 'wings' }]])
    expect(beside({ legs: ['three'] })).toEqual([[], []])
  })
  test('a look of a known fake that lost a part is gone whole; one that lost an answer of a part stays', () => {
    const seen = (look: KnownFake['look']): KnownFake => ({
      ...{ id: 'a', title: 'A', since: '2026-W45', copies: [], says: 'x', state: 'seen', look },
    })
    const left = (look: KnownFake['look']) => {
      const { facts, dropped } = fitted({ fakes: [seen(look)] })
      return [facts.fakes.map(one => one.look), dropped]
    }
    expect(left({ legs: ['four', 'six'] })).toEqual([[{ legs: ['four'] }], [{ feature: 'legs', option: 'six' }]])
    expect(left({ legs: ['four'], print: ['pale'] })).toEqual([[], [{ feature: 'print', option: 'pale' }]])
    expect(left({ legs: ['four'], wings: ['two'] })).toEqual([[], [{ feature: 'wings' }]])
  })
})

test('facts are written in one order, whatever order they came in', () => {
  const one = against(['five', 'four', 'four'], { together: { print: ['poor', 'misspelt'], 'code-place': ['can'] } })
  const other = against(['four'], { together: {} })
  const fake = (name: string): KnownFake => ({
    ...{ id: name, title: name, since: '2026-W45', says: 'x', state: 'seen' },
    ...{ copies: ['print', 'legs', 'legs'], look: { print: ['poor', 'misspelt'], legs: ['four'] } },
  })
  const written = settleFacts({
    ...bare,
    identity: { ...bare.identity, alsoCalled: ['b', 'a', 'b'] },
    from: { construction: 'c', version: '1.0.0', more: 1 } as never,
    traits: {
      print: traits({ a: { made: ['poor', 'clean'] } })['a'] as Trait,
      legs: { made: [], against: [other, one], remarks: [{ options: ['b', 'a'] }] },
    },
    figures: {
      currents: [
        { amps: 30, cutOff: 75 },
        { amps: 20, cutOff: 'none' },
        { amps: 20, cutOff: 'not-said' },
        { amps: 20, cutOff: 80 },
      ],
    },
    fakes: [fake('z'), fake('a')],
    alsoEnough: ['b', 'a', 'a'],
    show: { z: 1, a: true },
  })
  const sortedFake = (name: string) => ({
    ...fake(name),
    ...{ copies: ['legs', 'print'], look: { legs: ['four'], print: ['misspelt', 'poor'] } },
  })
  expect(JSON.parse(JSON.stringify(written))).toEqual({
    ...bare,
    identity: { ...bare.identity, alsoCalled: ['a', 'b'] },
    from: { construction: 'c', version: '1.0.0' },
    traits: {
      legs: {
        made: [],
        against: [
          {
            options: ['five', 'four'],
            tells: 'must',
            from: 'moderator',
            together: { 'code-place': ['can'], print: ['misspelt', 'poor'] },
          },
          { options: ['four'], tells: 'must', from: 'moderator' },
        ],
        remarks: [{ options: ['a', 'b'] }],
      },
      print: { made: ['clean', 'poor'], against: [], remarks: [] },
    },
    figures: {
      currents: [
        { amps: 20, cutOff: 80 },
        { amps: 20, cutOff: 'none' },
        { amps: 20, cutOff: 'not-said' },
        { amps: 30, cutOff: 75 },
      ],
    },
    fakes: [sortedFake('a'), sortedFake('z')],
    alsoEnough: ['a', 'b'],
    show: { a: true, z: 1 },
  })
  for (const [record, keys] of [
    [written.traits, ['legs', 'print']],
    [written.show, ['a', 'z']],
    [written.traits['legs']?.against[0]?.together, ['code-place', 'print']],
    [written.fakes[0]?.look, ['legs', 'print']],
  ] as const)
    expect(Object.keys(record ?? {})).toEqual(keys)
  expect(settleFacts(bare).from).toBeNull()
  expect(settleFacts(bare).figures).toEqual({})
})
