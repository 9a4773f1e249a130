// The verdict on the answers given so far, and the findings behind it.

import { doubtfulFrom, signWeight, type Verdict } from '../ground/verdicts.ts'
import type { Answer, Answers, QuestionId } from './answers.ts'
import type { Program } from './compile.ts'
import { firing } from './firing.ts'
import type { Places } from './outlook/places.ts'
import type { Rule } from './pack/pack.ts'

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
 * Judges answers by a program. Unanswered questions count as "can't tell": they never count against a cell, they excuse nothing, and
 * they keep "nothing found" away. Never throws on answers that `readAnswers` let through.
 */
export function judge(program: Program, answers: Answers): Judgement {
  const mine = judged.get(program) ?? new WeakMap<Answers, Judgement>()
  judged.set(program, mine)
  const known = mine.get(answers) ?? judgeAnew(program, answers)
  mine.set(answers, known)
  return known
}

/** One click asks several times for the judgement on the same answers. */
const judged = new WeakMap<Program, WeakMap<Answers, Judgement>>()

function judgeAnew(program: Program, answers: Answers): Judgement {
  const places = program.space.asItStands(placesOf(program, answers))
  const { expired } = program
  const fired = firing(program, places)
  const tally = { hazard: false, must: false, score: 0 }
  for (const rule of fired) if (!expired.has(rule.id)) count(tally, rule)
  const verdict = verdictOf(program, tally, places)
  const carrier = carriedBy[verdict]
  const counted = fired.filter(rule => rule.kind !== 'no-bearing' && !expired.has(rule.id))
  const readBy = (rule: Rule): readonly QuestionId[] => program.reads.get(rule.id) ?? []
  // Nothing is said to tell nothing while something else takes the same answers for a sign.
  const spoken = fired.filter(
    rule => rule.kind !== 'no-bearing' || !counted.some(other => readBy(rule).every(id => readBy(other).includes(id))),
  )
  const findings = spoken.map((rule): Finding => {
    const outOfDate = expired.has(rule.id)
    return { rule, carries: rule.kind === carrier && !outOfDate, outOfDate }
  })
  return { verdict, score: tally.score, findings }
}

/**
 * The verdict alone, on places of the program's space: the mildest that can still come out, where some of them are open, and what
 * `judge` says of them where none is.
 */
export function verdictAt(program: Program, places: Places): Verdict {
  const { rules, weighers, expired } = program
  const tally = { hazard: false, must: false, score: 0 }
  for (let i = 0; i < rules.length; i++) {
    const rule = rules[i] as Rule
    if (rule.kind !== 'no-bearing' && weighers[i]?.(places) === 2 && !expired.has(rule.id)) count(tally, rule)
    if (tally.hazard) return 'danger'
  }
  return verdictOf(program, tally, places)
}

/** Where a program's own answers and these put every question. */
export const placesOf = (program: Program, answers: Answers): Places => program.space.place(withGiven(program, answers))

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

type Tally = { hazard: boolean; must: boolean; score: number }

function count(tally: Tally, rule: Rule): void {
  if (rule.kind === 'hazard') tally.hazard = true
  else if (rule.kind === 'must') tally.must = true
  else if (rule.kind === 'sign') tally.score += signWeight[rule.strength]
}

function verdictOf(program: Program, { hazard, must, score }: Tally, places: Places): Verdict {
  if (hazard) return 'danger'
  if (must) return 'ruled-out'
  if (score >= doubtfulFrom) return 'doubtful'
  // Without a family, and of one that is never done with, there is nothing to be enough.
  if (program.enough.length === 0) return 'open'
  return program.metWhenFalse.every(weigher => weigher(places) === 0) ? 'nothing-found' : 'open'
}
