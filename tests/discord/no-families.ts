// A desk of a server that has described nothing, for screens that need no more of it.

import type { BesideDesk } from '../../src/discord/families/say-beside.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'

export const noFamilies: BesideDesk = {
  base: { questions: [], words: {} } as unknown as Pack,
  built: () => [],
  candidates: async () => [],
  newer: async () => undefined,
}
