// One change to a draft at a time: what it does to the facts, what it leaves alone, and what is refused.
import { describe, expect, test } from 'vitest'
import { bareFacts, factsFrom } from '../../src/families/construction.ts'
import { type Edit, editDraft, workedOn } from '../../src/families/edit.ts'
import type { Construction, Facts, KnownFake, Trait } from '../../src/families/facts/facts-schema.ts'
import { limits, type ServerFamily } from '../../src/families/family.ts'
import { draftOf, someFacts } from './made-families.ts'

const all = ['three', 'four', 'five', 'other', 'nowhere']
const made = (...options: readonly string[]): Edit => ({ is: 'made', feature: 'legs', options, all })
const tells = (how: Extract<Edit, { is: 'tells' }>['tells']): Edit => ({
  is: 'tells',
  feature: 'legs',
  tells: how,
  all,
})
const bare = bareFacts(someFacts.identity)
const edited = (facts: Facts, ...edits: readonly Edit[]): Facts =>
  edits.reduce((before, edit) => {
    const editing = editDraft(draftOf('s', before), before, edit, 'i1')
    if (!editing.ok || !editing.family.draft) throw new Error(JSON.stringify(editing))
    return editing.family.draft
  }, facts)
const legs = (facts: Facts) => facts.traits['legs'] as Trait
const refusal = (facts: Facts, edit: Edit) => {
  const editing = editDraft(draftOf('s', facts), facts, edit, 'i1')
  return editing.ok ? undefined : editing.refusal
}
const against = (tells: string, ...options: readonly string[]) => ({ options, tells, from: 'moderator' })

describe('how it is made', () => {
  test('lets every other answer speak against it, weakly, but for those that may be anything', () => {
    expect(legs(edited(bare, made('three')))).toEqual({
      ...{ made: ['three'], against: [against('weak', 'four', 'five')], remarks: [] },
    })
    expect(legs(edited(bare, made('three', 'four', 'five'))).against).toEqual([])
  })
  test('takes what is as made out of what speaks against it, and leaves the rest as it told', () => {
    const strong = edited(bare, made('three'), tells('strong'))
    expect(legs(edited(strong, made('three', 'four')))).toEqual({
      ...{ made: ['three', 'four'], against: [against('strong', 'five')], remarks: [] },
    })
    expect(legs(edited(strong, made('three', 'four', 'five'))).against).toEqual([])
    // Once it was described, another answer does not come back by itself.
    expect(legs(edited(strong, made('three', 'four'), made('three'))).against).toEqual([against('strong', 'five')])
  })
  test('changed to another answer is described anew: whatever else is seen counts as a word alone does', () => {
    const strong = edited(bare, made('three'), tells('strong'))
    expect(legs(edited(strong, made('four')))).toEqual({
      ...{ made: ['four'], against: [against('weak', 'three', 'five')], remarks: [] },
    })
    // By way of both, which nothing but "something else" is left to speak against.
    const both = edited(strong, made('three', 'four', 'five'))
    expect(legs(edited(both, made('four'))).against).toEqual([against('weak', 'three', 'five')])
    const excepted = edited(strong, { is: 'exception', feature: 'legs', on: true }, made('five'))
    expect(legs(excepted).against).toEqual([{ ...against('weak', 'three', 'four'), unless: 'open-rewrap' }])
  })
  test('that was said to tell nothing tells nothing of another answer either', () => {
    const silent = edited(bare, made('three'), tells('no-bearing'))
    expect(legs(edited(silent, made('four'))).against).toEqual([])
    expect(legs(edited(silent, made('three', 'four'))).against).toEqual([])
    // A remark stays as long as it speaks of anything that is not as made.
    expect(legs(edited(silent, made('four'))).remarks).toEqual([{ options: ['four', 'five'] }])
    expect(legs(edited(silent, made('three'))).remarks).toEqual([{ options: ['four', 'five'] }])
    expect(legs(edited(silent, made('four', 'five'))).remarks).toEqual([])
  })
  test('is forgotten where it is said not to be known', () => {
    expect(edited(edited(bare, made('three')), { is: 'not-known', feature: 'legs' }).traits).toEqual({})
  })
})

describe('how much it tells', () => {
  const described = edited(bare, made('three'))
  test('is the same of every answer that speaks against it', () => {
    expect(legs(edited(described, tells('strong'))).against).toEqual([against('strong', 'four', 'five')])
    expect(legs(edited(described, tells('strong'), tells('weak'))).against).toEqual([against('weak', 'four', 'five')])
  })
  test('is a remark where it tells nothing, and counts again when it is said to', () => {
    const silent = edited(described, tells('no-bearing'))
    expect(legs(silent)).toEqual({ made: ['three'], against: [], remarks: [{ options: ['four', 'five'] }] })
    expect(legs(edited(silent, tells('moderate')))).toEqual({
      ...{ made: ['three'], against: [against('moderate', 'four', 'five')], remarks: [] },
    })
    // Whoever says so twice has said it once.
    expect(legs(edited(silent, tells('no-bearing')))).toEqual(legs(silent))
  })
  test('is not changed of what counts only together with another answer', () => {
    const together = { options: ['four'], tells: 'must', together: { top: ['flat'] }, from: 'construction' } as const
    const trait = { ...legs(described), against: [...legs(described).against, together] } as unknown as Trait
    const facts = { ...described, traits: { legs: trait } }
    expect(legs(edited(facts, tells('strong'))).against).toContainEqual(together)
    expect(legs(edited(facts, tells('no-bearing'))).against).toEqual([together])
    expect(legs(edited(facts, { is: 'exception', feature: 'legs', on: true })).against).toContainEqual(together)
  })
  test('cannot be said before it is said how it is made', () => {
    expect(refusal(bare, tells('strong'))).toEqual({ code: 'nothing-made' })
  })
  test('excepts openly rewrapped cells when asked to, and no longer when not', () => {
    const excepted = edited(described, { is: 'exception', feature: 'legs', on: true })
    expect(legs(excepted).against).toEqual([{ ...against('weak', 'four', 'five'), unless: 'open-rewrap' }])
    expect(edited(excepted, { is: 'exception', feature: 'legs', on: false })).toEqual(described)
  })
})

