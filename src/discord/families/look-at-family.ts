// The buttons of a family by which a moderator only looks: answered while others go on.

import type { ActOf, FamilyAct } from '../../custom-ids/family-id.ts'
import { diffFacts } from '../../families/diff.ts'
import { defer, editReply, replyPrivately, replyWithFile, updateOrReply } from '../interaction/reply.ts'
import type { ShownMessage } from '../message/parts.ts'
import { exportWithPhotos, photosPage } from './change-photos.ts'
import { sayGone } from './family-for-all.ts'
import { pageOf } from './family-page.ts'
import type { FamilyTurn } from './family-turn.ts'
import { mayAgreeNow, standingNow, viewWaiting } from './review-family.ts'
import { idFor } from './show/menus.ts'
import { showMore } from './show/show-page.ts'
import { showHistory } from './show/show-parts.ts'
import { showGoingBack, showTrial } from './show/show-review.ts'
import { tryFamily } from './try-family.ts'
import { openTypedAgain } from './typed-again.ts'
import { beginWalk } from './walk-cell.ts'

const looks = [
  'page',
  'references',
  'fakes',
  'waiting',
  'waiting-beside',
  'more',
  'choose-feature',
  'feature',
  'figures-again',
  'reference-sent',
  'try',
  'history',
  'back-ask',
  'export',
  'export-photos',
  'photos',
] as const
export type Look = ActOf<(typeof looks)[number]>
export const isLook = (act: FamilyAct): act is Look => looks.some(one => one === act.is)

export async function lookAtFamily(turn: FamilyTurn, act: Look): Promise<void> {
  const { services, interaction, say, settings, work } = turn
  const { base, store } = services.families
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
    case 'feature':
      return updateOrReply(interaction, await pageOf(turn, undefined, { feature: act.feature }))
    case 'figures-again': {
      const id = idFor(work.family.id, work.family.revision)
      return openTypedAgain(services, interaction, say, act.draft, opening => id({ is: 'figures-sent', opening }))
    }
    case 'reference-sent':
      return beginWalk(services, interaction, say, work, true)
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
  }
}

/** What a second moderator is asked; where nothing waits any more, the page as it stands. */
async function waitingPage(turn: FamilyTurn): Promise<ShownMessage> {
  const { services, say, work } = turn
  if (!work.family.review) return pageOf(turn, say('families.refused.nothing-to-review'), 'page')
  return viewWaiting(services, say, work, standingNow(turn, work))
}
