// A seal and codes whose keys are the same in every test, for stores that are not about them.
import type { EpochKeys } from '../../src/stores/epoch-keys.ts'
import { openFamilyCodes } from '../../src/stores/family-codes.ts'
import { hmac } from '../../src/stores/hmac.ts'
import { openSeal } from '../../src/stores/seal.ts'
import { type Outcome, unknownFamily } from '../../src/trends/outcome.ts'
import { codeInFamily } from '../../src/trends/pseudonym.ts'

const key = Buffer.alloc(32, 7)
const keys: EpochKeys = { keyOf: async () => key, find: async () => key, destroyBefore: async () => 0 }

export const testSeal = openSeal(keys)
export const testCodes = openFamilyCodes(keys)

/** The code under which `testCodes` has an outcome counted. */
export const codeOf = ({ reporter, family }: Pick<Outcome, 'reporter' | 'family'>): string =>
  codeInFamily(hmac, key, reporter, family ?? unknownFamily)
