// Custom ids of everything about handing a check over: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority, and no revision: these buttons stand in channels for days, and mean the check as it is then.
import type { CheckId } from '../check/check.ts'

/** `hands` is the menu on one's own check; what ends in a form has the form's own deed beside it. */
export const handDeeds = [
  'hands',
  'return',
  'offer',
  'offered',
  'take',
  'decline',
  'declined',
  'withdraw',
  'give-back',
  'gave-back',
  'ask',
  'asked',
  'unask',
  'share',
  'keep',
  'progress',
  'help',
  'send-back',
  'sent-back',
  'take-over',
  'took-over',
  'go-on',
] as const
export type HandDeed = (typeof handDeeds)[number]

/** `opening` makes each form's id new, since phones keep forms by id. */
export type HandId = { readonly check: CheckId; readonly does: HandDeed; readonly opening?: string }

const mark = 'ch1'

export const encodeHand = ({ check, does, opening }: HandId): string =>
  [mark, check, does, ...(opening === undefined ? [] : [opening])].join('.')

/** Decodes a custom id; undefined for anything that `encodeHand` cannot have written. */
export function decodeHand(id: string): HandId | undefined {
  const [version, check, does, opening, ...rest] = id.split('.')
  if (version !== mark || rest.length > 0 || !/^[a-z0-9]{6,32}$/.test(check ?? '') || !isDeed(does)) return undefined
  if (opening !== undefined && !/^[a-z0-9]{1,16}$/.test(opening)) return undefined
  return { check: check ?? '', does, ...(opening !== undefined && { opening }) }
}

const isDeed = (does: string | undefined): does is HandDeed =>
  (handDeeds as readonly (string | undefined)[]).includes(does)
