// The form of a photograph: the file, what it shows, of a good one or a false one, in words, and that whoever sends it took it.
import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Pack } from '../../../engine/pack/pack.ts'
import type { Facts } from '../../../families/facts/facts-schema.ts'
import { featuresOf } from '../../../families/features.ts'
import { mostAlt } from '../../../families/photos.ts'
import { sayFeature, sayOption } from '../../../words/family-words.ts'
import type { Say } from '../../../words/say.ts'
import { form, menuField, textField, uploadField } from '../../message/form.ts'
import { cut } from '../../message/parts.ts'
import { looksOptions } from './menus.ts'

export const photoFields = { file: 'photo', shows: 'shows', kind: 'kind', words: 'words', took: 'took' } as const

/** `feature`: of which alone it may be; left out, of those that are looked at first. */
export function photoForm(
  say: Say,
  base: Pack,
  custom_id: string,
  facts: Facts,
  feature?: string,
): APIModalInteractionResponseCallbackData {
  const { file, shows, kind, words, took } = photoFields
  const options = feature === undefined ? looksOptions(say, base, facts, true) : optionsOf(say, base, feature)
  const choice = (value: string, label: string) => ({ value, label })
  return form(custom_id, say('families.photo.form'), [
    uploadField(file, { label: say('families.photo.file'), hint: say('families.photo.file.hint') }, 1, 1),
    menuField(shows, { label: say('families.photo.shows') }, { options }),
    menuField(
      kind,
      { label: say('families.photo.kind') },
      {
        options: [choice('good', say('families.photo.kind.good')), choice('false', say('families.photo.kind.false'))],
      },
    ),
    textField(words, { label: say('families.photo.words') }, { most: mostAlt, required: true }),
    menuField(
      took,
      { label: say('families.photo.took') },
      { options: [choice('yes', say('families.photo.took.yes')), choice('no', say('families.photo.took.no'))] },
    ),
  ])
}

const optionsOf = (say: Say, base: Pack, id: string) =>
  (featuresOf(base).get(id)?.answer.options ?? []).slice(0, 25).map(({ id: option }) => ({
    value: `${id}=${option}`,
    label: cut(`${sayFeature(say, base, id)}: ${sayOption(say, base, id, option)}`, 100),
  }))
