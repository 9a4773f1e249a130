// Tries what would come into force: its cases, what changes against the version in force, and, where there is one, a back-test in three words.

import type { Program } from '../../engine/compile.ts'
import { dayOf } from '../../engine/day-of.ts'
import { derive } from '../../families/derive/derive.ts'
import { type Difference, diffFacts } from '../../families/diff.ts'
import type { Version } from '../../families/family.ts'
import { type Proof, prove } from '../../families/prove.ts'
import { type BackTest, backTest, trialsPerWeek } from '../../families/weigh/back-test.ts'
import { weekOf } from '../../trends/week.ts'
import type { Services } from '../services.ts'
import type { WorkingOn } from './working-on.ts'

export type Trial = {
  readonly proof: Proof | undefined
  readonly differences: readonly Difference[]
  /** `first`: nothing was checked as this model before. */
  readonly backTest: BackTest | 'first'
}

/** Weeks that the back-test looks back over, and outcomes it reads at most. */
const backOver = 52 * 7 * 24 * 3600_000
const mostOutcomes = 5000

export async function tryFamily(services: Services, server: string, work: WorkingOn): Promise<Trial> {
  const { base, programs, store } = services.families
  const { facts, digest } = work.proposed
  const now = services.now()
  const day = dayOf(now)
  const described = { facts, digest, number: work.family.head + 1 }
  const derived = derive(facts, base, described)
  const program = derived.ok ? programs.program(described, day) : undefined
  const differences = diffFacts(work.inForce?.facts, facts)
  const { inForce } = work
  if (!derived.ok || !program)
    return { proof: undefined, differences, backTest: inForce ? { ok: false, why: 'too-few-checks' } : 'first' }
  return { proof: prove(program, derived), differences, backTest: inForce ? await tested(inForce, program) : 'first' }

  async function tested(before: Version, program: Program): Promise<BackTest> {
    const week = weekOf(now)
    if (!(await store.countTrial(server, week, trialsPerWeek))) return { ok: false, why: 'too-often' }
    // The week that runs is not over: what was checked in it is not asked about.
    const lastClosed = weekOf(now - 7 * 24 * 3600_000)
    const outcomes = await store.outcomes(server, work.family.id, weekOf(now - backOver), lastClosed, mostOutcomes)
    const hidden = await services.trends.reporterOf({ server, user: `tried ${digest}`, week, pooling: false })
    return backTest(outcomes, programs.program(before, day), program, hidden.reporter)
  }
}
