// Takes one change of a server's settings or links back, as a new change; or says why that cannot be.
import { type Field, type History, type SettingsChange, same, undoneBy } from './history.ts'
import { pageOf } from './link-habits.ts'
import { type BuyingLink, mostLinks, type ServerSettings } from './settings.ts'

export type UndoRefusal =
  | { readonly code: 'change-forgotten' }
  | { readonly code: 'undone-already'; readonly by: string; readonly at: number }
  /** Somebody has changed the same thing after; null where nothing is known of who. */
  | { readonly code: 'changed-since'; readonly by: string | null; readonly at: number | null }
  /** Pooling was turned on since, and needs what was turned on before. */
  | { readonly code: 'pooling-since' }
  | { readonly code: 'too-many-links'; readonly most: number }
  | { readonly code: 'link-there'; readonly title: string }

export type Undoing =
  | { readonly ok: true; readonly settings: ServerSettings }
  | { readonly ok: false; readonly refusal: UndoRefusal }

/** The settings without the change that made `revision`, at the next revision. `by`: the interaction that asks for it. */
export function undo(settings: ServerSettings, history: History, revision: number, by: string): Undoing {
  const change = history.find(one => one.revision === revision)
  if (!change) return refuse({ code: 'change-forgotten' })
  const undone = undoneBy(history, revision)
  if (undone) return refuse({ code: 'undone-already', by: undone.by, at: undone.at })
  const later = changedAfter(settings, history, change)
  if (later) return refuse(later)
  const links = linksBefore(settings.links, change)
  const twin = change.links.flatMap(({ was }) =>
    was ? links.filter(link => link.id !== was.id && pageOf(link.url) === pageOf(was.url)) : [],
  )[0]
  if (twin) return refuse({ code: 'link-there', title: twin.title })
  if (links.length > mostLinks) return refuse({ code: 'too-many-links', most: mostLinks })
  const before = { ...settings, ...change.was, links, revision: settings.revision + 1, changedBy: by }
  return before.pooling && !before.outcomes ? refuse({ code: 'pooling-since' }) : { ok: true, settings: before }
}

/** Whether what the change has made is no longer so, and who is the last to have changed it. */
function changedAfter(settings: ServerSettings, history: History, change: SettingsChange): UndoRefusal | undefined {
  const fields = (Object.keys(change.is) as Field[]).filter(field => !same(settings[field], change.is[field]))
  const now = new Map(settings.links.map(link => [link.id, link]))
  const links = change.links
    .map(({ was, is }) => ({ id: (was ?? is)?.id, is }))
    .filter(({ id, is }) => !same(now.get(id ?? '') ?? null, is))
    .map(({ id }) => id)
  if (fields.length === 0 && links.length === 0) return undefined
  const last = history.find(
    one =>
      one.revision > change.revision &&
      (fields.some(field => field in one.is) || one.links.some(({ was, is }) => links.includes((was ?? is)?.id))),
  )
  return { code: 'changed-since', by: last?.by ?? null, at: last?.at ?? null }
}

/** The links as they stood, each where it was; those that others have added since stay. */
function linksBefore(links: readonly BuyingLink[], change: SettingsChange): BuyingLink[] {
  const restored = new Map(change.links.flatMap(({ was, is }) => (is ? [[is.id, was] as const] : [])))
  const left = links.flatMap(link => (restored.has(link.id) ? (restored.get(link.id) ?? []) : [link]))
  for (const { at, was, is } of change.links) if (was && !is) left.splice(at, 0, was)
  return left
}

const refuse = (refusal: UndoRefusal): Undoing => ({ ok: false, refusal })
