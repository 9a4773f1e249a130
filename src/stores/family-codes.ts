// The codes that counted outcomes bear instead of their person's pseudonym: another one for each family, so that no two can be joined.
import type { FamilyId } from '../engine/answers.ts'
import type { Epoch } from '../trends/epoch.ts'
import { codeInFamily } from '../trends/pseudonym.ts'
import type { EpochKeys } from './epoch-keys.ts'
import { hmac } from './hmac.ts'
import type { OutcomeRow } from './tables.ts'

export type CodeIn = (pseudonym: string, family: FamilyId) => string

export type FamilyCodes = {
  /** What makes codes of the pseudonyms of an epoch; undefined once its key is gone. */
  in(epoch: Epoch): Promise<CodeIn | undefined>
}

/** `keys`: those behind the pseudonyms, one an epoch. */
export const openFamilyCodes = (keys: EpochKeys): FamilyCodes => ({
  async in(epoch) {
    const key = await keys.find(epoch)
    return key && ((pseudonym, family) => codeInFamily(hmac, key, pseudonym, family))
  },
})

/** The row as it is counted: under its person's codes for the family. */
export const coded = (row: OutcomeRow, codeIn: CodeIn): OutcomeRow => ({
  ...row,
  reporter: codeIn(row.reporter, row.family),
  pooled: row.pooled && codeIn(row.pooled, row.family),
})
