// The words that custom ids of several kinds are made of: ids of checks and findings, revisions, openings of forms, ids of Discord's.
import { z } from 'zod'

const ownIdShape = /^[a-z0-9]{6,32}$/
const snowflakeShape = /^\d{15,20}$/

/** An id as `newId` makes it. */
export const ownId = z.string().regex(ownIdShape)
/** An id of Discord's: 15 to 20 digits. */
export const snowflake = z.string().regex(snowflakeShape)
export const isSnowflake = (text: string | undefined): text is string => snowflakeShape.test(text ?? '')

/** What makes the id of each form new, since phones keep what was typed by id. */
export const newOpening = (newId: () => string): string => newId().slice(0, 8)
export const opening = z.string().regex(/^[a-z0-9]{1,16}$/)

/** A revision, from 0: which state of a check or of settings a message shows. */
export const revision = z.codec(z.string().regex(/^(0|[1-9a-z][0-9a-z]{0,5})$/), z.int().min(0), {
  decode: word => Number.parseInt(word, 36),
  encode: number => number.toString(36),
})

/** A number from 1, of at most so many digits. */
export const count = (digits: number) =>
  z.codec(z.string().regex(new RegExp(`^[1-9]\\d{0,${digits - 1}}$`)), z.int().min(1), {
    decode: Number,
    encode: String,
  })

/** Yes or no by two words. */
export const flag = (yes: string, no: string) =>
  z.codec(z.enum([yes, no]), z.boolean(), {
    decode: word => word === yes,
    encode: value => (value ? yes : no),
  })

/** One word that stands for `value`. */
export const word = <const V extends string | boolean>(text: string, value: V) =>
  z.codec(z.literal(text), z.literal(value), { decode: () => value, encode: () => text })
