// The form of a server's settings in the database, and of the history of their changes.
import { z } from 'zod'
import type { Field, History, SettingsChange } from '../../server/history.ts'
import type { ServerSettings } from '../../server/settings.ts'
import { offersOfEarlier, unsettled } from '../../server/settings.ts'
import { type Body, bodyOf } from './body.ts'

const time = z.number().int()
const link = z.strictObject({ id: z.string(), url: z.string(), title: z.string(), addedAt: time, reviewedAt: time })
const fields = {
  language: z.string().nullable(),
  moderatorRoles: z.array(z.string()),
  helperRoles: z.array(z.string()),
  reportsChannel: z.string().nullable(),
  reviewChannel: z.string().nullable(),
  reminders: z.strictObject({ hours: z.number().int().min(1), role: z.string().nullable() }).nullable(),
  outcomes: z.boolean(),
  pooling: z.boolean(),
  forumOffers: z.array(z.strictObject({ forum: z.string(), tags: z.array(z.string()).min(1) })),
  keepWeeks: z.number().int().min(1),
  weeklyNote: z.boolean(),
} satisfies Record<Field, z.ZodType>

const shape = z.strictObject({
  server: z.string(),
  revision: z.number().int().min(0),
  changedBy: z.string().nullable(),
  discordLanguage: z.string().nullable(),
  ...fields,
  links: z.array(link),
} satisfies Record<keyof ServerSettings, z.ZodType>)

/** What was added since a body was written holds as before any decision. */
const decided = z.preprocess(
  value => ({ ...unsettled((value as ServerSettings).server), ...(value as ServerSettings) }),
  shape,
)

/** Version 1 had offers in one forum under one tag. What is damaged stays so, and is refused by its shape. */
const severalForums = (fields: unknown): unknown =>
  isRecord(fields) && 'forumOffers' in fields
    ? { ...fields, forumOffers: offersOfEarlier(fields['forumOffers']) }
    : fields
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

export const settingsBody: Body<ServerSettings> = bodyOf('The settings of a server', decided, [
  body => ({ ...body, ...(severalForums(body) as object) }),
])

const some = z.strictObject(exactlyOptional(fields))
const turn = z.strictObject({ at: z.number().int().min(0), was: link.nullable(), is: link.nullable() })
const change = z.strictObject({
  revision: z.number().int().min(1),
  by: z.string(),
  at: time,
  undoes: z.number().int().nullable(),
  was: some,
  is: some,
  links: z.array(turn),
} satisfies Record<keyof SettingsChange, z.ZodType>)

export const historyBody: Body<{ readonly changes: History }> = bodyOf(
  'The history of a server’s settings',
  z.strictObject({ changes: z.array(change) }),
  [
    ({ changes, ...body }) => ({
      ...body,
      changes: Array.isArray(changes)
        ? changes.map(one =>
            isRecord(one) ? { ...one, was: severalForums(one['was']), is: severalForums(one['is']) } : one,
          )
        : changes,
    }),
  ],
)

/** The same fields, of which any may be left out. */
function exactlyOptional<Shape extends Record<string, z.ZodType>>(shape: Shape) {
  return Object.fromEntries(Object.entries(shape).map(([key, one]) => [key, one.exactOptional()])) as {
    [Key in keyof Shape]: z.ZodExactOptional<Shape[Key]>
  }
}
