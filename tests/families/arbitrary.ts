// Facts, reference cells and answers drawn at random, for the laws that hold for all of them.
import fc from 'fast-check'
import type { Answers } from '../../src/engine/answers.ts'
import { cantTell, option } from '../../src/engine/answers.ts'
import type { Facts, KnownFake, Trait } from '../../src/families/facts/facts-schema.ts'
import { factsSchema } from '../../src/families/facts/facts-schema.ts'
import { featuresOf } from '../../src/families/features.ts'
import type { Reference } from '../../src/families/strength/references.ts'
import { anyCell } from './base.ts'

const features = [...featuresOf(anyCell).values()]
const optionsOf = (feature: string): string[] =>
  features.find(one => one.id === feature)?.answer.options.map(one => one.id) ?? []

const strengths = fc.constantFrom('must' as const, 'strong' as const, 'moderate' as const, 'weak' as const)

/** Options fall into: as made, against (one or two entries), or unsaid; some of the unsaid or made are remarked on. */
export function traitOf(feature: string, mayBeMust = true): fc.Arbitrary<Trait> {
  const options = optionsOf(feature)
  return fc
    .record({
      lots: fc.array(fc.constantFrom('made', 'one', 'two', 'none'), {
        minLength: options.length,
        maxLength: options.length,
      }),
      first: strengths,
      second: strengths,
      rewrap: fc.boolean(),
      side: fc.boolean(),
      remarked: fc.boolean(),
    })
    .map(({ lots, first, second, rewrap, side, remarked }): Trait => {
      const of = (lot: string) => options.filter((_, i) => lots[i] === lot)
      const tells = (one: typeof first) => (one === 'must' && !mayBeMust ? 'strong' : one)
      const entry = (chosen: string[], one: typeof first, exception: boolean) => {
        if (chosen.length === 0 || chosen.length === options.length) return []
        return [
          {
            options: chosen,
            tells: tells(one),
            from: 'moderator' as const,
            ...(exception && { unless: 'open-rewrap' as const }),
          },
        ]
      }
      const made = of('made').slice(0, 5)
      const withSide =
        side && feature === 'measured-capacity'
          ? [
              {
                options: options.slice(0, 1),
                tells: 'moderate' as const,
                from: 'moderator' as const,
                together: { 'test-current': ['high'] },
              },
            ]
          : []
      const plain = [...entry(of('one'), first, rewrap), ...entry(of('two'), second, false)]
      const clear = withSide.filter(one => !one.options.some(each => made.includes(each)))
      return {
        made,
        against: plain.length === 0 ? clear : plain,
        remarks: remarked && made.length > 0 && made.length < options.length ? [{ options: made }] : [],
      }
    })
}

const figures: fc.Arbitrary<Facts['figures']> = fc
  .record({
    capacity: fc.option(
      fc.integer({ min: 500, max: 5000 }).map(typical => ({ typical, least: typical - 50 })),
      { nil: undefined },
    ),
    currents: fc.option(
      fc
        .array(
          fc.record({
            amps: fc.integer({ min: 2, max: 100 }),
            cutOff: fc.constantFrom<(number | 'none' | 'not-said')[]>(75, 'none', 'not-said'),
          }),
          {
            minLength: 1,
            maxLength: 3,
          },
        )
        .map(list => list.map(one => ({ ...one }))),
      { nil: undefined },
    ),
    mass: fc.option(
      fc.record({
        middle: fc.integer({ min: 30, max: 80 }),
        cells: fc.integer({ min: 1, max: 9 }),
        from: fc.constantFrom('sheet' as const, 'references' as const),
      }),
      { nil: undefined },
    ),
  })
  .map(drawn => Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)))

