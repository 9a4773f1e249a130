// What everybody on a server may see of one of its families: the version in force, or for moderators the page they work on.
import type { BaseInteraction } from 'discord.js'
import { independent } from '../../families/strength/references.ts'
import type { Say } from '../../words/say.ts'
import { moderating } from '../interaction/rights.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { photosBesideFamily } from './family-photos.ts'
import { picturesBeside, picturesOf, picturesToChoose } from './family-pictures.ts'
import { standingNow } from './review-family.ts'
import { showPublicly, showWork } from './show/show-page.ts'
import { workingOn } from './working-on.ts'

/** Undefined where there is no such family, or nothing of it is in force and the person does not moderate. */
export async function seeFamily(
  services: Services,
  interaction: BaseInteraction,
  say: Say,
  server: string,
  id: string,
): Promise<ShownMessage | undefined> {
  const work = await workingOn(services, server, id)
  if (!work) return undefined
  const settings = await moderating(services, interaction)
  const moderator = settings !== undefined
  const { base, constructions } = services.families
  const { inForce, family, references } = work
  if (inForce) {
    const accepted = references.filter(one => one.state === 'accepted')
    const pictures = await picturesOf(services, say, inForce.facts)
    const photos = await photosBesideFamily(services.families, say, server, family.id)
    return showPublicly(say, base, family, inForce, independent(accepted), moderator, { pictures, photos })
  }
  if (!settings) return undefined
  const empty = Object.keys(work.facts.traits).length === 0
  const pictures = empty
    ? await picturesToChoose(services, say, base, constructions, work.facts)
    : await picturesBeside(services, say, work.facts)
  return showWork(say, base, constructions, work, {
    pictures,
    ...standingNow({ services, interaction, settings }, work),
  })
}
