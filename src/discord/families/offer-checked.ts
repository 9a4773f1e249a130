// A finished check of a good cell, offered as a reference: what was seen in it is read once more, and nothing is asked again.
import type { VerdictScreen } from '../../check/screen.ts'
import { screenOf } from '../../check/screen.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { encodeOffer, type OfferAct, offerIds } from '../../custom-ids/walk-id.ts'
import { toLookAt, type Walk } from '../../families/strength/walk.ts'
import { isServerFamily } from '../../services/family-desk.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { loadCheck } from '../check/load-check.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, refuse, replyPrivately } from '../interaction/reply.ts'
import { serverOf } from '../interaction/rights.ts'
import { message, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { offeredEnough } from './keep-reference.ts'
import { referenceForm } from './show/menus.ts'
import { canBeOffered } from './show/offer-button.ts'
import { shownWalk, sourceIn } from './walk-cell.ts'
import { type WorkingOn, workingOn } from './working-on.ts'

export const offerClick = onClick(offerIds, offer)

async function offer(services: Services, interaction: Clicked, act: OfferAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const found = await finished(services, interaction, say, act.check)
  const tell = (note: string) => replyPrivately(interaction, message([text(note), small(say('caution.line'))]))
  if (found === undefined) return tell(say('families.walk.cannot-offer'))
  const enough = offeredEnough(say, found.work, interaction.user.id)
  if (enough !== undefined) return tell(enough)
  if (act.is === 'ask') {
    if (interaction.isModalSubmit()) return refuse(interaction, say, { code: 'unknown-click' })
    const id = encodeOffer({ is: 'sent', check: act.check, opening: newOpening(services.newId) })
    return interaction.showModal(referenceForm(say, id))
  }
  const source = sourceIn(say, interaction)
  if ('note' in source) return tell(source.note)
  const { work, screen } = found
  // The check's own: offered twice, it is one cell.
  const id = `r${screen.check.id}`.slice(0, 24)
  const whose = { person: interaction.user.id, family: work.family.id, vouches: false, checked: true }
  const walk: Walk = { id, ...whose, ...source, seen: seenIn(services, work, screen), ...massIn(screen, source) }
  return replyPrivately(interaction, await shownWalk(services, say, work, walk))
}

type Found = { readonly work: WorkingOn; readonly screen: VerdictScreen }

/** The person's own check, come to a verdict that speaks against nothing, of a family that is in force here. */
async function finished(services: Services, interaction: Clicked, say: Say, id: string): Promise<Found | undefined> {
  const loaded = await loadCheck(services, say, id)
  const server = serverOf(interaction)
  if (!loaded || server === null || loaded.check.holder !== interaction.user.id) return undefined
  const screen = screenOf(loaded.program, loaded.check)
  const { family } = loaded.check
  if (screen.kind !== 'verdict' || loaded.check.server !== server || !isServerFamily(family)) return undefined
  const work = canBeOffered(screen) ? await workingOn(services, server, family) : undefined
  return work?.inForce && work.family.state !== 'retired' ? { work, screen } : undefined
}

/** What was looked at in the check of all that a good cell is looked at for. */
const seenIn = ({ families }: Services, { facts }: WorkingOn, { check }: VerdictScreen): Walk['seen'] =>
  toLookAt(families.base, facts).flatMap(({ id }): Walk['seen'] => {
    const answer = check.answers[id]
    return answer?.kind === 'option' ? [[id, answer.option]] : []
  })

/** What it weighed in the check, unless the form says otherwise. */
function massIn({ check }: VerdictScreen, source: Pick<Walk, 'mass'>): Pick<Walk, 'mass'> {
  const weighed = check.answers['mass']
  if (source.mass || weighed?.kind !== 'reading' || weighed.value > 300) return {}
  return { mass: { value: weighed.value, u: Math.min(20, weighed.u ?? 0.5) } }
}
