// Counts the verdicts that nobody has touched for a while, as most people read theirs and leave.
import { setImmediate as turn } from 'node:timers/promises'
import { lifetime, settlesAfter } from '../check/check.ts'
import { refit } from '../check/refit.ts'
import { outcomeFor } from '../discord/check/leave-outcome.ts'
import type { Services } from '../discord/services.ts'

/** How many are read at once. */
const atOnce = 200

/** Settles every check that has stood finished for two days; says how many. Of several processes each check meets one. */
export async function settleFinished(services: Services): Promise<number> {
  let settled = 0
  for (;;) {
    const found = await services.checks.finished(services.now() + lifetime - settlesAfter, atOnce)
    for (const check of found) {
      const program = await services.families.programOf(check)
      // Without its packs nobody can say any more what it came to.
      if (!program)
        services.log.warn({ packs: check.packs.map(one => one.id) }, 'a finished check of other packs was not counted')
      const outcome = program ? await outcomeFor(services, program, refit(program, check)) : null
      if (await services.checks.settle(check, outcome)) settled++
      // Clicks that came in meanwhile go first.
      await turn()
    }
    if (found.length < atOnce) return settled
  }
}
