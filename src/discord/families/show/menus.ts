// Menus and forms of families: ways of building, features, what a good one shows, figures, a good cell, a false look.
import {
  type APIActionRowComponent,
  type APIModalInteractionResponseCallbackData,
  type APISelectMenuOption,
  type APIStringSelectComponent,
  ComponentType,
} from 'discord.js'
import { encodeFamily, type FamilyAct } from '../../../custom-ids/family-id.ts'
import type { Pack } from '../../../engine/pack/pack.ts'
import { fitsSize } from '../../../families/edit.ts'
import { type Construction, type Facts, formats, kinds } from '../../../families/facts/facts-schema.ts'
import type { FamilyHead } from '../../../families/family-store.ts'
import { featuresOf, leadingFeatures, offeredFeatures } from '../../../families/features.ts'
import { type Begun, isTelling, type Sayable, sayable } from '../../../families/not-known.ts'
import { writeFigures } from '../../../families/read-figures.ts'
import { howKnown } from '../../../families/strength/references.ts'
import { sayCounts, sayLooks, strongest } from '../../../words/family-facts-words.ts'
import { sayFeature, sayOption, saySize } from '../../../words/family-words.ts'
import { bare } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { form, lineField, menuField, radioField, textField } from '../../message/form.ts'
import { cut, pressButton } from '../../message/parts.ts'

type Row = APIActionRowComponent<APIStringSelectComponent>

/** Discord's menus hold so many options. */
const mostOptions = 25

export function menu(
  custom_id: string,
  placeholder: string,
  options: readonly APISelectMenuOption[],
  most = 1,
  least = 1,
): Row {
  return {
    type: ComponentType.ActionRow,
    components: [
      {
        type: ComponentType.StringSelect,
        custom_id,
        placeholder: cut(placeholder, 150),
        min_values: least,
        max_values: Math.min(most, options.length),
        options: options.slice(0, mostOptions),
      },
    ],
  }
}

export const fitting = (constructions: readonly Construction[], { identity }: Facts): Construction[] =>
  constructions.filter(one => fitsSize(one, identity))

export const letterOf = (i: number): string => String.fromCharCode(65 + i)

type Besides = { readonly unknown?: readonly string[]; readonly page?: string }

/**
 * Every feature that something can be said of, with what a good one shows and what anything else is: first what cells are told apart by
 * and nobody has said anything of, then the rest, in the check's order. `unknown`: what is said not to be known; `page`: whose page it is.
 */
export function featureMenu(say: Say, base: Pack, id: string, facts: Facts, { unknown = [], page }: Besides = {}): Row {
  const all = offeredFeatures(base, facts, mostOptions).filter(one => one !== page)
  const open = leftOpen(facts, unknown)
  const isOpen = (one: string) => open.includes(one)
  return menu(
    id,
    say('families.feature.choose'),
    [...all.filter(isOpen), ...all.filter(one => !isOpen(one))].map(one => ({
      value: one,
      ...expectationOf(say, base, facts, one),
    })),
  )
}

/** What cells are told apart by, and of which nothing counts, though nobody has said that it is not known. */
export const leftOpen = ({ traits }: Pick<Facts, 'traits'>, unknown: readonly string[]): string[] =>
  leadingFeatures.filter(one => !isTelling(traits[one]) && !unknown.includes(one))

/** A button for each feature that is left open, so that it takes one press; `page`: whose page it is. */
export const openButtons = (
  say: Say,
  base: Pack,
  id: ReturnType<typeof idFor>,
  facts: Facts,
  { unknown = [], page }: Besides,
) =>
  leftOpen(facts, unknown)
    .filter(one => one !== page)
    .slice(0, 5)
    .map(feature =>
      pressButton(
        id({ is: 'feature', feature }),
        cut(say('families.feature.open', { feature: sayFeature(say, base, feature) }), 80),
      ),
    )

/** What can be said not to be known, and comes back the same way; `begun`: from where. */
export const sayableIn = (base: Pack, facts: Facts, begun: Begun): Sayable[] => sayable(base, facts, begun, mostOptions)

/** All that is not known, ticked in one menu; nothing where there is nothing to tick. */
export function notKnownMenu(say: Say, base: Pack, id: string, all: readonly Sayable[]): Row[] {
  const options = all.map(({ feature, notKnown }) => ({
    value: feature,
    label: cut(sayFeature(say, base, feature), mostLabel),
    default: notKnown,
  }))
  return all.length > 0 ? [menu(id, say('families.unknown.choose'), options, all.length, 0)] : []
}

/** Discord cuts labels and descriptions of a menu here. */
const mostLabel = 100

function expectationOf(say: Say, base: Pack, { traits }: Facts, id: string): { label: string; description?: string } {
  const feature = sayFeature(say, base, id)
  const trait = traits[id]
  if (!trait || !isTelling(trait)) return { label: say('families.feature.open', { feature }) }
  // The page says it in the same words; where they are too long, the strongest of it.
  const counts = sayCounts(say, base, id, trait)
  const tells = {
    description: [...counts].length <= mostLabel ? counts : say(`families.tells.${strongest(trait, true)}`),
  }
  if (trait.made.length === 0) return { label: feature, ...tells }
  const whole = say('families.feature.at', { feature, made: sayLooks(say, base, id, trait.made) })
  const label =
    [...whole].length <= mostLabel ? whole : say('families.feature.several', { feature, count: trait.made.length })
  return { label, ...tells }
}

