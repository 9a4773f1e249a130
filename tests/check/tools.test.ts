// Which tool a question needs: what it names itself, else what its quantity is measured with, else a meter or nothing.
import { expect, test } from 'vitest'
import { toolsFor } from '../../src/check/tools.ts'
import type { Question } from '../../src/engine/pack/pack.ts'

const asked = (more: object): Question =>
  ({ id: 'q', care: 'look', effort: 1, answer: { kind: 'options', options: [] }, ...more }) as unknown as Question
const reading = (quantity: string) => ({ answer: { kind: 'reading', quantity, least: 0, most: 1, unit: '' } })

test.each([
  ['a look', {}, []],
  ['options read off a meter', { care: 'meter' }, ['meter']],
  ['a test under load', { care: 'bench' }, ['load']],
  ['a mass', reading('mass'), ['scale']],
  ['a length, with either', { ...reading('length'), care: 'meter' }, ['calliper', 'ruler']],
  ['a figure that is printed', { ...reading('claimed-capacity'), care: 'look' }, []],
  ['what names its own', { ...reading('mass'), needs: ['meter'] }, ['meter']],
])('%s', (_, more, tools) => {
  expect(toolsFor(asked(more))).toEqual(tools)
})
