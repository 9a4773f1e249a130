// The forms of a hand-over: to whom and why, a reason alone, and what a moderator is asked with its photographs.
import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import { longestReason } from '../../../../check/custody.ts'
import {
  encodeHand,
  type HandOverCommand,
  type HandOverPress,
  type SentHandOver,
} from '../../../../custom-ids/hand-over-id.ts'
import { mostPhotos } from '../../../../readers/photo/photo-reader.ts'
import type { Key } from '../../../../words/catalogue.ts'
import type { Say } from '../../../../words/say.ts'
import { form, mentionableField, textField, uploadField } from '../../../message/form.ts'

export const whyField = 'why'
export const takerField = 'taker'
export const photosField = 'photos'

/** What each form is opened by, what it is called and what it asks. */
const forms = {
  offer: { sends: 'offered', title: 'hands.offer', asks: 'form.why', required: true },
  decline: { sends: 'declined', title: 'panel.decline', asks: 'form.why', required: false },
  'give-back': { sends: 'gave-back', title: 'hands.give-back', asks: 'form.why', required: true },
  ask: { sends: 'asked', title: 'hands.ask', asks: 'form.ask.words', required: false },
  'send-back': { sends: 'sent-back', title: 'help-request.send-back', asks: 'form.send-back.why', required: true },
  'pass-on': { sends: 'passed-on', title: 'help-request.pass-on', asks: 'form.why', required: false },
  redirect: { sends: 'redirected', title: 'desk.redirect', asks: 'form.why', required: false },
  'take-over': { sends: 'took-over', title: 'help-request.take-over', asks: 'form.why', required: true },
} as const satisfies Partial<Record<HandOverPress, { sends: SentHandOver; title: Key; asks: Key; required: boolean }>>

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
  const id = encodeHand({ check: check.id, does: sends, form: { opening, revision: check.revision } })
  return form(id, say(title), [
    ...(does === 'offer' || does === 'redirect' ? [takerMenu(say, 'form.offer.to.hint')] : []),
    ...(does === 'pass-on' ? [takerMenu(say, 'form.pass-on.to.hint')] : []),
    textField(whyField, { label: say(asks) }, { most: longestReason, required }),
    ...(does === 'ask' && photos ? [photoUpload(say)] : []),
  ])
}

const takerMenu = (say: Say, hint: 'form.offer.to.hint' | 'form.pass-on.to.hint') =>
  mentionableField(
    takerField,
    { label: say('form.offer.to'), hint: say(hint) },
    { required: false, min_values: 0, max_values: 1 },
  )

const photoUpload = (say: Say) =>
  uploadField(photosField, { label: say('form.ask.photos'), hint: say('form.ask.photos.hint') }, mostPhotos)
