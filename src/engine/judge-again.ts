// Judging again from some of the answers: what had fired stays where they leave it open, and nothing is found in what is not there.
import { doubtfulFrom, signWeight, type Verdict } from '../ground/verdicts.ts'
import { type OptionId, option, type QuestionId, type RuleId } from './answers.ts'
import type { Program } from './compile.ts'
import { placesOf } from './judge.ts'
import type { Rule } from './pack/pack.ts'

/** What a check came to: its verdict and the rules that counted. */
export type Standing = { readonly verdict: Verdict; readonly fired: readonly RuleId[] }

/** The same, with those of its answers that were kept. */
export type Remembered = Standing & { readonly options: Readonly<Record<QuestionId, OptionId>> }

/**
 * How a program judges what was judged before, by another version or program, from the answers that are still there. A missing answer is
 * not "can't tell": it may have excused a rule, so no rule fires anew because of it.
 */
export function judgeAgain(program: Program, before: Remembered): Standing {
  const given = Object.entries(before.options).map(([question, id]) => [question, option(id)] as const)
  const places = placesOf(program, Object.fromEntries(given))
  const had = new Set(before.fired)
  const fired = program.rules.filter((rule, i) => {
    if (rule.kind === 'no-bearing' || program.expired.has(rule.id)) return false
    const truth = program.weighers[i]?.(places)
    return truth === 2 || (truth === 1 && had.has(rule.id))
  })
  return { verdict: failingOf(fired) ?? mildOf(program, places, before.verdict), fired: fired.map(rule => rule.id) }
}

function failingOf(fired: readonly Rule[]): Verdict | undefined {
  if (fired.some(rule => rule.kind === 'hazard')) return 'danger'
  if (fired.some(rule => rule.kind === 'must')) return 'ruled-out'
  const score = fired.reduce((sum, rule) => sum + (rule.kind === 'sign' ? signWeight[rule.strength] : 0), 0)
  return score >= doubtfulFrom ? 'doubtful' : undefined
}

/** What was enough stays so: most of what it took was measured, and is no longer there. */
const mildOf = (program: Program, places: ReturnType<typeof placesOf>, before: Verdict): Verdict =>
  program.enough.length > 0 &&
  (before === 'nothing-found' || program.metWhenFalse.every(weigher => weigher(places) === 0))
    ? 'nothing-found'
    : 'open'
