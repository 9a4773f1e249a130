// What an attacker can work out: all worlds that agree with everything published, searched by linear programming.
import { type Coefficients, type Constraint, solve } from 'yalps'
import type { Kind } from './streams.ts'

/** So many people of this kind in this week of the stream (from 0); the unknowns. */
export type Unknown = { readonly kind: number; readonly week: number }
/** A number of people: those of the unknowns that `holds` lets in. */
export type Group = (kind: Kind, week: number) => boolean
/** Published, or known from how releases are made: the group has at least `least` and at most `most` people. */
export type Statement = { readonly group: Group; readonly least: number; readonly most: number }
/** People of each unknown, kind by kind within week by week. */
export type World = readonly number[]

export type Puzzle = {
  readonly kinds: readonly Kind[]
  readonly weeks: number
  readonly statements: readonly Statement[]
}

export type Found =
  | { readonly status: 'found'; readonly value: number; readonly world: World }
  | { readonly status: 'unbounded' | 'none' | 'gave-up' }

export const unknownsOf = ({ kinds, weeks }: Pick<Puzzle, 'kinds' | 'weeks'>): Unknown[] =>
  Array.from({ length: weeks }, (_, week) => kinds.map((_, kind) => ({ kind, week }))).flat()

/** The most or the minimumReporters people a weighting of the unknowns can come to in whole people. */
export function extreme(
  puzzle: Puzzle,
  weight: (kind: Kind, week: number) => number,
  direction: 'maximize' | 'minimize',
  whole = false,
  maxIterations = 4000,
): Found {
  const unknowns = unknownsOf(puzzle)
  const constraints = new Map<string, Constraint>()
  for (const [i, { least, most }] of puzzle.statements.entries())
    constraints.set(`s${i}`, Number.isFinite(most) ? { min: least, max: most } : { min: least })
  const variables = unknowns.map((u, i): [string, Coefficients] => {
    const kind = puzzle.kinds[u.kind]!
    const coefficients = new Map<string, number>([['goal', weight(kind, u.week)]])
    for (const [s, { group }] of puzzle.statements.entries()) if (group(kind, u.week)) coefficients.set(`s${s}`, 1)
    return [String(i), coefficients]
  })
  const solution = solve({ direction, objective: 'goal', constraints, variables, integers: whole }, { maxIterations })
  if (solution.status === 'unbounded') return { status: 'unbounded' }
  if (solution.status === 'infeasible') return { status: 'none' }
  if (solution.status !== 'optimal') return { status: 'gave-up' }
  const world = new Array<number>(unknowns.length).fill(0)
  for (const [name, value] of solution.variables) world[Number(name)] = value
  return { status: 'found', value: solution.result, world }
}

export const isWhole = (world: World): boolean => world.every(x => Math.abs(x - Math.round(x)) < 1e-6)