/** Every option of the features that are looked at first, to be picked from in one menu. */
export function looksOptions(say: Say, base: Pack, facts: Facts, genuine: boolean): APISelectMenuOption[] {
  const features = featuresOf(base)
  const all = [...leadingFeatures].flatMap(id => {
    const feature = features.get(id)
    const made = facts.traits[id]?.made ?? []
    const options = (feature?.answer.options ?? []).filter(one => one.id !== 'other')
    return options.map(({ id: option }) => ({
      value: `${id}=${option}`,
      label: cut(`${sayFeature(say, base, id)}: ${sayOption(say, base, id, option)}`, 100),
      first: genuine ? made.includes(option) : made.length > 0 && !made.includes(option),
    }))
  })
  // What is likelier stands first; the order of the features is kept otherwise.
  const sorted = [...all.filter(one => one.first), ...all.filter(one => !one.first)]
  return sorted.slice(0, mostOptions).map(({ value, label }) => ({ value, label }))
}

export const fields = {
  name: 'name',
  maker: 'maker',
  size: 'size',
  figures: 'figures',
  mass: 'mass',
  how: 'how',
  order: 'order',
  looks: 'looks',
  title: 'title',
  says: 'says',
  why: 'why',
  successor: 'successor',
} as const

type Form = APIModalInteractionResponseCallbackData

/** Sizes and kinds together, so that one press says both; a form has room for ten. */
const sizes = formats.flatMap(format => kinds.map(kind => ({ format, kind, value: `${format}-${kind}` })))
export const sizeOf = (chosen: string | undefined) => sizes.find(one => one.value === chosen)

/** What is typed of a model, as it stands in the form. */
export type IdentityTyped = {
  readonly name: string
  readonly maker: string
  readonly size: string
  readonly figures: string
}

export const typedOf = ({ identity, figures }: Pick<Facts, 'identity' | 'figures'>): IdentityTyped => ({
  ...{ name: identity.name, maker: identity.maker },
  ...{ size: `${identity.format}-${identity.kind}`, figures: writeFigures(figures) },
})

/** All that is typed of a model, once; `typed`: what stands in it already. */
export function identityForm(say: Say, custom_id: string, typed?: IdentityTyped): Form {
  const { name = '', maker = '', size, figures = '' } = typed ?? {}
  const options = sizes.map(one => ({
    value: one.value,
    label: saySize(say, one),
    default: one.value === size,
  }))
  return form(custom_id, say('families.form.title'), [
    lineField(fields.name, { label: say('families.form.name') }, { most: 60, required: true, value: name }),
    lineField(fields.maker, { label: say('families.form.maker') }, { most: 60, required: true, value: maker }),
    lineField(
      fields.figures,
      { label: say('families.form.figures'), hint: say('families.form.figures.hint') },
      { most: 100, required: false, value: figures },
    ),
    // As many lines as there are sizes and kinds: what is typed stands above them.
    radioField(fields.size, { label: say('families.form.size') }, options),
  ])
}

/** How one knows that a cell is good, and from which order it is: asked before it is looked at. */
export const referenceForm = (say: Say, custom_id: string): Form =>
  form(custom_id, say('families.reference.title'), [
    menuField(
      fields.how,
      { label: say('families.reference.how') },
      { options: howKnown.map(one => ({ value: one, label: say(`families.how.${one}`) })) },
    ),
    lineField(fields.order, { label: say('families.reference.order') }, { most: 60, required: true }),
    lineField(fields.mass, { label: say('families.reference.mass') }, { most: 20, required: false }),
  ])

type FakeDraft = { readonly looks: readonly string[] }

export function fakeForm(say: Say, base: Pack, custom_id: string, facts: Facts, draft?: FakeDraft): Form {
  const options = looksOptions(say, base, facts, false).map(one => ({
    ...one,
    ...(draft?.looks.includes(one.value) && { default: true }),
  }))
  return form(custom_id, say('families.fake.form'), [
    lineField(fields.title, { label: say('families.fake.name') }, { most: 60, required: true }),
    textField(fields.says, { label: say('families.fake.says') }, { most: 250, required: true }),
    menuField(fields.looks, { label: say('families.fake.look') }, { options, min_values: 1, max_values: 8 }),
  ])
}

export const whyForm = (say: Say, custom_id: string, title: string): Form =>
  form(custom_id, title, [textField(fields.why, { label: say('families.why') }, { most: 300, required: true })])

/** `first`: the first version of a model is its own reason, so that nothing need be typed. */
export const askForm = (say: Say, custom_id: string, first: boolean): Form =>
  first
    ? form(custom_id, say('families.button.ask'), [
        textField(
          fields.why,
          { label: say('families.why.how'), hint: say('families.why.how.hint') },
          { most: 300, required: false },
        ),
      ])
    : whyForm(say, custom_id, say('families.button.ask'))

export const retireForm = (say: Say, custom_id: string, others: readonly FamilyHead[]): Form =>
  form(custom_id, say('families.button.retire'), [
    textField(fields.why, { label: say('families.why') }, { most: 300, required: true }),
    menuField(
      fields.successor,
      { label: say('families.successor') },
      {
        options: [
          { value: '-', label: say('families.successor.none') },
          ...others.slice(0, 24).map(one => ({ value: one.id, label: cut(bare(one.name), 100) })),
        ],
      },
    ),
  ])

/** The id of one of a family's acts, at the revision that is shown. */
export const idFor =
  (family: string, revision: number) =>
  (act: FamilyAct): string =>
    encodeFamily({ family, revision, act })