export const arbitraryFacts = (options: { musts?: boolean; figures?: boolean } = {}): fc.Arbitrary<Facts> =>
  fc
    .uniqueArray(fc.constantFrom(...features.map(one => one.id)), { minLength: 1, maxLength: 9 })
    .chain(chosen =>
      fc.record({
        traits: fc.tuple(
          ...chosen.map(feature => traitOf(feature, options.musts !== false).map(trait => [feature, trait] as const)),
        ),
        figures: options.figures === false ? fc.constant({}) : figures,
        format: fc.constantFrom('18650' as const, '21700' as const),
        kind: fc.constantFrom('bare' as const, 'protected' as const),
      }),
    )
    .map(drawn =>
      factsSchema.parse({
        facts: 1,
        identity: {
          id: 'f-drawn1',
          name: 'Drawn',
          maker: 'Nobody',
          format: drawn.format,
          kind: drawn.kind,
          chemistry: 'not-known',
        },
        from: null,
        traits: Object.fromEntries(drawn.traits),
        figures: drawn.figures,
      }),
    )

const people = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6']
const orders = ['o1', 'o2', 'o3', 'o4', 'o5', 'o6']

export const referenceOf = (looks: fc.Arbitrary<Record<string, string>>): fc.Arbitrary<Reference> =>
  fc.record({
    id: fc.uuid(),
    looks,
    how: fc.constantFrom('maker' as const, 'seller-maker-names' as const, 'long-trusted' as const),
    order: fc.constantFrom(...orders),
    week: fc.constant('2026-W45'),
    by: fc.constantFrom(...people),
    acceptedBy: fc.constant('m1'),
    state: fc.constantFrom('accepted' as const, 'accepted' as const, 'offered' as const),
  })

/** What a cell shows, of some of the features of these facts. */
export const looksOf = (
  facts: Facts,
  of: (trait: Trait, options: string[]) => string[],
): fc.Arbitrary<Record<string, string>> => {
  const usable = Object.entries(facts.traits).flatMap(([feature, trait]) => {
    const shown = of(trait, optionsOf(feature))
    return shown.length > 0 ? [{ feature, shown }] : []
  })
  return fc
    .subarray(usable)
    .chain(some =>
      fc.tuple(...some.map(({ feature, shown }) => fc.constantFrom(...shown).map(one => [feature, one] as const))),
    )
    .map(entries => Object.fromEntries(entries))
}

export const anyLooks = (facts: Facts) => looksOf(facts, (_, options) => options)

/** Answers to features, and what the cell was sold as. */
export const featureAnswers = (): fc.Arbitrary<Answers> =>
  fc
    .subarray(features.map(one => one.id))
    .chain(ids =>
      fc.tuple(
        ...ids.map(id => fc.constantFrom(...optionsOf(id).map(option), cantTell).map(answer => [id, answer] as const)),
        fc
          .constantFrom('new-bare', 'new-rewrap', 'new-protected', 'used')
          .map(one => ['sold-as', option(one)] as const),
      ),
    )
    .map(entries => Object.fromEntries(entries))

export const fakeFor = (facts: Facts): fc.Arbitrary<KnownFake | undefined> => {
  const made = Object.entries(facts.traits).filter(
    ([feature, trait]) => trait.made.length > 0 && trait.made.length < optionsOf(feature).length,
  )
  if (made.length === 0) return fc.constant(undefined)
  return fc
    .record({
      at: fc.constantFrom(...made),
      others: fc.subarray(
        features.map(one => one.id),
        { maxLength: 4 },
      ),
    })
    .chain(({ at: [feature, trait], others }) =>
      fc
        .tuple(
          fc
            .constantFrom(...optionsOf(feature).filter(one => !trait.made.includes(one)))
            .map(one => [feature, [one]] as const),
          ...others
            .filter(one => one !== feature)
            .map(one => fc.constantFrom(...optionsOf(one)).map(chosen => [one, [chosen]] as const)),
        )
        .map(
          (look): KnownFake => ({
            id: 'k1',
            title: 'Drawn fake',
            since: '2026-W45',
            look: Object.fromEntries(look.map(([id, chosen]) => [id, [...chosen]])),
            copies: [],
            says: 'A false look.',
            state: 'seen',
          }),
        ),
    )
}
