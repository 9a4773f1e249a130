// The verdict on the answers given so far, and the findings behind it.
import type { Answer, Answers, QuestionId, RuleId } from './answers.ts'
import type { Program } from './compile.ts'
import { questionsOf, weigh } from './conditions.ts'
import type { Rule } from './pack/pack.ts'
import { doubtfulFrom, signWeight, type Verdict } from './verdicts.ts'

/** A rule that fired, with the answers it read. */
export type Finding = {
  readonly rule: Rule
  /** Whether it is part of why the verdict is what it is. */
  readonly carries: boolean
  /** Fired, but past its last day: shown, not counted. */
  readonly outOfDate: boolean
  readonly answers: Readonly<Record<QuestionId, Answer>>
}

export type Judgement = {
  readonly verdict: Verdict
  readonly findings: readonly Finding[]
  /** Sum of the signs against the cell. */
  readonly score: number
}

/**
 * Judges answers by a program. Unanswered questions and "can't tell" are unknown: they never count against a cell, and they
 * keep "nothing found" away. Never throws on answers that `readAnswers` let through.
 */
export function judge(program: Program, answers: Answers): Judgement {
  const all = { ...program.given, ...answers }
  const fired = program.rules.filter(rule => weigh(rule.when, all) === 'true')
  const counting = fired.filter(rule => !program.expired.has(rule.id))
  const score = counting.reduce((sum, rule) => sum + (rule.kind === 'sign' ? signWeight[rule.strength] : 0), 0)
  const verdict = verdictFrom(program, counting, score, all)
  const carrier = carriedBy[verdict]
  return {
    verdict,
    score,
    findings: fired.map(rule => ({
      rule,
      carries: rule.kind === carrier && !program.expired.has(rule.id),
      outOfDate: program.expired.has(rule.id),
      answers: Object.fromEntries(
        questionsOf(rule.when).flatMap(question => (all[question] ? [[question, all[question]]] : [])),
      ),
    })),
  }
}

const carriedBy: Record<Verdict, Rule['kind'] | undefined> = {
  danger: 'hazard',
  'ruled-out': 'must',
  doubtful: 'sign',
  open: undefined,
  'nothing-found': undefined,
}

function verdictFrom(program: Program, counting: readonly Rule[], score: number, answers: Answers): Verdict {
  if (counting.some(rule => rule.kind === 'hazard')) return 'danger'
  if (counting.some(rule => rule.kind === 'must')) return 'ruled-out'
  if (score >= doubtfulFrom) return 'doubtful'
  if (!program.family) return 'open'
  const met = enoughRules(program).every(rule => weigh(rule.when, answers) === 'false')
  return met ? 'nothing-found' : 'open'
}

/** The rules a family's pack lists as enough for "nothing found". */
export function enoughRules(program: Program): Rule[] {
  const wanted: readonly RuleId[] = program.family?.enough ?? []
  return program.rules.filter(rule => wanted.includes(rule.id))
}
