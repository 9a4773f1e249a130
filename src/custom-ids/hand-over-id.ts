// Custom ids of everything about handing a check over: which check, and what is done with it.
//
// They hold no revision: these buttons stand in channels for days, and mean the check as it is then.
import { z } from 'zod'
import { type IdOf, idKind, oneOf, silent } from './id-kind.ts'
import { opening, ownId, revision } from './id-parts.ts'

/** What a button does. `hands` is the menu on one's own check; `offer`, `decline`, `give-back`, `ask`, `send-back`, `pass-on`, `take-over` and `redirect` open a form. */
const presses = z.enum([
  'hands',
  'return',
  'offer',
  'take',
  'decline',
  'withdraw',
  'give-back',
  'ask',
  'unask',
  'share',
  'keep',
  'progress',
  'help',
  'claim',
  'let-go',
  'pass-on',
  'send-back',
  'take-over',
  'go-on',
  'redirect',
  'ask-closing',
  'close-it',
  'keep-open',
  'pair',
  'no-pair',
  'reopen',
])
/** The forms, sent in. */
const sent = z.enum(['offered', 'declined', 'gave-back', 'asked', 'sent-back', 'took-over', 'passed-on', 'redirected'])

export const handOverIds = idKind(
  'ch1',
  { check: ownId, does: presses, form: silent(undefined) },
  /**
   * `opening` makes each form's id new, since phones keep forms by id; `revision` is the one the check stood at, so that what is typed
   * about one question is not taken for another.
   */
  { check: ownId, does: sent, form: oneOf({ opening, revision }) },
)

export type HandId = IdOf<typeof handOverIds>
export type HandOverPress = z.output<typeof presses>
export type SentHandOver = z.output<typeof sent>
export type HandOverCommand = HandId['does']
export const { write: encodeHand, read: decodeHand } = handOverIds
