// A pack's own cases: read against a program, run, and counted, so that every rule is seen to fire, stay quiet and stay open.
import { type Answer, type Answers, cantTell, option, type RuleId, reading } from './answers.ts'
import type { Program } from './compile.ts'
import { weigh } from './conditions.ts'
import { judge } from './judge.ts'
import type { Question } from './pack/pack.ts'
import type { PackProblem } from './pack/problems.ts'
import type { RawCase } from './pack/schema.ts'

export type RawAnswer = RawCase['answers'][string]
const words = { true: 'fires', false: 'quiet', unknown: 'unknown' } as const
export type Firing = (typeof words)[keyof typeof words]

/** Reads written answers against the program's questions; readings must be in the canonical unit. */
function readAnswers(
  program: Program,
  raw: Readonly<Record<string, RawAnswer>>,
  at: string,
):
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly problems: readonly PackProblem[] } {
  const problems: PackProblem[] = []
  const answers: Record<string, Answer> = {}
  for (const [name, value] of Object.entries(raw)) {
    const question = program.questions.get(name)
    if (!question)
      problems.push({ code: 'unknown-name', at, what: 'question', name, known: [...program.questions.keys()] })
    else {
      const read = readAnswer(question, value, `${at}.${name}`)
      if ('kind' in read) answers[name] = read
      else problems.push(read)
    }
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, answers }
}

/** Reads one written answer, or says what is wrong with it. */
export function readAnswer(question: Question, value: RawAnswer, at: string): Answer | PackProblem {
  const name = question.id
  if (value === cantTell.kind) return cantTell
  const { answer } = question
  if (typeof value === 'string') {
    if (answer.kind === 'reading') return { code: 'not-an-option-question', at, name }
    const known = answer.options.map(o => o.id)
    return known.includes(value) ? option(value) : { code: 'unknown-name', at, what: 'option', name: value, known }
  }
  if (answer.kind === 'options') return { code: 'not-a-reading-question', at, name }
  const { least, most, unit } = answer
  if (value.unit !== undefined && value.unit !== unit)
    return { code: 'unit-does-not-fit', at, name, unit: value.unit, wanted: unit }
  if (!Number.isFinite(value.reading) || !Number.isFinite(value.u)) return { code: 'not-a-number', at, name }
  if (value.reading < least || value.reading > most)
    return { code: 'out-of-range', at, name, value: value.reading, least, most, unit }
  return reading(value.reading, value.u)
}

/** Runs one case; the differences from what it expects, none if it holds. `seen` collects what each rule was seen to do. */
export function runCase(program: Program, raw: RawCase, at: string, seen: Coverage): readonly PackProblem[] {
  const read = readAnswers(program, raw.answers, `${at}.answers`)
  if (!read.ok) return read.problems
  const problems: PackProblem[] = []
  const all = { ...program.given, ...read.answers }
  for (const [name, expected] of Object.entries(raw.rules)) {
    const rule = program.rules.find(candidate => candidate.id === name)
    if (!rule) {
      const known = program.rules.map(candidate => candidate.id)
      problems.push({ code: 'unknown-name', at: `${at}.rules`, what: 'rule', name, known })
      continue
    }
    const got = words[weigh(rule.when, all, cantTell)]
    if (got !== expected) problems.push({ code: 'case-differs', at, name, expected, got })
    else seen.get(name)?.add(got)
  }
  const { verdict } = judge(program, read.answers)
  if (raw.verdict !== undefined && raw.verdict !== verdict)
    problems.push({ code: 'case-differs', at, name: 'verdict', expected: raw.verdict, got: verdict })
  return problems
}

/** What each rule has been seen to do by some case that named it. */
export type Coverage = ReadonlyMap<RuleId, Set<Firing>>
export const openCoverage = (rules: readonly { readonly id: RuleId }[]): Coverage =>
  new Map(rules.map(rule => [rule.id, new Set<Firing>()]))

/** The rules that lack a case, with what is missing. */
export function uncovered(coverage: Coverage, at: string): PackProblem[] {
  return [...coverage].flatMap(([name, seen]): PackProblem[] => {
    const lacks = (['fires', 'quiet', 'unknown'] as const).filter(firing => !seen.has(firing))
    return lacks.length > 0 ? [{ code: 'uncovered', at, name, lacks }] : []
  })
}
