// Constructions: unnamed ways in which cells are built, as the start of a family's facts and as something to be held against.
import type { Construction, Facts, Identity, Trait } from './facts/facts-schema.ts'

/** The facts of a new family that is built like `construction`; a full copy, so that a construction that goes takes nothing away. */
export function factsFrom(construction: Construction, identity: Identity): Facts {
  return {
    facts: 1,
    identity,
    from: { construction: construction.construction, version: construction.version },
    traits: structuredClone(construction.traits),
    figures: {},
    fakes: [],
    alsoEnough: [],
    show: { ...construction.show, format: identity.format },
  }
}

/** The facts of a family of which nothing is known yet. */
export const bareFacts = (identity: Identity): Facts => ({
  facts: 1,
  identity,
  from: null,
  traits: {},
  figures: {},
  fakes: [],
  alsoEnough: [],
  show: { format: identity.format },
})

/** By which a check says that it is held against a construction alone. */
export const constructionFamily = (construction: string): string => `c-${construction}`
export const isConstructionFamily = (family: string): boolean => family.startsWith('c-')

/**
 * A construction as facts to be held against directly: its musts count as strong signs, since nobody vouches that the model is
 * made so.
 */
export function asFamily(construction: Construction, name: string, format: Identity['format']): Facts {
  const milder = (trait: Trait): Trait => ({
    ...trait,
    against: trait.against.map(({ means: _, ...entry }) => ({
      ...entry,
      tells: entry.tells === 'must' ? 'strong' : entry.tells,
    })),
  })
  const facts = factsFrom(construction, {
    id: constructionFamily(construction.construction),
    name: name.length <= 60 ? name : `${name.slice(0, 59)}…`,
    maker: '-',
    alsoCalled: [],
    format,
    kind: construction.kinds[0] ?? 'bare',
    chemistry: 'not-known',
  })
  return {
    ...facts,
    traits: Object.fromEntries(Object.entries(facts.traits).map(([feature, trait]) => [feature, milder(trait)])),
  }
}
