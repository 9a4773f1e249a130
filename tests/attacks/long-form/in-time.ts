// An answer as somebody in Discord gets it: what has not come in time has failed for them, and they may press again.
import { setTimeout as after } from 'node:timers/promises'
import type { Json } from '../../gateway/small-gateway.ts'

/** Discord gives three seconds; a process that does much else is a little late in telling. In ms. */
const patience = 4_000

/** Undefined where nothing came. */
export const inTime = (answer: Promise<Json>): Promise<Json | undefined> =>
  Promise.race([answer, after(patience, undefined, { ref: false })])
