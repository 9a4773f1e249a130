// What would come into force: strengths as they were earned, the weight of the references, and everything that stands in its way; and the programs made of it.
import { describe, expect, test } from 'vitest'
import { openPrograms } from '../../src/engine/programs.ts'
import { derive } from '../../src/families/derive/derive.ts'
import { canonicalFacts, factsDigest } from '../../src/families/derive/facts-digest.ts'
import { exported, fileLimits, imported, textsOf } from '../../src/families/exchange/exchange.ts'
import type { Construction, Facts } from '../../src/families/facts/facts-schema.ts'
import { settleFacts } from '../../src/families/facts/settle-facts.ts'
import { openFamilyPrograms } from '../../src/families/family-programs.ts'
import { featuresOf, inCheckOrder, offeredFeatures } from '../../src/families/features.ts'
import { propose } from '../../src/families/propose.ts'
import { prove } from '../../src/families/prove.ts'
import { against, bare, traits } from './bare-family.ts'
import { anyCell, compileFamily } from './base.ts'
import { referenceOf, sha256 } from './made-families.ts'

const legs = traits({ legs: { made: ['three'], against: [against(['four'])] } })
const draft: Facts = { ...bare, traits: legs }
const construction = { construction: 'built', version: '1.0.0', traits: legs } as unknown as Construction
const proposed = (facts: Facts, references: Parameters<typeof propose>[3] = [], known = [construction]) =>
  propose(facts, anyCell, known, references, sha256)

describe('proposed', () => {
  test('are the strengths that were earned, of the construction that the draft names', () => {
    const tells = (facts: Facts) => proposed(facts).facts.traits['legs']?.against[0]?.tells
    expect(tells(draft)).toBe('weak')
    expect(tells({ ...draft, from: { construction: 'built', version: '1.0.0' } })).toBe('must')
    expect(tells({ ...draft, from: { construction: 'gone', version: '1.0.0' } })).toBe('weak')
    const five = Array.from({ length: 5 }, (_, i) => referenceOf(`r${i}`))
    expect(proposed(draft, five).facts.traits['legs']?.against[0]?.tells).toBe('must')
  })
  test('is the weight of the references, but where a sheet says one', () => {
    const weighed = [referenceOf('a', { mass: { value: 44.2, u: 0.05 } })]
    expect(proposed(draft, weighed).facts.figures.mass).toEqual({ middle: 44.2, cells: 1, from: 'references' })
    const sheet: Facts = { ...draft, figures: { mass: { middle: 45, cells: 1, from: 'sheet' } } }
    expect(proposed(sheet, weighed).facts.figures.mass).toEqual(sheet.figures.mass)
    const before: Facts = { ...draft, figures: { mass: { middle: 40, cells: 2, from: 'references' } } }
    expect(proposed(before, weighed).facts.figures.mass?.middle).toBe(44.2)
    expect(proposed(before).facts.figures.mass?.middle).toBe(40)
    expect(proposed(draft).facts.figures).toEqual({})
  })
  test('goes by the digest of its facts in one order, which nothing else has', () => {
    const { facts, digest, problems } = proposed(draft)
    expect(problems).toEqual([])
    expect(facts).toEqual(settleFacts(facts))
    expect(digest).toBe(factsDigest(facts, sha256))
    expect(digest).toMatch(/^sha256:[0-9a-f]{64}$/)
    expect(factsDigest({ ...facts, alsoEnough: ['x'] }, sha256)).not.toBe(digest)
    expect(canonicalFacts({ ...facts, alsoEnough: ['b', 'a'] })).toBe(
      canonicalFacts({ ...facts, alsoEnough: ['a', 'b', 'a'] }),
    )
    expect(factsDigest(facts, text => text)).toBe(`sha256:1\n${canonicalFacts(facts)}`)
  })
  test('with what is wrong with it', () => {
    expect(proposed(bare).problems).toEqual([{ code: 'nothing-to-hold-against' }])
  })
})

