// How many of a server's outcomes of a week are like no other, and how many somebody finds who knows three of their answers.
import { expect, test } from 'vitest'
import { openPrograms } from '../../src/engine/programs.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { finishedCheckOf } from '../../src/services/finished-check.ts'
import { minimumReporters } from '../../src/trends/fives.ts'
import { weekOf } from '../../src/trends/week.ts'
import { walkMonth } from './busy-month.ts'

const { packs } = await loadPacks(shippedRules, { cases: false })
const programs = openPrograms(packs.map(one => one.pack))
const month = {
  ...{ seed: 7, server: 'here', from: Date.UTC(2026, 10, 2), weeks: 2, checksAWeek: 80 },
  families: [null, null, null, 'brindlewick-rook'],
}
type Given = Readonly<Record<string, string>>
const walked = [...walkMonth(programs, month)].map(({ program, check, at }) => {
  const { looks, family, verdict, fired, bought } = finishedCheckOf(program, check, at)
  const said: Given = Object.fromEntries(
    Object.entries(check.answers).map(([id, one]) => [
      id,
      one.kind === 'reading' ? String(one.value) : one.kind === 'option' ? one.option : 'cant-tell',
    ]),
  )
  const all = { family, verdict, fired, bought }
  return {
    week: weekOf(at),
    said,
    all,
    looks: Object.fromEntries(looks.map(one => [one.question, one.option])) as Given,
  }
})
const given = new Map<string, number>()
for (const { looks } of walked)
  for (const pair of Object.entries(looks)) given.set(pair.join('='), (given.get(pair.join('=')) ?? 0) + 1)
const common = (looks: Given): Given =>
  Object.fromEntries(Object.entries(looks).filter(pair => (given.get(pair.join('=')) ?? 0) >= minimumReporters))

/** Shares of rows that are alone in their week as they are kept, and that three of the answers that were given point out. */
function alone(keep: (one: (typeof walked)[number]) => Given): { unique: number; found: number } {
  let [unique, found] = [0, 0]
  for (const rows of Map.groupBy(walked, one => one.week).values()) {
    const kept = rows.map(one => ({ one, looks: keep(one) }))
    const count = Map.groupBy(kept, ({ one, looks }) => JSON.stringify([one.all, looks]))
    unique += [...count.values()].filter(same => same.length === 1).length
    for (const [i, { one, looks }] of kept.entries()) {
      const ids = Object.keys(one.said)
      const known = [0, 1, 2]
        .map(k => ids[(i * 7 + k * 5) % ids.length] as string)
        .filter(id => looks[id] !== undefined)
      if (kept.filter(other => known.every(id => other.looks[id] === looks[id])).length === 1) found++
    }
  }
  return { unique: unique / walked.length, found: found / walked.length }
}

test('most checks are like no other; most outcomes are not, and who knows three answers finds hardly any', () => {
  const whole = alone(one => one.said)
  const kept = alone(one => common(one.looks))
  console.log(
    `alone in their week: ${(100 * whole.unique).toFixed(0)} % of checks, ${(100 * kept.unique).toFixed(0)} % of outcomes; ` +
      `found by three answers: ${(100 * whole.found).toFixed(0)} % and ${(100 * kept.found).toFixed(1)} %`,
  )
  expect(whole.unique).toBeGreaterThan(0.7)
  expect(whole.found).toBeGreaterThan(0.1)
  expect(kept.unique).toBeLessThan(0.5)
  expect(kept.found).toBeLessThan(0.02)
})
