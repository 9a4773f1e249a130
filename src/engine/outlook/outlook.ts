// What can still come out: the exact chances of every verdict, and of every verdict after each possible next answer.
import type { Answer, Answers, QuestionId } from '../answers.ts'
import { type Verdict, verdicts } from '../verdicts.ts'
import { informationGain } from './gain.ts'
import type { Branch, Item } from './groups.ts'
import { type CompiledModel, type ModelQuestion, statesGiven } from './model.ts'
import { certainly, convolve, nothing, type SummaryChances, summaryCount, verdictRows } from './summaries.ts'

export type Prospect = {
  readonly question: QuestionId
  /** Expected information gain about the verdict, in bits, and the same per unit of effort. */
  readonly gain: number
  readonly worth: number
  readonly branches: readonly {
    readonly answers: readonly Answer[]
    readonly chance: number
    readonly verdicts: Float64Array
  }[]
}

export type Outlook = {
  /** Chances in the order of `verdicts`; they order questions and say nothing of cells. */
  readonly chances: Float64Array
  /** Every verdict that some completion of the answers gives, worst first. */
  readonly reachable: readonly Verdict[]
  /** The open questions that can still change the verdict, the one that tells most for its effort first. */
  readonly prospects: readonly Prospect[]
}

type View = {
  readonly chances: SummaryChances
  readonly open: readonly {
    readonly variable: number
    readonly branches: readonly (Branch & { chances: SummaryChances })[]
  }[]
}

/** Below this, a difference of two chances is rounding: real ones are products of a few odds (see tests/engine/exactness). */
const rounding = 1e-13
const viewCap = 20_000

export type OutlookReader = (answers: Answers) => Outlook

/**
 * A reader of outlooks over one compiled model; it keeps what it solved for groups of questions, never more than a fixed
 * number of them.
 */
export function openOutlook(compiled: CompiledModel): OutlookReader {
  const { groups, parts, model } = compiled
  const familyKnown = model.enough !== undefined
  const views = new Map<string, View>()
  const residuals = new Map<string, ReturnType<typeof groups.split>>()

  function viewOf(group: readonly Item[]): View {
    const key = group.join()
    const known = views.get(key)
    if (known) return known
    const open = groups.variables(group).map(variable => ({
      variable,
      branches: groups.branches(group, variable).map(branch => ({ ...branch, chances: groups.solve(branch.items) })),
    }))
    const view = { chances: groups.solve(group), open }
    if (views.size >= viewCap) views.clear()
    views.set(key, view)
    return view
  }

  function residualOf(index: number, given: ReadonlyMap<number, number>): ReturnType<typeof groups.split> {
    const part = parts[index] as (typeof parts)[number]
    let key = `${index}`
    for (const variable of part.variables) key += `,${given.get(variable) ?? ''}`
    const known = residuals.get(key)
    if (known) return known
    let items = part.items
    for (const variable of part.variables) {
      const state = given.get(variable)
      if (state !== undefined) items = groups.restrict(items, variable, state)
    }
    const residual = groups.split(items)
    if (residuals.size >= viewCap) residuals.clear()
    residuals.set(key, residual)
    return residual
  }

  return answers => {
    const given = statesGiven(compiled, answers)
    let settled = certainly(compiled.settled)
    const open: View[] = []
    for (const index of parts.keys()) {
      const residual = residualOf(index, given)
      settled = convolve(settled, certainly(residual.settled))
      for (const group of residual.groups) open.push(viewOf(group))
    }
    const rests = allButOne(open, settled)
    const whole = open[0] ? convolve(open[0].chances, rests[0] as SummaryChances) : settled
    const chances = verdictRows(whole, familyKnown).slice(nothing * verdicts.length, (nothing + 1) * verdicts.length)
    const prospects: Prospect[] = []
    for (const [i, view] of open.entries()) {
      const rows = verdictRows(rests[i] as SummaryChances, familyKnown)
      for (const { variable, branches } of view.open) {
        const seen = branches.map(branch => ({ branch, given: mix(branch.chances, rows) }))
        if (!seen.some(({ given: after }) => after.some((p, v) => Math.abs(p - (chances[v] as number)) > rounding)))
          continue
        const question = model.questions[variable] as ModelQuestion
        const gain = informationGain(
          chances,
          seen.map(({ branch, given: after }) => ({ chance: branch.chance, given: after })),
        )
        prospects.push({
          question: question.id,
          gain,
          worth: gain / question.effort,
          branches: seen.map(({ branch, given: after }) => ({
            answers: branch.states.flatMap(state => question.states[state]?.answers ?? []),
            chance: branch.chance,
            verdicts: after,
          })),
        })
      }
    }
    prospects.sort((a, b) => b.worth - a.worth)
    return { chances, reachable: verdicts.filter((_, v) => (chances[v] as number) > 0), prospects }
  }
}

/** For each view, everything but itself combined: prefixes from the left, suffixes from the right. */
function allButOne(views: readonly View[], settled: SummaryChances): SummaryChances[] {
  const before: SummaryChances[] = []
  let left = settled
  for (const view of views) {
    before.push(left)
    left = convolve(left, view.chances)
  }
  const out: SummaryChances[] = []
  let right: SummaryChances | undefined
  for (let i = views.length - 1; i >= 0; i--) {
    const mine = before[i] as SummaryChances
    out[i] = right ? convolve(mine, right) : mine
    const own = (views[i] as View).chances
    right = right ? convolve(own, right) : own
  }
  return out
}

/** Verdict chances of a group's summaries, given the rows of `verdictRows` for the rest. */
function mix(summaries: SummaryChances, rows: Float64Array): Float64Array {
  const width = verdicts.length
  const out = new Float64Array(width)
  for (let i = 0; i < summaryCount; i++) {
    const chance = summaries[i] as number
    if (chance === 0) continue
    for (let v = 0; v < width; v++) out[v] = (out[v] as number) + chance * (rows[i * width + v] as number)
  }
  return out
}
