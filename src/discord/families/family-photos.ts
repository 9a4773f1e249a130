// Photographs of a family as messages carry them: good ones and false ones under words of their own, so that neither is taken for the other.
import type { APIMessageTopLevelComponent } from 'discord.js'
import type { Check } from '../../check/check.ts'
import type { KnownFake } from '../../families/facts/facts-schema.ts'
import type { PhotoHead } from '../../families/family-store.ts'
import { featuresOf, inCheckOrder } from '../../families/features.ts'
import { photosOfFake, photosOfFamily, photosOfQuestion, type Sides } from '../../families/photos.ts'
import { type FamilyDesk, isServerFamily } from '../../services/family-desk.ts'
import type { ShownPicture } from '../../services/pictures/shown-picture.ts'
import { sayFeature, sayOption } from '../../words/family-words.ts'
import { bare } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { gallery, small } from '../message/parts.ts'

/** What of the families' desk it takes to show them. */
export type PhotoDesk = Pick<FamilyDesk, 'base' | 'photos'> & { readonly store: Pick<FamilyDesk['store'], 'photo'> }

/** Pictures to be sent with a message, and where they stand in it. */
export type Pictured = {
  readonly parts: readonly APIMessageTopLevelComponent[]
  readonly pictures: readonly ShownPicture[]
}
export const nothingPictured: Pictured = { parts: [], pictures: [] }

/** One that was taken away meanwhile is left out. */
export async function picturesOfPhotos(
  { base, store }: PhotoDesk,
  say: Say,
  photos: readonly PhotoHead[],
): Promise<ShownPicture[]> {
  const read = await Promise.all(photos.map(one => store.photo(one.server, one.id)))
  return read.flatMap((photo, i): ShownPicture[] => {
    if (!photo) return []
    const { feature, option, genuine, bytes } = photo
    const values = {
      genuine: genuine ? 'yes' : 'no',
      feature: sayFeature(say, base, feature),
      option: sayOption(say, base, feature, option),
      words: bare(photo.alt),
    }
    const name = `${genuine ? 'good' : 'false'}-${feature}-${i + 1}.jpg`
    return [{ name, bytes, alt: say('families.photo.alt', values) }]
  })
}

/** `name`: whether the words above name the feature, too. */
async function sidesShown(
  desk: PhotoDesk,
  say: Say,
  { good, false: bad }: Sides<PhotoHead>,
  name: boolean,
): Promise<Pictured> {
  const side = async (photos: readonly PhotoHead[], words: 'families.photos.good' | 'families.photos.false') => {
    const pictures = await picturesOfPhotos(desk, say, photos)
    if (pictures.length === 0) return nothingPictured
    const of = ({ feature, option }: PhotoHead) =>
      `${name ? `${sayFeature(say, desk.base, feature)}: ` : ''}${sayOption(say, desk.base, feature, option)}`
    const list = [...new Set(photos.map(of))].join(' · ')
    return { parts: [small(say(words, { list })), ...gallery(pictures)], pictures }
  }
  const [first, second] = [await side(good, 'families.photos.good'), await side(bad, 'families.photos.false')]
  return { parts: [...first.parts, ...second.parts], pictures: [...first.pictures, ...second.pictures] }
}

/** Beside a family: in the order in which its features are asked about. */
export async function photosBesideFamily(desk: PhotoDesk, say: Say, server: string, family: string): Promise<Pictured> {
  const features = inCheckOrder(desk.base, [...featuresOf(desk.base).keys()])
  return sidesShown(desk, say, photosOfFamily(await desk.photos(server, family), features), true)
}

/** Beside a question of a check that is held against a server's family. */
export async function photosBesideQuestion(
  desk: PhotoDesk,
  say: Say,
  { server, family }: Pick<Check, 'server' | 'family'>,
  question: string,
): Promise<Pictured> {
  if (server === null || !isServerFamily(family)) return nothingPictured
  return sidesShown(desk, say, photosOfQuestion(await desk.photos(server, family), question), false)
}

/** What false ones look like that a cell matches. */
export async function photosOfFakes(
  desk: PhotoDesk,
  say: Say,
  { server, family }: Pick<Check, 'server' | 'family'>,
  fakes: readonly KnownFake[],
): Promise<Pictured> {
  if (server === null || !isServerFamily(family) || fakes.length === 0) return nothingPictured
  const photos = await desk.photos(server, family)
  const chosen = [...new Set(fakes.flatMap(fake => photosOfFake(photos, fake)))].slice(0, 4)
  return sidesShown(desk, say, { good: [], false: chosen }, true)
}
