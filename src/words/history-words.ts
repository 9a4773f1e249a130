// Says what was changed about a server's settings and links, by whom and when, and why a change cannot be taken back.
import type { Difference, Field, History, LinkTurn, SettingsChange } from '../server/history.ts'
import { undoneBy } from '../server/history.ts'
import type { Surroundings } from '../server/places.ts'
import type { ServerSettings } from '../server/settings.ts'
import { partOfField, parts } from '../server/setup-part.ts'
import { nobody } from '../server/traces.ts'
import type { UndoRefusal } from '../server/undo.ts'
import { plain } from './plain.ts'
import type { Say } from './say.ts'
import { sayNow } from './setup-words.ts'

/** More lines than these of one change are counted, not said. */
const mostLines = 8

const sayWho = (say: Say, person: string | null): string =>
  person === null || person === nobody ? say('finding.somebody') : `<@${person}>`
const sayWhen = (at: number): string => `<t:${Math.floor(at / 1000)}:f>`

const hostOf = (url: string): string => plain(URL.canParse(url) ? new URL(url).hostname : '?')

/** One line for each part and link that differs, from what to what. */
export function sayDifference(
  say: Say,
  { was, is, links }: Difference,
  settings: ServerSettings,
  around: Surroundings,
): string[] {
  const changed = new Set((Object.keys(is) as Field[]).map(field => partOfField[field]))
  const lines = parts
    .filter(part => changed.has(part))
    .map(part =>
      say('history.part', {
        part: say(`setup.part.${part}`),
        was: sayNow(say, { ...settings, ...was }, around, part),
        is: sayNow(say, { ...settings, ...is }, around, part),
      }),
    )
  const all = [...lines, ...links.map(link => sayTurn(say, link))]
  const left = all.length - mostLines
  return left > 0 ? [...all.slice(0, mostLines), say('history.more', { count: left })] : all
}

function sayTurn(say: Say, { was, is }: LinkTurn): string {
  const link = is ?? was
  if (!link) return ''
  const values = { title: plain(link.title), host: hostOf(link.url) }
  if (!was) return say('history.link.added', values)
  if (!is) return say('history.link.removed', values)
  if (was.url !== is.url) return say('history.link.address', { ...values, was: plain(was.url), is: plain(is.url) })
  if (was.title !== is.title) return say('history.link.title', { ...values, was: plain(was.title) })
  return say('history.link.looked', values)
}

/** Who changed something and when; whether it took something back, and whether it was taken back. */
export function sayMade(say: Say, change: SettingsChange, history: History): string {
  const values = { who: sayWho(say, change.by), when: sayWhen(change.at) }
  const undone = undoneBy(history, change.revision)
  const before = history.find(one => one.revision === change.undoes)
  const head =
    change.undoes === null
      ? say('history.made', values)
      : say('history.undid', { ...values, of: before ? sayWhen(before.at) : '?' })
  return undone
    ? `${head}\n-# ${say('history.undone', { who: sayWho(say, undone.by), when: sayWhen(undone.at) })}`
    : head
}

export function sayNoUndo(say: Say, refusal: UndoRefusal): string {
  switch (refusal.code) {
    case 'undone-already':
      return say('history.no.undone-already', { who: sayWho(say, refusal.by), when: sayWhen(refusal.at) })
    case 'changed-since':
      return refusal.at === null
        ? say('history.no.changed-since.unknown')
        : say('history.no.changed-since', { who: sayWho(say, refusal.by), when: sayWhen(refusal.at) })
    case 'link-there':
      return say('history.no.link-there', { title: plain(refusal.title) })
    case 'too-many-links':
      return say('history.no.too-many-links', { most: refusal.most })
    default:
      return say(`history.no.${refusal.code}`)
  }
}
