// The shipped packs: no problem, every rule seen to fire, stay quiet and stay open, and big enough for the job.
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { type Answers, option } from '../../src/engine/answers.ts'
import { compile } from '../../src/engine/compile.ts'
import { judge } from '../../src/engine/judge.ts'
import { verdicts } from '../../src/ground/verdicts.ts'
import { checkRules } from '../../src/packs/check-rules.ts'
import { packJsonSchemas } from '../../src/packs/json-schema.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { fieldsOf } from '../../src/readings/form.ts'
import { sayProblem } from '../../src/words/problem-words.ts'
import { sayIn } from '../../src/words/say.ts'

const today = '2026-11-29'
const loading = await loadPacks(shippedRules)
const packs = loading.packs.map(loaded => loaded.pack)
const packNamed = (id: string) => packs.find(pack => pack.id === id)

test('validate, run and cover completely, counted and not rounded', async () => {
  const report = await checkRules(shippedRules, today)
  expect(report.problems.map(({ file, problem }) => `${file}: ${sayProblem(sayIn('en'), problem)}`)).toEqual([])
  expect(report.packs.length).toBeGreaterThanOrEqual(2)
  for (const one of report.packs) expect(one.shown).toBe(one.wanted)
})

test('any-cell has no maker, at least 30 questions and 60 rules', () => {
  const pack = packNamed('any-cell')
  expect(pack?.families).toEqual([])
  expect(pack?.questions.length).toBeGreaterThanOrEqual(30)
  expect(pack?.rules.length).toBeGreaterThanOrEqual(60)
})

test('the demo packs have two makers and five families', () => {
  const families = packs.flatMap(pack => pack.families)
  expect(new Set(families.map(family => family.maker)).size).toBeGreaterThanOrEqual(2)
  expect(families.length).toBeGreaterThanOrEqual(5)
})

test('no must ever ages, and what does age is held for a year or more from here', () => {
  for (const pack of packs)
    for (const rule of pack.rules)
      if (rule.kind === 'must') expect(rule.validUntil, rule.id).toBeUndefined()
      else if (rule.validUntil !== undefined) expect(rule.validUntil > '2027-11', rule.id).toBe(true)
})

test.each(packs.flatMap(pack => pack.families.map(family => family.id)))('%s can reach every verdict', family => {
  const compiled = compile(packs, today, family)
  if (!compiled.ok) throw new Error('the shipped packs do not compile')
  expect(compiled.program.outlook(compiled.program.given).reachable).toEqual(verdicts)
})

test('a form exists for every reading a pack asks for', () => {
  for (const pack of packs)
    for (const { answer } of pack.questions)
      if (answer.kind === 'reading') expect(fieldsOf(answer.quantity).length).toBeGreaterThan(0)
})

test.each(Object.entries(packJsonSchemas()))(
  '%s is the one generated from the zod schema (npm run schema)',
  async (name, schema) => {
    expect(JSON.parse(await readFile(join(shippedRules, name), 'utf8'))).toEqual(schema)
  },
)

test('no file of a pack is over 300 lines', async () => {
  const names = (await readdir(shippedRules, { recursive: true })).filter(name => name.endsWith('.yaml'))
  expect(names.length).toBeGreaterThan(20)
  for (const name of names) {
    const lines = (await readFile(join(shippedRules, name), 'utf8')).split('\n').length
    expect(lines, name).toBeLessThanOrEqual(301)
  }
})

test('a sign that ages falls silent after its last day, and says so; the impossible stays impossible', () => {
  const after = compile(packs, '2040-01-01')
  const before = compile(packs, today)
  if (!after.ok || !before.ok) throw new Error('the shipped packs do not compile')
  const claims = (value: number): Answers => ({
    format: option('18650'),
    'claimed-capacity': { kind: 'reading', value, u: 0 },
  })
  expect(judge(before.program, claims(4800)).verdict).toBe('doubtful')
  const later = judge(after.program, claims(4800))
  expect(later.verdict).toBe('open')
  expect(later.findings.filter(finding => finding.outOfDate).length).toBeGreaterThan(0)
  for (const { program } of [before, after]) expect(judge(program, claims(9900)).verdict).toBe('ruled-out')
})

test('a question that says nothing has to be touched asks for no hands', () => {
  const hands = /\b(?<!don't )(?<!do not )(hold|turn|tilt|pick up|weigh)\b(?! it or)/i
  const asking = packs
    .flatMap(pack => pack.questions)
    .filter(({ care, look = '' }) => care === 'look' && hands.test(look))
  expect(asking.map(({ id, look }) => `${id}: ${look}`)).toEqual([])
})
