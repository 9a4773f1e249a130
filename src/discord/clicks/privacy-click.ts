// What a person does about what is kept of them: see it as a file, have it deleted after a second question, or leave it.
import { type Clicked, replyWithFile, turnPrivately } from '../answer.ts'
import { countedOf, forgetCountedOf } from '../counted-of.ts'
import type { Desk } from '../desk.ts'
import { takeAllAway } from '../hands/tell-others.ts'
import { decodePrivacy, type PrivacyAct } from '../privacy-id.ts'
import { askBeforeDeleting, showPrivacy } from '../show/privacy.ts'
import { type Say, sayIn } from '../words/say.ts'
import type { ClickHandler } from './manifest.ts'

export const privacyClick: ClickHandler = (desk, interaction) => {
  const act = decodePrivacy(interaction.customId)
  return act && press(desk, interaction, act)
}

async function press(desk: Desk, interaction: Clicked, act: PrivacyAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const { id } = interaction.user
  if (act === 'delete') return turnPrivately(interaction, askBeforeDeleting(say))
  if (act === 'show')
    return replyWithFile(interaction, say('privacy.shown'), {
      name: 'kept.json',
      content: await everythingOf(desk, id),
    })
  const note = act === 'deleted' ? await forget(desk, say, id) : undefined
  await turnPrivately(interaction, showPrivacy(say, await desk.trends.optOuts.has(id), note))
}

/** As JSON, in the codes of the stores and the rule packs. */
async function everythingOf(desk: Desk, person: string): Promise<string> {
  const kept = {
    person,
    at: new Date(desk.now()).toISOString(),
    ...(await desk.traces.of(person)),
    countedThisQuarter: await countedOf(desk, person),
    countsNothingOfMine: await desk.trends.optOuts.has(person),
  }
  return JSON.stringify(kept, null, 2)
}

async function forget(desk: Desk, say: Say, person: string): Promise<string> {
  // What is counted goes first: a check that is closed in between is found by the name on it.
  const counted = await forgetCountedOf(desk, person)
  for (const check of await desk.checks.heldBy(person, desk.now())) await takeAllAway(desk, check.id)
  const forgotten = await desk.traces.forgetPerson(person)
  return `${say('privacy.deleted', { ...forgotten, counted })}\n${say('privacy.stays')}`
}
