// What can still come out: the exact chances of every verdict, and of every verdict after each possible next answer.

import { type Verdict, verdicts } from '../../ground/verdicts.ts'
import type { Answer, Answers, QuestionId } from '../answers.ts'
import { informationGain } from './gain.ts'
import { restrict, split } from './groups.ts'
import type { CompiledModel } from './model.ts'
import type { Places } from './places.ts'
import type { SpaceQuestion } from './space.ts'
import {
  certainly,
  combine,
  convolve,
  danger,
  nothing,
  type Summary,
  type SummaryChances,
  summaryCount,
  verdictRows,
  zeros,
} from './summaries.ts'
import { allButOne, type View, type WhatIf } from './views.ts'

export type Prospect = {
  readonly question: QuestionId
  /** Expected information gain about the verdict, in bits, and the same per unit of effort. */
  readonly gain: number
  readonly worth: number
  /** What each answer leads to; worked out when asked for. */
  branches(): Branch[]
}
export type Branch = {
  readonly answers: readonly Answer[]
  readonly chance: number
  readonly verdicts: readonly number[]
}

export type Outlook = {
  /** Chances in the order of `verdicts`; they order questions and say nothing of cells. */
  readonly chances: readonly number[]
  /** Every verdict that some completion of the answers gives, worst first. */
  readonly reachable: readonly Verdict[]
  /** The open questions that can still change the verdict, the one that tells most for its effort first. */
  readonly prospects: readonly Prospect[]
}

/** Below this, a difference of two chances is rounding: real ones are products of a few odds (see tests/engine/exactness). */
const rounding = 1e-13
/** How many sets of answers to one part of a model are remembered. */
const residualCap = 20_000
/** How many outlooks are: one click looks at the same answers several times, and most checks begin alike. */
const seenCap = 500

export type OutlookReader = (answers: Answers) => Outlook

/** A reader of outlooks over one compiled model; what it remembers is bounded. */
export function openOutlook(compiled: CompiledModel): OutlookReader {
  const { parts, model, space, bench } = compiled
  const { formulas, views } = bench
  const questionOf = new Map(space.questions.map(({ id, variable }) => [variable.number, id]))
  const effortOf = new Map(model.questions.map(question => [question.id, question.effort]))
  const familyKnown = model.enough !== undefined
  const residuals = parts.map(() => new Map<string, Residual>())
  let kept = 0
  const seen = new Map<string, Outlook>()

  function residualOf(index: number, places: Places): Residual {
    const part = parts[index] as (typeof parts)[number]
    const mine = residuals[index] as Map<string, Residual>
    let key = ''
    for (const index of part.indexes) key += String.fromCharCode((places[index] as number) + 1)
    const known = mine.get(key)
    if (known) return known
    let { items } = part
    for (const index of part.indexes) {
      const state = places[index] as number
      const { variable } = space.questions[index] as SpaceQuestion
      if (state >= 0) items = restrict(formulas, items, variable.number, state)
    }
    const { settled, groups } = split(formulas, items)
    const residual = { settled, views: groups.map(views.viewOf) }
    if (kept++ >= residualCap) {
      for (const one of residuals) one.clear()
      kept = 0
    }
    mine.set(key, residual)
    return residual
  }

  function prospectOf(whatIf: WhatIf, rows: number[], chances: readonly number[]): Prospect | undefined {
    const after = whatIf.classes.map(one => mix(one, rows))
    if (!after.some(one => differs(one, chances))) return undefined
    const question = questionOf.get(whatIf.variable) as QuestionId
    const { chances: odds, states } = bench.variableAt(whatIf.variable)
    const { classOf } = whatIf.partition
    const weights = bench.partitions.weigh(whatIf.partition, odds)
    const gain = informationGain(chances, weights, after)
    const branches = () =>
      after.map((given, index) => ({
        answers: states.flatMap((state, i) => (classOf[i] === index ? state.answers : [])),
        chance: weights[index] as number,
        verdicts: given,
      }))
    return { question, gain, worth: gain / (effortOf.get(question) ?? 1), branches }
  }

  function look(places: Places): Outlook {
    let { settled } = compiled
    const open: View[] = []
    for (let index = 0; index < parts.length; index++) {
      const residual = residualOf(index, places)
      settled = combine(settled, residual.settled)
      if (settled === danger) return endangered
      open.push(...residual.views)
    }
    const own = open.map(view => view.chances)
    const rests = allButOne(own, certainly(settled))
    const whole = own[0] && rests[0] ? convolve(own[0], rests[0]) : certainly(settled)
    const chances = mix(certainly(nothing), verdictRows(whole, familyKnown))
    const prospects: Prospect[] = []
    for (const [i, view] of open.entries()) {
      const rows = verdictRows(rests[i] as SummaryChances, familyKnown)
      for (const whatIf of view.whatIfs) {
        const prospect = prospectOf(whatIf, rows, chances)
        if (prospect) prospects.push(prospect)
      }
    }
    prospects.sort((a, b) => b.worth - a.worth)
    return { chances, reachable: verdicts.filter((_, v) => (chances[v] as number) > 0), prospects }
  }

  return answers => {
    const places = space.place(answers)
    const key = String.fromCharCode(...places.map(state => state + 1))
    const known = seen.get(key)
    if (known) return known
    const outlook = look(places)
    if (seen.size >= seenCap) seen.clear()
    seen.set(key, outlook)
    return outlook
  }
}

type Residual = { readonly settled: Summary; readonly views: readonly View[] }

/** Once a hazard holds nothing else can come out. */
const endangered: Outlook = { chances: [1, 0, 0, 0, 0], reachable: ['danger'], prospects: [] }

function differs(a: readonly number[], b: readonly number[]): boolean {
  for (let v = 0; v < a.length; v++) if (Math.abs((a[v] as number) - (b[v] as number)) > rounding) return true
  return false
}

/** Verdict chances of a group's summaries, given the rows of `verdictRows` for the rest. */
function mix(summaries: SummaryChances, rows: number[]): number[] {
  const width = verdicts.length
  const out = zeros(width)
  for (let i = 0; i < summaryCount; i++) {
    const chance = summaries[i] as number
    if (chance === 0) continue
    for (let v = 0; v < width; v++) out[v] = (out[v] as number) + chance * (rows[i * width + v] as number)
  }
  return out
}
