// A good cell looked at question by question until it is a reference: what is asked next, what was seen, and what it contradicts.
import { z } from 'zod'
import type { Pack } from '../../engine/pack/pack.ts'
import type { Facts, Trait } from '../facts/facts-schema.ts'
import { type Feature, featuresOf, isLook, leadingFeatures } from '../features.ts'
import { howKnown, type Reference } from './references.ts'

/** How one says a cell is good, and what was seen on it so far, in the order of looking; null: can't tell. */
export const walkSchema = z.strictObject({
  /** Of the reference that comes of it, so that it is kept once, however often it is sent. */
  id: z.string().max(48),
  person: z.string(),
  family: z.string(),
  /** A moderator takes it in; else it is offered, and counts nothing until one has accepted it. */
  vouches: z.boolean(),
  how: z.enum(howKnown),
  order: z.string().min(1).max(60),
  mass: z.strictObject({ value: z.number(), u: z.number() }).optional(),
  seen: z.array(z.tuple([z.string(), z.string().nullable()])).max(40),
  /** Whether they have lifted a ring before and want to look under it; not asked yet where it is left out. */
  lifts: z.boolean().optional(),
  /** Seen in a check already: nothing more is asked. */
  checked: z.boolean().optional(),
})
export type Walk = z.infer<typeof walkSchema>

/** More than these are looked at by nobody. */
const mostLooks = 12

/** What is looked at: the leading features, and whatever else tells something of the family; what needs a ring lifted comes last. */
export function toLookAt(base: Pack, { traits }: Pick<Facts, 'traits'>): readonly Feature[] {
  const features = featuresOf(base)
  const telling = Object.keys(traits).filter(one => tells(traits[one]))
  const wanted = new Set<string>([...leadingFeatures, ...telling])
  const known = [...wanted].flatMap(id => features.get(id) ?? [])
  return [...known.filter(isLook).slice(0, mostLooks), ...known.filter(one => one.care === 'unwrap')]
}

/** What counts only beside another answer is no look of the cell itself. */
const tells = (trait: Trait | undefined): boolean =>
  trait !== undefined && (trait.made.length > 0 || trait.against.some(one => !one.together))

export type WalkStep =
  | { readonly is: 'look'; readonly feature: Feature; readonly number: number; readonly of: number }
  | { readonly is: 'consent' }
  | { readonly is: 'summary' }

export function stepOf(walk: Walk, base: Pack, facts: Pick<Facts, 'traits'>): WalkStep {
  if (walk.checked) return { is: 'summary' }
  const all = toLookAt(base, facts).filter(one => walk.lifts !== false || one.care !== 'unwrap')
  const asked = new Set(walk.seen.map(([feature]) => feature))
  const feature = all.find(one => !asked.has(one.id))
  if (!feature) return { is: 'summary' }
  if (feature.care === 'unwrap' && walk.lifts === undefined) return { is: 'consent' }
  return { is: 'look', feature, number: walk.seen.length + 1, of: all.length }
}

/** What was seen, as one who looked again a step later has it. An option that the question does not have changes nothing. */
export function seeing(walk: Walk, { id, answer }: Feature, option: string | null): Walk {
  const known = option === null || answer.options.some(one => one.id === option)
  return known ? { ...walk, seen: [...walk.seen.filter(([feature]) => feature !== id), [id, option]] } : walk
}

/** The step before: the last look, or whether a ring is lifted. */
export const stepBack = (walk: Walk, base: Pack): Walk => {
  const { lifts, ...rest } = walk
  const last = walk.seen.at(-1)?.[0] ?? ''
  const liftedForIt = featuresOf(base).get(last)?.care === 'unwrap'
  return lifts !== undefined && !liftedForIt ? rest : { ...walk, seen: walk.seen.slice(0, -1) }
}

/** What was seen for certain, by feature. */
export const looksOf = ({ seen }: Pick<Walk, 'seen'>): Record<string, string> =>
  Object.fromEntries(seen.flatMap(([feature, option]) => (option === null ? [] : [[feature, option]])))

/** Whether it looks as the family is made; undefined where nobody has said how that is. */
export function fits({ traits }: Pick<Facts, 'traits'>, feature: string, option: string): boolean | undefined {
  const made = traits[feature]?.made ?? []
  return made.length === 0 ? undefined : made.includes(option)
}

/** What the walk becomes once it is sent. `vouches`: whoever sends it moderates, so that it counts at once. */
export function referenceOf(walk: Walk, week: string, vouches: boolean): Reference {
  const { id, how, order, mass, person } = walk
  return {
    ...{ id, how, order, week, looks: looksOf(walk), by: person },
    ...(mass && { mass }),
    ...(vouches ? { acceptedBy: person, state: 'accepted' as const } : { acceptedBy: null, state: 'offered' as const }),
  }
}
