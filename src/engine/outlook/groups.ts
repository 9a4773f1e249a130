// Groups of rules that share questions: splitting them, fixing an answer in them, and how each of their rules counts.

import { doubtfulFrom, signWeight } from '../../ground/verdicts.ts'
import type { Strength } from '../pack/pack.ts'
import { always, type Formula, type Formulas, never } from './formulas.ts'
import { combine, danger, doubtful, nothing, ruledOut, type Summary, summaryOf } from './summaries.ts'

/** A rule's part in a group: the formula under which it counts, tagged with how it counts. */
export type Item = number
/** The items of one group, ascending; two groups share no question. */
export type Group = readonly Item[]
type Role = 'hazard' | 'must' | 'enough' | Strength
const roles: readonly Role[] = ['hazard', 'must', 'enough', 'weak', 'moderate', 'strong']
const width = 8

/** `formula` is when the rule holds; for `enough` when it is met (its condition false). */
export const itemOf = (role: Role, formula: Formula): Item => formula * width + roles.indexOf(role)
const roleOf = (item: Item): Role => roles[item % width] as Role
const formulaOf = (item: Item): Formula => Math.floor(item / width)

/** Fixes one question's state in every item. */
export const restrict = (formulas: Formulas, items: Group, variable: number, state: number): Item[] =>
  items.map(item => formulas.restrict(formulaOf(item), variable, state) * width + (item % width))

/** The literals over one question in a group, each once. */
export function literalsOf(formulas: Formulas, items: Group, variable: number): ReadonlySet<Formula> {
  const found = new Set<Formula>()
  for (const item of items) for (const literal of formulas.literalsOf(formulaOf(item), variable)) found.add(literal)
  return found
}

/** The variables of a group, ascending. */
export function variablesOf(formulas: Formulas, items: Group): number[] {
  const found = new Set<number>()
  for (const item of items) for (const variable of formulas.variables(formulaOf(item))) found.add(variable)
  return [...found].sort((a, b) => a - b)
}

/** The variable that most items of the group read: branching on it leaves the least behind. */
export function busiest(formulas: Formulas, items: Group): number {
  const uses = new Map<number, number>()
  for (const item of items)
    for (const variable of formulas.variables(formulaOf(item))) uses.set(variable, (uses.get(variable) ?? 0) + 1)
  let best = -1
  for (const [variable, count] of uses) if (best < 0 || count > (uses.get(best) as number)) best = variable
  return best
}

/** Settled items become a summary; the rest falls into groups that share no question. */
export function split(
  formulas: Formulas,
  items: Group,
): { readonly settled: Summary; readonly groups: readonly Group[] } {
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

/** Takes out what is decided, and what can no longer matter beside it. */
function settle(items: Group): { settled: Summary; open: Item[] } {
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
