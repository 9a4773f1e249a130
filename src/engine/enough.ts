// The smallest set of answers that is enough for a verdict: drop the others, and nothing milder can come out any more.

import { severity } from '../ground/verdicts.ts'
import { type Answer, type Answers, cantTell, type QuestionId } from './answers.ts'
import type { Program } from './compile.ts'
import { atomsOf } from './conditions.ts'
import { type Judgement, placesOf, verdictAt } from './judge.ts'

/** How many subsets are tried before the search settles for a set none of whose members can be dropped. */
const tries = 20_000

/**
 * A smallest subset of `given` for which `holds`, where `holds` is monotone (more answers never undo it). What cannot be
 * dropped alone is in every such set; the rest is searched by size, then by order. Beyond `tries` subsets the answer is a set
 * that is minimal by inclusion (deletion, as in Darwiche & Hirth 2020, from memory) but may not be the smallest.
 */
export function smallestEnough<T>(given: readonly T[], holds: (subset: readonly T[]) => boolean): T[] {
  const needed = given.filter(one => !holds(given.filter(other => other !== one)))
  if (holds(needed)) return needed
  const spare = given.filter(one => !needed.includes(one))
  let left = tries
  for (let size = 1; size < spare.length; size++)
    for (const extra of subsets(spare, size)) {
      if (left-- <= 0) return shrink(given, holds)
      const candidate = given.filter(one => needed.includes(one) || extra.includes(one))
      if (holds(candidate)) return candidate
    }
  return [...given]
}

function shrink<T>(given: readonly T[], holds: (subset: readonly T[]) => boolean): T[] {
  return given.reduce<T[]>(
    (kept, one) => {
      const without = kept.filter(other => other !== one)
      return holds(without) ? without : kept
    },
    [...given],
  )
}

function* subsets<T>(from: readonly T[], size: number, start = 0): Generator<T[]> {
  if (size === 0) yield []
  else
    for (let i = start; i <= from.length - size; i++)
      for (const rest of subsets(from, size - 1, i + 1)) yield [from[i] as T, ...rest]
}

/**
 * The answered questions that are enough for a judgement. For danger, ruled out and doubtful: with these answers alone no
 * completion gives a milder verdict. For nothing found: with these alone every check listed as enough is met. For open: none.
 * What is unknown adds no finding, whatever it turns out to be, so judging these answers alone decides. "Can't tell" is among
 * the answers where a rule takes it as no excuse.
 */
export function enoughFor(program: Program, answers: Answers, judgement: Judgement): QuestionId[] {
  const { verdict } = judgement
  if (verdict === 'open') return []
  const rules =
    verdict === 'nothing-found'
      ? program.enough
      : judgement.findings.filter(finding => finding.carries).map(finding => finding.rule)
  const read = new Set(rules.flatMap(rule => program.reads.get(rule.id) ?? []))
  const excused = new Set(
    rules.flatMap(rule => atomsOf(rule.when).flatMap(atom => (atom.op === 'unless' ? atom.question : []))),
  )
  // Not asked yet is judged as "can't tell": that is part of what is enough, but nothing a person said.
  const all: Record<QuestionId, Answer> = { ...answers }
  for (const id of excused) all[id] ??= cantTell
  const candidates = Object.keys(all).filter(id => read.has(id) && (all[id]?.kind !== 'cant-tell' || excused.has(id)))
  return smallestEnough(candidates, subset => {
    const only = Object.fromEntries(subset.map(id => [id, all[id] as Answer]))
    const now = verdictAt(program, placesOf(program, only))
    return verdict === 'nothing-found' ? now !== 'open' : severity[now] >= severity[verdict]
  }).filter(id => answers[id] !== undefined)
}
