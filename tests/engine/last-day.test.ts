// A sign may have a last day: from the next on it weighs nothing, carries nothing and is in no reason; a must has none.
import { expect, test } from 'vitest'
import { option } from '../../src/engine/answers.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { judge } from '../../src/engine/judge.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'

const yesNo = [
  { id: 'no', label: 'No' },
  { id: 'yes', label: 'Yes' },
]
const raw = {
  ...{ pack: 'ageing', version: '1.0.0', written: '2026-11-25', title: 'For tests', about: 'For tests.' },
  sources: { trade: { kind: 'common-practice', text: 'common practice' } },
  questions: ['best', 'other'].map(id => ({ id, ask: 'Is it?', care: 'look', effort: 1, options: yesNo })),
  rules: [
    {
      ...{
        id: 'too-much',
        kind: 'sign',
        strength: 'strong',
        when: { best: 'yes' },
        says: 'Too much.',
        source: ['trade'],
      },
      validUntil: '2026-12-31',
    },
    { id: 'odd', kind: 'sign', strength: 'weak', when: { other: 'yes' }, says: 'Odd.', source: ['trade'] },
  ],
}
function programOn(day: string): Program {
  const read = readPack(raw)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const compiled = compile([read.pack], day)
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  return compiled.program
}
const answers = { best: option('yes'), other: option('yes') }

test('to the end of its last day it counts', () => {
  for (const day of ['2026-11-25', '2026-12-31']) {
    const { verdict, score, findings } = judge(programOn(day), answers)
    expect({ verdict, score }).toEqual({ verdict: 'doubtful', score: 5 })
    expect(findings.filter(one => one.carries).map(one => one.rule.id)).toContain('too-much')
  }
})

test('from the next day on only the others count', () => {
  const { verdict, score, findings } = judge(programOn('2027-01-01'), answers)
  expect({ verdict, score }).toEqual({ verdict: 'open', score: 1 })
  expect(findings.filter(one => one.carries)).toEqual([])
  expect(programOn('2027-01-01').outlook({}).reachable).not.toContain('doubtful')
  expect(programOn('2026-12-31').outlook({}).reachable).toContain('doubtful')
})

test('a must has no last day', () => {
  const must = { ...raw.rules[0], kind: 'must', means: 'counterfeit', strength: undefined }
  const { strength: _, ...rest } = must
  expect(readPack({ ...raw, rules: [rest] }).ok).toBe(false)
})