describe('programs', () => {
  const programs = openFamilyPrograms(openPrograms([anyCell]))
  const described = { facts: draft, digest: 'sha256:a', number: 2 }
  const day = anyCell.written
  test('are made over the pack of questions, each once, under the digest and number they were asked for', () => {
    expect(programs.base).toBe(anyCell)
    const candidate = programs.candidate(described)
    expect(candidate).toMatchObject({ facts: draft, pack: { version: '2.0.0', digest: 'sha256:a' } })
    expect(programs.candidate({ ...described })).toBe(candidate)
    expect(programs.candidate({ ...described, digest: 'sha256:b' })?.pack.digest).toBe('sha256:b')
    expect(programs.candidate({ ...described, number: 3 })?.pack.version).toBe('3.0.0')
    const other = { ...draft, identity: { ...draft.identity, id: 'f-other01' } }
    expect(programs.candidate({ ...described, facts: other })?.pack.id).toBe('f-other01')
    const program = programs.program(described, day)
    expect(program?.family?.id).toBe('f-tried01')
    expect(programs.program(described, day)).toBe(program)
    expect(programs.program({ ...described, number: 4 }, day)?.packs[1]?.version).toBe('4.0.0')
  })
  test('of what is held against a construction alone never come to an end', () => {
    const full: Facts = {
      ...draft,
      traits: { ...legs, ...traits({ print: { made: ['clean'], against: [against(['poor'])] } }) },
      figures: { capacity: { typical: 2500 } },
    }
    const one = { facts: full, digest: 'sha256:c', number: 1 }
    expect(programs.candidate(one)?.pack.families[0]).not.toHaveProperty('openEnded')
    expect(programs.candidate({ ...one, openEnded: true })?.pack.families[0]?.openEnded).toBe(true)
  })
  test('are none of facts that nothing can be made of, and that is remembered', () => {
    const none = { ...described, facts: bare, digest: 'sha256:none' }
    expect(derive(bare, anyCell).ok).toBe(false)
    for (let i = 0; i < 2; i++) {
      expect(programs.candidate(none)).toBeUndefined()
      expect(programs.program(none, day)).toBeUndefined()
    }
  })
  test('need a pack of questions', () => {
    expect(() => openFamilyPrograms(openPrograms([]))).toThrow(new RangeError('families need a pack of questions'))
    expect(() => openFamilyPrograms(openPrograms([{ ...anyCell, questions: [] }]))).toThrow(RangeError)
  })
})

describe('proved', () => {
  const derivedOf = (facts: Facts) => {
    const derived = derive(facts, anyCell)
    const compiled = derived.ok ? compileFamily(derived.pack) : undefined
    if (!derived.ok || !compiled?.ok) throw new Error('it does not derive')
    return { ...derived, program: compiled.program }
  }
  const whole = derivedOf({ ...draft, figures: { capacity: { typical: 2500, least: 2450 } } })
  test('is a pack whose cases all hold and show each rule in every way', () => {
    expect(prove(whole.program, whole)).toEqual({ cases: whole.cases.length, problems: [], canFindNothing: true })
    expect(whole.cases.length).toBeGreaterThan(6)
  })
  test('is none with a case that says something else, or a rule that lacks one', () => {
    const [first, ...others] = whole.cases
    if (!first) throw new Error('no case')
    const [rule = ''] = Object.keys(first.rules)
    expect(prove(whole.program, { pack: whole.pack, cases: others })).toMatchObject({
      cases: others.length,
      problems: [{ code: 'uncovered', at: 'f-tried01', name: rule, lacks: ['fires'] }],
    })
    const wrong = prove(whole.program, { pack: whole.pack, cases: [{ ...first, verdict: 'open' }, ...others] })
    expect(wrong.problems).toMatchObject([{ code: 'case-differs', at: first.case, name: 'verdict', expected: 'open' }])
  })
  test('says where nothing can ever be found', () => {
    const few = derivedOf(draft)
    expect(prove(few.program, few).canFindNothing).toBe(false)
  })
})

describe('features', () => {
  const all = [...featuresOf(anyCell).keys()]
  test('are asked about in one order: what leads, what is likeliest to tell, the rest as it stands, lifting a ring last', () => {
    const ordered = inCheckOrder(anyCell, [...all].reverse())
    const leading = ['legs', 'code-place', 'lettering-place', 'vent-disc', 'weld-dots', 'ends-finish', 'second-wrap']
    expect(ordered.slice(0, 7)).toEqual(leading)
    expect(ordered.at(-1)).toBe('dimples')
    const rest = ordered.slice(ordered.indexOf('code-print') + 1, -1)
    expect(rest).toEqual(all.filter(one => rest.includes(one)))
    expect(inCheckOrder(anyCell, [])).toEqual([])
  })
  test('that are offered are those that are known and as many others, none that tells more of its owner than of the cell', () => {
    const known = traits({ 'in-device': {}, print: {} })
    expect(offeredFeatures(anyCell, { traits: known }, 4)).toEqual(
      inCheckOrder(anyCell, ['in-device', 'print', 'legs', 'code-place']),
    )
    expect(offeredFeatures(anyCell, { traits: known }, 1)).toEqual(inCheckOrder(anyCell, ['in-device', 'print']))
    const many = offeredFeatures(anyCell, { traits: {} }, 99)
    for (const one of ['in-device', 'test-current', 'sheet-fits', 'label-energy']) expect(many).not.toContain(one)
    expect(many).toContain('dimples')
  })
})

