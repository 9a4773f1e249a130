// Solves a group of rules exactly: its summaries' chances, and the same after each answer to each of its open questions.
//
// Branch on the busiest question; each branch falls into smaller groups, each solved once and kept: a decision diagram built
// on demand, whose nodes are sets of unfinished rules. What an answer to another question changes lies in one smaller group
// of each branch, so every "what if" comes out of the same pass.
import type { Formulas } from './formulas.ts'
import { busiest, type Group, restrict, split, variablesOf } from './groups.ts'
import { certainly, convolve, convolveInto, type SummaryChances, summaryCount, zeros } from './summaries.ts'

/** What each answer to one open question leads to: states that lead to the same are one class. */
export type WhatIf = {
  readonly variable: number
  /** The class of each state. */
  readonly classOf: Uint16Array
  readonly classes: readonly SummaryChances[]
}
export type View = { readonly chances: SummaryChances; readonly whatIfs: readonly WhatIf[] }

/** Raised while compiling, caught there: the group needs more than the cap allows. */
export class TooTangled extends Error {}

export type Views = {
  viewOf(group: Group): View
  /** From now on views are dropped at the cap and made again, instead of raising `TooTangled`. */
  settleDown(): void
}

/** `chances[v][s]`: the chance that variable v turns out in state s. `cap` bounds how many views are kept. */
export function openViews(formulas: Formulas, chances: readonly (readonly number[])[], cap: number): Views {
  const kept = new Map<string, View>()
  let compiling = true

  function viewOf(group: Group): View {
    const key = group.join()
    const known = kept.get(key)
    if (known) return known
    if (compiling && kept.size >= cap) throw new TooTangled()
    const view = solve(group)
    if (!compiling && kept.size >= cap) kept.clear()
    kept.set(key, view)
    return view
  }

  function solve(group: Group): View {
    const pivot = busiest(formulas, group)
    const branches = branchesOf(group, pivot)
    const whole = mixed(
      branches.list.map(branch => branch.chances),
      branches.list.map(branch => branch.chance),
    )
    const others = variablesOf(formulas, group).filter(variable => variable !== pivot)
    return {
      chances: whole,
      whatIfs: [
        { variable: pivot, classOf: branches.classOf, classes: branches.list.map(branch => branch.chances) },
        ...others.map(variable => whatIfOver(branches.list, variable)),
      ],
    }
  }

  /** The pivot's states by what they leave behind, each class solved. */
  function branchesOf(group: Group, pivot: number): { list: Branch[]; classOf: Uint16Array } {
    const odds = chances[pivot] as readonly number[]
    const classOf = new Uint16Array(odds.length)
    const classes = new Map<string, number>()
    const list: Branch[] = []
    for (const [state, chance] of odds.entries()) {
      const items = restrict(formulas, group, pivot, state)
      const key = items.join()
      let index = classes.get(key)
      if (index === undefined) {
        index = list.length
        classes.set(key, index)
        list.push(branchOf(items))
      }
      classOf[state] = index
      ;(list[index] as Branch).chance += chance
    }
    return { list, classOf }
  }

  function branchOf(items: Group): Branch {
    const { settled, groups } = split(formulas, items)
    const views = groups.map(viewOf)
    const rests = allButOne(
      views.map(view => view.chances),
      certainly(settled),
    )
    const [first] = views
    const whole = first ? convolve(first.chances, rests[0] as SummaryChances) : certainly(settled)
    return { chance: 0, chances: whole, views, rests }
  }

  /** What the answers to `variable` lead to over all branches: the common refinement of their classes. */
  function whatIfOver(branches: readonly Branch[], variable: number): WhatIf {
    const size = (chances[variable] as readonly number[]).length
    const places = branches.map(({ views }) => {
      for (const view of views) {
        const whatIf = view.whatIfs.find(one => one.variable === variable)
        if (whatIf) return { whatIf, view }
      }
      return undefined
    })
    let classOf: Uint16Array = new Uint16Array(size)
    for (const place of places) if (place) classOf = refine(classOf, place.whatIf.classOf)
    const classes: number[][] = []
    for (let state = 0; state < size; state++) {
      if (classes[classOf[state] as number]) continue
      const sum = zeros(summaryCount)
      for (const [i, branch] of branches.entries()) {
        const place = places[i]
        if (!place) addInto(sum, branch.chances, branch.chance)
        else {
          const own = place.whatIf.classes[place.whatIf.classOf[state] as number] as SummaryChances
          const rest = branch.rests[branch.views.indexOf(place.view)] as SummaryChances
          convolveInto(sum, own, rest, branch.chance)
        }
      }
      classes[classOf[state] as number] = sum
    }
    return { variable, classOf, classes }
  }

  return {
    viewOf,
    settleDown() {
      compiling = false
    },
  }
}

type Branch = {
  chance: number
  readonly chances: SummaryChances
  readonly views: readonly View[]
  /** For each view, everything of the branch but itself. */
  readonly rests: readonly SummaryChances[]
}

function mixed(parts: readonly SummaryChances[], weights: readonly number[]): SummaryChances {
  const sum = zeros(summaryCount)
  for (const [i, part] of parts.entries()) addInto(sum, part, weights[i] as number)
  return sum
}

function addInto(sum: number[], more: SummaryChances, weight: number): void {
  for (let i = 0; i < summaryCount; i++) sum[i] = (sum[i] as number) + weight * (more[i] as number)
}

/** Two states share a class only if both partitions say so; classes are numbered as they first occur. */
function refine(a: Uint16Array, b: Uint16Array): Uint16Array {
  const found = new Map<number, number>()
  return a.map((classA, state) => {
    const key = classA * 65536 + (b[state] as number)
    const known = found.get(key)
    if (known !== undefined) return known
    found.set(key, found.size)
    return found.size - 1
  })
}

/** For each part, everything but itself combined with `settled`: prefixes from the left, suffixes from the right. */
export function allButOne(parts: readonly SummaryChances[], settled: SummaryChances): SummaryChances[] {
  const before: SummaryChances[] = []
  let left = settled
  for (const part of parts) {
    before.push(left)
    left = convolve(left, part)
  }
  const out: SummaryChances[] = []
  let right: SummaryChances | undefined
  for (let i = parts.length - 1; i >= 0; i--) {
    const mine = before[i] as SummaryChances
    out[i] = right ? convolve(mine, right) : mine
    const own = parts[i] as SummaryChances
    right = right ? convolve(own, right) : own
  }
  return out
}
