// Changes to a family's draft: one at a time, each a new revision, or a refusal that changes nothing.
import { factsFrom } from './construction.ts'
import type { Construction, Facts, Figures, Identity, KnownFake, TellingStrength, Trait } from './facts/facts-schema.ts'
import { limits, type ServerFamily } from './family.ts'
import { type Begun, type Sayable, withNotKnown } from './not-known.ts'

export type Edit =
  | { readonly is: 'built'; readonly construction: Construction }
  | {
      readonly is: 'made'
      readonly feature: string
      readonly options: readonly string[]
      readonly all: readonly string[]
    }
  | {
      readonly is: 'tells'
      readonly feature: string
      readonly tells: TellingStrength | 'no-bearing'
      readonly all: readonly string[]
    }
  | { readonly is: 'exception'; readonly feature: string; readonly on: boolean }
  | { readonly is: 'not-known'; readonly feature: string }
  /** Of `all`, exactly these are not known; what else was not comes back as the facts were begun. */
  | {
      readonly is: 'all-not-known'
      readonly features: readonly string[]
      readonly all: readonly Sayable[]
      readonly begun: Begun
    }
  /** `built`: the construction it was made from, which may be for other sizes. */
  | {
      readonly is: 'identity'
      readonly identity: Pick<Identity, 'name' | 'maker' | 'format' | 'kind'>
      readonly figures: Figures
      readonly built: Construction | undefined
    }
  | { readonly is: 'fake'; readonly fake: KnownFake }
  | { readonly is: 'fake-retired'; readonly fake: string }
  | { readonly is: 'facts'; readonly facts: Facts }

export type EditRefusal =
  | { readonly code: 'wrong-size'; readonly construction: Construction }
  | { readonly code: 'nothing-made' }
  | { readonly code: 'too-many-features' | 'too-many-fakes'; readonly most: number }

export type Editing =
  | { readonly ok: true; readonly family: ServerFamily }
  | { readonly ok: false; readonly refusal: EditRefusal }

/** What is being worked on: the draft, or the version in force as the start of one. */
export const workedOn = (family: ServerFamily, inForce: Facts | undefined): Facts | undefined => family.draft ?? inForce

/** `by`: the interaction. A draft that changes is not in review any more, since that was asked for something else. */
export function editDraft(family: ServerFamily, facts: Facts, edit: Edit, by: string): Editing {
  const changed = apply(facts, edit)
  if ('code' in changed) return { ok: false, refusal: changed }
  return {
    ok: true,
    family: {
      ...family,
      state: family.head > 0 ? (family.state === 'retired' ? 'retired' : 'in-force') : 'draft',
      draft: changed,
      review: null,
      revision: family.revision + 1,
      changedBy: by,
    },
  }
}

function apply(facts: Facts, edit: Edit): Facts | EditRefusal {
  switch (edit.is) {
    case 'facts':
      return { ...edit.facts, identity: { ...edit.facts.identity, id: facts.identity.id } }
    case 'built': {
      const { construction } = edit
      if (!fitsSize(construction, facts.identity)) return { code: 'wrong-size', construction }
      return { ...factsFrom(construction, facts.identity), figures: facts.figures, fakes: facts.fakes }
    }
    case 'identity': {
      const identity = { ...facts.identity, ...edit.identity }
      if (edit.built && !fitsSize(edit.built, identity)) return { code: 'wrong-size', construction: edit.built }
      return { ...facts, identity, figures: edit.figures, show: { ...facts.show, format: identity.format } }
    }
    case 'fake': {
      // One that is described anew is not one more.
      const others = facts.fakes.filter(one => one.id !== edit.fake.id)
      if (others.length >= limits.fakes) return { code: 'too-many-fakes', most: limits.fakes }
      return { ...facts, fakes: [...others, edit.fake] }
    }
    case 'fake-retired':
      return {
        ...facts,
        fakes: facts.fakes.map(one => (one.id === edit.fake ? { ...one, state: 'retired' as const } : one)),
      }
    case 'not-known': {
      const { [edit.feature]: _gone, ...traits } = facts.traits
      return { ...facts, traits }
    }
    case 'all-not-known': {
      const traits = withNotKnown(facts, edit.all, edit.features, edit.begun)
      if (Object.keys(traits).length > limits.features) return { code: 'too-many-features', most: limits.features }
      return { ...facts, traits }
    }
    default:
      return withTrait(facts, edit)
  }
}

