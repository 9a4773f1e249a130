// Pseudonyms of reporters, and the code each has in a family: keyed hashes that end with their epoch.
import type { FamilyId } from '../engine/answers.ts'

/**
 * HMAC-SHA-256 (RFC 2104, FIPS 180-4) of a message under a key, as lower-case hex. Handed in, since this room computes nothing
 * by itself that a platform already does.
 */
export type Hmac = (key: Uint8Array, message: Uint8Array) => string

export type PseudonymFor = {
  /** What the pseudonym is for: an outcome of a server, or the pool of servers. Keeps the two from being joined. */
  readonly purpose: 'outcome' | 'pool'
  /** The server; empty for the pool, so that one person is one person across servers. */
  readonly server: string
  readonly user: string
}

/**
 * The pseudonym of a user for a purpose, HMAC-SHA-256(key, purpose ‖ server ‖ user), 64 hex digits. The key belongs to one epoch,
 * is kept outside the database and is destroyed at the epoch's end: while it exists the data are pseudonymous, not anonymous.
 * Parts are parted by a zero byte, so no two triples give one message. A key under 32 bytes or a part with a zero byte is
 * refused.
 */
export function pseudonymOf(hmac: Hmac, key: Uint8Array, { purpose, server, user }: PseudonymFor): PseudonymResult {
  if (key.length < 32) return { ok: false, refusal: { code: 'key-too-short', bytes: key.length, least: 32 } }
  if (user === '' || `${server}${user}`.includes('\0')) return { ok: false, refusal: { code: 'not-a-user' } }
  return { ok: true, pseudonym: hmac(key, new TextEncoder().encode(`${purpose}\0${server}\0${user}`)) }
}

/**
 * What stands in a counted outcome instead of its person's pseudonym: HMAC-SHA-256(key, 'family' ‖ pseudonym ‖ family), under the key of
 * the same epoch. A person counts once a family, so no code stands in two outcomes of an epoch, and whoever has no key cannot tell which
 * two are one person's. No purpose is called so: a code is never a pseudonym.
 */
export const codeInFamily = (hmac: Hmac, key: Uint8Array, pseudonym: string, family: FamilyId): string =>
  hmac(key, new TextEncoder().encode(`family\0${pseudonym}\0${family}`))

export type PseudonymResult =
  | { readonly ok: true; readonly pseudonym: string }
  | {
      readonly ok: false
      readonly refusal:
        | { readonly code: 'key-too-short'; readonly bytes: number; readonly least: number }
        | { readonly code: 'not-a-user' }
    }
