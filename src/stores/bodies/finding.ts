// The form of a finding in the database, and of the rises and patterns in it.
import { z } from 'zod'
import type { Finding } from '../../trends/finding.ts'
import type { Item } from '../../trends/outcome.ts'
import type { ShownPattern } from '../../trends/patterns/show-patterns.ts'
import type { Rise } from '../../trends/rises/judge-week.ts'
import { isWeek } from '../../trends/week.ts'
import { type Body, bodyOf } from './body.ts'

export const week = z.string().refine(isWeek)
const count = z.number().int().min(0)

export const rise = z.strictObject({
  family: z.string(),
  rule: z.string().nullable(),
  week,
  standsOut: z.boolean(),
} satisfies Record<keyof Rise, z.ZodType>)

const pattern = z.strictObject({
  family: z.string(),
  items: z.array(z.custom<Item>(item => typeof item === 'string' && /^(rule|answer|bought):/.test(item))),
  recent: count,
  recentOf: count,
  earlier: count,
  earlierOf: count,
  growth: z.number().nullable(),
} satisfies Record<keyof ShownPattern, z.ZodType>)

const shape = z.strictObject({
  id: z.string(),
  server: z.string(),
  key: z.string(),
  week,
  found: z.discriminatedUnion('is', [
    z.strictObject({ is: z.literal('rise'), rise }),
    z.strictObject({ is: z.literal('pattern'), pattern }),
  ]),
  revision: count,
  state: z.enum(['new', 'told', 'settled']),
  again: week.nullable(),
  warning: z.strictObject({ channel: z.string(), text: z.string(), posted: z.boolean() }).nullable(),
  decisions: z.array(
    z.strictObject({
      by: z.string(),
      at: z.number().int(),
      did: z.enum(['warned', 'dismissed', 'put-off']),
      why: z.string(),
    }),
  ),
} satisfies Record<keyof Finding, z.ZodType>)

export const findingBody: Body<Finding> = bodyOf('A finding', shape)
