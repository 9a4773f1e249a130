// Counts the verdicts that nobody has touched for a while, as most people read theirs and leave.
import { lifetime, settlesAfter } from '../check/check.ts'
import { refit } from '../check/refit.ts'
import type { Desk } from '../discord/desk.ts'
import { outcomeFor } from '../discord/leave-outcome.ts'

/** How many are read at once. */
const atOnce = 200

/** Settles every check that has stood finished for two days; says how many. Of several processes each check meets one. */
export async function settleFinished(desk: Desk): Promise<number> {
  let settled = 0
  for (;;) {
    const found = await desk.checks.finished(desk.now() + lifetime - settlesAfter, atOnce)
    for (const check of found) {
      const program = desk.programs.programFor(check.family, check.day)
      // Without its packs nobody can say any more what it came to.
      if (!program)
        desk.log.warn({ packs: check.packs.map(one => one.id) }, 'a finished check of other packs was not counted')
      const outcome = program ? await outcomeFor(desk, program, refit(program, check)) : null
      if (await desk.checks.settle(check, outcome)) settled++
    }
    if (found.length < atOnce) return settled
  }
}
