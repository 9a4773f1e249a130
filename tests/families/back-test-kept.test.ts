// The back-test on what outcomes keep, held against the same question asked of whole checks, with every answer and figure in them.
import { expect, test } from 'vitest'
import type { Program } from '../../src/engine/compile.ts'
import { judge, placesOf, verdictAt } from '../../src/engine/judge.ts'
import { judgeAgain } from '../../src/engine/judge-again.ts'
import { derive } from '../../src/families/derive/derive.ts'
import type { Facts } from '../../src/families/facts/facts-schema.ts'
import { finishedCheckOf } from '../../src/services/finished-check.ts'
import { minimumReporters } from '../../src/trends/fives.ts'
import { walkMonth } from '../trends/busy-month.ts'
import { anyCell, compileFamily } from './base.ts'
import { unnamedFamilies } from './known-families.ts'

const programOf = (facts: Facts): Program => {
  const derived = derive(facts, anyCell)
  if (!derived.ok) throw new Error('it does not derive')
  const compiled = compileFamily(derived.pack)
  if (!compiled.ok) throw new Error('it does not compile')
  return compiled.program
}
const nothing = { made: [], against: [], remarks: [] }
const month = { seed: 11, server: 'here', from: Date.UTC(2026, 10, 2), weeks: 4, checksAWeek: 30, families: ['its'] }

test.each(['unnamed-18650-b'])('%s: whose verdict two more features would change, as nearly as before', name => {
  const facts = unnamedFamilies[name] as Facts
  const before = programOf({ ...facts, traits: { ...facts.traits, legs: nothing, 'code-place': nothing } })
  const after = programOf(facts)
  // They were asked about both, so that it can be said what would have come of it.
  const walked = [...walkMonth({ programFor: () => after }, month)].map(({ check, at }) => ({
    check,
    of: finishedCheckOf(before, check, at),
  }))
  const given = new Map<string, number>()
  for (const { question, option } of walked.flatMap(one => one.of.looks))
    given.set(`${question}=${option}`, (given.get(`${question}=${option}`) ?? 0) + 1)
  const common = ({ question, option }: { question: string; option: string }) =>
    (given.get(`${question}=${option}`) ?? 0) >= minimumReporters

  const truly = walked.map(({ check }) => judge(before, check.answers).verdict !== judge(after, check.answers).verdict)
  // As it was asked while outcomes held every option, and no figure was read.
  const once = walked.map(({ check }) => {
    const options = Object.fromEntries(Object.entries(check.answers).filter(([, one]) => one.kind === 'option'))
    return verdictAt(before, placesOf(before, options)) !== verdictAt(after, placesOf(after, options))
  })
  const judged = (keeps: (look: { question: string; option: string }) => boolean) =>
    walked.map(({ of: { verdict, fired, looks } }) => {
      const options = Object.fromEntries(looks.filter(keeps).map(one => [one.question, one.option]))
      const kept = { verdict, fired, options }
      return judgeAgain(before, kept).verdict !== judgeAgain(after, kept).verdict
    })
  const [looks, now] = [judged(() => true), judged(common)]
  const wrong = (said: readonly boolean[]) => said.filter((one, i) => one !== truly[i]).length
  const count = (said: readonly boolean[]) => said.filter(Boolean).length
  console.log(
    `${name}: ${count(truly)} of ${walked.length} change; wrong with every option ${wrong(once)}, with all looks ${wrong(looks)}, with those that five gave ${wrong(now)}`,
  )
  expect(count(truly)).toBeGreaterThan(5)
  expect(wrong(looks)).toBeLessThanOrEqual(wrong(once))
  // Left out is what fewer than five of all these checks gave, of each of the two features: by so little the count is short, and never over.
  expect(count(now)).toBeLessThanOrEqual(count(looks))
  expect(wrong(now) - wrong(looks)).toBeLessThan(2 * minimumReporters)
})
