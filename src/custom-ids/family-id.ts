// Custom ids of families: which one, the revision that the message shows, and what is done about it.
import { z } from 'zod'
import { type IdOf, idKind, oneOf } from './id-kind.ts'
import { count, flag, opening, ownId, revision } from './id-parts.ts'

const family = z.string().regex(/^f-[a-z0-9]{6,12}$/)
const feature = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)

/** What is chosen in a menu or typed into a form stands in the interaction. */
export const familyIds = idKind('cwf1', {
  family,
  revision,
  act: oneOf(
    {
      is: z.enum([
        'see',
        'sheet',
        /** Begins a check of such a cell, for whoever presses. */
        'check',
        /** What waits for a second moderator. */
        'waiting',
        /** The same in a message of its own. */
        'waiting-beside',
        'page',
        'more',
        'choose-feature',
        'try',
        'history',
        'export',
        'discard',
        'references',
        'fakes',
      ]),
    },
    /** Opens a form. */
    { is: z.enum(['ask', 'retire', 'figures', 'new-reference', 'new-fake', 'new-photo']) },
    { is: z.literal('new-photo-of'), feature },
    { is: z.literal('photo-sent'), opening },
    { is: z.literal('photos'), page: count(2) },
    { is: z.literal('drop-photo'), photo: ownId },
    { is: z.literal('export-photos') },
    { is: z.literal('choose-built') },
    { is: z.literal('build'), built: feature },
    /** Opens the form of name and figures with what was typed before. */
    { is: z.literal('figures-again'), draft: ownId },
    { is: z.literal('send-back') },
    { is: z.literal('agreed'), digest: z.string().regex(/^[a-f0-9]{12}$/) },
    /** The page of a feature. */
    { is: z.literal('feature'), feature },
    { is: z.enum(['made', 'tells', 'not-known']), feature },
    /** The one look of a feature of which nothing was said. */
    { is: z.literal('made-as'), feature, option: feature },
    /** Which features are not known: all that are ticked. */
    { is: z.literal('all-not-known') },
    { is: z.literal('rewrap'), feature, on: flag('on', 'off') },
    { is: z.enum(['figures-sent', 'fake-sent']), opening },
    /** A false look that was drafted from a finding. */
    { is: z.literal('fake-of'), finding: ownId, opening },
    { is: z.enum(['asked', 'retired']), opening },
    { is: z.literal('reference-sent'), opening },
    /** A member's good cell, which a moderator accepts or not. */
    { is: z.literal('reference-offered'), opening },
    { is: z.enum(['accept', 'withdraw']), reference: ownId },
    { is: z.literal('drop-fake'), fake: z.string().regex(/^k[0-9]{1,4}$/) },
    { is: z.enum(['back', 'back-ask']), number: count(4) },
    { is: z.literal('back-sent'), number: count(4), opening },
  ),
})

/** The form that begins a family has none yet, and the list leads to any; `again`: with what was typed before, kept under `opening`. */
export const familyStartIds = idKind(
  'cwg1',
  { act: z.enum(['new', 'look']), opening },
  { act: z.literal('again'), opening: ownId },
)

export type FamilyId = IdOf<typeof familyIds>
/** Several acts that carry the same, each by itself. */
type Each<Act extends { readonly is: string }> = Act extends unknown
  ? { readonly [Is in Act['is']]: Omit<Act, 'is'> & { readonly is: Is } }[Act['is']]
  : never
export type FamilyAct = Each<FamilyId['act']>
/** The acts of these names. */
export type ActOf<K extends FamilyAct['is']> = Extract<FamilyAct, { readonly is: K }>
export const encodeFamily = familyIds.write
