// The verdict on the answers given so far, and the findings behind it.
import type { Answer, Answers, QuestionId } from './answers.ts'
import type { Program } from './compile.ts'
import type { Places } from './outlook/space.ts'
import type { Rule } from './pack/pack.ts'
import { doubtfulFrom, signWeight, type Verdict } from './verdicts.ts'

/** A rule that fired. */
export type Finding = {
  readonly rule: Rule
  /** Whether it is part of why the verdict is what it is. */
  readonly carries: boolean
  /** Fired, but past its last day: shown, not counted. */
  readonly outOfDate: boolean
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
  const all = withGiven(program, answers)
  const places = program.space.place(all)
  const { rules, weighers, expired } = program
  const fired: Rule[] = []
  let score = 0
  for (let i = 0; i < rules.length; i++) {
    if ((weighers[i] as (p: Places) => number)(places) !== 2) continue
    const rule = rules[i] as Rule
    fired.push(rule)
    if (rule.kind === 'sign' && !expired.has(rule.id)) score += signWeight[rule.strength]
  }
  const verdict = verdictFrom(program, fired, score, places)
  const carrier = carriedBy[verdict]
  const findings = fired.map((rule): Finding => {
    const outOfDate = expired.has(rule.id)
    return { rule, carries: rule.kind === carrier && !outOfDate, outOfDate }
  })
  return { verdict, score, findings }
}

/** The answers that a finding's rule read. */
export function answersRead(program: Program, answers: Answers, { rule }: Finding): Record<QuestionId, Answer> {
  const read = program.reads.get(rule.id) ?? []
  return Object.fromEntries(read.flatMap(question => (answers[question] ? [[question, answers[question]]] : [])))
}

/** The answers with what is settled by what the cell is sold as; a check's own answers hold that already. */
function withGiven(program: Program, answers: Answers): Answers {
  for (const question in program.given) if (answers[question] === undefined) return { ...program.given, ...answers }
  return answers
}

const carriedBy: Record<Verdict, Rule['kind'] | undefined> = {
  danger: 'hazard',
  'ruled-out': 'must',
  doubtful: 'sign',
  open: undefined,
  'nothing-found': undefined,
}

function verdictFrom(program: Program, fired: readonly Rule[], score: number, places: Places): Verdict {
  const counts = (kind: Rule['kind']) => fired.some(rule => rule.kind === kind && !program.expired.has(rule.id))
  if (counts('hazard')) return 'danger'
  if (counts('must')) return 'ruled-out'
  if (score >= doubtfulFrom) return 'doubtful'
  if (!program.family) return 'open'
  const met = program.metWhenFalse.every(weigher => weigher(places) === 0)
  return met ? 'nothing-found' : 'open'
}
