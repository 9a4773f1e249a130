// What would change a verdict: single answers, and whole ranges of a measured value, that given alone make it another one.

import { guard } from '../ground/guard-band.ts'
import { severity, type Verdict } from '../ground/verdicts.ts'
import { type Answer, type Answers, option, type QuestionId, reading } from './answers.ts'
import type { Program } from './compile.ts'
import { atomsOf } from './conditions.ts'
import { placesOf, verdictAt } from './judge.ts'

/** From and up to which value, in the question's unit; open where a bound is missing. */
export type Range = { readonly from?: number; readonly to?: number }

/** One answer that, changed or given alone, makes the verdict another one. */
export type Change = {
  readonly question: QuestionId
  /** Whether the question has been answered already, so that the change would be a correction. */
  readonly correction: boolean
} & (
  | { readonly is: 'option'; readonly answer: Answer; readonly verdict: Verdict }
  | { readonly is: 'range'; readonly range: Range; readonly verdict: Verdict }
  /** The guard band lies over a limit here: it cannot be decided. */
  | { readonly is: 'undecided'; readonly range: Range }
)

/**
 * The changes to `questions`, those that make the verdict worse first. Nothing measured changes a danger: nobody is to hope for a better
 * reading. Ranges are those of a value with the uncertainty that the given one has, 0 where none was given.
 */
export function changesOf(
  program: Program,
  answers: Answers,
  now: Verdict,
  questions: readonly QuestionId[],
): readonly Change[] {
  const found = questions.flatMap((id): readonly Change[] => {
    const asked = program.questions.get(id)?.answer
    if (asked?.kind === 'options')
      return optionChanges(
        program,
        answers,
        now,
        id,
        asked.options.map(one => one.id),
      )
    return asked && now !== 'danger' ? rangeChanges(program, answers, now, id, asked) : []
  })
  const rank = (change: Change): number => (change.is === 'undecided' ? -1 : severity[change.verdict])
  return found.sort((a, b) => rank(b) - rank(a))
}

const known = (answer: Answer | undefined): boolean => answer !== undefined && answer.kind !== 'cant-tell'

function optionChanges(
  program: Program,
  answers: Answers,
  now: Verdict,
  question: QuestionId,
  options: readonly string[],
): Change[] {
  return options.flatMap((id): Change[] => {
    const answer = option(id)
    const verdict = verdictWith(program, answers, question, answer)
    return verdict === now ? [] : [{ is: 'option', question, answer, verdict, correction: known(answers[question]) }]
  })
}

type Stretch = { readonly from: number; readonly to: number; readonly verdict: Verdict; readonly undecided: boolean }

function rangeChanges(
  program: Program,
  answers: Answers,
  now: Verdict,
  question: QuestionId,
  { least, most }: { readonly least: number; readonly most: number },
): Change[] {
  const given = answers[question]
  const u = given?.kind === 'reading' ? given.u : 0
  const at = (value: number, unsure: number) => verdictWith(program, answers, question, reading(value, unsure))
  const limits = limitsOf(program, question)
  const band = guard * u
  const cuts = [...new Set(limits.flatMap(limit => [limit - band, limit + band]))].filter(
    cut => cut > least && cut < most,
  )
  const edges = [least, ...cuts.sort((a, b) => a - b), most]
  const stretches: Stretch[] = []
  for (let i = 1; i < edges.length; i++) {
    const [from, to] = [edges[i - 1] as number, edges[i] as number]
    const middle = (from + to) / 2
    const near = limits.filter(limit => Math.abs(middle - limit) < band)
    // Undecided only where the two sides of a limit in the band would come to different verdicts.
    const undecided = near.some(limit => at(limit - band, 0) !== at(limit + band, 0))
    const verdict = at(middle, u)
    const last = stretches.at(-1)
    if (last && last.undecided === undecided && (undecided || last.verdict === verdict))
      stretches[stretches.length - 1] = { ...last, to }
    else stretches.push({ from, to, verdict, undecided })
  }
  const correction = known(given)
  return stretches.flatMap(({ from, to, verdict, undecided }): Change[] => {
    const range = { ...(from > least && { from }), ...(to < most && { to }) }
    if (undecided) return [{ is: 'undecided', question, range, correction }]
    return verdict === now ? [] : [{ is: 'range', question, range, verdict, correction }]
  })
}

function verdictWith(program: Program, answers: Answers, question: QuestionId, answer: Answer): Verdict {
  return verdictAt(program, program.space.asItStands(placesOf(program, { ...answers, [question]: answer })))
}

/** The limits that counting rules hold a question's value against, ascending. */
function limitsOf(program: Program, question: QuestionId): number[] {
  const counting = program.rules.filter(rule => rule.kind !== 'no-bearing' && !program.expired.has(rule.id))
  const limits = counting.flatMap(rule =>
    (program.reads.get(rule.id) ?? []).includes(question)
      ? atomsOf(rule.when).flatMap(atom => ('limit' in atom && atom.question === question ? [atom.limit] : []))
      : [],
  )
  return [...new Set(limits)].sort((a, b) => a - b)
}
