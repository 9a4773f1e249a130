// Custom ids of a shared verdict: seen beforehand, posted by its person's own press, and taken away again.
import { z } from 'zod'
import { idKind } from './id-kind.ts'
import { ownId } from './id-parts.ts'

export const shareIds = idKind('csh1', { is: z.enum(['see', 'post', 'remove']), check: ownId })
export const encodeShare = shareIds.write
