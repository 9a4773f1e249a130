// Tries a derived pack before it counts: its own cases, and whether a cell as made can come to "nothing found".
import { openCoverage, runCase, uncovered } from '../engine/cases.ts'
import type { Program } from '../engine/compile.ts'
import type { PackProblem } from '../engine/pack/problems.ts'
import type { Derived } from './derive/derive.ts'

export type Proof = {
  readonly cases: number
  readonly problems: readonly PackProblem[]
  /** Exact: whether some answers give "nothing found". */
  readonly canFindNothing: boolean
}

export function prove(program: Program, { pack, cases }: Pick<Derived, 'pack' | 'cases'>): Proof {
  const coverage = openCoverage(pack.rules)
  const problems = cases.flatMap(one => runCase(program, one, one.case, coverage))
  return {
    cases: cases.length,
    problems: [...problems, ...uncovered(coverage, pack.id)],
    canFindNothing: program.outlook(program.given).reachable.includes('nothing-found'),
  }
}
