// The buttons that stand on more than one page of a family: a check of such a cell, trying a draft, agreeing to what waits, sending it back.
import { type APIButtonComponent, ButtonStyle } from 'discord.js'
import type { ServerFamily } from '../../../families/family.ts'
import type { Say } from '../../../words/say.ts'
import { pressButton } from '../../message/parts.ts'
import type { WorkingOn } from '../working-on.ts'
import { idFor } from './menus.ts'

/** Begins a check of such a cell. */
export const checkButton = (say: Say, family: Pick<ServerFamily, 'id' | 'revision'>) =>
  pressButton(idFor(family.id, family.revision)({ is: 'check' }), say('families.button.check'), ButtonStyle.Primary)

/** How much of a digest stands in an id, so that who agrees agrees to what was shown. */
const shownDigest = (digest: string): string => digest.replace('sha256:', '').slice(0, 12)

export const agreeButton = (say: Say, { family, proposed }: WorkingOn) =>
  pressButton(
    idFor(family.id, family.revision)({ is: 'agreed', digest: shownDigest(proposed.digest) }),
    say('families.button.agree'),
    ButtonStyle.Success,
  )

/** Of whoever looks at what waits: whether they may agree, and whether they have asked for it themselves. */
export type Standing = { readonly agree: boolean; readonly own: boolean }

export const sendBackButton = (say: Say, { family }: WorkingOn, own: boolean) =>
  pressButton(
    idFor(family.id, family.revision)({ is: 'send-back' }),
    say(own ? 'families.button.take-back' : 'families.button.send-back'),
  )

/** Tries what would come into force. */
export const tryButton = (
  say: Say,
  { id, revision, review }: Pick<ServerFamily, 'id' | 'revision' | 'review'>,
): APIButtonComponent =>
  pressButton(idFor(id, revision)({ is: 'try' }), say('families.button.try'), review ? undefined : ButtonStyle.Primary)
