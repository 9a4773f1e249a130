// A seal whose keys are the same in every test, for stores that are not about them.
import type { EpochKeys } from '../../src/stores/epoch-keys.ts'
import { openSeal } from '../../src/stores/seal.ts'

const key = Buffer.alloc(32, 7)
const keys: EpochKeys = { keyOf: async () => key, find: async () => key, destroyBefore: async () => 0 }

export const testSeal = openSeal(keys)
