// The form of a server's settings in the database.
import { z } from 'zod'
import type { ServerSettings } from '../../server/settings.ts'
import { unsettled } from '../../server/settings.ts'
import { type Body, bodyOf } from './body.ts'

const time = z.number().int()
const shape = z.strictObject({
  server: z.string(),
  revision: z.number().int().min(0),
  changedBy: z.string().nullable(),
  language: z.string().nullable(),
  discordLanguage: z.string().nullable(),
  moderatorRoles: z.array(z.string()),
  helperRoles: z.array(z.string()),
  reportsChannel: z.string().nullable(),
  reviewChannel: z.string().nullable(),
  reminders: z.strictObject({ hours: z.number().int().min(1), role: z.string().nullable() }).nullable(),
  outcomes: z.boolean(),
  pooling: z.boolean(),
  forumOffers: z.strictObject({ forum: z.string(), tag: z.string() }).nullable(),
  keepWeeks: z.number().int().min(1),
  links: z.array(
    z.strictObject({ id: z.string(), url: z.string(), title: z.string(), addedAt: time, reviewedAt: time }),
  ),
} satisfies Record<keyof ServerSettings, z.ZodType>)

/** What was added since a body was written holds as before any decision. */
const decided = z.preprocess(
  value => ({ ...unsettled((value as ServerSettings).server), ...(value as ServerSettings) }),
  shape,
)

export const settingsBody: Body<ServerSettings> = bodyOf('The settings of a server', decided)
