// Waits for a moment in which nobody is being served, and not for ever: what is put off until then blocks whoever clicks meanwhile.
import { setTimeout as after } from 'node:timers/promises'

/** Clicks come in between two looks; ms. */
const lookEvery = 20

/** `within`: the longest wait, in ms, for a bot that is never left in peace. */
export async function whenQuiet(isBusy: () => boolean, within = 500): Promise<void> {
  for (let waited = 0; waited === 0 || (isBusy() && waited < within); waited += lookEvery)
    await after(lookEvery, undefined, { ref: false })
}
