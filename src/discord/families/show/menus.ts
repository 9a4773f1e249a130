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
import type { Construction, Facts } from '../../../families/facts/facts-schema.ts'
import { toldIn } from '../../../families/facts/settle-facts.ts'
import type { FamilyHead } from '../../../families/family-store.ts'
import { featuresOf, leadingFeatures } from '../../../families/features.ts'
import { howKnown } from '../../../families/strength/references.ts'
import { sayFeature, sayOption } from '../../../words/family-words.ts'
import { bare } from '../../../words/plain.ts'
import type { Say } from '../../../words/say.ts'
import { form, lineField, menuField, textField } from '../../message/form.ts'
import { cut } from '../../message/parts.ts'

type Row = APIActionRowComponent<APIStringSelectComponent>

/** Discord's menus hold so many options. */
const mostOptions = 25

export function menu(custom_id: string, placeholder: string, options: readonly APISelectMenuOption[], most = 1): Row {
  return {
    type: ComponentType.ActionRow,
    components: [
      {
        type: ComponentType.StringSelect,
        custom_id,
        placeholder: cut(placeholder, 150),
        min_values: 1,
        max_values: Math.min(most, options.length),
        options: options.slice(0, mostOptions),
      },
    ],
  }
}

export const fitting = (constructions: readonly Construction[], { identity }: Facts): Construction[] =>
  constructions.filter(one => one.formats.includes(identity.format) && one.kinds.includes(identity.kind))

export const letterOf = (i: number): string => String.fromCharCode(65 + i)

export const builtMenu = (say: Say, id: string, built: readonly Construction[]): Row =>
  menu(
    id,
    say('families.built.choose'),
    built.map((one, i) => ({
      value: one.construction,
      label: cut(`${letterOf(i)} · ${toldIn(one.title, say.locale.slice(0, 2))}`, 100),
    })),
  )

export function featureMenu(say: Say, base: Pack, id: string): Row {
  const all = [...featuresOf(base).keys()]
  const order = [...leadingFeatures, ...all.filter(one => !(leadingFeatures as readonly string[]).includes(one))]
  return menu(
    id,
    say('families.feature.choose'),
    order.filter(one => all.includes(one)).map(one => ({ value: one, label: cut(sayFeature(say, base, one), 100) })),
  )
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
  format: 'format',
  kind: 'kind',
  printed: 'printed',
  typical: 'typical',
  least: 'least',
  current: 'current',
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

export const newForm = (say: Say, custom_id: string): Form =>
  form(custom_id, say('families.form.title'), [
    lineField(fields.name, { label: say('families.form.name') }, { most: 60, required: true }),
    lineField(fields.maker, { label: say('families.form.maker') }, { most: 60, required: true }),
    menuField(
      fields.format,
      { label: say('families.form.format') },
      { options: ['18650', '21700', '20700', '26650', '14500'].map(one => ({ value: one, label: one })) },
    ),
    menuField(
      fields.kind,
      { label: say('families.form.kind') },
      { options: (['bare', 'protected'] as const).map(one => ({ value: one, label: say(`families.kind.${one}`) })) },
    ),
    lineField(
      fields.printed,
      { label: say('families.form.printed'), hint: say('families.form.printed.hint') },
      { most: 60, required: false },
    ),
  ])

export function figuresForm(say: Say, custom_id: string, { figures }: Facts): Form {
  const { capacity, currents, mass } = figures
  const shown = (value: number | undefined) => (value === undefined ? '' : String(value))
  const listed = currents?.map(({ amps, cutOff }) => (typeof cutOff === 'number' ? `${amps} (${cutOff} °C)` : amps))
  return form(custom_id, say('families.figures.title'), [
    lineField(
      fields.typical,
      { label: say('families.figures.capacity') },
      { most: 20, required: false, value: shown(capacity?.typical) },
    ),
    lineField(
      fields.least,
      { label: say('families.figures.least') },
      { most: 20, required: false, value: shown(capacity?.least) },
    ),
    lineField(
      fields.current,
      { label: say('families.figures.current'), hint: say('families.figures.current.hint') },
      { most: 60, required: false, value: listed?.join(', ') ?? '' },
    ),
    lineField(
      fields.mass,
      { label: say('families.figures.mass') },
      { most: 20, required: false, value: mass?.from === 'sheet' ? shown(mass.middle) : '' },
    ),
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
