// Custom ids of a moderator's buttons, menus and forms for the server's links.
import { z } from 'zod'
import { type IdOf, idKind } from './id-kind.ts'
import { count, revision } from './id-parts.ts'

/** An id of a link, a draft or the opening of a form. */
const id = z.string().regex(/^[a-z0-9-]{1,32}$/)

export const linksIds = idKind(
  'clk1',
  { is: z.enum(['manage', 'choose']) },
  { is: z.literal('add') },
  /** A form sent in; `opening` makes each form's id new, since phones keep forms by id. */
  { is: z.literal('added'), opening: id },
  { is: z.literal('edited'), id, revision, opening: id },
  { is: z.literal('link'), id },
  /** One link as it was seen on a revision of the settings; `removed` is the second press of `remove`. */
  { is: z.literal('edit'), id, revision },
  { is: z.enum(['still-good', 'remove', 'removed']), id, revision },
  /** What was changed about the links, `page` from 1; `undo` takes back the change that made the revision `of`. */
  { is: z.literal('history'), page: count(2) },
  { is: z.literal('undo'), of: revision, revision },
  /** Opens the form once more with what was typed before. */
  { is: z.literal('again'), draft: id },
)

export type LinksAct = IdOf<typeof linksIds>
export const { write: encodeLinks, read: decodeLinks } = linksIds
