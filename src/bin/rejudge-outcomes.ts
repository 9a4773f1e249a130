// Judges stored outcomes again after a pack was renewed, so that weeks to come are counted by what is known now.
import { setImmediate as turn } from 'node:timers/promises'
import { findingsCounted } from '../discord/finished-check.ts'
import type { QuietDesk } from '../discord/tell-findings.ts'
import { dayOf } from '../engine/day-of.ts'
import { judge } from '../engine/judge.ts'
import type { Outcome } from '../trends/outcome.ts'
import { answersOf, rejudged } from '../trends/rejudge.ts'

/** So few at a time that whoever clicks meanwhile waits for no more than some milliseconds. */
const atOnce = 25

/** Judges every outcome again that another version of an installed pack has judged; says how many. */
export async function rejudgeOutcomes(desk: QuietDesk): Promise<number> {
  const day = dayOf(desk.now())
  let judged = 0
  for (const { id, version } of desk.programs.packs) {
    let after: string | undefined
    for (;;) {
      const found = await desk.trends.outcomes.judgedOtherwise(id, version, atOnce, after)
      for (const { id: handle, outcome } of found) {
        after = handle
        const again = judgeAgain(desk, outcome, day)
        if (again === undefined) continue
        await desk.trends.outcomes.rejudge(handle, again)
        judged++
      }
      if (found.length === 0) break
      await turn()
    }
  }
  return judged
}

/** Undefined for a family whose pack is no longer installed: it stays as it was judged then. */
function judgeAgain(desk: QuietDesk, outcome: Outcome, day: string): Outcome | undefined {
  const program = desk.programs.programFor(outcome.family, day)
  if (!program) return undefined
  const judgement = judge(program, answersOf(outcome))
  return rejudged(outcome, {
    verdict: judgement.verdict,
    fired: findingsCounted(judgement),
    packs: program.packs,
  })
}
