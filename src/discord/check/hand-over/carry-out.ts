// Carries a hand-over out: the step, the save, the answer to whoever pressed, and the word to everybody else it concerns.
import { act } from '../../../check/act.ts'
import type { Check } from '../../../check/check.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import type { HandOverEvent } from '../../../check/hand-over.ts'
import type { NoticeKind } from '../../../check/notice-store.ts'
import type { Later } from '../../../services/keyed-queue.ts'
import { sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { sayMoment, sayPerson, sayTaker } from '../../../words/say-custody.ts'
import { changedMeanwhile } from '../../interaction/refusal.ts'
import { editReply, redraw, refuse, replyPrivately } from '../../interaction/reply.ts'
import { mayWriteHere } from '../../interaction/rights.ts'
import { message, small, text } from '../../message/parts.ts'
import { sayInPublic } from '../../posts/say-in-public.ts'
import { mostOpen } from '../begin-check.ts'
import { type SavedStep, saveStep } from '../save-step.ts'
import { showScreen } from '../show/screen.ts'
import { countHelp, showHelping } from './helping.ts'
import { offerOut } from './offer-out.ts'
import { showAsked, showClaimed, showHelpRequestOver } from './show/help-request.ts'
import { showHands } from './show/holder-menu.ts'
import { type PanelNote, showPanel } from './show/panel.ts'
import { postPanel, postWord, tellOthers } from './tell-others.ts'
import type { Turn } from './turn.ts'

/**
 * Gives back what is left to be said to whoever was refused. Takes of one person come one after the other, also beginnings: two at once
 * would each see that there is room for one more.
 */
export const carryOut = (turn: Turn, event: HandOverEvent): Promise<Later> =>
  event.is === 'take' || event.is === 'take-over'
    ? turn.services.queue.inOrder(`begins ${turn.actor.person}`, () => inTurn(turn, event))
    : inTurn(turn, event)

async function inTurn(turn: Turn, event: HandOverEvent): Promise<Later> {
  const { services, interaction, say, program, check, actor } = turn
  const stepped = act(program, check, actor, event, services.now())
  if (!stepped.ok) return () => refuse(interaction, say, stepped.refusal)
  if (event.is === 'take' || event.is === 'take-over') {
    const count = (await services.checks.heldBy(actor.person, services.now())).length
    if (count >= mostOpen) return () => refuse(interaction, say, { code: 'too-many-open', count })
  }
  // What the bot posts for somebody, they may post themselves.
  if (event.is === 'offer' && !mayWriteHere(interaction))
    return () => refuse(interaction, say, { code: 'may-not-post-here' })
  const tooMuch =
    event.is === 'offer' && (await services.fairUse.admitPost(actor.person, interaction.channelId, services.now()))
  if (tooMuch) return () => refuse(interaction, say, tooMuch)
  const takes = event.is === 'take' || event.is === 'take-over'
  const saved = await saveStep(services, interaction, program, check, stepped, takes ? mostOpen : undefined)
  if (saved.saving === 'full') return () => refuse(interaction, say, { code: 'too-many-open', count: mostOpen })
  if (saved.saving === 'seen') return undefined
  if (saved.saving === 'stale')
    return () => refuse(interaction, say, event.is === 'take' ? { code: 'nothing-to-take' } : changedMeanwhile)
  const inPublic = await sayInPublic(services, saved.check.server, interaction.guildLocale)
  if (event.is === 'offer') {
    await redraw(interaction, await showScreen(say, program, saved.screen, services))
    await tellOthers(services, inPublic, await offerOut({ ...turn, check: saved.check }, saved.screen))
    return undefined
  }
  if (event.is === 'redirect') return redirected(turn, inPublic, saved.check)
  if (event.is === 'send-back') await countHelp(services, saved.check, actor.person)
  await answer(turn, inPublic, event, saved)
  await tellOthers(services, inPublic, saved.check)
  const word = words[event.is]
  if (!word) return undefined
  const who = event.is === 'take-over' ? check.holder : saved.check.holder
  const channel = await whereTold(turn, saved.check)
  const told = await postWord(services, inPublic, saved.check, { word, who, channel })
  if (event.is === 'ask-closing')
    await editReply(interaction, showAsked(say, saved.check, askedOf(say, saved.check), told ? channel : undefined))
  return undefined
}

const askedOf = (say: Say, { holder }: Check): string => say('desk.asked', { holder: sayPerson(holder) })

/** Shown where it was offered before, with whoever it is for now called; its holder is told. */
async function redirected(turn: Turn, inPublic: Say, check: Check): Promise<undefined> {
  const { services, interaction, say } = turn
  const { offer } = custodyOf(check)
  const now = offer ? say('progress.offered', { taker: sayTaker(say, offer.to), until: sayMoment(offer.until) }) : ''
  await replyPrivately(interaction, message([text(now), small(say('caution.line'))]))
  const channel = await whereTold(turn, check)
  const shown = await postPanel(services, inPublic, check, channel)
  if (!shown) await tellOthers(services, inPublic, check)
  const word = { word: 'redirected', who: check.holder, channel } as const
  const told = await postWord(services, inPublic, check, word)
  const said = shown ? now : `${now} ${say('desk.redirected.unseen')}`
  await editReply(interaction, showAsked(say, check, said, told ? channel : undefined))
}

/** What whoever did not press is told. */
const words: Partial<Record<HandOverEvent['is'], PanelNote>> = {
  'send-back': 'sent-back',
  'give-back': 'gave-back',
  'take-over': 'took-over',
  'ask-closing': 'closing',
  reopen: 'reopened',
}

/** The channel the holder looks at: where they asked, were given it or were told of it; without any, the one of this click. */
async function whereTold({ services, interaction, check }: Turn, now: Check): Promise<string> {
  const notices = await services.notices.of(now.id)
  const known = (kind: NoticeKind) => notices.find(one => one.kind === kind)?.channel
  return custodyOf(check).helpRequest?.where ?? known('panel') ?? known('note') ?? interaction.channelId ?? ''
}

/** What whoever pressed sees: their own message in their language, a channel's in that of the server. */
async function answer(turn: Turn, inPublic: Say, event: HandOverEvent, { check, screen }: SavedStep): Promise<void> {
  const { services, interaction, say, program } = turn
  const what = sayWhat(say, program.family)
  switch (event.is) {
    case 'take':
    case 'take-over':
      return replyPrivately(interaction, await showScreen(say, program, screen, services))
    case 'withdraw':
      return redraw(interaction, await showScreen(say, program, screen, services))
    case 'share':
    case 'unask':
    case 'pair':
      return redraw(interaction, showHands(say, program, check))
    case 'send-back':
      return redraw(interaction, showHelpRequestOver(inPublic, check, program))
    case 'keep-open':
      return replyPrivately(interaction, await showScreen(say, program, screen, services, say('desk.kept')))
    case 'ask-closing':
      return replyPrivately(interaction, message([text(askedOf(say, check)), small(say('caution.line'))]))
    case 'reopen': {
      const note = check.settled ? say('desk.settled') : undefined
      return replyPrivately(interaction, await showHelping(services, say, program, check, note))
    }
    case 'claim':
    case 'let-go':
    case 'pass-on':
      return replyPrivately(interaction, showClaimed(say, check))
    case 'decline':
      return redraw(interaction, showPanel(inPublic, what, check))
    default: {
      const given = say('panel.taken', { holder: sayPerson(check.holder), what })
      return redraw(interaction, message([text(given), small(say('caution.line'))]))
    }
  }
}
