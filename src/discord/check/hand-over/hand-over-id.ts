// Custom ids of everything about handing a check over: a tagged union out, or nothing when the id is not one of ours.
//
// An id carries no authority, and no revision: these buttons stand in channels for days, and mean the check as it is then.
import type { CheckId } from '../../../check/ids.ts'
import { isOpening, isOwnId, readRevision, writeRevision } from '../../interaction/id-parts.ts'

/** `hands` is the menu on one's own check; what ends in a form has the form's own deed beside it. */
const handDeeds = [
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
export type HandOverCommand = (typeof handDeeds)[number]

/**
 * `form`: only of forms. Its `opening` makes each form's id new, since phones keep forms by id; its `revision` is the one the check
 * stood at, so that what is typed about one question is not taken for another.
 */
export type HandId = {
  readonly check: CheckId
  readonly does: HandOverCommand
  readonly form?: { readonly opening: string; readonly revision: number }
}

const mark = 'ch1'

export const encodeHand = ({ check, does, form }: HandId): string =>
  [mark, check, does, ...(form ? [form.opening, writeRevision(form.revision)] : [])].join('.')

/** Decodes a custom id; undefined for anything that `encodeHand` cannot have written. */
export function decodeHand(id: string): HandId | undefined {
  const [version, check, does, opening, revision, ...rest] = id.split('.')
  if (version !== mark || rest.length > 0 || !isOwnId(check) || !isDeed(does)) return undefined
  if (opening === undefined) return { check, does }
  const stood = readRevision(revision)
  return isOpening(opening) && stood !== undefined ? { check, does, form: { opening, revision: stood } } : undefined
}

const isDeed = (does: string | undefined): does is HandOverCommand =>
  (handDeeds as readonly (string | undefined)[]).includes(does)
