// The schema of a release as JSON: what every field of an export means, for whoever reads it with a program.
import { z } from 'zod'
import { verdicts } from '../../ground/verdicts.ts'
import { isWeek } from '../week.ts'
import type { Release } from './release.ts'

const week = z.string().refine(isWeek).describe('an ISO 8601 week, such as 2026-W07')
const fives = z.int().min(0).multipleOf(5)
const family = z.string().describe('a family’s id in its rule pack; "unknown" for cells of no listed family')
const rule = z.string().describe('a rule’s id in its rule pack')

const shown = {
  checks: fives.describe('so many checks at least, from the first week on; rounded down to fives'),
  more: fives.describe('how much of it is new in this release; part of it may be of earlier weeks'),
  share: z
    .strictObject({
      of: fives.describe('the checks it is a share of'),
      share: z.number(),
      low: z.number(),
      high: z.number().describe('low and high: Wilson interval at 95 %'),
    })
    .optional(),
}
const cells = {
  verdicts: z.array(z.strictObject({ verdict: z.enum(verdicts), ...shown })),
  rules: z.array(z.strictObject({ rule, ...shown })),
  bought: z.array(z.strictObject({ bought: z.string().describe('where the cell was bought'), ...shown })),
}
const rise = z.strictObject({
  family,
  rule: rule.nullable().describe('null: failed checks of the family, whichever'),
  week: week.describe('the week it was noticed'),
  standsOut: z.boolean().describe('whether it stands out among everything that was watched that week'),
})

const releaseShape = z.strictObject({
  format: z.literal(1),
  scope: z.enum(['server', 'pool']),
  week,
  checks: shown.checks,
  more: shown.more,
  ...cells,
  families: z.array(z.strictObject({ family, ...shown, ...cells })),
  judged: z.boolean().describe('false while there is too little history to say whether anything rises'),
  rises: z.array(rise).describe('noticed in the last eight weeks, each thing once'),
  spikes: z.array(rise).describe('more than foreseen in this week alone'),
  patterns: z.array(
    z.strictObject({
      family,
      items: z.array(z.string().regex(/^(rule|answer|bought):/)).describe('what comes together'),
      recent: fives.describe('checks of the last eight weeks that have all of it'),
      recentOf: fives,
      earlier: fives.describe('the same in the year before'),
      earlierOf: fives,
      growth: z.int().min(2).nullable().describe('at least so many times as common; null: not said'),
    }),
  ),
})

/** Whether parsed JSON is a release in every field. */
export const isRelease = (value: unknown): value is Release => releaseShape.safeParse(value).success

/** JSON Schema, draft 2020-12, as text. */
export const releaseSchema = (): string => `${JSON.stringify(z.toJSONSchema(releaseShape), null, 2)}\n`
