// Solves a group of rules exactly: its summaries' chances, and the same after each answer to each of its open questions.
//
// Branch on the busiest question; each branch falls into smaller groups, each solved once and kept: a decision diagram built
// on demand, whose nodes are sets of unfinished rules. What an answer to another question changes lies in one smaller group
// of each branch, so every "what if" comes out of the same pass.
import type { Formula, Formulas } from './formulas.ts'
import { busiest, type Group, literalsOf, restrict, split, variablesOf } from './groups.ts'
import type { Partition, Partitions } from './partitions.ts'
import { certainly, convolve, convolveInto, type SummaryChances, summaryCount, zeros } from './summaries.ts'

/** What each answer to one open question leads to: states that lead to the same are one class. */
export type WhatIf = {
  readonly variable: number
  readonly partition: Partition
  /** What each class leads to. */
  readonly classes: readonly SummaryChances[]
}
export type View = { readonly chances: SummaryChances; readonly whatIfs: readonly WhatIf[] }

/** Raised while compiling, caught there: the group needs more than the cap allows. */
export class TooTangled extends Error {}

export type Views = {
  viewOf(group: Group): View
  /** Views of groups that need more than `cap` new ones raise `TooTangled` while `work` runs; the ones made are kept. */
  within<T>(cap: number, work: () => T): T
  /**
   * Solves a group in slices, the smaller ones that it falls into first: in the order in which `viewOf` meets them, so that both find
   * the same. More than `cap` new ones raise `TooTangled`; whoever needs the view meanwhile has the rest worked out at once.
   */
  solving(group: Group, cap: number): Generator<void>
}

/** `chancesOf(v)[s]`: the chance that variable v turns out in state s. Beyond `most` views all are dropped, and made again when needed. */
export function openViews(
  formulas: Formulas,
  partitions: Partitions,
  chancesOf: (variable: number) => readonly number[],
  most: number,
): Views {
  const kept = new Map<string, View>()
  let left = Number.POSITIVE_INFINITY

  const byLiteral = new Map<Formula, Partition>()
  /** How a literal parts the states of its question. */
  function partitionOf(literal: Formula): Partition {
    const before = byLiteral.get(literal) ?? partitions.of(formulas.holdsOf(literal))
    byLiteral.set(literal, before)
    return before
  }

  function viewOf(group: Group): View {
    const key = group.join()
    const known = kept.get(key)
    if (known) return known
    if (left-- <= 0) throw new TooTangled()
    const view = solve(group)
    if (kept.size >= most) kept.clear()
    kept.set(key, view)
    return view
  }

  function solve(group: Group): View {
    const pivot = busiest(formulas, group)
    const { list, partition } = branchesOf(group, pivot)
    const chances = zeros(summaryCount)
    for (const branch of list) addInto(chances, branch.chances, branch.chance)
    const others = variablesOf(formulas, group).filter(variable => variable !== pivot)
    return {
      chances,
      whatIfs: [
        { variable: pivot, partition, classes: list.map(branch => branch.chances) },
        ...others.map(variable => whatIfOver(list, variable)),
      ],
    }
  }

  /** States of the pivot that restrict the group alike. */
  function alikeIn(group: Group, pivot: number): Partition {
    let alike = partitions.whole(chancesOf(pivot).length)
    for (const literal of literalsOf(formulas, group, pivot)) alike = partitions.refine(alike, partitionOf(literal))
    return alike
  }

  /** The pivot's states by what they leave behind, each class solved. */
  function branchesOf(group: Group, pivot: number): { list: Branch[]; partition: Partition } {
    const odds = chancesOf(pivot)
    const alike = alikeIn(group, pivot)
    const indexes = new Map<string, number>()
    const list: Branch[] = []
    const weights = partitions.weigh(alike, odds)
    const indexOfClass = alike.firstOf.map((state, one) => {
      const items = restrict(formulas, group, pivot, state)
      const key = items.join()
      const index = indexes.get(key) ?? list.length
      indexes.set(key, index)
      if (index === list.length) list.push(branchOf(items))
      ;(list[index] as Branch).chance += weights[one] as number
      return index
    })
    return { list, partition: partitions.coarsen(alike, indexOfClass) }
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
    const places = branches.map(({ views }) => {
      for (const view of views) {
        const whatIf = view.whatIfs.find(one => one.variable === variable)
        if (whatIf) return { whatIf, view }
      }
      return undefined
    })
    let partition = partitions.whole(chancesOf(variable).length)
    for (const place of places) if (place) partition = partitions.refine(partition, place.whatIf.partition)
    const classes = partition.firstOf.map(state => {
      const sum = zeros(summaryCount)
      for (const [i, branch] of branches.entries()) {
        const place = places[i]
        if (!place) addInto(sum, branch.chances, branch.chance)
        else {
          const own = place.whatIf.classes[place.whatIf.partition.classOf[state] as number] as SummaryChances
          const rest = branch.rests[branch.views.indexOf(place.view)] as SummaryChances
          convolveInto(sum, own, rest, branch.chance)
        }
      }
      return sum
    })
    return { variable, partition, classes }
  }

  function within<T>(cap: number, work: () => T): T {
    left = cap
    try {
      return work()
    } finally {
      left = Number.POSITIVE_INFINITY
    }
  }

  function* solving(group: Group, cap: number): Generator<void> {
    let rest = cap
    function* below(inner: Group, depth: number): Generator<void> {
      if (kept.has(inner.join())) return
      const pivot = busiest(formulas, inner)
      if (depth > 0)
        for (const state of alikeIn(inner, pivot).firstOf)
          for (const smaller of split(formulas, restrict(formulas, inner, pivot, state)).groups)
            yield* below(smaller, depth - 1)
      rest = within(rest, () => {
        viewOf(inner)
        return left
      })
      yield
    }
    yield* below(group, slicedDown)
  }

  return { viewOf, within, solving }
}

/** So many answers deep a group is taken apart to be solved in slices; what is left then takes some milliseconds. */
const slicedDown = 3

type Branch = {
  chance: number
  readonly chances: SummaryChances
  readonly views: readonly View[]
  /** For each view, everything of the branch but itself. */
  readonly rests: readonly SummaryChances[]
}

function addInto(sum: number[], more: SummaryChances, weight: number): void {
  for (let i = 0; i < summaryCount; i++) sum[i] = (sum[i] as number) + weight * (more[i] as number)
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