describe('a family as a whole', () => {
  const fake = (id: string, title = 'Four legs'): KnownFake => ({
    ...{ id, title, since: '2026-W45', look: { legs: ['four'] }, copies: [], says: 'Four.', state: 'seen' },
  })
  test('is built like a construction of its size, and keeps its figures and known fakes', () => {
    const construction = {
      ...{ construction: 'two-dimples', version: '1.0.0', formats: [bare.identity.format], kinds: ['bare'] },
      ...{ traits: { legs: { made: ['three'], against: [], remarks: [] } }, show: {} },
    } as unknown as Construction
    const figures = { capacity: { typical: 2500 } }
    const facts = {
      ...bare,
      figures,
      fakes: [fake('k1')],
      traits: { top: { made: ['flat'], against: [], remarks: [] } },
    }
    expect(edited(facts, { is: 'built', construction })).toEqual({
      ...{ ...factsFrom(construction, bare.identity), figures, fakes: [fake('k1')] },
    })
    const small = { ...construction, formats: ['14500'] } as unknown as Construction
    expect(refusal(facts, { is: 'built', construction: small })).toEqual({ code: 'wrong-size', construction: small })
    const bareOnly = { ...construction, kinds: [] } as unknown as Construction
    expect(refusal(facts, { is: 'built', construction: bareOnly })).toMatchObject({ code: 'wrong-size' })
  })
  test('takes another name, size and figures, unless what it is built like is of another size', () => {
    const identity = { name: 'Renamed', maker: 'Somebody', format: '21700', kind: 'bare' } as const
    const figures = { capacity: { typical: 2600 } }
    const renamed = edited(bare, { is: 'identity', identity, figures, built: undefined })
    expect(renamed.identity).toEqual({ ...bare.identity, ...identity })
    expect(renamed).toMatchObject({ figures, show: { format: '21700' } })
    const built = { formats: ['18650'], kinds: ['bare'] } as unknown as Construction
    expect(refusal(bare, { is: 'identity', identity, figures, built })).toEqual({
      code: 'wrong-size',
      construction: built,
    })
  })
  test('takes others’ facts under its own id', () => {
    const other = { ...someFacts, identity: { ...someFacts.identity, id: 'f-other', name: 'Another' } }
    const taken = edited(bare, { is: 'facts', facts: other })
    expect(taken.identity).toEqual({ ...other.identity, id: bare.identity.id })
    expect(taken.traits).toEqual(other.traits)
  })
  test('has each known fake once, retires it by name, and takes so many and no more', () => {
    const two = edited(bare, { is: 'fake', fake: fake('k1') }, { is: 'fake', fake: fake('k2') })
    expect(edited(two, { is: 'fake', fake: fake('k1', 'Five legs') }).fakes.map(one => one.title)).toEqual([
      ...['Four legs', 'Five legs'],
    ])
    expect(edited(two, { is: 'fake-retired', fake: 'k2' }).fakes.map(one => one.state)).toEqual(['seen', 'retired'])
    const full = { ...bare, fakes: Array.from({ length: limits.fakes }, (_, i) => fake(`k${i}`)) }
    expect(refusal(full, { is: 'fake', fake: fake('one-more') })).toEqual({
      code: 'too-many-fakes',
      most: limits.fakes,
    })
    expect(edited(full, { is: 'fake', fake: fake('k0', 'Five legs') }).fakes).toHaveLength(limits.fakes)
  })
  test('has so many features and no more; those it has can still be changed', () => {
    const trait: Trait = { made: ['x'], against: [], remarks: [] }
    const many = Object.fromEntries(Array.from({ length: limits.features - 1 }, (_, i) => [`f${i}`, trait]))
    const full = edited({ ...bare, traits: many }, made('three'))
    expect(Object.keys(full.traits)).toHaveLength(limits.features)
    const another: Edit = { is: 'made', feature: 'top', options: ['flat'], all: ['flat', 'button'] }
    expect(refusal(full, another)).toEqual({ code: 'too-many-features', most: limits.features })
    expect(refusal(full, made('four'))).toBeUndefined()
  })
})

describe('what an edit does to the draft', () => {
  const editedFrom = (more: Partial<ServerFamily>) => {
    const editing = editDraft(draftOf('s', bare, more), bare, made('three'), 'i1')
    if (!editing.ok) throw new Error(editing.refusal.code)
    return editing.family
  }
  test('it is a new revision by somebody, and in review no more', () => {
    const family = editedFrom({ revision: 4, review: { by: '11' } as never, state: 'in-review' })
    expect(family).toMatchObject({ revision: 5, changedBy: 'i1', review: null, state: 'draft' })
  })
  test('what is in force stays so, and what is retired too', () => {
    expect(editedFrom({ head: 2, state: 'in-force' }).state).toBe('in-force')
    expect(editedFrom({ head: 2, state: 'in-review' }).state).toBe('in-force')
    expect(editedFrom({ head: 2, state: 'retired' }).state).toBe('retired')
  })
  test('worked on is the draft, or what is in force where there is none', () => {
    expect(workedOn(draftOf('s', bare), someFacts)).toBe(bare)
    expect(workedOn(draftOf('s', bare, { draft: null } as never), someFacts)).toBe(someFacts)
  })
})
