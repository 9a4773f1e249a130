// Which tool a question needs, whether it is there, and which ones that are not would still help.
import { expect, test } from 'vitest'
import { hasTool, toolsFor, toolsMissing } from '../../src/check/tools.ts'
import { cantTell } from '../../src/engine/answers.ts'
import type { Question } from '../../src/engine/pack/pack.ts'
import { handsOn } from './hands.ts'
import { lanternProgram } from './lantern-pack.ts'

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

test('one of the tools a quantity is measured with is enough; of what a question names itself, all are needed', () => {
  const { begin } = handsOn(lanternProgram())
  const has = (tools: readonly ('ruler' | 'meter' | 'scale')[] | undefined, more: object) =>
    hasTool({ ...begin(), ...(tools && { tools }) }, asked(more))
  expect(has(['ruler'], reading('length'))).toBe(true)
  expect(has(['meter'], reading('length'))).toBe(false)
  expect(has(['meter'], { needs: ['meter', 'scale'] })).toBe(false)
  expect(has(['meter', 'scale'], { needs: ['meter', 'scale'] })).toBe(true)
  expect(has([], {})).toBe(true)
  expect(has(undefined, reading('mass'))).toBe(true)
})

test('missing are tools for what is still open, each once; none of what was answered, nor any that is there', () => {
  const program = lanternProgram('lamp')
  const begun = handsOn(program).begin({ tools: ['ruler'] })
  expect(toolsMissing(program, begun)).toEqual(expect.arrayContaining(['scale', 'load']))
  expect(toolsMissing(program, begun)).toHaveLength(2)
  expect(toolsMissing(program, { ...begun, tools: ['scale'] })).toEqual(['load'])
  expect(toolsMissing(program, { ...begun, answers: { ...begun.answers, mass: cantTell } })).toEqual(['load'])
})
