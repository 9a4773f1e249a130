// Each feature and known fake, and the very rule that is made of it: what it asks, how much it tells, and the answers that prove it.
import { describe, expect, test } from 'vitest'
import { deriveFakes, fakeOfRule, fakeRuleId } from '../../src/families/derive/derive-fakes.ts'
import { deriveTraits } from '../../src/families/derive/derive-traits.ts'
import { againstSentence, remarkSentence } from '../../src/families/derive/sentences.ts'
import type { KnownFake, Trait } from '../../src/families/facts/facts-schema.ts'
import { against, bare, id, traits } from './bare-family.ts'
import { anyCell } from './base.ts'

const ofTraits = (all: Record<string, Partial<Trait>>) => deriveTraits({ ...bare, traits: traits(all) }, anyCell)

describe('features', () => {
  const plain = { source: 'described', holdsBack: false }
  test('what contradicts is a rule, what does not tell a remark, in the order of the questions', () => {
    const { rules, problems } = ofTraits({
      legs: {
        made: ['three'],
        against: [against(['four', 'five']), against(['other'], { tells: 'weak', says: 'Odd.' })],
        remarks: [{ options: ['three'] }, { options: ['three'], says: { en: 'E.', de: 'D.' } }],
      },
      'lettering-place': { against: [against(['wrap'], { means: 'counterfeit' })] },
      'not-a-feature': { made: ['x'], against: [against(['y'])] },
    })
    expect(problems).toEqual([])
    expect(rules.map(one => one.id)).toEqual([
      id('lettering-place-1'),
      id('legs-1'),
      id('legs-2'),
      id('legs-r1'),
      id('legs-r2'),
    ])
    const [lettering, must, weak, remark, worded] = rules
    expect(lettering).toMatchObject({ enough: false, weight: { kind: 'must', means: 'counterfeit' } })
    expect(lettering?.quiet).toEqual({ 'lettering-place': 'can' })
    expect(must).toEqual({
      ...{ ...plain, id: id('legs-1'), enough: true, weight: { kind: 'must', means: 'another-cell' } },
      when: { legs: ['four', 'five'] },
      says: againstSentence(anyCell, 'legs', ['three'], ['four', 'five']),
      fires: [{ legs: 'four' }, { legs: 'five' }],
      quiet: { legs: 'three' },
      unknown: { legs: 'cant-tell' },
    })
    expect(weak).toMatchObject({
      weight: { kind: 'sign', strength: 'weak' },
      says: { en: 'Odd.', de: 'Odd.', es: 'Odd.' },
    })
    expect(remark).toEqual({
      ...{ ...plain, id: id('legs-r1'), enough: false, weight: { kind: 'no-bearing' } },
      when: { legs: ['three'] },
      says: remarkSentence(anyCell, 'legs', ['three']),
      fires: [{ legs: 'three' }],
      quiet: { legs: 'four' },
      unknown: { legs: 'cant-tell' },
    })
    expect(worded?.says).toEqual({ en: 'E.', de: 'D.', es: 'E.' })
  })
  test('what counts only beside other answers is proved beside them, and is not enough', () => {
    const [rule] = ofTraits({
      legs: { made: ['three'], against: [against(['four'], { together: { 'code-place': ['can', 'wrap'] } })] },
    }).rules
    expect(rule).toMatchObject({
      ...{ when: { legs: ['four'], 'code-place': ['can', 'wrap'] }, enough: false },
      fires: [{ legs: 'four', 'code-place': 'can' }],
      quiet: { legs: 'three', 'code-place': 'can' },
      unknown: { legs: 'cant-tell', 'code-place': 'can' },
    })
  })
  test('what needs a ring lifted is not enough', () => {
    expect(ofTraits({ dimples: { made: ['two'], against: [against(['none'])] } }).rules[0]?.enough).toBe(false)
  })
  test('an exception holds a contradiction back, is said, and keeps "nothing found" away where it was to be enough', () => {
    const together = { 'code-place': ['can'] }
    const { rules } = ofTraits({
      legs: { made: ['three'], against: [against(['four', 'five'], { unless: 'open-rewrap' })] },
      'vent-disc': { against: [against(['smooth'], { unless: 'protected', together })] },
    })
    const ruleOf = (name: string) => rules.find(one => one.id === id(name))
    const [legs, legsX, vent, ventX] = ['legs-1', 'legs-1-x', 'vent-disc-1', 'vent-disc-1-x'].map(ruleOf)
    expect(legs).toMatchObject({
      when: { legs: ['four', 'five'], 'sold-as': { unless: 'new-rewrap' } },
      fires: [
        { legs: 'four', 'sold-as': 'new-bare' },
        { legs: 'five', 'sold-as': 'new-bare' },
      ],
      quiet: { legs: 'three', 'sold-as': 'new-bare' },
      unknown: { legs: 'cant-tell', 'sold-as': 'new-bare' },
    })
    expect(legsX).toEqual({
      ...{ id: id('legs-1-x'), weight: { kind: 'no-bearing' }, source: 'described', enough: false, holdsBack: true },
      when: { legs: ['four', 'five'], 'sold-as': 'new-rewrap' },
      says: {
        en: 'Legs: not held against a cell that was openly sold in another wrap. It proves nothing either.',
        de: 'Stege: zählt nicht gegen eine Zelle, die offen mit anderer Hülle verkauft wurde. Es beweist aber auch nichts.',
        es: 'Patas: no cuenta contra una celda vendida abiertamente con otra funda. Tampoco demuestra nada.',
      },
      fires: [{ legs: 'four', 'sold-as': 'new-rewrap' }],
      quiet: { legs: 'three', 'sold-as': 'new-rewrap' },
      unknown: { legs: 'cant-tell', 'sold-as': 'new-rewrap' },
    })
    expect(vent).toMatchObject({ id: id('vent-disc-1'), when: { 'sold-as': { unless: 'new-protected' } } })
    expect(ventX).toMatchObject({
      ...{ id: id('vent-disc-1-x'), holdsBack: false },
      when: { 'vent-disc': ['smooth'], 'code-place': ['can'], 'sold-as': 'new-protected' },
      fires: [{ 'vent-disc': 'smooth', 'code-place': 'can', 'sold-as': 'new-protected' }],
      quiet: { 'vent-disc': 'four-lines', 'code-place': 'can', 'sold-as': 'new-protected' },
    })
    expect(ventX?.says.en).toContain('with a protection circuit')
    expect(ventX?.says.de).toContain('mit Schutzschaltung')
    expect(ventX?.says.es).toContain('con circuito de protección')
  })
  const every = ['three', 'four', 'five', 'other']
  test.each<[string, Partial<Trait>, object[]]>([
    ['every answer contradicts', { against: [against(every)] }, [{ code: 'always-speaks', feature: 'legs' }]],
    ['every answer is remarked', { remarks: [{ options: every }] }, [{ code: 'always-speaks', feature: 'legs' }]],
    [
      'as made it contradicts',
      { made: ['three'], against: [against(['four', 'three'])] },
      [{ code: 'contradictory', feature: 'legs', option: 'three' }],
    ],
    [
      'twice',
      { made: ['three'], against: [against(['four']), against(['five', 'four'])] },
      [{ code: 'contradictory', feature: 'legs', option: 'four' }],
    ],
    [
      'twice, but once beside something',
      { made: ['three'], against: [against(['four']), against(['four'], { together: { print: ['poor'] } })] },
      [],
    ],
    [
      'as made, beside something',
      { made: ['three'], against: [against(['three'], { together: { print: ['poor'] } })] },
      [],
    ],
    ['as made it is remarked', { made: ['three'], remarks: [{ options: ['three'] }] }, []],
  ])('%s', (_, trait, problems) => {
    const derived = ofTraits({ legs: trait })
    expect(derived.problems).toEqual(problems)
    if (problems.length > 0) expect(derived.rules).toEqual([])
    else expect(derived.rules.length).toBeGreaterThan(0)
  })
})

