// The shipped constructions: every one derives, passes the checker, can be drawn, and is told in three languages.
import { describe, expect, test } from 'vitest'
import { openCoverage, runCase, uncovered } from '../../src/engine/cases.ts'
import { asFamily, factsFrom } from '../../src/families/construction.ts'
import { derive } from '../../src/families/derive/derive.ts'
import { withEarned } from '../../src/families/strength/earned.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { readCellParameters } from '../../src/pictures/cell/read-cell-parameters.ts'
import { anyCell, compileFamily } from './base.ts'

const { constructions, problems } = await loadConstructions()
const identity = (format: '18650') => ({
  ...{ id: 'f-tried01', name: 'Tried', maker: 'Nobody', alsoCalled: [], format },
  ...{ kind: 'bare' as const, chemistry: 'not-known' as const },
})

test('at least eight are shipped, for both usual sizes, bare and protected, and none has a problem', () => {
  expect(problems).toEqual([])
  expect(constructions.length).toBeGreaterThanOrEqual(8)
  const made = constructions.flatMap(one => one.formats.flatMap(format => one.kinds.map(kind => `${format} ${kind}`)))
  for (const wanted of ['18650 bare', '18650 protected', '21700 bare', '21700 protected'])
    expect(made).toContain(wanted)
})

test('siblings name each other', () => {
  for (const one of constructions)
    for (const [format, sibling] of Object.entries(one.sibling)) {
      const other = constructions.find(each => each.construction === sibling)
      expect(other?.formats).toContain(format)
      expect(Object.values(other?.sibling ?? {})).toContain(one.construction)
    }
})

test.each(['18650', '21700'] as const)(
  'a bare %s with three legs has a letter wherever lettering and square code are: both on the can, both on the wrap, or one on each',
  format => {
    const places = constructions
      .filter(one => one.formats.includes(format) && one.kinds.includes('bare'))
      .filter(({ traits }) => traits['legs']?.made.includes('three'))
      .map(({ traits }) => `${traits['lettering-place']?.made[0]} ${traits['code-place']?.made[0]}`)
    for (const wanted of ['can can', 'wrap wrap', 'can wrap']) expect(places).toContain(wanted)
  },
)

describe.each(constructions)('$construction', construction => {
  test('is told in three languages and can be drawn', () => {
    expect(construction.title.de).toBeTruthy()
    expect(construction.title.es).toBeTruthy()
    expect(readCellParameters(construction.show)).toMatchObject({ ok: true })
  })

  test.each(construction.formats)('as a family of size %s passes the checker and keeps its musts', format => {
    const facts = factsFrom(construction, identity(format as '18650'))
    const result = derive(facts, anyCell)
    if (!result.ok) throw new Error(JSON.stringify(result))
    expect(result.dropped).toEqual([])
    const compiling = compileFamily(result.pack)
    if (!compiling.ok) throw new Error(JSON.stringify(compiling.problems))
    const coverage = openCoverage(result.pack.rules)
    const found = result.cases.flatMap(one => runCase(compiling.program, one, one.case, coverage))
    expect([...found, ...uncovered(coverage, 'f-tried01')]).toEqual([])
    // What a construction says is earned by it.
    expect(withEarned(facts, construction, []).traits).toEqual(facts.traits)
  })

  test('held against directly it rules nothing out and finds nothing', () => {
    const facts = asFamily(construction, construction.title.en, construction.formats[0] ?? '18650')
    const result = derive(facts, anyCell, { openEnded: true })
    if (!result.ok) throw new Error(JSON.stringify(result))
    expect(result.pack.rules.filter(rule => rule.kind === 'must')).toEqual([])
    const compiling = compileFamily(result.pack)
    if (!compiling.ok) throw new Error(JSON.stringify(compiling.problems))
    expect(compiling.program.outlook(compiling.program.given).reachable).not.toContain('nothing-found')
  })
})

test('a must of no construction stays only as strong as a word alone', () => {
  const [construction] = constructions
  if (!construction) throw new Error('there is none')
  const facts = factsFrom(construction, identity('18650'))
  const alone = withEarned(facts, undefined, [])
  expect(Object.values(alone.traits).flatMap(trait => trait.against.map(one => one.tells))).not.toContain('must')
})
