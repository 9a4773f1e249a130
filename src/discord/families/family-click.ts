// Every button, menu and form of a family: rights are asked first, then the family as it stands, then what is meant.

import { type FamilyAct, type FamilyId, familyIds } from '../../custom-ids/family-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { diffFacts } from '../../families/diff.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { beginCheck } from '../check/begin-check.ts'
import { showScreen } from '../check/show/screen.ts'
import { onClick } from '../interaction/click-handler.ts'
import { sayRefusal } from '../interaction/refusal.ts'
import {
  type Clicked,
  defer,
  editReply,
  redraw,
  refuse,
  replyPrivately,
  replyWithFile,
  updateOrReply,
} from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { message, rows, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { type ChangeAct, type Changed, changeFamily } from './change-family.ts'
import { addPhoto, dropPhoto, exportWithPhotos, photosPage } from './change-photos.ts'
import { pageOf } from './family-page.ts'
import { sheetOf } from './family-sheet.ts'
import type { FamilyTurn } from './family-turn.ts'
import { changeReference, offeredEnough } from './keep-reference.ts'
import { mayAgreeNow, type ReviewAct, type Reviewed, reviewFamily, viewWaiting } from './review-family.ts'
import { seeFamily } from './see-family.ts'
import { agreesElsewhere } from './show/agrees-elsewhere.ts'
import { checkButton } from './show/family-buttons.ts'
import { askForm, fakeForm, identityForm, idFor, referenceForm, retireForm, typedOf, whyForm } from './show/menus.ts'
import { photoForm } from './show/photo-form.ts'
import { showMore } from './show/show-page.ts'
import { showHistory } from './show/show-parts.ts'
import { showGoingBack, showTrial } from './show/show-review.ts'
import { tellAsker } from './tell-asker.ts'
import { tryFamily } from './try-family.ts'
import { openTypedAgain, showTypedAgain } from './typed-again.ts'
import { beginWalk } from './walk-cell.ts'
import { type WorkingOn, workingOn } from './working-on.ts'

export const familyClick = onClick(familyIds, (services, interaction, id) =>
  id.act.is === 'photo-sent' ? addPhoto(services, interaction, id.family) : inTurn(services, interaction, id),
)

const inTurn = (services: Services, interaction: Clicked, id: FamilyId): Promise<void> =>
  services.queue.inOrder(`family ${interaction.guildId} ${id.family}`, () => click(services, interaction, id))

async function click(services: Services, interaction: Clicked, { family, revision, act }: FamilyId): Promise<void> {
  const say = sayIn(interaction.locale)
  const server = serverOf(interaction)
  if (act.is === 'see') {
    const shown = server === null ? undefined : await seeFamily(services, interaction, say, server, family)
    return shown ? updateOrReply(interaction, shown) : sayGone(interaction, say)
  }
  if (act.is === 'sheet') {
    const sheet = server === null ? undefined : await sheetOf(services, say, server, family)
    return sheet ? replyPrivately(interaction, sheet) : sayGone(interaction, say)
  }
  if (act.is === 'check') return checkOne(services, interaction, say, family)
  if (act.is === 'reference-offered') {
    const offeredTo = server === null ? undefined : await workingOn(services, server, family)
    if (server === null || !offeredTo?.inForce) return sayGone(interaction, say)
    const enough = offeredEnough(say, offeredTo, interaction.user.id)
    if (enough === undefined) return beginWalk(services, interaction, say, offeredTo, false)
    return replyPrivately(interaction, message([text(enough), small(say('caution.line'))]))
  }
  const settings = await moderating(services, interaction)
  if (!settings) return refuse(interaction, say, { code: 'not-moderator' })
  const work = await workingOn(services, settings.server, family)
  if (!work) return sayGone(interaction, say)
  const turn: FamilyTurn = { services, interaction, say, settings, work }
  const form = formOf(turn, act)
  if (form !== undefined) {
    if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
    return interaction.showModal(await form)
  }
  // Delivered again, a click meets its own change.
  if (work.family.changedBy === interaction.id) return updateOrReply(interaction, await pageOf(turn, undefined, 'page'))
  if (changes(act) && work.family.revision !== revision)
    return updateOrReply(interaction, await pageOf(turn, sayRefusal(say, { code: 'changed-meanwhile' }), 'page'))
  return carryOut(turn, act)
}

const looking: readonly FamilyAct['is'][] = [
  ...([
    'page',
    'waiting',
    'waiting-beside',
    'more',
    'choose-feature',
    'try',
    'history',
    'export',
    'references',
    'fakes',
    'back-ask',
    'back',
    'photos',
    'figures-again',
    'export-photos',
  ] as const),
]
/** Reference cells and photographs are kept beside the draft: they are no change of what the message showed. */
const beside: readonly FamilyAct['is'][] = ['accept', 'withdraw', 'reference-sent', 'drop-photo']
const changes = (act: FamilyAct): boolean => !looking.includes(act.is) && !beside.includes(act.is)

const sayGone = (interaction: Clicked, say: Say): Promise<void> =>
  replyPrivately(interaction, message([text(say('families.refused.gone')), small(say('caution.line'))]))

/** The form an act opens; undefined for every other act. */
function formOf({ services, say, settings, work }: FamilyTurn, act: FamilyAct) {
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
      return store.heads(settings.server).then(heads =>
        retireForm(
          say,
          id({ is: 'retired', opening }),
          heads.filter(one => one.state === 'in-force' && one.id !== work.family.id),
        ),
      )
    default:
      return undefined
  }
}