describe('known fakes', () => {
  const fake: KnownFake = {
    ...{ id: 'seen', title: 'Four legs', since: '2026-W45', copies: [], says: 'As seen.', state: 'seen' },
    look: { 'code-place': ['can'], legs: ['four', 'five'] },
  }
  const made = traits({ legs: { made: ['three'] } })
  const of = (...fakes: KnownFake[]) => deriveFakes({ ...bare, traits: made, fakes }, anyCell)
  test('are a strong sign over the whole look, quiet by what is made otherwise', () => {
    expect(of(fake)).toEqual({
      problems: [],
      rules: [
        {
          ...{ id: id('fake-seen'), weight: { kind: 'sign', strength: 'strong' }, source: 'seen-here' },
          ...{ enough: false, holdsBack: false, when: fake.look },
          says: {
            en: 'As seen. Seen here since 2026-W45.',
            de: 'As seen. Hier gesehen seit 2026-W45.',
            es: 'As seen. Visto aquí desde 2026-W45.',
          },
          fires: [{ 'code-place': 'can', legs: 'four' }],
          quiet: { 'code-place': 'can', legs: 'three' },
          unknown: { 'code-place': 'can', legs: 'cant-tell' },
        },
      ],
    })
  })
  test('that are retired are no rule; two of one name, and one that a good cell shows, are problems', () => {
    expect(of({ ...fake, state: 'retired' })).toEqual({ problems: [], rules: [] })
    expect(of(fake, { ...fake, state: 'retired' }).problems).toEqual([{ code: 'twice', what: 'fake', name: 'seen' }])
    const alike = [{ code: 'fake-looks-genuine', fake: 'Four legs' }]
    expect(of({ ...fake, look: { legs: ['four', 'three'] } })).toEqual({ problems: alike, rules: [] })
    expect(of({ ...fake, look: { 'code-place': ['can'] } })).toEqual({ problems: alike, rules: [] })
  })
  test('are found again by the name of their rule', () => {
    expect(fakeRuleId('f-tried01', 'seen')).toBe(id('fake-seen'))
    expect(fakeOfRule('f-tried01', id('fake-seen'))).toBe('seen')
    expect(fakeOfRule('f-tried01', id('legs-1'))).toBeUndefined()
    expect(fakeOfRule('f-tried02', id('fake-seen'))).toBeUndefined()
  })
})
