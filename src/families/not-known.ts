// What moderators may say that they do not know: which features, which of them they have said it of, and where one comes back from.
import type { Pack } from '../engine/pack/pack.ts'
import type { Construction, Facts, Trait } from './facts/facts-schema.ts'
import { featuresOf, inCheckOrder } from './features.ts'

/** What the facts were begun with: what was in force, and the construction that a letter stood for. */
export type Begun = { readonly construction: Construction | undefined; readonly inForce: Facts | undefined }

export type Sayable = { readonly feature: string; readonly notKnown: boolean }

/** A feature that something is said of: how a good one is made, or what counts against a cell. */
export const isTelling = (trait: Trait | undefined): boolean =>
  trait !== undefined && (trait.made.length > 0 || trait.against.length > 0)

const begunWith = ({ construction, inForce }: Begun): Readonly<Record<string, Trait>> => ({
  ...construction?.traits,
  ...inForce?.traits,
})

/** In the check's order, every feature that the facts speak of, or spoke of when they were begun. */
export function sayable(base: Pack, { traits }: Pick<Facts, 'traits'>, begun: Begun, most: number): Sayable[] {
  const before = begunWith(begun)
  const features = [...featuresOf(base).keys()].filter(one => isTelling(traits[one] ?? before[one]))
  return inCheckOrder(base, features)
    .slice(0, most)
    .map(feature => ({ feature, notKnown: traits[feature] === undefined }))
}

/** What was said of `feature` when the facts were begun. */
export const begunAs = (begun: Begun, feature: string): Trait | undefined => begunWith(begun)[feature]

/** The traits once of `all` exactly `notKnown` are not known: the others stay as they are, or come back as they were begun. */
export function withNotKnown(
  { traits }: Pick<Facts, 'traits'>,
  all: readonly Sayable[],
  notKnown: readonly string[],
  begun: Begun,
): Facts['traits'] {
  const offered = all.map(one => one.feature)
  const kept = Object.entries(traits).filter(([feature]) => !offered.includes(feature) || !notKnown.includes(feature))
  const back = all.flatMap(({ feature, notKnown: before }) => {
    const trait = before && !notKnown.includes(feature) ? begunAs(begun, feature) : undefined
    return trait ? [[feature, structuredClone(trait)] as const] : []
  })
  return Object.fromEntries([...kept, ...back])
}
