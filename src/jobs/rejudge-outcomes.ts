// Judges stored outcomes again after a pack was renewed, so that weeks to come are counted by what is known now.
import { setImmediate as turn } from 'node:timers/promises'
import type { BackgroundServices } from '../discord/trends/tell-findings.ts'
import { dayOf } from '../engine/day-of.ts'
import { judgeAgain } from '../engine/judge-again.ts'
import type { Outcome } from '../trends/outcome.ts'
import { rejudged } from '../trends/rejudge.ts'

/** So few at a time that whoever clicks meanwhile waits for no more than some milliseconds. */
const atOnce = 25

/** Judges every outcome again that another version of an installed pack has judged; says how many. */
export async function rejudgeOutcomes(services: BackgroundServices): Promise<number> {
  const day = dayOf(services.now())
  let judged = 0
  for (const { id, version } of services.programs.packs) {
    let after: string | undefined
    for (;;) {
      const found = await services.trends.outcomes.judgedOtherwise(id, version, atOnce, after)
      for (const { id: handle, outcome } of found) {
        after = handle
        const again = renewed(services, outcome, day)
        if (again === undefined) continue
        await services.trends.outcomes.rejudge(handle, again)
        judged++
      }
      if (found.length === 0) break
      await turn()
    }
  }
  return judged
}

/** Undefined for a family whose pack is no longer installed: it stays as it was judged then. */
function renewed(services: BackgroundServices, outcome: Outcome, day: string): Outcome | undefined {
  const program = services.programs.programFor(outcome.family, day)
  if (!program) return undefined
  return rejudged(outcome, { ...judgeAgain(program, outcome), packs: program.packs })
}
