// What a person does about what is kept of them: see it as a file, have it deleted after a second question, or leave it.

import { type PrivacyAct, privacyIds } from '../../custom-ids/privacy-id.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { takeAllAway } from '../check/hand-over/tell-others.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, replyWithFile, updateOrReply } from '../interaction/reply.ts'
import type { Services } from '../services.ts'
import { countedOf, forgetCountedOf } from '../trends/counted-of.ts'
import { countingOf } from './counting-of.ts'
import { askBeforeDeleting, showPrivacy } from './show-privacy.ts'

export const privacyClick = onClick(privacyIds, press)

async function press(services: Services, interaction: Clicked, { is: act }: PrivacyAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const { id } = interaction.user
  if (act === 'delete') return updateOrReply(interaction, askBeforeDeleting(say))
  if (act === 'show')
    return replyWithFile(interaction, say('privacy.shown'), {
      name: 'kept.json',
      content: await everythingOf(services, id),
    })
  if (act === 'help-out') await services.helpers.sayNo(id)
  if (act === 'help-in') await services.helpers.sayYes(id)
  const note = act === 'deleted' ? await forget(services, say, id) : undefined
  await updateOrReply(
    interaction,
    showPrivacy(say, await countingOf(services, interaction), note, ofHelping.includes(act) ? 'helping' : 'everybody'),
  )
}

/** What leads to, or stands on, the page for helpers and moderators. */
const ofHelping: readonly PrivacyAct['is'][] = ['helping', 'help-in', 'help-out']

/** As JSON, in the codes of the stores and the rule packs. */
async function everythingOf(services: Services, person: string): Promise<string> {
  const kept = {
    person,
    at: new Date(services.now()).toISOString(),
    ...(await services.traces.of(person)),
    countedThisQuarter: await countedOf(services, person),
    countsNothingOfMine: await services.trends.optOuts.has(person),
    countsNoHelpOfMine: await services.helpers.saidNo(person),
  }
  return JSON.stringify(kept, null, 2)
}

async function forget(services: Services, say: Say, person: string): Promise<string> {
  // What is counted goes first: a check that is closed in between is found by the name on it.
  const counted = await forgetCountedOf(services, person)
  for (const check of await services.checks.heldBy(person, services.now())) await takeAllAway(services, check.id)
  const forgotten = await services.traces.forgetPerson(person)
  const decisions = forgotten.decisions + forgotten.settings
  return `${say('privacy.deleted', { ...forgotten, decisions, counted })}\n${say('privacy.stays')}`
}
