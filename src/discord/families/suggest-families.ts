// What completion offers for the family of a check: those of the server first, then installed ones, constructions, and "not listed".
import type { APIApplicationCommandOptionChoice } from 'discord.js'
import { constructionFamily } from '../../families/construction.ts'
import { toldIn } from '../../families/facts/settle-facts.ts'
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
  const label = (name: string, maker: string) =>
    cut(say('family.choice', { name: bare(name), maker: bare(maker) }), 100)
  const nameOf = (id: string | null) => heads.find(one => one.id === id)?.name
  const own = heads.map((one): Choice => {
    const { id, name, maker, state, successor } = one
    const next = state === 'retired' ? nameOf(successor) : undefined
    const shown =
      state === 'retired'
        ? say('family.choice.retired', { name: label(name, maker), next: next ? bare(next) : '-' })
        : label(name, maker)
    return { value: id, name: cut(shown, 100), found: [name, maker, ...one.alsoCalled].join(' ') }
  })
  const installed = services.programs.families.map(
    ({ id, name, maker }): Choice => ({ value: id, name: label(name, maker), found: `${name} ${maker}` }),
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

const isCurrent = (heads: readonly { readonly id: string; readonly state: string }[], id: string): boolean =>
  heads.find(one => one.id === id)?.state !== 'retired'