describe('a file', () => {
  const fake = {
    ...{ id: 'seen', title: 'Four legs', since: '2026-W45', copies: [], says: { en: 'E', de: 'D' }, finding: 'f-1' },
    ...{ state: 'seen' as const, look: { legs: ['four'] } },
  }
  const file = (change: object = {}) => ({
    ...JSON.parse(JSON.stringify(exported({ ...draft, fakes: [fake] }))),
    ...change,
  })
  const refused = (data: unknown) => {
    const read = imported(data, 'f-mine01')
    return read.ok ? [] : read.problems
  }
  test('has everything but what a finding was called here, and comes in under an id of its own', () => {
    expect(exported({ ...draft, fakes: [fake] })).toMatchObject({
      'cellwary-family': 1,
      facts: 1,
      identity: draft.identity,
    })
    expect(file().fakes[0]).not.toHaveProperty('finding')
    expect(imported(file(), 'f-mine01')).toMatchObject({
      ok: true,
      facts: { identity: { id: 'f-mine01', name: 'Tried' } },
    })
  })
  test.each<[string, unknown, object]>([
    ['nothing', null, { code: 'not-a-family' }],
    ['text', 'x', { code: 'not-a-family' }],
    ['another thing', { facts: 1 }, { code: 'not-a-family' }],
    ['a newer one', file({ 'cellwary-family': 2 }), { code: 'newer-format', format: 2, known: 1 }],
    ['an older one', file({ 'cellwary-family': 0 }), { code: 'newer-format', format: 0, known: 1 }],
    ['another shape', file({ alsoEnough: 'x' }), { code: 'shape', at: 'alsoEnough', says: expect.any(String) }],
    ['a key too many', file({ more: 1 }), { code: 'shape', at: '(top)', says: expect.any(String) }],
    ['too many entries', file({ alsoEnough: Array(401).fill('a') }), { code: 'too-many-entries', most: 400 }],
    [
      'too many features',
      file({ traits: Object.fromEntries(Array.from({ length: 26 }, (_, i) => [`f${i}`, {}])) }),
      { code: 'too-many-features', most: 25, have: 26 },
    ],
    [
      'an address in its words',
      file({ fakes: [{ ...fake, finding: undefined, says: 'See www.shop.com for more' }] }),
      { code: 'words-with-link', words: 'See www.shop.com for more' },
    ],
  ])('of %s is refused', (_, data, problem) => {
    expect(refused(JSON.parse(JSON.stringify(data)))).toEqual([problem])
  })
  test('words with an address are named by their beginning', () => {
    const says = `www.shop.com ${'x'.repeat(100)}`
    expect(refused(JSON.parse(JSON.stringify(file({ fakes: [{ ...fake, finding: undefined, says }] }))))).toEqual([
      { code: 'words-with-link', words: says.slice(0, 80) },
    ])
  })
  test('is so deep and no deeper; five things that are wrong are named at most', () => {
    const deep = (levels: number): unknown => (levels === 0 ? 'x' : [deep(levels - 1)])
    expect(refused(file({ show: deep(10) }))).toMatchObject([{ code: 'shape' }])
    expect(refused(file({ show: deep(11) }))).toEqual([{ code: 'too-deep', most: fileLimits.depth }])
    expect(refused(file({ alsoEnough: Array(9).fill(7) }))).toHaveLength(5)
    expect(refused(file({ alsoEnough: Array(400).fill('a') }))).toMatchObject([{ code: 'shape' }])
  })
  test('names read as the eye sees them, in whatever field they stand', () => {
    const named = (identity: object) => imported(file({ identity: { ...draft.identity, ...identity } }), 'f-mine01')
    expect(named({ name: ' a\u200b  b ', maker: 'c\n d', alsoCalled: ['e  f', '\u200b'] })).toMatchObject({
      facts: { identity: { name: 'a b', maker: 'c d', alsoCalled: ['e f'] } },
    })
    for (const odd of [{ name: 'www.a.com' }, { maker: 'www.a.com' }, { alsoCalled: ['www.a.com'] }])
      expect(named(odd)).toMatchObject({ problems: [{ code: 'name-reads-like-link' }] })
  })
  test('has words in features, remarks and known fakes, in every language they have', () => {
    const words = textsOf({
      ...bare,
      traits: traits({
        legs: {
          against: [against(['four'], { says: 'one' }), against(['five'])],
          remarks: [{ options: ['x'], says: { en: 'two', es: 'three' } }],
        },
      }),
      fakes: [fake],
    })
    expect(words).toEqual(['one', 'two', 'three', 'Four legs', 'E', 'D'])
  })
})
