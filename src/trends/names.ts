// What may stand in an outcome as text: names from rule packs, pseudonyms and stamps, and nothing a person typed.

/** Ids as rule packs write them. A row of twelve digits is no such name: it could be an id of Discord's. */
export function isName(text: unknown): text is string {
  return typeof text === 'string' && text.length <= 48 && /^[a-z0-9]+(-[a-z0-9]+)*$/.test(text) && !/\d{12}/.test(text)
}

/** A pseudonym: HMAC-SHA-256 as 64 lower-case hex digits. */
export const isPseudonym = (text: unknown): text is string => typeof text === 'string' && /^[0-9a-f]{64}$/.test(text)

export const isVersion = (text: unknown): text is string =>
  typeof text === 'string' && text.length <= 32 && /^\d+\.\d+\.\d+(-[0-9a-z.-]+)?$/.test(text) && !/\d{12}/.test(text)

/** A pack's digest, in hex or base64, with or without the name of the hash before it. */
export const isDigest = (text: unknown): text is string =>
  typeof text === 'string' && /^([a-z0-9]+[-:])?[A-Za-z0-9+/_-]{16,128}={0,2}$/.test(text) && !/^\d+$/.test(text)