async function carryOut(turn: FamilyTurn, act: FamilyAct): Promise<void> {
  const { services, interaction, say, settings, work } = turn
  const { base, store } = services.families
  const show = async (done: Changed) => updateOrReply(interaction, await pageOf(turn, done.note, done.page))
  switch (act.is) {
    case 'page':
      return updateOrReply(interaction, await pageOf(turn, undefined, 'page'))
    case 'references':
    case 'fakes':
      return updateOrReply(interaction, await pageOf(turn, undefined, act.is))
    case 'waiting':
      return updateOrReply(interaction, await waitingPage(turn))
    case 'waiting-beside':
      return replyPrivately(interaction, await waitingPage(turn))
    case 'more':
      return updateOrReply(interaction, showMore(say, work))
    case 'choose-feature': {
      const [feature = ''] = interaction.isStringSelectMenu() ? interaction.values : []
      return updateOrReply(interaction, await pageOf(turn, undefined, { feature }))
    }
    case 'choose-built':
    case 'build':
    case 'made':
    case 'tells':
    case 'not-known':
    case 'all-not-known':
    case 'rewrap':
    case 'fake-sent':
    case 'fake-of':
    case 'drop-fake':
      return show(await changeFamily(turn, act))
    case 'figures-again': {
      const id = idFor(work.family.id, work.family.revision)
      return openTypedAgain(services, interaction, say, act.draft, opening => id({ is: 'figures-sent', opening }))
    }
    case 'figures-sent':
      return takeFigures(turn, act)
    case 'reference-sent':
      return beginWalk(services, interaction, say, work, true)
    case 'accept':
    case 'withdraw':
      return show(await changeReference(turn, act.reference, act.is === 'accept' ? 'accepted' : 'withdrawn'))
    case 'try': {
      await defer(interaction)
      const trial = await tryFamily(services, settings.server, work)
      return editReply(interaction, showTrial(say, base, work, trial, mayAgreeNow(turn, work)))
    }
    case 'history':
      return updateOrReply(interaction, showHistory(say, work, await store.versions(settings.server, work.family.id)))
    case 'back-ask': {
      const to = await store.version(settings.server, work.family.id, act.number)
      if (!to) return sayGone(interaction, say)
      return updateOrReply(interaction, showGoingBack(say, base, work, to, diffFacts(work.inForce?.facts, to.facts)))
    }
    case 'export':
      return replyWithFile(interaction, say('families.exported'), {
        name: `${work.family.id}.yaml`,
        content: await services.files.write(work.facts),
      })
    case 'export-photos':
      return exportWithPhotos(turn)
    case 'photos':
      return updateOrReply(interaction, await photosPage(turn, act.page))
    case 'drop-photo':
      return updateOrReply(interaction, await dropPhoto(turn, act.photo))
    case 'discard':
      return discard(turn)
    case 'asked':
    case 'agreed':
    case 'send-back':
    case 'back-sent':
    case 'retired':
      return review(turn, act)
    default:
      return undefined
  }
}

/** The form of name and figures: what cannot be read is given back, to be opened again as it was typed. */
async function takeFigures(turn: FamilyTurn, act: ChangeAct): Promise<void> {
  const { services, interaction, say, work } = turn
  const done = await changeFamily(turn, act)
  const { id: family, revision } = work.family
  return updateOrReply(
    interaction,
    done.untaken && interaction.isModalSubmit()
      ? await showTypedAgain(services, interaction, say, done.note, { family, revision })
      : await pageOf(turn, done.note, done.page),
  )
}

async function review(turn: FamilyTurn, act: ReviewAct): Promise<void> {
  const { services, settings } = turn
  const done = await reviewFamily(turn, act)
  const now = (await workingOn(services, settings.server, turn.work.family.id)) ?? turn.work
  await answerReview(turn, act, done, now)
  // Whoever pressed is answered first.
  if (done.done && (act.is === 'agreed' || act.is === 'send-back')) await tellAsker(turn, now, act.is === 'agreed')
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
      await viewWaiting(services, say, now, { note: done.note, agree: mayAgreeNow(turn, now) }),
    )
  return updateOrReply(interaction, await pageOf(turn, done.note, 'page'))
}

/** What a second moderator is asked; where nothing waits any more, the page as it stands. */
async function waitingPage(turn: FamilyTurn): Promise<ShownMessage> {
  const { services, say, work } = turn
  if (!work.family.review) return pageOf(turn, say('families.refused.nothing-to-review'), 'page')
  return viewWaiting(services, say, work, { agree: mayAgreeNow(turn, work) })
}

/** A check of such a cell, for whoever presses: nothing of it is a moderator's. */
async function checkOne(services: Services, interaction: Clicked, say: Say, family: string): Promise<void> {
  if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
  const begun = await beginCheck(services, interaction, { family, cells: 1 })
  if (begun.is === 'seen') return
  if (begun.is === 'refused') return refuse(interaction, say, begun.refusal)
  return replyPrivately(interaction, await showScreen(say, begun.program, begun.screen, services))
}

/** A draft goes; a family that never came into force goes with it. */
async function discard(turn: FamilyTurn): Promise<void> {
  const { services, interaction, say, settings, work } = turn
  const { store } = services.families
  const { family } = work
  const told = (note: string) => updateOrReply(interaction, message([text(note), small(say('caution.line'))]))
  if (family.head === 0) {
    const gone = await store.discard(settings.server, family.id, family.revision)
    services.families.renew(settings.server)
    return told(gone === 'saved' ? say('families.discarded') : sayRefusal(say, { code: 'changed-meanwhile' }))
  }
  const { saveFamily } = await import('./family-turn.ts')
  const after = { ...family, draft: null, review: null, revision: family.revision + 1, changedBy: interaction.id }
  const saved = await saveFamily(turn, after)
  if (saved !== 'saved') return told(sayRefusal(say, { code: 'changed-meanwhile' }))
  return updateOrReply(interaction, await pageOf(turn, say('families.discarded'), 'page'))
}
