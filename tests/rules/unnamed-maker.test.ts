// The facts of the trade for one unnamed maker of high-drain cells (common practice, no published source), each held by its cases.
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { type Answers, type FamilyId, option } from '../../src/engine/answers.ts'
import { compile } from '../../src/engine/compile.ts'
import { judge } from '../../src/engine/judge.ts'
import { checkRules } from '../../src/packs/check-rules.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'

const folder = fileURLToPath(new URL('../packs', import.meta.url))
const base = (await loadPacks(shippedRules, { cases: false })).packs
  .map(one => one.pack)
  .filter(pack => pack.families.length === 0)
const loading = await loadPacks(folder, { base })
const pack = loading.packs[0]?.pack
const families = pack?.families ?? []

test('its cases hold, and show every rule fire, stay quiet and stay open', async () => {
  const report = await checkRules(folder, '2026-11-25', base)
  expect(report.problems.map(({ problem }) => sayProblem(sayIn('en'), problem))).toEqual([])
  expect(report.packs[0]?.shown).toBe(report.packs[0]?.wanted)
})

function verdictOn(family: FamilyId, answers: Record<string, string>): string {
  const compiled = compile([...base, ...(pack ? [pack] : [])], '2026-11-25', family)
  if (!compiled.ok) throw new Error('does not compile')
  const given: Answers = Object.fromEntries(Object.entries(answers).map(([question, id]) => [question, option(id)]))
  return judge(compiled.program, given).verdict
}
const of = (format: string): FamilyId[] => families.filter(one => one.given['format'] === format).map(one => one.id)

test('there are 18650s and a 21700 to hold the facts against', () => {
  expect(of('18650').length).toBeGreaterThanOrEqual(2)
  expect(of('21700').length).toBeGreaterThanOrEqual(1)
})

test.each(of('18650'))(
  '%s: lettering on the wrap, or on a clear wrap below it, rules it out; on the can it does not',
  family => {
    expect(verdictOn(family, { 'lettering-place': 'wrap' })).toBe('ruled-out')
    expect(verdictOn(family, { 'lettering-place': 'clear-wrap' })).toBe('ruled-out')
    expect(verdictOn(family, { 'lettering-place': 'can' })).toBe('open')
  },
)

test.each(of('18650'))('%s: the square code on the can rules it out; on the wrap it does not', family => {
  expect(verdictOn(family, { 'code-place': 'can' })).toBe('ruled-out')
  expect(verdictOn(family, { 'code-place': 'wrap' })).toBe('open')
})

test.each(of('18650'))('%s: no dimples rule it out; two prove nothing', family => {
  expect(verdictOn(family, { dimples: 'none' })).toBe('ruled-out')
  expect(verdictOn(family, { dimples: 'two' })).toBe('open')
})

test.each(of('21700'))('%s: no dimples is how it is made', family => {
  expect(verdictOn(family, { dimples: 'none' })).toBe('open')
})

test.each(families.map(one => one.id))('%s: four or five legs rule it out; three do not', family => {
  expect(verdictOn(family, { legs: 'four' })).toBe('ruled-out')
  expect(verdictOn(family, { legs: 'five' })).toBe('ruled-out')
  expect(verdictOn(family, { legs: 'three' })).toBe('open')
})
