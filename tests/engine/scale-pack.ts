// A pack about a scale: what is weighed makes the verdict worse on both sides, and what is looked at adds to it.
import { compile, type Program } from '../../src/engine/compile.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'

const rule = (id: string, kind: object, when: object) => ({ id, ...kind, when, says: `${id}.`, source: ['trade'] })
const sign = (strength: string) => ({ kind: 'sign', strength })
const look = (id: string, ...options: string[]) => ({
  ...{ id, ask: `${id}?`, care: 'look', effort: 1 },
  options: options.map(one => ({ id: one, label: one })),
})

export const scaleDay = '2026-11-25'
const read = readPack({
  ...{ pack: 'scale', version: '1.0.0', written: scaleDay, title: 'A scale', about: 'For tests.' },
  sources: { trade: { kind: 'common-practice', text: 'common practice' } },
  questions: [
    look('wrap', 'whole', 'torn'),
    look('legs', 'three', 'four'),
    look('code', 'there', 'missing'),
    look('shop', 'known', 'new'),
    { id: 'mass', ask: 'How heavy?', care: 'meter', effort: 2, reading: { quantity: 'mass', least: 5, most: 200 } },
    { id: 'volts', ask: 'V?', care: 'meter', effort: 2, reading: { quantity: 'voltage', least: 0, most: 5 } },
  ],
  rules: [
    rule('torn-wrap', { kind: 'hazard', act: 'isolate' }, { wrap: 'torn' }),
    rule('empty', { kind: 'hazard', act: 'isolate' }, { volts: { below: 1 } }),
    rule('low-and-bare', { kind: 'hazard', act: 'isolate' }, { volts: { below: 2 }, code: 'missing' }),
    rule('heavy', { kind: 'must', means: 'counterfeit' }, { mass: { above: 60 } }),
    rule('light', sign('strong'), { mass: { below: 42 } }),
    rule('four-legs', sign('moderate'), { legs: 'four' }),
    rule('no-code', sign('moderate'), { code: { unless: 'there' }, legs: 'four' }),
    rule('aged', { ...sign('strong'), validUntil: '2026-01-01' }, { mass: { below: 20 } }),
    rule('shop-says-nothing', { kind: 'no-bearing' }, { any: [{ shop: 'new' }, { mass: { above: 100 } }] }),
  ],
})
if (!read.ok) throw new Error(JSON.stringify(read.problems))
const makers = readPack(
  {
    ...{ pack: 'makers', version: '1.0.0', written: scaleDay, title: 'Makers', about: 'For tests.', uses: ['scale'] },
    sources: { trade: { kind: 'common-practice', text: 'common practice' } },
    rules: [rule('new-shop', sign('weak'), { shop: 'new' })],
    families: [{ id: 'one', name: 'One', maker: 'Nobody', given: { shop: 'known' }, enough: ['light', 'heavy'] }],
  },
  [read.pack],
)
if (!makers.ok) throw new Error(JSON.stringify(makers.problems))
export const scalePacks = [read.pack, makers.pack]

export function scaleProgram(family?: string): Program {
  const compiled = compile(scalePacks, scaleDay, family)
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  return compiled.program
}
