// The button under a verdict that offers the cell as a reference, where nothing speaks against it.
import type { APIButtonComponent } from 'discord.js'
import type { VerdictScreen } from '../../../check/screen.ts'
import { encodeOffer } from '../../../custom-ids/walk-id.ts'
import { leadingFeatures } from '../../../families/features.ts'
import { isServerFamily } from '../../../services/family-desk.ts'
import type { Say } from '../../../words/say.ts'
import { pressButton } from '../../message/parts.ts'

/** Of a family of the server, with a look at something it is told by, and with no sign against it. */
export const canBeOffered = ({ check, judgement }: VerdictScreen): boolean =>
  isServerFamily(check.family) &&
  (judgement.verdict === 'open' || judgement.verdict === 'nothing-found') &&
  leadingFeatures.some(one => check.answers[one]?.kind === 'option') &&
  judgement.findings.every(one => one.rule.kind === 'no-bearing')

export const offerButton = (say: Say, screen: VerdictScreen): APIButtonComponent[] =>
  canBeOffered(screen)
    ? [pressButton(encodeOffer({ is: 'ask', check: screen.check.id }), say('families.walk.offer'))]
    : []
