// The buttons under a verdict that lead on from it: a letter to the seller, and how to buy safely or what to do with the cell.
import { type APIButtonComponent, ButtonStyle } from 'discord.js'
import type { VerdictScreen } from '../../../check/screen.ts'
import { hasLetter } from '../../../words/letter/draft-letter.ts'
import type { Say } from '../../../words/say.ts'
import { encodeBuying, placeOf } from '../../buying/buying-id.ts'
import { pressButton } from '../../message/parts.ts'
import { encodeLetter } from '../letter/letter-id.ts'

export function afterVerdict(say: Say, screen: VerdictScreen): APIButtonComponent[] {
  const danger = screen.judgement.verdict === 'danger'
  const [part, words] = danger ? (['suspect', 'buying.open.suspect'] as const) : (['buy', 'buying.open'] as const)
  const letter = pressButton(encodeLetter({ is: 'write', check: screen.check.id }), say('letter.write'))
  const buying = pressButton(
    encodeBuying({ is: 'open', place: placeOf(part) }),
    say(words),
    danger ? ButtonStyle.Primary : ButtonStyle.Secondary,
  )
  // In danger, what to do comes before whom to write to.
  if (!hasLetter(screen)) return [buying]
  return danger ? [buying, letter] : [letter, buying]
}
