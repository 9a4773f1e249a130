// A desk of a server that has described nothing, for screens that need no more of it.

import type { PhotoDesk } from '../../src/discord/families/family-photos.ts'
import type { BesideDesk } from '../../src/discord/families/say-beside.ts'
import type { Pack } from '../../src/engine/pack/pack.ts'
import type { FamilyDesk } from '../../src/services/family-desk.ts'

export const noFamilies: BesideDesk & PhotoDesk & Pick<FamilyDesk, 'heads'> = {
  base: { questions: [], words: {} } as unknown as Pack,
  built: () => [],
  heads: async () => [],
  candidates: async () => [],
  newer: async () => undefined,
  photos: async () => [],
  store: { photo: async () => undefined },
}
