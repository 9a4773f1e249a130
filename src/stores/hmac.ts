// HMAC-SHA-256 by the platform, for the pure rooms that are handed it.
import { createHmac, createSecretKey, type KeyObject } from 'node:crypto'
import type { Hmac } from '../trends/pseudonym.ts'

/** What the platform makes of a key takes longer than a hash under it, so it is kept for as long as the key is. */
const prepared = new WeakMap<Uint8Array, KeyObject>()

export const hmac: Hmac = (key, message) => {
  const ready = prepared.get(key) ?? createSecretKey(key)
  prepared.set(key, ready)
  return createHmac('sha256', ready).update(message).digest('hex')
}
