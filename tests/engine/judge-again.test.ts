// Judging again from the answers that are kept: the same program changes nothing, and a missing answer accuses and excuses nobody.
import { expect, test } from 'vitest'
import { judge } from '../../src/engine/judge.ts'
import { judgeAgain } from '../../src/engine/judge-again.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import { findingsCounted, finishedCheckOf } from '../../src/services/finished-check.ts'
import { walkMonth } from '../trends/busy-month.ts'

const { packs } = await loadPacks(shippedRules, { cases: false })
const programs = openPrograms(packs.map(one => one.pack))
const month = {
  ...{ seed: 3, server: 'here', from: Date.UTC(2026, 10, 2), weeks: 1, checksAWeek: 60 },
  families: [null, null, 'brindlewick-rook'],
}
const walked = [...walkMonth(programs, month)].map(({ program, check, at }) => {
  const { looks, verdict, fired } = finishedCheckOf(program, check, at)
  return {
    ...{ program, check, at },
    kept: { verdict, fired, options: Object.fromEntries(looks.map(one => [one.question, one.option])) },
  }
})

test('by the same program every check comes to what it came to', () => {
  expect(new Set(walked.map(one => one.kept.verdict)).size).toBeGreaterThanOrEqual(4)
  for (const { program, kept } of walked) expect(judgeAgain(program, kept)).toEqual({ ...kept, options: undefined })
})

test('what the kept answers decide is decided anew, and what they leave open stays', () => {
  let lifted = 0
  for (const { program, kept, check } of walked) {
    // Had nothing fired then, what fires now is what these answers alone say, and the whole check says so as well.
    const anew = judgeAgain(program, { ...kept, verdict: 'open', fired: [] })
    const whole = findingsCounted(judge(program, check.answers))
    expect(whole).toEqual(expect.arrayContaining([...anew.fired]))
    // A rule that fired, and is contradicted by the answers, goes.
    const all = program.rules.filter(one => one.kind !== 'no-bearing').map(one => one.id)
    const fewer = judgeAgain(program, { ...kept, fired: all }).fired
    expect(fewer.length).toBeLessThanOrEqual(all.length)
    lifted += all.length - fewer.length
  }
  expect(lifted).toBeGreaterThan(walked.length)
})
