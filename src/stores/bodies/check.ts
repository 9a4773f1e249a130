// The form of a check in the database.
import { z } from 'zod'
import type { Check } from '../../check/check.ts'
import { tools } from '../../ground/tools.ts'
import { type Body, bodyOf, type UpCast } from './body.ts'

const count = z.number().int().min(0)
const answer = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('option'), option: z.string() }),
  z.strictObject({ kind: z.literal('reading'), value: z.number(), u: z.number(), how: z.string().exactOptional() }),
  z.strictObject({ kind: z.literal('cant-tell') }),
])
const phase = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('asking'), question: z.string(), changing: z.literal(true).exactOptional() }),
  z.strictObject({ is: z.literal('second-look'), question: z.string(), answer }),
  z.strictObject({ is: z.literal('consent'), to: z.enum(['touch', 'unwrap', 'bench']) }),
  z.strictObject({ is: z.enum(['beginning', 'paused', 'done', 'closed']) }),
])
const toPerson = z.strictObject({ to: z.literal('person'), person: z.string() })
const toRole = z.strictObject({ to: z.literal('role'), role: z.string() })
const taker = z.discriminatedUnion('to', [toPerson, toRole, z.strictObject({ to: z.literal('anyone') })])
const custody = z.strictObject({
  starter: z.string(),
  from: z.string().exactOptional(),
  offer: z.strictObject({ to: taker, until: count }).exactOptional(),
  helpRequest: z
    .strictObject({
      question: z.string(),
      words: z.string(),
      where: z.string().nullable(),
      claimed: z.strictObject({ by: z.string(), at: count }).exactOptional(),
      meant: z.discriminatedUnion('to', [toPerson, toRole]).exactOptional(),
    })
    .exactOptional(),
  closing: z.strictObject({ by: z.string(), at: count }).exactOptional(),
  pair: z.literal(true).exactOptional(),
  shares: z.boolean(),
  history: z.array(
    z.strictObject({
      by: z.string(),
      did: z.enum([
        'offered',
        'took',
        'declined',
        'withdrew',
        'gave-back',
        'asked',
        'unasked',
        'helped',
        'sent-back',
        'took-over',
        'claimed',
        'let-go',
        'passed-on',
        'redirected',
        'asked-closing',
        'kept-open',
        'reopened',
      ]),
      at: count,
      to: taker.exactOptional(),
      why: z.string().exactOptional(),
      question: z.string().exactOptional(),
    }),
  ),
})

const shape = z.strictObject({
  id: z.string(),
  revision: count,
  server: z.string().nullable(),
  holder: z.string(),
  mode: z.enum(['quick', 'full']),
  cells: count,
  family: z.string().nullable(),
  packs: z.array(z.strictObject({ id: z.string(), version: z.string(), digest: z.string() })),
  day: z.string(),
  answers: z.record(z.string(), answer),
  trail: z.array(z.string()),
  confirmed: z.array(z.string()).exactOptional(),
  saidBy: z.record(z.string(), z.string()).exactOptional(),
  pending: z.record(z.string(), answer).exactOptional(),
  tools: z.array(z.enum(tools)).exactOptional(),
  consents: z.strictObject({
    touch: z.boolean().exactOptional(),
    unwrap: z.boolean().exactOptional(),
    bench: z.boolean().exactOptional(),
  }),
  phase,
  leaves: z.enum(['outcome', 'nothing', 'declined']).exactOptional(),
  settled: z.literal(true).exactOptional(),
  custody: custody.exactOptional(),
  startedAt: count,
  expiresAt: count,
} satisfies Record<keyof Check, z.ZodType>)

/** What moderators are asked was called a plea. */
const helpRequests: UpCast = body => {
  const { plea, ...rest } = (body['custody'] ?? {}) as Record<string, unknown>
  return plea === undefined ? body : { ...body, custody: { ...rest, helpRequest: plea } }
}

export const checkBody: Body<Check> = bodyOf('A check', shape, [helpRequests])
