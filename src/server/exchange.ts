// A server's settings as a file: what leaves it, with no id of a person in it, and what is taken from a stranger's file, checked whole.
import type { Fields } from './history.ts'
import type { ForumOffers, Reminders, ServerSettings } from './settings.ts'

/** The format of the file; a newer one says so and is not guessed at. */
const format = 1
const mark = 'cellwary-settings'
/** A file is at most so many bytes; a list in it holds at most so many things, and a text so many characters. */
export const settingsFileBytes = 32 * 1024
const mostInList = 50
const longestText = 500

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

export function readSettingsFile(text: string): ReadSettings {
  const refuse = (problem: FileProblem): ReadSettings => ({ ok: false, problem })
  let data: unknown
  try {
    data = JSON.parse(text.replace(/^\ufeff/, ''))
  } catch {
    return refuse({ code: 'not-json' })
  }
  if (!isObject(data) || typeof data[mark] !== 'number') return refuse({ code: 'not-settings' })
  if (data[mark] !== format) return refuse({ code: 'newer-format', format: data[mark], known: format })
  const { [mark]: _mark, server = null, settings = {}, links = [], ...strange } = data
  const [stray] = Object.keys(strange)
  if (stray !== undefined) return refuse({ code: 'shape', at: stray })
  if (server !== null && !isId(server)) return refuse({ code: 'shape', at: 'server' })
  if (!isObject(settings)) return refuse({ code: 'shape', at: 'settings' })
  const wrong = Object.entries(settings).find(([name, value]) => !(shapes.get(name)?.(value) ?? false))
  if (wrong) return refuse({ code: 'shape', at: wrong[0] })
  if (!isListOf(isLink)(links)) return refuse({ code: 'shape', at: 'links' })
  return { ok: true, file: { server, fields: settings as Partial<Fields>, links } }
}

type Is<T> = (value: unknown) => value is T

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isText = (value: unknown): value is string => typeof value === 'string' && value.length <= longestText
const isId = (value: unknown): value is string => typeof value === 'string' && /^\d{15,20}$/.test(value)
const isFlag = (value: unknown): value is boolean => typeof value === 'boolean'
const isWhole = (value: unknown): value is number => Number.isSafeInteger(value)
const orNull =
  <T>(is: Is<T>): Is<T | null> =>
  (value): value is T | null =>
    value === null || is(value)
const isListOf =
  <T>(is: Is<T>): Is<readonly T[]> =>
  (value): value is readonly T[] =>
    Array.isArray(value) && value.length <= mostInList && value.every(is)
/** An object of these fields and no others. */
const isOf =
  <T extends object>(fields: { readonly [Key in keyof T]: Is<T[Key]> }): Is<T> =>
  (value): value is T =>
    isObject(value) &&
    Object.keys(value).every(name => Object.hasOwn(fields, name)) &&
    Object.entries<Is<unknown>>(fields).every(([name, is]) => is(value[name]))

const isLink = isOf<LinkInFile>({ url: isText, title: isText })

const isReminders = isOf<Reminders>({ hours: isWhole, role: orNull(isId) })

const shapesOf: { readonly [Key in keyof Fields]: Is<Fields[Key]> } = {
  language: orNull((value): value is string => typeof value === 'string' && /^[a-z]{2,3}(-[A-Za-z]+)?$/.test(value)),
  moderatorRoles: isListOf(isId),
  helperRoles: isListOf(isId),
  reportsChannel: orNull(isId),
  reviewChannel: orNull(isId),
  reminders: orNull(isReminders),
  outcomes: isFlag,
  pooling: isFlag,
  forumOffers: orNull(isOf<ForumOffers>({ forum: isId, tag: isId })),
  keepWeeks: isWhole,
  weeklyNote: isFlag,
}
const shapes: ReadonlyMap<string, (value: unknown) => boolean> = new Map(Object.entries(shapesOf))
