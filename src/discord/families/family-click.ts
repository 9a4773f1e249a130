// Every button, menu and form of a family: rights are asked first, then the family as it stands, then what is meant.

import { type ActOf, type FamilyAct, type FamilyId, familyIds } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { decideInOrder, type Later, saidInTurn } from '../../services/keyed-queue.ts'
import { sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, redraw, refuse, replyPrivately, updateOrReply } from '../interaction/reply.ts'
import { moderating } from '../interaction/rights.ts'
import { message, rows, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { type ChangeAct, type Changed, changeFamily } from './change-family.ts'
import { addPhoto, dropPhoto } from './change-photos.ts'
import { answerAnybody, type ForAll, isForAll, sayGone } from './family-for-all.ts'
import { pageOf } from './family-page.ts'
import { type FamilyTurn, saveFamily } from './family-turn.ts'
import { changeReference } from './keep-reference.ts'
import { isLook, type Look, lookAtFamily } from './look-at-family.ts'
import { type ReviewAct, type Reviewed, reviewFamily, standingNow, viewWaiting } from './review-family.ts'
import { agreesElsewhere } from './show/agrees-elsewhere.ts'
import { checkButton } from './show/family-buttons.ts'
import { askForm, fakeForm, identityForm, idFor, referenceForm, retireForm, typedOf, whyForm } from './show/menus.ts'
import { photoForm } from './show/photo-form.ts'
import { showAgreed } from './show/show-review.ts'
import { tellAsker } from './tell-asker.ts'
import { showTypedAgain } from './typed-again.ts'
import { type WorkingOn, workingOn } from './working-on.ts'

export const familyClick = onClick(familyIds, (services, interaction, id) => {
  const { family, revision } = id
  const act: FamilyAct = id.act
  if (act.is === 'photo-sent') return addPhoto(services, interaction, family)
  // What anybody may press changes nothing of the model: it waits for nobody, and nobody for it.
  if (isForAll(act)) return answerAnybody(services, interaction, family, act)
  return decideInOrder(services.queue, `family ${interaction.guildId} ${family}`, () =>
    click(services, interaction, { family, revision, act }),
  )
})

type InTurnId = Pick<FamilyId, 'family' | 'revision'> & { readonly act: InTurn }

async function click(services: Services, interaction: Clicked, { family, revision, act }: InTurnId): Promise<Later> {
  const say = sayIn(interaction.locale)
  const settings = await moderating(services, interaction)
  if (!settings) return () => refuse(interaction, say, { code: 'not-moderator' })
  const work = await workingOn(services, settings.server, family)
  if (!work) return () => sayGone(interaction, say)
  const turn: FamilyTurn = { services, interaction, say, settings, work }
  if (isForm(act)) {
    if (interaction.isModalSubmit()) return () => refuse(interaction, say, { code: 'unknown-click' })
    return async () => interaction.showModal(await formOf(turn, act))
  }
  const page = (note?: string) => async () => updateOrReply(interaction, await pageOf(turn, note, 'page'))
  // Delivered again, a click meets its own change.
  if (work.family.changedBy === interaction.id) return page()
  if (isLook(act)) return () => lookAtFamily(turn, act)
  if (work.family.revision !== revision && !beside.includes(act.is))
    return page(sayRefusal(say, { code: 'changed-meanwhile' }))
  return carryOut(turn, act)
}

/** Reference cells and photographs are kept beside the draft: they are no change of what the message showed. */
const beside: readonly FamilyAct['is'][] = ['accept', 'withdraw', 'drop-photo']

const forms = ['figures', 'new-reference', 'new-fake', 'new-photo', 'new-photo-of', 'ask', 'back', 'retire'] as const
type Form = ActOf<(typeof forms)[number]>
const isForm = (act: FamilyAct): act is Form => forms.some(one => one === act.is)

/** What moderators do in turn, and of it what changes something. */
type InTurn = Exclude<FamilyAct, ForAll | ActOf<'photo-sent'>>
type Changing = Exclude<InTurn, Look | Form>

/** The form an act opens. */
async function formOf({ services, say, settings, work }: FamilyTurn, act: Form) {
  const id = idFor(work.family.id, work.family.revision)
  const opening = newOpening(services.newId)
  const { base, store } = services.families
  switch (act.is) {
    case 'figures':
      return identityForm(say, id({ is: 'figures-sent', opening }), typedOf(work.facts))
    case 'new-reference':
      return referenceForm(say, id({ is: 'reference-sent', opening }))
    case 'new-fake':
      return fakeForm(say, base, id({ is: 'fake-sent', opening }), work.facts)
    case 'new-photo':
      return photoForm(say, base, id({ is: 'photo-sent', opening }), work.facts)
    case 'new-photo-of':
      return photoForm(say, base, id({ is: 'photo-sent', opening }), work.facts, act.feature)
    case 'ask':
      return askForm(say, id({ is: 'asked', opening }), work.family.head === 0)
    case 'back':
      return whyForm(
        say,
        id({ is: 'back-sent', number: act.number, opening }),
        say('families.button.back-to', { number: act.number }),
      )
    case 'retire':
      return retireForm(
        say,
        id({ is: 'retired', opening }),
        (await store.heads(settings.server)).filter(one => one.state === 'in-force' && one.id !== work.family.id),
      )
  }
}

/** What changes something is answered in turn, a refusal outside. */
async function carryOut(turn: FamilyTurn, act: Changing): Promise<Later> {
  const { interaction } = turn
  const show = async (done: Changed) => updateOrReply(interaction, await pageOf(turn, done.note, done.page))
  switch (act.is) {
    case 'choose-built':
    case 'build':
    case 'made':
    case 'made-as':
    case 'tells':
    case 'not-known':
    case 'all-not-known':
    case 'rewrap':
    case 'fake-sent':
    case 'fake-of':
    case 'drop-fake': {
      const done = await changeFamily(turn, act)
      return done.untaken ? () => show(done) : saidInTurn(show(done))
    }
    case 'figures-sent':
      return takeFigures(turn, act)
    case 'accept':
    case 'withdraw':
      return saidInTurn(
        show(await changeReference(turn, act.reference, act.is === 'accept' ? 'accepted' : 'withdrawn')),
      )
    case 'drop-photo':
      return saidInTurn(updateOrReply(interaction, await dropPhoto(turn, act.photo)))
    case 'discard':
      return discard(turn)
    case 'asked':
    case 'agreed':
    case 'send-back':
    case 'back-sent':
    case 'retired':
      return review(turn, act)
  }
}

/** The form of name and figures: what cannot be read is given back, to be opened again as it was typed. */
async function takeFigures(turn: FamilyTurn, act: ChangeAct): Promise<Later> {
  const { services, interaction, say, work } = turn
  const done = await changeFamily(turn, act)
  const { id: family, revision } = work.family
  const show = async () =>
    updateOrReply(
      interaction,
      done.untaken && interaction.isModalSubmit()
        ? await showTypedAgain(services, interaction, say, done.note, { family, revision })
        : await pageOf(turn, done.note, done.page),
    )
  return done.untaken ? show : saidInTurn(show())
}

async function review(turn: FamilyTurn, act: ReviewAct): Promise<Later> {
  const { services, settings } = turn
  const done = await reviewFamily(turn, act)
  const now = (await workingOn(services, settings.server, turn.work.family.id)) ?? turn.work
  if (!done.done) return () => answerReview(turn, act, done, now)
  await answerReview(turn, act, done, now)
  // Whoever pressed is answered first.
  if (act.is === 'agreed' || act.is === 'send-back') await tellAsker(turn, now, act.is === 'agreed')
  return undefined
}

async function answerReview(turn: FamilyTurn, act: ReviewAct, done: Reviewed, now: WorkingOn): Promise<void> {
  const { services, interaction, say } = turn
  // What stands in the moderators' channel is redrawn for everybody; the one who pressed is answered there.
  if (agreesElsewhere(interaction)) {
    if (!done.done) return replyPrivately(interaction, message([text(done.note), small(say('caution.line'))]))
    const { family } = now
    const check = family.head > 0 && family.state === 'in-force' ? rows([checkButton(say, family)]) : []
    return redraw(interaction, message([text(done.note), ...check, small(say('caution.line'))]))
  }
  if (act.is === 'asked' && done.done)
    return updateOrReply(
      interaction,
      await viewWaiting(services, say, now, { note: done.note, ...standingNow(turn, now) }),
    )
  const agreed = act.is === 'agreed' && done.done && now.family.state === 'in-force'
  return updateOrReply(interaction, agreed ? showAgreed(say, now, done.note) : await pageOf(turn, done.note, 'page'))
}

/** A draft goes; a family that never came into force goes with it. */
async function discard(turn: FamilyTurn): Promise<Later> {
  const { services, interaction, say, settings, work } = turn
  const { store } = services.families
  const { family } = work
  const told = (note: string) => updateOrReply(interaction, message([text(note), small(say('caution.line'))]))
  if (family.head === 0) {
    const gone = await store.discard(settings.server, family.id, family.revision)
    services.families.renew(settings.server)
    if (gone !== 'saved') return () => told(sayRefusal(say, { code: 'changed-meanwhile' }))
    return saidInTurn(told(say('families.discarded')))
  }
  const after = { ...family, draft: null, review: null, revision: family.revision + 1, changedBy: interaction.id }
  const saved = await saveFamily(turn, after)
  if (saved !== 'saved') return () => told(sayRefusal(say, { code: 'changed-meanwhile' }))
  return saidInTurn(updateOrReply(interaction, await pageOf(turn, say('families.discarded'), 'page')))
}