export const fitsSize = (
  { formats, kinds }: Construction,
  { format, kind }: Pick<Identity, 'format' | 'kind'>,
): boolean => formats.includes(format) && kinds.includes(kind)

type TraitEdit = Extract<Edit, { is: 'made' | 'tells' | 'exception' }>

function withTrait(facts: Facts, edit: TraitEdit): Facts | EditRefusal {
  const before: Trait = facts.traits[edit.feature] ?? { made: [], against: [], remarks: [] }
  const known = Object.keys(facts.traits).length
  if (!facts.traits[edit.feature] && known >= limits.features)
    return { code: 'too-many-features', most: limits.features }
  const after = traitAfter(before, edit)
  return 'code' in after ? after : { ...facts, traits: { ...facts.traits, [edit.feature]: after } }
}

function traitAfter(before: Trait, edit: TraitEdit): Trait | EditRefusal {
  switch (edit.is) {
    case 'made': {
      // What was made so speaks no more against it; what people pick for "something else" stays silent.
      const made = [...edit.options]
      const against = before.against
        .map(one => ({ ...one, options: one.options.filter(option => !made.includes(option)) }))
        .filter(one => one.options.length > 0)
      // Of what is as made nothing more is to be said.
      const remarks = before.remarks.filter(one => one.options.some(option => !made.includes(option)))
      if (isDescribedAnew(before, made, edit.all)) return { made, against: anew(before, made, edit.all), remarks }
      return { made, against, remarks }
    }
    case 'tells': {
      if (before.made.length === 0) return { code: 'nothing-made' }
      const plain = before.against.filter(one => !one.together)
      const [first] = plain
      if (edit.tells === 'no-bearing')
        return {
          made: before.made,
          against: before.against.filter(one => one.together),
          remarks: [{ options: first?.options ?? others(before.made, edit.all, 'weak')[0]?.options ?? [] }].filter(
            one => one.options.length > 0,
          ),
        }
      const tells = edit.tells
      const counted = plain.length > 0 ? plain.map(one => ({ ...one, tells })) : others(before.made, edit.all, tells)
      const remarks = before.remarks.filter(
        one => !counted.some(each => each.options.some(o => one.options.includes(o))),
      )
      return { made: before.made, against: [...counted, ...before.against.filter(one => one.together)], remarks }
    }
    case 'exception':
      return {
        ...before,
        against: before.against.map(({ unless: _, ...one }) =>
          edit.on && !one.together ? { ...one, unless: 'open-rewrap' as const } : one,
        ),
      }
  }
}

/**
 * Nothing was said of it; or another answer is right now, and what counted was earned by the one before; or nothing is left that
 * counts. What was said to tell nothing stays so.
 */
function isDescribedAnew({ made, against, remarks }: Trait, now: readonly string[], all: readonly string[]): boolean {
  const left = against.filter(one => one.options.some(option => !now.includes(option)))
  if (made.length === 0) return left.length === 0
  const replaced = !made.some(one => now.includes(one)) && against.some(one => !one.together)
  const rest = others(now, all, 'weak').flatMap(one => one.options)
  const silent = remarks.some(one => !one.together && one.options.some(option => rest.includes(option)))
  return replaced || (!silent && left.every(one => one.together))
}

/** As much as a moderator's word tells alone; whom it did not count against, it does not count against now. */
function anew({ against }: Trait, made: readonly string[], all: readonly string[]): Trait['against'] {
  const excepted = against.find(one => !one.together && one.unless)?.unless
  return [
    ...others(made, all, 'weak').map(one => ({ ...one, ...(excepted && { unless: excepted }) })),
    ...against.filter(one => one.together && one.options.every(option => !made.includes(option))),
  ]
}

/** Options that are neither as made nor "something else", which may be anything. */
function others(made: readonly string[], all: readonly string[], tells: TellingStrength): Trait['against'] {
  const options = all.filter(one => !made.includes(one) && one !== 'other' && one !== 'nowhere')
  return options.length > 0 ? [{ options, tells, from: 'moderator' }] : []
}
