// The other side of `run-apart`: takes one piece of work from the bot, and ends with it.
import { writeFile } from 'node:fs/promises'

export function workApart<Work>(doIt: (work: Work) => Promise<void>): void {
  // Without the bot there is nobody to work for.
  process.once('disconnect', () => process.exit())
  process.once('message', async (work: Work) => {
    // Should memory run out, this process is to end, and not the bot; elsewhere than on Linux there is no such file.
    await writeFile('/proc/self/oom_score_adj', '1000').catch(() => undefined)
    await doIt(work)
  })
}
