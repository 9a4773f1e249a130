// From packs to a program: what is in scope for a family, what is enough, what is urgent, and what two packs may not both say.
import { describe, expect, test } from 'vitest'
import { option } from '../../src/engine/answers.ts'
import { compile, findFamily, type Program } from '../../src/engine/compile.ts'
import { judge } from '../../src/engine/judge.ts'
import { openBench } from '../../src/engine/outlook/bench.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { openPrograms, findFamily as programFamily } from '../../src/engine/programs.ts'

const look = (id: string, change: object = {}) => ({
  ...{ id, ask: `${id}?`, care: 'look', effort: 1, ...change },
  options: [
    { id: 'yes', label: 'Yes' },
    { id: 'no', label: 'No' },
  ],
})
const rule = (id: string, kind: object, when: object, change: object = {}) => ({
  ...{ id, ...kind, when, says: `${id}.`, source: ['trade'], ...change },
})
const sign = { kind: 'sign', strength: 'weak' }
const hazard = (act: string) => ({ kind: 'hazard', act })
const pack = (id: string, raw: object, others: readonly Pack[] = []): Pack => {
  const read = readPack(
    {
      ...{ pack: id, version: '1.0.0', written: '2026-11-25', title: id, about: 'For tests.' },
      ...{ sources: { trade: { kind: 'common-practice', text: `of ${id}` } }, ...raw },
    },
    others,
    `digest of ${id}`,
  )
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.pack
}
const compiled = (packs: readonly Pack[], family?: string, day = '2026-11-25', also: string[] = []): Program => {
  const result = compile(packs, day, family, also)
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.program
}
const problems = (packs: readonly Pack[], family?: string) => {
  const result = compile(packs, '2026-11-25', family)
  return result.ok ? [] : result.problems
}
const ids = (list: readonly { readonly id: string }[]) => list.map(one => one.id)

const general = pack('general', {
  questions: [look('leak'), look('wrap', { effort: 5 }), look('printed', { topic: 'label' }), look('unread')],
  rules: [
    rule('leaks', hazard('isolate'), { leak: 'yes' }),
    rule('torn', sign, { wrap: 'yes' }),
    rule('odd', { kind: 'no-bearing' }, { wrap: 'no' }),
  ],
})
const makers = pack(
  'makers',
  {
    uses: ['general'],
    questions: [look('legs')],
    rules: [
      rule('four-legs', { kind: 'must', means: 'counterfeit' }, { legs: 'no', wrap: 'yes' }, { families: ['one'] }),
      rule('their-legs', sign, { legs: 'yes' }, { families: ['two', 'three'] }),
      rule('aged', sign, { legs: 'no' }, { validUntil: '2026-11-25' }),
    ],
    families: [
      { id: 'one', name: 'One', maker: 'M', given: { printed: 'yes' }, enough: ['four-legs'], waives: ['torn'] },
      { id: 'two', name: 'Two', maker: 'M', given: {}, enough: ['their-legs'], notWhile: ['odd', 'aged'] },
      { id: 'three', name: 'Three', maker: 'M', given: {}, enough: ['their-legs'], openEnded: true },
    ],
  },
  [general],
)
const others = pack('others', {
  questions: [look('cap')],
  rules: [rule('cap', sign, { cap: 'yes' })],
  families: [{ id: 'four', name: 'Four', maker: 'N', given: {}, enough: ['cap'] }],
})
const packs = [general, makers, others]

