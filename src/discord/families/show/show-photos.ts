// The page of a family's photographs: each with what it shows and its words, to be added to and taken out of by moderators.
import { ButtonStyle } from 'discord.js'
import type { Pack } from '../../../engine/pack/pack.ts'
import { limits } from '../../../families/family.ts'
import type { PhotoHead } from '../../../families/family-store.ts'
import { sayFeature, sayOption } from '../../../words/family-words.ts'
import { plain } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { gallery, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import type { WorkingOn } from '../working-on.ts'
import { idFor } from './menus.ts'
import { cutLines, noted, type PageExtras } from './show-page.ts'

/** Photographs a page: what they show is read beside them. */
const perPage = 5

/** The page that there is, and what stands on it; from 1. */
export function photoPage(photos: readonly PhotoHead[], page: number): { page: number; of: number; on: PhotoHead[] } {
  const of = Math.max(1, Math.ceil(photos.length / perPage))
  const shown = Math.min(Math.max(1, page), of)
  return { page: shown, of, on: photos.slice((shown - 1) * perPage, shown * perPage) }
}

export function showPhotos(
  say: Say,
  base: Pack,
  { family, facts }: WorkingOn,
  { page, of, on }: ReturnType<typeof photoPage>,
  { note, pictures = [] }: PageExtras = {},
): ShownMessage {
  const id = idFor(family.id, family.revision)
  const first = (page - 1) * perPage + 1
  const lines = on.map((one, i) =>
    say('families.photos.line', {
      number: first + i,
      genuine: one.genuine ? 'yes' : 'no',
      feature: sayFeature(say, base, one.feature),
      option: sayOption(say, base, one.feature, one.option),
      words: plain(one.alt),
    }),
  )
  const turn = (to: number, label: string) =>
    to >= 1 && to <= of ? [pressButton(id({ is: 'photos', page: to }), label)] : []
  return message(
    [
      ...noted(note),
      text(say('families.photos.title', { name: plain(facts.identity.name), most: limits.photos })),
      text(lines.length > 0 ? cutLines(lines) : say('families.photos.none')),
      ...gallery(pictures),
      ...rows([
        pressButton(id({ is: 'new-photo' }), say('families.button.add-photo'), ButtonStyle.Primary),
        ...on.map((one, i) =>
          pressButton(id({ is: 'drop-photo', photo: one.id }), say('families.button.drop', { number: first + i })),
        ),
        ...turn(page - 1, say('page.back')),
        ...turn(page + 1, say('page.on')),
        pressButton(id({ is: 'page' }), say('families.button.page')),
      ]),
      small(say('caution.line')),
    ],
    pictures,
  )
}
