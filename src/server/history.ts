// What was changed about a server's settings and links: by whom, when, from what to what; kept with a bound in number and in time.
import type { BuyingLink, ServerSettings } from './settings.ts'
import { nobody } from './traces.ts'

/** What people decide; the rest says which server it is of, and which change it was. */
export type Field = Exclude<keyof ServerSettings, 'server' | 'revision' | 'changedBy' | 'discordLanguage' | 'links'>
export type Fields = Pick<ServerSettings, Field>

/** A link that came, went (null) or was changed; `at`: where it stood, or stands, among the others. */
export type LinkTurn = { readonly at: number; readonly was: BuyingLink | null; readonly is: BuyingLink | null }

export type Difference = {
  readonly was: Partial<Fields>
  readonly is: Partial<Fields>
  readonly links: readonly LinkTurn[]
}

export type SettingsChange = Difference & {
  /** The revision it made, by which it is named on its server. */
  readonly revision: number
  readonly by: string
  /** Milliseconds since 1970. */
  readonly at: number
  /** The revision of the change that it took back. */
  readonly undoes: number | null
}

/** Newest first. */
export type History = readonly SettingsChange[]

/** Who makes a change, and when; `undoes`: the revision of the one that is taken back. */
export type Made = { readonly by: string; readonly at: number; readonly undoes?: number }

export const mostChanges = 60
/** How long a change is kept, in ms. */
export const changesKept = 365 * 24 * 3600_000

const apart = (settings: ServerSettings): Fields => {
  const { server: _s, revision: _r, changedBy: _c, discordLanguage: _d, links: _l, ...fields } = settings
  return fields
}

export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

export function differenceOf(before: ServerSettings, after: ServerSettings): Difference {
  const [was, is] = [apart(before), apart(after)]
  const changed = (Object.keys(is) as Field[]).filter(field => !same(was[field], is[field]))
  const only = (all: Fields): Partial<Fields> => Object.fromEntries(changed.map(field => [field, all[field]]))
  const known = new Map(before.links.map(link => [link.id, link]))
  const kept = new Set(after.links.map(link => link.id))
  const links = [
    ...before.links.flatMap((link, at) => (kept.has(link.id) ? [] : [{ at, was: link, is: null }])),
    ...after.links.flatMap((link, at) => {
      const before = known.get(link.id) ?? null
      return same(before, link) ? [] : [{ at, was: before, is: link }]
    }),
  ]
  return { was: only(was), is: only(is), links }
}

/** The history with one change more; without those that are past the bounds, and as it was where nothing has changed. */
export function withChange(history: History, before: ServerSettings, after: ServerSettings, made: Made): History {
  const difference = differenceOf(before, after)
  const kept = youngerThan(history, made.at - changesKept)
  if (Object.keys(difference.is).length === 0 && difference.links.length === 0) return kept
  const { by, at, undoes = null } = made
  return [{ revision: after.revision, by, at, undoes, ...difference }, ...kept].slice(0, mostChanges)
}

export const youngerThan = (history: History, before: number): History => history.filter(one => one.at >= before)

/** A history without the name of a person who has had it deleted; what they changed stays. */
export const withoutPerson = (history: History, person: string): History =>
  history.map(one => (one.by === person ? { ...one, by: nobody } : one))

/** What has taken a change back, unless that was taken back itself. */
export const undoneBy = (history: History, revision: number): SettingsChange | undefined =>
  history.find(one => one.undoes === revision && !undoneBy(history, one.revision))