describe('in scope', () => {
  test('for a cell nobody has named: what holds for every cell', () => {
    const program = compiled(packs)
    expect(ids(program.rules)).toEqual(['leaks', 'torn', 'odd'])
    expect(ids(program.scope)).toEqual(['general'])
    expect(program.packs).toEqual([{ id: 'general', version: '1.0.0', digest: 'digest of general' }])
    expect(program.family).toBeUndefined()
    expect(program.given).toEqual({})
    expect(program.enough).toEqual([])
    expect(program.sources).toEqual({ general: general.sources })
  })
  test('for a family: its pack too, the rules for it, but those it waives', () => {
    expect(ids(compiled(packs, 'one').rules)).toEqual(['leaks', 'odd', 'four-legs', 'aged'])
    expect(ids(compiled(packs, 'two').rules)).toEqual(['leaks', 'torn', 'odd', 'their-legs', 'aged'])
    expect(ids(compiled(packs, 'four').rules)).toEqual(['leaks', 'torn', 'odd', 'cap'])
    expect(ids(compiled(packs, 'two').packs)).toEqual(['general', 'makers'])
    expect(compiled(packs, 'one').given).toEqual({ printed: option('yes') })
  })
  test('are the questions that some rule reads, in the order of the packs, and those that are wanted besides', () => {
    expect([...compiled(packs).questions.keys()]).toEqual(['leak', 'wrap'])
    expect([...compiled(packs, 'two').questions.keys()]).toEqual(['leak', 'wrap', 'legs'])
    const also = compiled(packs, undefined, '2026-11-25', ['unread', 'printed'])
    expect([...also.questions.keys()]).toEqual(['leak', 'wrap', 'printed', 'unread'])
    expect(also.questions.get('wrap')).toBe(general.questions[1])
    expect(also.states.get('leak')?.length).toBeGreaterThan(1)
    expect(compiled(packs, 'one').reads.get('four-legs')).toEqual(['legs', 'wrap'])
  })
  test('a question that all cells are asked stands before one of a family, whatever the order of the packs', () => {
    const turned = compiled([makers, general], 'one')
    expect(turned.space.questions.map(one => one.id)).toEqual(['legs', 'leak', 'wrap'])
    const later = pack('later', {
      questions: [look('own'), look('common')],
      rules: [rule('own', sign, { own: 'yes' }, { families: ['five'] }), rule('common', sign, { common: 'yes' })],
      families: [{ id: 'five', name: 'Five', maker: 'N', given: {}, enough: ['own'] }],
    })
    expect(compiled([later], 'five').space.questions.map(one => one.id)).toEqual(['common', 'own'])
    expect([...compiled([later], 'five').questions.keys()]).toEqual(['own', 'common'])
  })
  test('a family that is not there is named, with those that are', () => {
    expect(problems(packs, 'five')).toEqual([
      {
        ...{ code: 'unknown-name', at: 'family', what: 'family', name: 'five' },
        known: ['one', 'two', 'three', 'four'],
      },
    ])
    expect(findFamily(packs, 'four')?.name).toBe('Four')
    expect(findFamily(packs, 'five')).toBeUndefined()
  })
})

describe('enough', () => {
  test('is what the family lists, what keeps it open, and every danger', () => {
    expect(ids(compiled(packs, 'one').enough)).toEqual(['leaks', 'four-legs'])
    expect(ids(compiled(packs, 'two').enough)).toEqual(['leaks', 'odd', 'their-legs', 'aged'])
  })
  test('is nothing where nothing is ever enough', () => {
    const program = compiled(packs, 'three')
    expect(program.enough).toEqual([])
    const best = { leak: option('no'), wrap: option('no'), legs: option('no') }
    expect(judge(program, best).verdict).toBe('open')
    expect(program.outlook({}).reachable).not.toContain('nothing-found')
    expect(judge(compiled(packs, 'one'), { ...best, legs: option('yes') }).verdict).toBe('nothing-found')
  })
})

test('a sign counts to the end of its last day', () => {
  expect([...compiled(packs, 'one', '2026-11-25').expired]).toEqual([])
  expect([...compiled(packs, 'one', '2026-11-26').expired]).toEqual(['aged'])
})

test('of each dangerous look the most urgent thing it can mean is known; what a label says is no danger', () => {
  const urgent = pack('urgent', {
    questions: [look('leak'), look('hot'), look('skin'), look('printed', { topic: 'label' })],
    rules: [
      rule('a', hazard('isolate'), { leak: 'yes' }),
      rule('b', hazard('get-away'), { leak: 'yes', hot: 'yes' }),
      rule('c', hazard('isolate'), { hot: 'yes', printed: 'no' }),
      rule('d', hazard('leave'), { leak: 'no' }),
      rule('e', hazard('leave'), { skin: 'yes' }),
      rule('f', sign, { printed: 'no' }),
    ],
  })
  expect(Object.fromEntries(compiled([urgent]).hazards)).toEqual({
    leak: 'get-away',
    hot: 'get-away',
    skin: 'leave',
  })
})

