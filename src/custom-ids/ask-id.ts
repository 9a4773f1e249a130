// Custom ids of answers to common questions.
import { z } from 'zod'
import { type IdOf, idKind } from './id-kind.ts'
import { snowflake } from './id-parts.ts'

const entry = z.string().regex(/^[a-z0-9-]{2,40}$/)
/** The message that an answer would be a reply to; null if it was asked for without one. */
const to = z.codec(z.union([z.literal('-'), snowflake]), snowflake.nullable(), {
  decode: word => (word === '-' ? null : word),
  encode: id => id ?? '-',
})

export const askIds = idKind(
  'ca1',
  /** Shows the answer to one question, or posts it where everybody sees it. */
  { is: z.enum(['show', 'post']), entry, to },
  /** A menu of questions. */
  { is: z.literal('choose'), to },
)

export type AskAct = IdOf<typeof askIds>
export type ReplyTo = AskAct['to']
export const { write: encodeAsk, read: decodeAsk } = askIds
