// A page of a family for its moderators, as the family is stored now: the whole, one feature, its reference cells or its known fakes.
import type { ShownMessage } from '../message/parts.ts'
import type { Changed } from './change-family.ts'
import { pictureOfFeature, picturesBeside, picturesToChoose } from './family-pictures.ts'
import type { FamilyTurn } from './family-turn.ts'
import { standingNow } from './review-family.ts'
import { showFeature } from './show/show-feature.ts'
import { showWork } from './show/show-page.ts'
import { showFakes, showReferences } from './show/show-parts.ts'
import { type WorkingOn, workingOn } from './working-on.ts'

export async function pageOf(
  turn: FamilyTurn,
  note: string | undefined,
  which: Changed['page'],
): Promise<ShownMessage> {
  const { services, say, settings } = turn
  const { base, constructions } = services.families
  const work: WorkingOn = (await workingOn(services, settings.server, turn.work.family.id)) ?? turn.work
  if (which === 'references') return showReferences(say, base, work, { note })
  if (which === 'fakes') return showFakes(say, base, work, { note })
  if (typeof which === 'object') {
    const pictures = await pictureOfFeature(services, say, base, which.feature)
    return showFeature(say, base, constructions, work, which.feature, { note, pictures })
  }
  const empty = Object.keys(work.facts.traits).length === 0
  const pictures = empty
    ? await picturesToChoose(services, say, base, constructions, work.facts)
    : await picturesBeside(services, say, work.facts)
  return showWork(say, base, constructions, work, { note, pictures, ...standingNow(turn, work) })
}
