// Photographs of a family: how large and how many, and which stand beside the family, one of its questions or a known fake.
import type { KnownFake } from './facts/facts-schema.ts'
import type { PhotoHead } from './family-store.ts'

/** Small enough to be kept in the database, and large enough for four legs to be counted. */
export const photoSize = { side: 1280, bytes: 300_000 } as const
/** Letters of what it shows, written for those who do not see it. */
export const mostAlt = 300

/** Discord shows ten pictures in a gallery; a question has to leave room for its answers on a phone. */
const besideFamily = 9
const besideQuestion = 2
const besideFake = 2

type Shown = Pick<PhotoHead, 'feature' | 'option' | 'genuine'>
/** Good ones and false ones apart, so that no false one stands among the good. */
export type Sides<T> = { readonly good: readonly T[]; readonly false: readonly T[] }

function sides<T extends Shown>(photos: readonly T[], most: number): Sides<T> {
  return {
    good: photos.filter(one => one.genuine).slice(0, most),
    false: photos.filter(one => !one.genuine).slice(0, most),
  }
}

/** `features`: those that are known, in the order in which they are shown; what is of none of them is left out. */
export function photosOfFamily<T extends Shown>(photos: readonly T[], features: readonly string[]): Sides<T> {
  const known = photos.filter(one => features.includes(one.feature))
  return sides(
    known.sort((a, b) => features.indexOf(a.feature) - features.indexOf(b.feature)),
    besideFamily,
  )
}

/** One of each option first: two of the same tell less than two that differ. */
export function photosOfQuestion<T extends Shown>(photos: readonly T[], question: string): Sides<T> {
  const mine = photos.filter(one => one.feature === question)
  const first = mine.filter((one, i) => mine.findIndex(each => sameLook(each, one)) === i)
  return sides([...first, ...mine.filter(one => !first.includes(one))], besideQuestion)
}

const sameLook = (a: Shown, b: Shown): boolean => a.genuine === b.genuine && a.option === b.option

/** False ones that show a part of a known fake's look. */
export const photosOfFake = <T extends Shown>(photos: readonly T[], fake: Pick<KnownFake, 'look'>): readonly T[] =>
  photos.filter(one => !one.genuine && (fake.look[one.feature] ?? []).includes(one.option)).slice(0, besideFake)
