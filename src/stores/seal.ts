// Seals texts that the database is not to tell, not in its log and not in a copy: the key of each week lies beside it.
import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto'
import { sql } from 'kysely'
import { isWeek, type Week } from '../trends/week.ts'
import type { EpochKeys } from './epoch-keys.ts'

export type Seal = {
  /** The JSON text `text`, sealed under the key of `week`. */
  close(text: string, week: Week): Promise<string>
  /** What was sealed; undefined once its key is gone, or where it never was. */
  open(sealed: string): Promise<string | undefined>
}

const mark = 'sealed1'
export const isSealed = (text: string): boolean => text.startsWith(`${mark}.`)

/** The week a sealed text in this column is sealed under, to be asked for in SQL. */
export const weekIn = (column: string) => sql<Week>`substr(${sql.ref(column)}, ${sql.lit(mark.length + 2)}, 8)`

/** AES-256-GCM with a random nonce of 96 bits (NIST SP 800-38D, 8.2.2; from memory). */
const [cipher, nonceBytes, tagBytes] = ['aes-256-gcm', 12, 16] as const
/** Texts are filled up to a multiple of this, so that a length tells nothing either; spaces after JSON mean nothing. */
const filledTo = 2048

/** `keys`: one a week, destroyed by whoever keeps them. */
export const openSeal = (keys: EpochKeys): Seal => ({
  async close(text, week) {
    const nonce = randomBytes(nonceBytes)
    const sealing = createCipheriv(cipher, await keys.keyOf(week), nonce)
    const bytes = Buffer.from(text)
    const filled = Buffer.alloc(Math.ceil(bytes.length / filledTo) * filledTo, ' ')
    bytes.copy(filled)
    const sealed = Buffer.concat([nonce, sealing.update(filled), sealing.final(), sealing.getAuthTag()])
    return `${mark}.${week}.${sealed.toString('base64url')}`
  },

  async open(sealed) {
    const [, week = '', body = ''] = sealed.split('.')
    const key = isWeek(week) ? await keys.find(week) : undefined
    if (key === undefined) return undefined
    const bytes = Buffer.from(body, 'base64url')
    try {
      const opening = createDecipheriv(cipher, key, bytes.subarray(0, nonceBytes))
      opening.setAuthTag(bytes.subarray(-tagBytes))
      return `${opening.update(bytes.subarray(nonceBytes, -tagBytes), undefined, 'utf8')}${opening.final('utf8')}`.trimEnd()
    } catch {
      // Damaged, or sealed under a key that was lost and made anew.
      return undefined
    }
  },
})
