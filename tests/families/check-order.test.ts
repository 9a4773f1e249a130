// The order in which a moderator reads features is the order in which a check asks about them.
import { expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { nextOf } from '../../src/check/next.ts'
import { start } from '../../src/check/step.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { factsFrom } from '../../src/families/construction.ts'
import { derive } from '../../src/families/derive/derive.ts'
import type { Construction } from '../../src/families/facts/facts-schema.ts'
import { featuresOf, inCheckOrder, offeredFeatures } from '../../src/families/features.ts'
import { loadConstructions } from '../../src/packs/load-constructions.ts'
import { anyCell } from './base.ts'

const { constructions } = await loadConstructions()

const factsOf = (construction: Construction) =>
  factsFrom(construction, {
    ...{ id: 'f-tried01', name: 'Tried', maker: 'Nobody', alsoCalled: [], chemistry: 'not-known' },
    ...{ format: construction.formats[0] ?? '18650', kind: construction.kinds[0] ?? 'bare' },
  })

/** Every question of a check in which nothing can be told. */
function asked(program: Program): string[] {
  const started = start(
    program,
    { id: 'x', holder: 'h', server: 's', family: 'f-tried01', mode: 'full', cells: 1 },
    1000,
  )
  if (!started.ok) throw new Error(JSON.stringify(started.refusal))
  let check: Check = { ...started.check, consents: { unwrap: true } }
  for (;;) {
    const next = nextOf(program, check)
    if (next.is !== 'ask') return [...check.trail]
    const answers = { ...check.answers, [next.question]: { kind: 'cant-tell' as const } }
    check = { ...check, answers, trail: [...check.trail, next.question] }
  }
}

/** On most cells the code is on the wrap: where it belongs on the can and other legs are rare, it tells more and is asked first. */
const codeFirst = ['all-print-on-can']

test.each(constructions.map(one => [one.construction, one] as const))('%s', (name, construction) => {
  const facts = factsOf(construction)
  const derived = derive(facts, anyCell)
  if (!derived.ok) throw new Error(JSON.stringify(derived.problems))
  const compiled = compile([anyCell, derived.pack], anyCell.written, 'f-tried01')
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  // What rules out by one look, or nearly: the rest is asked about as the whole check needs it.
  const telling = Object.keys(facts.traits).filter(one =>
    facts.traits[one]?.against.some(each => !each.together && (each.tells === 'must' || each.tells === 'strong')),
  )
  const order = asked(compiled.program).filter(one => telling.includes(one))
  expect(order.length > 0).toBe(telling.length > 0)
  const read = inCheckOrder(anyCell, order)
  const [legs, code, ...rest] = read
  expect(codeFirst.includes(name) ? [code, legs, ...rest] : read).toEqual(order)
})

test('whatever a family says something of is offered, and nothing twice', () => {
  const most = 25
  const all = [...featuresOf(anyCell).keys()]
  const odd = { traits: Object.fromEntries(all.slice(0, most).map(id => [id, { made: [], against: [], remarks: [] }])) }
  const offered = offeredFeatures(anyCell, odd, most)
  expect(new Set(offered)).toEqual(new Set(all.slice(0, most)))
  const bare = offeredFeatures(anyCell, { traits: {} }, most)
  expect(bare.length).toBeLessThanOrEqual(most)
  expect(bare.slice(0, 4)).toEqual(['legs', 'code-place', 'lettering-place', 'vent-disc'])
  expect(bare.at(-1)).toBe('dimples')
})
