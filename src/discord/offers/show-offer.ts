// The one quiet offer under a new forum post: a button that starts a check for whoever presses it.
import { ButtonStyle } from 'discord.js'
import { startWithFacts } from '../../custom-ids/facts-codec.ts'
import type { Say } from '../../words/say.ts'
import { message, pressButton, rows, type ShownMessage, small, text } from '../message/parts.ts'

export const showOffer = (say: Say): ShownMessage =>
  message([
    text(say('offer.what')),
    ...rows([pressButton(startWithFacts({}), say('offer.start'), ButtonStyle.Primary)]),
    small(`${say('offer.quiet')}\n${say('caution.line')}`),
  ])
