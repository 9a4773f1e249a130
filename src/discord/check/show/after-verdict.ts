// The buttons that lead on from a verdict: buying safely or what to do with the cell, and what can wait: a letter, showing it, not being counted.
import type { APIButtonComponent } from 'discord.js'
import type { VerdictScreen } from '../../../check/screen.ts'
import { encodeBuying, placeOf } from '../../../custom-ids/buying-id.ts'
import { encodeLetter } from '../../../custom-ids/letter-id.ts'
import { encodeShare } from '../../../custom-ids/share-id.ts'
import { hasLetter } from '../../../words/letter/draft-letter.ts'
import type { Say } from '../../../words/say.ts'
import { offerButton } from '../../families/show/offer-button.ts'
import { pressButton } from '../../message/parts.ts'
import { button } from './check-buttons.ts'

export const isDanger = ({ judgement }: VerdictScreen): boolean => judgement.verdict === 'danger'

export const buyingButton = (say: Say, screen: VerdictScreen): APIButtonComponent =>
  isDanger(screen)
    ? pressButton(encodeBuying({ is: 'open', place: placeOf('suspect') }), say('buying.open.suspect'))
    : pressButton(encodeBuying({ is: 'open', place: placeOf('buy') }), say('buying.open'))

/** Under a verdict; of a danger under its details, since on that screen stands nothing but what to do. */
export function whatCanWait(say: Say, screen: VerdictScreen): APIButtonComponent[] {
  const { check } = screen
  return [
    ...(hasLetter(screen) ? [pressButton(encodeLetter({ is: 'write', check: check.id }), say('letter.write'))] : []),
    ...offerButton(say, screen),
    ...(check.server === null ? [] : [pressButton(encodeShare({ is: 'see', check: check.id }), say('share.see'))]),
    ...(check.leaves === 'outcome' ? [button(check, { is: 'leave-nothing' }, say('button.leave-nothing'))] : []),
  ]
}
