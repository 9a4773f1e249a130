// A server's settings as a file: what leaves it, with no id of a person in it, and what is taken from a stranger's file, checked whole.
import { z } from 'zod'
import type { Field, Fields } from './history.ts'
import { offersOfEarlier, type ServerSettings } from './settings.ts'

/** The format of the file; a newer one says so and is not guessed at. The first had one forum with one tag. */
const format = 2
const mark = 'cellwary-settings'
/** A file is at most so many bytes. */
export const settingsFileBytes = 32 * 1024

const id = z.string().regex(/^\d{15,20}$/)
const text = z.string().max(500)
const listOf = <T extends z.ZodType>(one: T) => z.array(one).max(50)
const flag = z.boolean()

/** Bounds of a stranger's file; what of it is allowed, and fits here, is decided where it is taken in. */
const fields = z.strictObject({
  language: z
    .string()
    .regex(/^[a-z]{2,3}(-[A-Za-z]+)?$/)
    .nullable(),
  moderatorRoles: listOf(id),
  helperRoles: listOf(id),
  reportsChannel: id.nullable(),
  reviewChannel: id.nullable(),
  reminders: z.strictObject({ hours: z.int(), role: id.nullable() }).nullable(),
  outcomes: flag,
  pooling: flag,
  forumOffers: z.preprocess(offersOfEarlier, listOf(z.strictObject({ forum: id, tags: listOf(id) }))),
  keepWeeks: z.int(),
  weeklyNote: flag,
} satisfies Record<Field, z.ZodType>)

const shape = z.strictObject({
  [mark]: z.int().min(1).max(format),
  server: id.nullable().default(null),
  settings: fields.partial().default({}),
  links: listOf(z.strictObject({ url: text, title: text })).default([]),
})

export type LinkInFile = { readonly url: string; readonly title: string }
export type SettingsFile = {
  /** The server it comes from. */
  readonly server: string | null
  readonly fields: Partial<Fields>
  readonly links: readonly LinkInFile[]
}

export type FileProblem =
  | { readonly code: 'not-json' | 'not-settings' }
  | { readonly code: 'newer-format'; readonly format: number; readonly known: number }
  /** `at`: the name of what is wrong in it. */
  | { readonly code: 'shape'; readonly at: string }

export type ReadSettings =
  | { readonly ok: true; readonly file: SettingsFile }
  | { readonly ok: false; readonly problem: FileProblem }

/** People's ids stand in no setting; the history, which has them, stays here, and so does when a link was looked at. */
export function exported(settings: ServerSettings): string {
  const { server, links, revision: _r, changedBy: _c, discordLanguage: _d, ...fields } = settings
  const shown = links.map(({ url, title }) => ({ url, title }))
  return `${JSON.stringify({ [mark]: format, server, settings: fields, links: shown }, null, 2)}\n`
}

export function readSettingsFile(written: string): ReadSettings {
  const refuse = (problem: FileProblem): ReadSettings => ({ ok: false, problem })
  let data: unknown
  try {
    data = JSON.parse(written.replace(/^\ufeff/, ''))
  } catch {
    return refuse({ code: 'not-json' })
  }
  const marked = z.looseObject({ [mark]: z.number() }).safeParse(data)
  if (!marked.success) return refuse({ code: 'not-settings' })
  if (marked.data[mark] > format) return refuse({ code: 'newer-format', format: marked.data[mark], known: format })
  const read = shape.safeParse(data)
  if (!read.success) return refuse({ code: 'shape', at: placeOf(read.error) })
  const { server, settings, links } = read.data
  return { ok: true, file: { server, fields: settings as Partial<Fields>, links } }
}

/** The name of the first thing that is wrong: of a setting, or of what stands beside the settings. */
function placeOf({ issues: [issue] }: z.ZodError): string {
  const [part, name] = issue?.path ?? []
  const stray = issue?.code === 'unrecognized_keys' && part !== 'links' ? issue.keys[0] : undefined
  return String(stray ?? (part === 'settings' ? (name ?? part) : (part ?? '')))
}
