// Custom ids of the set-up: the revision of the settings that the message shows, and what is done about them.
import { z } from 'zod'
import { parts } from '../server/setup-part.ts'
import { type IdOf, idKind, oneOf } from './id-kind.ts'
import { count, flag, opening, ownId, revision, snowflake } from './id-parts.ts'

/** `chosen` stands for what was chosen in the menu, `none` for nothing any more, and anything else is a channel's id. */
const choice = z.union([z.enum(['chosen', 'none']), snowflake])

export const setupIds = idKind('cs1', {
  revision,
  act: oneOf(
    { is: z.literal('see'), what: z.enum([...parts, 'overview', 'stop-recording']) },
    /** Leads through every part, from the first on. */
    { is: z.literal('begin') },
    { is: z.enum(['reports', 'review']), channel: choice },
    { is: z.enum(['moderators', 'helpers']), roles: z.enum(['chosen', 'none']) },
    /** After how long it is said that somebody waits, out of the menu; and which role is pinged then. */
    { is: z.literal('remind') },
    { is: z.literal('ping'), roles: z.enum(['chosen', 'none']) },
    { is: z.literal('language') },
    { is: z.enum(['outcomes', 'pooling', 'note']), on: flag('on', 'off') },
    /** Opens the form for the weeks; `weeks` is the form sent in, with an id of its own, since phones keep forms by id. */
    { is: z.literal('ask-weeks') },
    { is: z.literal('weeks'), opening },
    /** Fewer weeks, once it was said what that deletes. */
    { is: z.literal('fewer'), weeks: count(5) },
    /** `gone`: no offers any more in forums that are not there. */
    { is: z.literal('forum'), forum: z.union([z.enum(['chosen', 'none', 'gone']), snowflake]) },
    /** The tags chosen in the menu; no offers in this forum. */
    { is: z.enum(['tag', 'untag']), forum: snowflake },
    /** The settings as a file; a form that takes one; the form sent in; and what the file says, done once it was seen. */
    { is: z.literal('export') },
    { is: z.literal('ask-file') },
    { is: z.literal('file'), opening },
    { is: z.literal('take-in'), draft: ownId },
    /** What was changed; `page` from 1. */
    { is: z.literal('history'), page: count(2) },
    /** Takes back the change that made the revision `of`; `undone` once it was said what that deletes. */
    { is: z.literal('undo'), of: revision },
    { is: z.literal('undone'), of: revision },
  ),
})

export type SetupId = IdOf<typeof setupIds>
export type SetupAct = SetupId['act']
export type HistoryAct = Extract<SetupAct, { is: 'history' } | { is: 'undo' } | { is: 'undone' }>
export type FileAct = Extract<SetupAct, { is: 'export' } | { is: 'ask-file' } | { is: 'file' } | { is: 'take-in' }>
export const { write: encodeSetup, read: decodeSetup } = setupIds
