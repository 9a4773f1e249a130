// The form of the private state behind a release in the database.
import { z } from 'zod'
import type { CellState, FamilyState, ReleaseState } from '../../trends/release/state.ts'
import { type Body, bodyOf } from './body.ts'
import { rise, week } from './finding.ts'

const count = z.number().int().min(0)
const cell = z.strictObject({ shown: count, counted: count, through: week } satisfies Record<
  keyof CellState,
  z.ZodType
>)
const cellKey = z.templateLiteral([z.enum(['all', 'verdict', 'rule', 'bought']), ':', z.string()])
const family = z.strictObject({
  opened: week,
  cells: z.record(cellKey, cell),
} satisfies Record<keyof FamilyState, z.ZodType>)

const shape = z.strictObject({
  first: week,
  families: z.record(z.string(), family),
  series: z.record(z.string(), z.strictObject({ statistic: z.number(), since: week })),
  rises: z.array(rise),
} satisfies Record<keyof ReleaseState, z.ZodType>)

export const stateBody: Body<ReleaseState> = bodyOf('The state behind a release', shape)
