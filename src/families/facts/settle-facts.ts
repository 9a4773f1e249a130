// Facts in one order, whatever order they were written in, and without what the project does not know any more.
import type { Pack } from '../../engine/pack/pack.ts'
import { featuresOf } from '../features.ts'
import type { Dropped } from './fact-problems.ts'
import type { Facts, Told, Trait } from './facts-schema.ts'

/** The same facts, always written alike: keys, options, entries, fakes and figures sorted. */
export function settleFacts(facts: Facts): Facts {
  const { identity, from, figures, show } = facts
  return {
    facts: 1,
    identity: { ...identity, alsoCalled: sorted(identity.alsoCalled) },
    from: from && { construction: from.construction, version: from.version },
    traits: byKey(facts.traits, settleTrait),
    figures: {
      ...figures,
      ...(figures.currents && {
        currents: [...figures.currents].sort(
          (a, b) => a.amps - b.amps || String(a.cutOff).localeCompare(String(b.cutOff)),
        ),
      }),
    },
    fakes: facts.fakes
      .map(fake => ({ ...fake, look: byKey(fake.look, sorted), copies: sorted(fake.copies) }))
      .sort((a, b) => compare(a.id, b.id)),
    alsoEnough: sorted(facts.alsoEnough),
    show: byKey(show, one => one),
  }
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
const sorted = (list: readonly string[]): string[] => [...new Set(list)].sort()

function byKey<T, U>(map: Readonly<Record<string, T>>, of: (value: T) => U): Record<string, U> {
  const keys = Object.keys(map).sort()
  return Object.fromEntries(keys.map(key => [key, of(map[key] as T)]))
}

const inOrder = <T extends { options: string[]; together?: Record<string, string[]> | undefined }>(
  list: readonly T[],
): T[] =>
  list
    .map(({ together, ...one }) => ({
      ...one,
      options: sorted(one.options),
      ...(together && Object.keys(together).length > 0 && { together: byKey(together, sorted) }),
    }))
    .map(one => one as unknown as T)
    .sort((a, b) => compare(JSON.stringify([a.options, a.together]), JSON.stringify([b.options, b.together])))

const settleTrait = ({ made, against, remarks }: Trait): Trait => ({
  made: sorted(made),
  against: inOrder(against),
  remarks: inOrder(remarks),
})

/**
 * The facts as far as the project knows their features and options. What is gone is named; the rest stays usable. A feature that
 * a hazard reads is left out like one that does not exist.
 */
export function fitFacts(facts: Facts, base: Pack): { readonly facts: Facts; readonly dropped: readonly Dropped[] } {
  const features = featuresOf(base)
  const dropped: Dropped[] = []
  const keep = (feature: string, options: readonly string[]): string[] => {
    const known = features.get(feature)?.answer.options.map(one => one.id) ?? []
    for (const option of options) if (!known.includes(option)) dropped.push({ feature, option })
    return options.filter(option => known.includes(option))
  }
  /** Side conditions that cannot be met any more take their entry with them. */
  const keepEntries = <T extends { options: string[]; together?: Record<string, string[]> | undefined }>(
    feature: string,
    entries: readonly T[],
  ): T[] =>
    entries.flatMap(entry => {
      const options = keep(feature, entry.options)
      const sides = Object.entries(entry.together ?? {}).map(([side, wanted]) => {
        if (features.has(side)) return [side, keep(side, wanted)] as const
        dropped.push({ feature: side })
        return [side, [] as string[]] as const
      })
      if (options.length === 0 || sides.some(([side, wanted]) => side === feature || wanted.length === 0)) return []
      return [{ ...entry, options, ...(sides.length > 0 && { together: Object.fromEntries(sides) }) }]
    })
  const traits: Record<string, Trait> = {}
  for (const [feature, trait] of Object.entries(facts.traits)) {
    if (!features.has(feature)) {
      dropped.push({ feature })
      continue
    }
    traits[feature] = {
      made: keep(feature, trait.made),
      against: keepEntries(feature, trait.against),
      remarks: keepEntries(feature, trait.remarks),
    }
  }
  const fakes = facts.fakes.flatMap(fake => {
    const look = Object.fromEntries(
      Object.entries(fake.look).flatMap(([feature, options]) => {
        if (!features.has(feature)) dropped.push({ feature })
        const kept = features.has(feature) ? keep(feature, options) : []
        return kept.length > 0 ? [[feature, kept]] : []
      }),
    )
    // A look that lost a part would match more cells than were meant.
    return Object.keys(look).length === Object.keys(fake.look).length ? [{ ...fake, look }] : []
  })
  const rules = new Set(base.rules.map(rule => rule.id))
  const alsoEnough = facts.alsoEnough.filter(rule => {
    if (!rules.has(rule)) dropped.push({ feature: rule })
    return rules.has(rule)
  })
  return { facts: { ...facts, traits, fakes, alsoEnough }, dropped }
}

/** A person's or the project's words in a language; English, or whatever was written, where that is all there is. */
export function toldIn(told: Told, language: string): string {
  if (typeof told === 'string') return told
  return (language === 'de' ? told.de : language === 'es' ? told.es : undefined) ?? told.en
}
