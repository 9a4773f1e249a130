// Custom ids of the buttons, menus and forms of a check: which check, the revision they were shown at, and what they do.
import { z } from 'zod'
import { carriedFacts } from './facts-codec.ts'
import { type IdOf, idKind, oneOf } from './id-kind.ts'
import { count, flag, opening, ownId, revision } from './id-parts.ts'

const slug = z.string().regex(/^[a-z0-9-]{1,48}$/)

export const checkIds = idKind('cw1', {
  check: ownId,
  revision,
  act: oneOf(
    { is: z.literal('pick'), option: slug },
    { is: z.literal('choose') },
    /** The first question, quick or full; the menus beside it: family and tools. */
    { is: z.literal('begin'), mode: z.enum(['quick', 'full']) },
    { is: z.literal('family') },
    { is: z.literal('equip') },
    /** The list of answers, and the one chosen out of it. */
    { is: z.literal('answers') },
    { is: z.literal('change') },
    /** The same out of one of the menus below the first, counted from 1. */
    { is: z.literal('change-older'), part: count(1) },
    /** Out of those that could not be told: it is asked again, and a helper can be asked about it. */
    { is: z.literal('ask-about') },
    /** A page of a verdict's details, from 1 on. */
    { is: z.literal('details'), page: count(1) },
    { is: z.literal('unsure') },
    /** The answer that is asked about a second time, once more. */
    { is: z.literal('still') },
    /** The same, and what was chosen that accuses together with it; or one of these is another. */
    { is: z.literal('all-still') },
    { is: z.literal('rather'), question: slug },
    /** Opens the form for a reading. */
    { is: z.literal('measure') },
    /** The form sent in; `opening` makes each form's id new, since phones keep forms by id. */
    { is: z.literal('measured'), opening },
    { is: z.literal('consent'), to: z.enum(['unwrap', 'bench', 'touch']), given: flag('yes', 'no') },
    /** Takes in what a claim or a log has told. */
    { is: z.literal('know'), facts: carriedFacts },
    { is: z.enum(['back', 'pause', 'resume', 'finish', 'go-on', 'leave-nothing', 'close']) },
    /** Shows the check where it stands, whatever the revision. */
    { is: z.literal('show') },
  ),
})

export type ClickId = IdOf<typeof checkIds>
/** What a component of a check does. */
export type CheckAction = ClickId['act']
export const { write: encodeClick, read: decodeClick } = checkIds
