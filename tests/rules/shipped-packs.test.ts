// The shipped packs: no problem, every rule seen to fire, stay quiet and stay open, and big enough for the job.
import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { checkRules } from '../../src/bin/check-rules.ts'
import { loadPacks } from '../../src/bin/load-packs.ts'
import { packJsonSchema } from '../../src/bin/pack-json-schema.ts'
import { shippedRules } from '../../src/bin/shipped-rules.ts'
import { sayProblem } from '../../src/discord/words/problem-words.ts'
import { sayIn } from '../../src/discord/words/say.ts'
import { type FormQuantity, fieldsOf } from '../../src/readings/form.ts'

const today = '2026-11-25'
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

test('every figure that ages has a last day, and every family can reach "nothing found" by looking and measuring', () => {
  for (const pack of packs)
    for (const rule of pack.rules)
      if (rule.kind === 'must' && rule.means === 'impossible-claim') expect(rule.validUntil, rule.id).toBeDefined()
})

test('a form exists for every reading a pack asks for', () => {
  for (const pack of packs)
    for (const { answer } of pack.questions)
      if (answer.kind === 'reading') expect(fieldsOf(answer.quantity as FormQuantity).length).toBeGreaterThan(0)
})

test("the editors' JSON Schema is the one generated from the zod schema (npm run schema)", async () => {
  const written = await readFile(new URL('../../rules/pack.schema.json', import.meta.url), 'utf8')
  expect(JSON.parse(written)).toEqual(packJsonSchema())
})
