// A small pack without a mistake, and copies of it with a change, for tests that make one.
import type { Pack } from '../../src/engine/pack/pack.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'

export const smallPack = {
  pack: 'small',
  version: '1.0.0',
  written: '2026-11-25',
  title: 'A small pack',
  about: 'For tests.',
  sources: { trade: { kind: 'common-practice', text: 'common practice' } },
  questions: [
    {
      id: 'wrap',
      ask: 'Is the wrap whole?',
      care: 'look',
      effort: 1,
      options: [
        { id: 'whole', label: 'Whole' },
        { id: 'torn', label: 'Torn' },
      ],
    },
    { id: 'mass', ask: 'How heavy?', care: 'meter', effort: 2, reading: { quantity: 'mass', least: 5, most: 200 } },
  ],
  rules: [
    {
      id: 'torn-wrap',
      kind: 'hazard',
      act: 'isolate',
      when: { wrap: 'torn' },
      says: 'A torn wrap can short.',
      source: ['trade'],
    },
    {
      id: 'light',
      kind: 'sign',
      strength: 'strong',
      when: { mass: { below: 42 } },
      says: 'Too light.',
      source: ['trade'],
    },
  ],
  families: [{ id: 'one', name: 'One', maker: 'Nobody', given: {}, enough: ['light'] }],
}

export type Raw = Record<string, unknown>

/** Throws where there is anything wrong with it. */
export function packOf(raw: unknown, others: readonly Pack[] = []): Pack {
  const read = readPack(raw, others, 'abc')
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.pack
}

export function changed(change: (raw: typeof smallPack & Raw) => void): typeof smallPack & Raw {
  const copy = structuredClone(smallPack) as typeof smallPack & Raw
  change(copy)
  return copy
}
