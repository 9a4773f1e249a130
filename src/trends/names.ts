// What may stand in an outcome as text: names from rule packs, pseudonyms and stamps, and nothing a person typed.
import { z } from 'zod'

/** Twelve digits in a row could be an id of Discord's. */
const noId = /^(?!.*\d{12})/

/** Ids as rule packs write them. */
export const name = z
  .string()
  .max(48)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  .regex(noId)

/** A pseudonym: HMAC-SHA-256 as 64 lower-case hex digits. */
export const pseudonym = z.string().regex(/^[0-9a-f]{64}$/)

/** A pack's version, and its digest in hex or base64, with or without the name of the hash before it. */
export const version = z
  .string()
  .max(32)
  .regex(/^\d+\.\d+\.\d+(-[0-9a-z.-]+)?$/)
  .regex(noId)
export const digest = z
  .string()
  .regex(/^([a-z0-9]+[-:])?[A-Za-z0-9+/_-]{16,128}={0,2}$/)
  .regex(/\D/)

export const isName = (text: unknown): text is string => name.safeParse(text).success
