// Custom ids of everything about counts and trends.
import { z } from 'zod'
import { isWeek } from '../../trends/week.ts'
import { type IdOf, idKind } from '../interaction/id-kind.ts'
import { opening, ownId } from '../interaction/id-parts.ts'

/** What a person decides about their own checks. */
const countingChoice = z.enum(['out', 'in', 'forget'])
export type CountingChoice = z.output<typeof countingChoice>

/** What can be seen of a release, and what can be taken away of it. */
export const releaseViews = ['overview', 'families', 'rises', 'patterns'] as const
export const releaseExports = ['csv', 'json'] as const
export type ReleaseView = (typeof releaseViews)[number]

export const trendsIds = idKind(
  'ct1',
  { is: z.literal('counting'), choice: countingChoice },
  /** What is done about a finding; `warned` and `dismissed` are the forms that `warn` and `dismiss` open. */
  { is: z.literal('finding'), id: ownId, does: z.enum(['warn', 'dismiss', 'draft', 'put-off']) },
  /** A form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  { is: z.literal('finding'), id: ownId, does: z.enum(['warned', 'dismissed']), opening },
  /** `release`: the server's own; `pool`: that of all servers that pool. */
  {
    is: z.enum(['release', 'pool']),
    week: z.string().refine(isWeek),
    what: z.enum([...releaseViews, ...releaseExports]),
  },
)

export type TrendsAct = IdOf<typeof trendsIds>
export type FindingAct = Extract<TrendsAct, { is: 'finding' }>
export type ReleaseAct = Extract<TrendsAct, { is: 'release' | 'pool' }>
export const { write: encodeTrends, read: decodeTrends } = trendsIds

export const isView = (what: ReleaseAct['what']): what is ReleaseView =>
  (releaseViews as readonly string[]).includes(what)
