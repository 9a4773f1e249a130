// Custom ids of everything about counts and trends.
import { z } from 'zod'
import { findingStates } from '../trends/findings/finding.ts'
import { isWeek } from '../trends/week.ts'
import { type IdOf, idKind } from './id-kind.ts'
import { opening, ownId, revision } from './id-parts.ts'

/** What a person decides about their own checks. */
const countingChoice = z.enum(['out', 'in', 'forget'])
export type CountingChoice = z.output<typeof countingChoice>

/** What can be seen of a release, and what can be taken away of it. */
export const releaseViews = ['overview', 'families', 'rises', 'patterns'] as const
/** `weeks`: all weeks up to this one as CSV; `schema`: of the JSON. */
export const releaseExports = ['csv', 'weeks', 'json', 'schema'] as const
export type ReleaseView = (typeof releaseViews)[number]

export const findingDeeds = ['see', 'warn', 'dismiss', 'watch', 'fake', 'edit', 'draft', 'put-off'] as const

export const trendsIds = idKind(
  'ct1',
  { is: z.literal('counting'), choice: countingChoice },
  /**
   * What is done about a finding. `put-off` stands under posts of earlier versions: it watches for a week. `fake`: it is a known fake.
   * The others of these words open the forms below.
   */
  { is: z.literal('finding'), id: ownId, does: z.enum(findingDeeds) },
  /** `of`: how many decisions whoever presses it has seen. */
  { is: z.literal('finding'), id: ownId, does: z.literal('undo'), of: revision },
  /** A form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  { is: z.literal('finding'), id: ownId, does: z.enum(['warned', 'dismissed', 'watched', 'edited']), opening },
  { is: z.literal('finding'), id: ownId, does: z.literal('undone'), of: revision, opening },
  /** Which findings of a server are listed; `chosen`: those a menu says. */
  { is: z.literal('findings'), filter: z.enum(['all', ...findingStates, 'chosen']), page: revision },
  /** Several findings at once: chosen in a menu, then kept under `draft` until something is done about them. */
  { is: z.literal('several'), does: z.literal('pick') },
  { is: z.literal('several'), does: z.enum(['watch', 'dismiss']), draft: ownId },
  { is: z.literal('several'), does: z.literal('dismissed'), draft: ownId, opening },
  /** `release`: the server's own; `pool`: that of all servers that pool. */
  {
    is: z.enum(['release', 'pool']),
    week: z.string().refine(isWeek),
    what: z.enum([...releaseViews, ...releaseExports]),
  },
)

export type TrendsAct = IdOf<typeof trendsIds>
export type FindingsAct = Extract<TrendsAct, { is: 'findings' }>
export type FindingFilter = FindingsAct['filter']
export type SeveralAct = Extract<TrendsAct, { is: 'several' }>
export type FindingAct = Extract<TrendsAct, { is: 'finding' }>
export type ReleaseAct = Extract<TrendsAct, { is: 'release' | 'pool' }>
export const { write: encodeTrends, read: decodeTrends } = trendsIds

export const isView = (what: ReleaseAct['what']): what is ReleaseView =>
  (releaseViews as readonly string[]).includes(what)
