// Custom ids of the list of what waits: which part of it, and which page.
import { z } from 'zod'
import { queueFilters } from '../check/waiting.ts'
import { type IdOf, idKind } from './id-kind.ts'
import { revision } from './id-parts.ts'

/** `chosen` stands for what was chosen in the menu. */
export const waitingIds = idKind('cq1', { filter: z.enum([...queueFilters, 'chosen']), page: revision })

export type WaitingId = IdOf<typeof waitingIds>
export const { write: encodeWaiting, read: decodeWaiting } = waitingIds
