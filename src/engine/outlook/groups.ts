// Solves a group of rules exactly: the chances of its summaries over every way its open questions can still be answered.
//
// Branching on the busiest question, simplifying, splitting what no longer shares a question, and keeping every solved group:
// the layered decision diagram of `methods`' kind, built on demand, its nodes being sets of unfinished rules.
import type { Strength } from '../pack/pack.ts'
import { doubtfulFrom, signWeight } from '../verdicts.ts'
import { always, type Formula, type Formulas, never } from './formulas.ts'
import {
  certainly,
  combine,
  convolve,
  danger,
  doubtful,
  nothing,
  ruledOut,
  type Summary,
  type SummaryChances,
  summaryCount,
  summaryOf,
} from './summaries.ts'

/** A rule's part in a group: the formula under which it counts, tagged with how it counts. */
export type Item = number
type Role = 'hazard' | 'must' | 'enough' | Strength
const roles: readonly Role[] = ['hazard', 'must', 'enough', 'weak', 'moderate', 'strong']

/** `formula` is when the rule holds; for `enough` when it is met (its condition false). */
export const itemOf = (role: Role, formula: Formula): Item => formula * 8 + roles.indexOf(role)
const roleOf = (item: Item): Role => roles[item % 8] as Role
export const formulaOf = (item: Item): Formula => Math.floor(item / 8)

/** Raised while compiling, caught there: the group needs more than the cap allows. */
export class TooTangled extends Error {}

export type Groups = {
  /** Settled items become a summary; the rest falls into groups that share no question, each sorted. */
  split(items: readonly Item[]): { readonly settled: Summary; readonly groups: readonly (readonly Item[])[] }
  /** Fixes one question's state in every item. */
  restrict(items: readonly Item[], variable: number, state: number): Item[]
  /** States of `variable` that leave the same items behind, with their joint chance. */
  branches(items: readonly Item[], variable: number): Branch[]
  /** Chances of the summaries of items of any kind. */
  solve(items: readonly Item[]): SummaryChances
  variables(items: readonly Item[]): number[]
  /** Groups solved and kept so far. */
  kept(): number
}
export type Branch = { readonly states: readonly number[]; readonly chance: number; readonly items: readonly Item[] }

/** `chances[v][s]`: the chance that variable v turns out in state s. `cap` bounds how many groups are kept. */
export function openGroups(formulas: Formulas, chances: readonly Float64Array[], cap: number): Groups {
  const solved = new Map<string, SummaryChances>()

  const restrict = (items: readonly Item[], variable: number, state: number): Item[] =>
    items.map(item => formulas.restrict(formulaOf(item), variable, state) * 8 + (item % 8))

  function variables(items: readonly Item[]): number[] {
    return [...new Set(items.flatMap(item => formulas.variables(formulaOf(item))))].sort((a, b) => a - b)
  }

  function split(items: readonly Item[]) {
    const { settled, open } = settle(items)
    const groups: { items: Item[]; variables: Set<number> }[] = []
    for (const item of open) {
      const mine = formulas.variables(formulaOf(item))
      const touching = groups.filter(group => mine.some(variable => group.variables.has(variable)))
      const first = touching[0] ?? { items: [], variables: new Set<number>() }
      for (const other of touching.slice(1)) {
        first.items.push(...other.items)
        for (const variable of other.variables) first.variables.add(variable)
        groups.splice(groups.indexOf(other), 1)
      }
      first.items.push(item)
      for (const variable of mine) first.variables.add(variable)
      if (touching.length === 0) groups.push(first)
    }
    return { settled, groups: groups.map(group => group.items.sort((a, b) => a - b)) }
  }

  function branches(items: readonly Item[], variable: number): Branch[] {
    const found = new Map<string, { states: number[]; chance: number; items: Item[] }>()
    for (const [state, chance] of (chances[variable] as Float64Array).entries()) {
      const rest = restrict(items, variable, state)
      const key = rest.join()
      const branch = found.get(key)
      if (branch) {
        branch.states.push(state)
        branch.chance += chance
      } else found.set(key, { states: [state], chance, items: rest })
    }
    return [...found.values()]
  }

  function solveGroup(group: readonly Item[]): SummaryChances {
    const key = group.join()
    const known = solved.get(key)
    if (known) return known
    if (solved.size >= cap) throw new TooTangled()
    const out = new Float64Array(summaryCount)
    for (const branch of branches(group, busiest(group))) {
      if (branch.chance === 0) continue
      const part = solve(branch.items)
      for (let i = 0; i < summaryCount; i++) out[i] = (out[i] as number) + branch.chance * (part[i] as number)
    }
    solved.set(key, out)
    return out
  }

  function solve(items: readonly Item[]): SummaryChances {
    const { settled, groups } = split(items)
    return groups.reduce((sum, group) => convolve(sum, solveGroup(group)), certainly(settled))
  }

  function busiest(group: readonly Item[]): number {
    const uses = new Map<number, number>()
    for (const item of group)
      for (const variable of formulas.variables(formulaOf(item))) uses.set(variable, (uses.get(variable) ?? 0) + 1)
    let best = -1
    for (const [variable, count] of uses) if (best < 0 || count > (uses.get(best) as number)) best = variable
    return best
  }

  return { split, restrict, branches, solve, variables, kept: () => solved.size }
}

/** Takes out what is decided, and what can no longer matter beside it. */
function settle(items: readonly Item[]): { settled: Summary; open: Item[] } {
  let settled = nothing
  let open: Item[] = []
  for (const item of items) {
    const formula = formulaOf(item)
    const role = roleOf(item)
    if (formula > always) open.push(item)
    else if (role === 'enough') settled = formula === never ? combine(settled, summaryOf(0, false)) : settled
    else if (formula === always) settled = combine(settled, countOf(role))
  }
  if (settled === danger) open = []
  else if (settled === ruledOut) open = open.filter(item => roleOf(item) === 'hazard')
  else if (settled === doubtful) open = open.filter(item => roleOf(item) === 'hazard' || roleOf(item) === 'must')
  else if ((settled - 3) % 2 === 0) open = open.filter(item => roleOf(item) !== 'enough')
  return { settled, open }
}

function countOf(role: Exclude<Role, 'enough'>): Summary {
  if (role === 'hazard') return danger
  return role === 'must' ? ruledOut : summaryOf(Math.min(signWeight[role], doubtfulFrom), true)
}
