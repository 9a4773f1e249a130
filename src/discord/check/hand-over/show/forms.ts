// The forms of a hand-over: to whom and why, a reason alone, and what a moderator is asked with its photographs.
import {
  type APILabelComponent,
  type APIModalInteractionResponseCallbackData,
  ComponentType,
  TextInputStyle,
} from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import { longestReason } from '../../../../check/custody.ts'
import { mostPhotos } from '../../../../readers/photo/photo-reader.ts'
import type { Key } from '../../../../words/catalogue.ts'
import type { Say } from '../../../../words/say.ts'
import { cut } from '../../../message/parts.ts'
import { encodeHand, type HandOverCommand } from '../hand-over-id.ts'

export const whyField = 'why'
export const takerField = 'taker'
export const photosField = 'photos'

/** What each form is opened by, what it is called and what it asks. */
const forms = {
  offer: { sends: 'offered', title: 'hands.offer', asks: 'form.why', required: true },
  decline: { sends: 'declined', title: 'panel.decline', asks: 'form.why', required: false },
  'give-back': { sends: 'gave-back', title: 'hands.give-back', asks: 'form.why', required: true },
  ask: { sends: 'asked', title: 'hands.ask', asks: 'form.ask.words', required: false },
  'send-back': { sends: 'sent-back', title: 'plea.send-back', asks: 'form.send-back.why', required: true },
  'take-over': { sends: 'took-over', title: 'plea.take-over', asks: 'form.why', required: true },
} as const satisfies Partial<
  Record<HandOverCommand, { sends: HandOverCommand; title: Key; asks: Key; required: boolean }>
>

export type HandOverForm = keyof typeof forms

export const isHandOverForm = (does: HandOverCommand): does is HandOverForm => does in forms

/** `photos`: whether there is a place where moderators can be shown photographs. */
export function handForm(
  say: Say,
  check: Check,
  does: HandOverForm,
  opening: string,
  photos: boolean,
): APIModalInteractionResponseCallbackData {
  const { sends, title, asks, required } = forms[does]
  return {
    custom_id: encodeHand({ check: check.id, does: sends, form: { opening, revision: check.revision } }),
    title: cut(say(title), 45),
    components: [
      ...(does === 'offer' ? [takerMenu(say)] : []),
      {
        type: ComponentType.Label,
        label: cut(say(asks), 45),
        component: {
          type: ComponentType.TextInput,
          custom_id: whyField,
          style: TextInputStyle.Paragraph,
          required,
          max_length: longestReason,
        },
      },
      ...(does === 'ask' && photos ? [photoUpload(say)] : []),
    ],
  }
}

const takerMenu = (say: Say): APILabelComponent => ({
  type: ComponentType.Label,
  label: cut(say('form.offer.to'), 45),
  description: cut(say('form.offer.to.hint'), 100),
  component: {
    type: ComponentType.MentionableSelect,
    custom_id: takerField,
    required: false,
    min_values: 0,
    max_values: 1,
  },
})

const photoUpload = (say: Say): APILabelComponent => ({
  type: ComponentType.Label,
  label: cut(say('form.ask.photos'), 45),
  description: cut(say('form.ask.photos.hint'), 100),
  component: {
    type: ComponentType.FileUpload,
    custom_id: photosField,
    required: false,
    min_values: 0,
    max_values: mostPhotos,
  },
})
