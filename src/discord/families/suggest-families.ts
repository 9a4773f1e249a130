// What completion offers for the family of a check: those of the server first, then installed ones, constructions, and "not listed".
import type { APIApplicationCommandOptionChoice } from 'discord.js'
import { constructionFamily } from '../../families/construction.ts'
import { toldIn } from '../../families/facts/settle-facts.ts'
import type { FamilyHead } from '../../families/family-store.ts'
import { skeletonOf } from '../../families/names.ts'
import { bare } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { cut } from '../message/parts.ts'
import type { Services } from '../services.ts'

/** Stands for a cell whose family is not listed. */
export const noFamily = '-'

/** Discord shows so many choices. */
const most = 25

type Choice = APIApplicationCommandOptionChoice<string> & { readonly found: string }

/** Retired ones come last and name what follows them; with nothing typed, "not listed" stands first. */
export async function suggestFamilies(
  services: Pick<Services, 'families' | 'programs'>,
  say: Say,
  server: string | null,
  typed: string,
): Promise<APIApplicationCommandOptionChoice<string>[]> {
  const heads = server === null ? [] : (await services.families.heads(server)).filter(one => one.head > 0)
  const own = heads.map((one): Choice => {
    const found = [one.name, one.maker, ...one.alsoCalled].join(' ')
    return { value: one.id, name: sayChoice(say, one, heads), found }
  })
  const installed = services.programs.families.map(
    (one): Choice => ({ value: one.id, name: sayNamed(say, one), found: `${one.name} ${one.maker}` }),
  )
  const built = services.families.constructions.map((one): Choice => {
    const title = toldIn(one.title, say.locale.slice(0, 2))
    return {
      value: constructionFamily(one.construction),
      name: cut(say('family.choice.built', { title }), 100),
      found: title,
    }
  })
  const none = { value: noFamily, name: say('family.none') }
  const all = [
    ...own.filter(one => isCurrent(heads, one.value)),
    ...installed,
    ...built,
    ...own.filter(one => !isCurrent(heads, one.value)),
  ]
  const wanted = skeletonOf(typed)
  const fitting = all.filter(one => wanted === '' || skeletonOf(`${one.found} ${one.name}`).includes(wanted))
  const shown = fitting.slice(0, most - 1).map(({ name, value }) => ({ name, value }))
  const more = fitting.length > shown.length ? [{ value: noFamily, name: say('family.choice.more') }] : [none]
  return wanted === '' ? [...more, ...shown] : [...shown, ...more]
}

const sayNamed = (say: Say, { name, maker }: { readonly name: string; readonly maker: string }): string =>
  cut(say('family.choice', { name: bare(name), maker: bare(maker) }), 100)

/** A family of the server as completion offers it; a retired one says so, and what follows it. */
export function sayChoice(say: Say, head: FamilyHead, heads: readonly FamilyHead[]): string {
  if (head.state !== 'retired') return sayNamed(say, head)
  const next = heads.find(one => one.id === head.successor)?.name
  // Cut, the name still leaves room for the mark.
  const name = cut(sayNamed(say, head), 60)
  return cut(say('family.choice.retired', { name, next: next ? bare(next) : 'none' }), 100)
}

const isCurrent = (heads: readonly { readonly id: string; readonly state: string }[], id: string): boolean =>
  heads.find(one => one.id === id)?.state !== 'retired'
