// The form of a finding in the database, and of the rises and patterns in it.
import { z } from 'zod'
import { type Finding, findingStates } from '../../trends/findings/finding.ts'
import { broughtUp, type EarlierFinding } from '../../trends/findings/read-finding.ts'
import type { Item } from '../../trends/outcome.ts'
import type { ShownPattern } from '../../trends/patterns/show-patterns.ts'
import type { Rise } from '../../trends/rises/judge-week.ts'
import { isWeek } from '../../trends/week.ts'
import { type Body, bodyOf, type UpCast } from './body.ts'

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

const at = z.number().int()
const warning = { channel: z.string(), text: z.string(), posted: z.boolean(), message: z.string().nullable() }
const standing = {
  state: z.enum(findingStates),
  until: week.nullable(),
  warning: z.strictObject(warning).nullable(),
  knownFake: z.strictObject({ family: z.string(), fake: z.string() }).nullable(),
}

const shape = z.strictObject({
  id: z.string(),
  server: z.string(),
  key: z.string(),
  week,
  seen: week,
  family: z.string(),
  parts: z.array(
    z.discriminatedUnion('is', [
      z.strictObject({ is: z.literal('rise'), rise }),
      z.strictObject({ is: z.literal('pattern'), pattern }),
    ]),
  ),
  revision: count,
  told: z.boolean(),
  post: z.strictObject({ channel: z.string(), message: z.string() }).nullable(),
  stale: z.boolean(),
  ...standing,
  withdrawal: z.strictObject({ ...warning, why: z.string() }).nullable(),
  decisions: z.array(
    z.strictObject({
      by: z.string(),
      at,
      did: z.enum(['warned', 'edited', 'dismissed', 'put-off', 'known-fake']),
      why: z.string(),
      before: z.strictObject(standing),
      undone: z.strictObject({ by: z.string(), at, why: z.string() }).nullable(),
    }),
  ),
} satisfies Record<keyof Finding, z.ZodType>)

/** A finding was one rise or pattern, settled or not. */
const stories: UpCast = body => ({ ...broughtUp(body as EarlierFinding) })

export const findingBody: Body<Finding> = bodyOf('A finding', shape, [stories])
