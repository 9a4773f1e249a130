// Why a cell is not the model it is sold as: what was answered is said before what the model is like, in every language.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { compile } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { judge } from '../../src/engine/judge.ts'
import { derive } from '../../src/families/derive/derive.ts'
import { sayIn } from '../../src/words/say.ts'
import { sayReason } from '../../src/words/say-reason.ts'
import { anyCell } from '../families/base.ts'
import { inventedFamilies } from '../families/known-families.ts'

const facts = inventedFamilies['brindlewick-heron']
if (!facts) throw new Error('the family is gone')
const derived = derive(facts, anyCell)
if (!derived.ok) throw new Error(JSON.stringify(derived.problems))
const compiling = compile([anyCell, derived.pack], anyCell.written, derived.pack.id)
if (!compiling.ok) throw new Error(JSON.stringify(compiling.problems))
const { program } = compiling

const reasons = (language: string, answers: Answers, saidBy?: Check['saidBy']): string[] => {
  const told = inLanguage(program, language)
  const check = { answers, ...(saidBy && { saidBy }) } as unknown as Check
  return judge(told, answers).findings.map(one => sayReason(sayIn(language), told, check, one, one.rule.says))
}
const label = (language: string, question: string, id: string): string => {
  const answer = inLanguage(program, language).questions.get(question)?.answer
  return (answer?.kind === 'options' && answer.options.find(one => one.id === id)?.label) || 'no such option'
}

const quotes = { en: '“”', de: '„“', es: '«»' } as const
const capacity = { en: '3,300 mAh', de: '3.300 mAh', es: '3300 mAh' } as const

describe.each(['en', 'de', 'es'] as const)('in %s', language => {
  test('a look is quoted as its button says it, and stands before what the model is like', () => {
    const [first = ''] = reasons(language, { legs: option('three') }).filter(one =>
      one.includes(label(language, 'legs', 'four')),
    )
    const [open, close] = quotes[language]
    const quoted = `${open}${label(language, 'legs', 'three')}${close}`
    expect(first).toContain(quoted)
    expect(first.indexOf(quoted)).toBeLessThan(first.indexOf(label(language, 'legs', 'four')))
  })

  test('a figure is said with its unit, as the language writes it', () => {
    const said = reasons(language, { 'claimed-capacity': reading(3300) })
    expect(said.some(one => one.includes(capacity[language]))).toBe(true)
  })

  test('whoever was helped is not told that they have answered', () => {
    const answers = { legs: option('three') }
    expect(reasons(language, answers, { legs: 'm' } as never)).not.toEqual(reasons(language, answers))
  })
})

test('what fired nothing, could not be told, or is a rule for every cell is not quoted', () => {
  const answers = {
    legs: option('three'),
    'code-place': cantTell,
    'hot-now': option('happening'),
    format: option('18650'),
  }
  const said = reasons('en', answers)
  expect(said.filter(one => /^You answered/.test(one)).length).toBeGreaterThan(0)
  for (const one of said) expect(one).not.toMatch(/Can’t tell|At least one of these|18650/)
})