test('two packs that say the same thing are not used together', () => {
  const again = pack('again', {
    questions: [look('wrap'), look('leak')],
    rules: [rule('torn', sign, { wrap: 'no' }), rule('mine', sign, { leak: 'no' })],
  })
  expect(problems([general, again])).toEqual([
    { code: 'duplicate', at: 'packs', what: 'question', name: 'wrap' },
    { code: 'duplicate', at: 'packs', what: 'question', name: 'leak' },
    { code: 'duplicate', at: 'packs', what: 'rule', name: 'torn' },
  ])
  expect(problems([general])).toEqual([])
})

describe('the programs of all packs', () => {
  const programs = openPrograms(packs, ['unread'])
  test('name the packs, those for every cell, and the families', () => {
    expect(programs.packs).toEqual(packs.map(({ id, version, digest }) => ({ id, version, digest })))
    expect(programs.general).toEqual([general])
    expect(ids(programs.families)).toEqual(['one', 'two', 'three', 'four'])
    expect(programFamily(programs, 'two')?.name).toBe('Two')
    expect(programFamily(programs, null)).toBeUndefined()
  })
  test('are made once for all days between two last days', () => {
    expect(['2026-11-24', '2026-11-25', '2026-11-26', '2030-01-01'].map(programs.periodOf)).toEqual([0, 0, 1, 1])
    const before = programs.compileFor('one', '2026-11-25')
    expect(programs.compileFor('one', '2020-01-01')).toBe(before)
    expect(programs.compileFor('one', '2026-11-26')).not.toBe(before)
    expect(programs.compileFor('two', '2026-11-25')).not.toBe(before)
    expect(programs.programFor('one', '2026-11-25')).toBe(before.ok && before.program)
    expect(programs.programFor('one', '2026-11-26')?.expired).toEqual(new Set(['aged']))
    expect(programs.programFor(null, '2026-11-25')?.questions.has('unread')).toBe(true)
    expect(programs.programFor('five', '2026-11-25')).toBeUndefined()
  })
  test('are there after the first slice, and the same once all are done', () => {
    const sliced = openPrograms(packs, ['unread'])
    const slices = sliced.compilingFor('one', '2026-11-25')
    const first = slices.next()
    expect(first.done).toBe(false)
    expect(sliced.programFor('one', '2026-11-25')).toBe(first.value.ok && first.value.program)
    const says = (of: typeof sliced) => {
      const { chances, prospects } = of.programFor('one', '2026-11-25')?.outlook({}) ?? {}
      return { chances, prospects: prospects?.map(({ question, gain }) => ({ question, gain })) }
    }
    expect(says(programs).prospects?.length).toBeGreaterThan(0)
    expect(says(sliced)).toEqual(says(programs))
    let last = first
    while (!last.done) last = slices.next()
    expect(last.value).toBe(sliced.compileFor('one', '2026-11-25'))
    expect(says(sliced)).toEqual(says(programs))
    // What is compiled already is not compiled again.
    expect(sliced.compilingFor('one', '2026-11-25').next()).toEqual({ done: true, value: last.value })
    expect(sliced.compilingFor('five', '2026-11-25').next().value).toMatchObject({ ok: false })
  })
  test('of a family that is not installed are made beside what holds for every cell, and not kept', () => {
    const beside = pack('five', {
      questions: [look('cap')],
      rules: [rule('cap', sign, { cap: 'yes' })],
      families: [{ id: 'five', name: 'Five', maker: 'N', given: {}, enough: ['cap'] }],
    })
    const made = programs.compileBeside(beside, '2026-11-25')
    expect(made.ok && ids(made.program.rules)).toEqual(['leaks', 'torn', 'odd', 'cap'])
    expect(made.ok && made.program.questions.has('unread')).toBe(true)
    expect(programs.compileBeside(beside, '2026-11-25')).not.toBe(made)
    expect(programs.programFor('five', '2026-11-25')).toBeUndefined()
  })
  test('come out the same on a bench that is full', () => {
    const full = { ...openBench(), full: true }
    const same = openPrograms(packs, [], full).programFor('one', '2026-11-25')
    expect(same && ids(same.rules)).toEqual(ids(compiled(packs, 'one').rules))
  })
})
