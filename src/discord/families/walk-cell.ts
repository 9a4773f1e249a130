// A good cell looked at question by question: begun with how one knows that it is good, each step a draft, sent in the end.

import { type WalkAct, walkIds } from '../../custom-ids/walk-id.ts'
import { featuresOf } from '../../families/features.ts'
import { readMass } from '../../families/read-figures.ts'
import { howKnown } from '../../families/strength/references.ts'
import { looksOf, referenceOf, seeing, stepBack, stepOf, type Walk, walkSchema } from '../../families/strength/walk.ts'
import { decideInOrder, type Later } from '../../services/keyed-queue.ts'
import { weekOf } from '../../trends/week.ts'
import { plain } from '../../words/plain.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, refuse, replyPrivately, updateOrReply } from '../interaction/reply.ts'
import { moderating, serverOf } from '../interaction/rights.ts'
import { message, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { pageOf } from './family-page.ts'
import { pictureOfFeature } from './family-pictures.ts'
import { addReference, offerReference } from './keep-reference.ts'
import { fields } from './show/menus.ts'
import { showWalk } from './show/show-walk.ts'
import { chosenIn, typedIn } from './typed-fields.ts'
import { type WorkingOn, workingOn } from './working-on.ts'

/** A cell is looked at in one go. */
const keptFor = 6 * 3600_000
/** What a scale that shows tenths of a gram is unsure by, and one that shows whole ones. */
const unsureBy = { tenths: 0.1, whole: 0.5 } as const

const told = (say: Say, note: string): ShownMessage => message([text(note), small(say('caution.line'))])

/** What the form says of a cell: how one knows, the order, a mass; or what cannot be read. */
export function sourceIn(
  say: Say,
  interaction: Clicked,
): Pick<Walk, 'how' | 'order' | 'mass'> | { readonly note: string } {
  if (!interaction.isModalSubmit()) return { note: say('families.refused.gone') }
  const typed = typedIn(interaction, fields.mass)
  const read = readMass(typed)
  if (!read.ok) return { note: say('families.refused.figures', { what: plain(read.what) }) }
  const value = read.figures.mass?.middle
  const u = /[.,]\d/.test(typed) ? unsureBy.tenths : unsureBy.whole
  return {
    how: howKnown.find(one => one === chosenIn(interaction, fields.how)[0]) ?? 'long-trusted',
    order: typedIn(interaction, fields.order).slice(0, 60) || '-',
    ...(value !== undefined && { mass: { value, u } }),
  }
}

/** `vouches`: a moderator takes it in; else it is offered. */
export async function beginWalk(
  services: Services,
  interaction: Clicked,
  say: Say,
  work: WorkingOn,
  vouches: boolean,
): Promise<void> {
  const source = sourceIn(say, interaction)
  if ('note' in source) return replyPrivately(interaction, told(say, source.note))
  const whose = { person: interaction.user.id, family: work.family.id, vouches }
  const walk: Walk = { id: `r${services.newId()}`.slice(0, 24), ...whose, ...source, seen: [] }
  await updateOrReply(interaction, await shownWalk(services, say, work, walk))
}

/** The walk as a message; it is kept under a key of its own. */
export async function shownWalk(services: Services, say: Say, work: WorkingOn, walk: Walk): Promise<ShownMessage> {
  const { base } = services.families
  const facts = seenBy(walk, work)
  const draft = await services.drafts.keep(walk, keptFor)
  const step = stepOf(walk, base, facts)
  const [picture] = step.is === 'look' ? await pictureOfFeature(services, say, base, step.feature.id) : []
  return showWalk(say, base, { draft, walk, step, facts, picture })
}

/** Members see nothing of a draft. */
const seenBy = ({ vouches }: Walk, { facts, inForce }: WorkingOn) => (vouches ? facts : (inForce?.facts ?? facts))

export const walkClick = onClick(walkIds, async (services, interaction, { draft, act }) => {
  const say = sayIn(interaction.locale)
  const read = walkSchema.safeParse(await services.drafts.find(draft))
  const gone = () => replyPrivately(interaction, told(say, say('families.walk.gone')))
  if (!read.success || read.data.person !== interaction.user.id) return gone()
  const walk = read.data
  const server = serverOf(interaction)
  if (walk.vouches && !(await moderating(services, interaction)))
    return refuse(interaction, say, { code: 'not-moderator' })
  if (act.is === 'send') {
    if (server === null) return gone()
    return decideInOrder(services.queue, `family ${server} ${walk.family}`, () =>
      send(services, interaction, say, server, walk),
    )
  }
  const work = server === null ? undefined : await workingOn(services, server, walk.family)
  if (!work || !(walk.vouches || work.inForce)) return gone()
  const next = afterAct(services, interaction, work, walk, act)
  return updateOrReply(interaction, await shownWalk(services, say, work, next))
})

function afterAct(services: Services, interaction: Clicked, work: WorkingOn, walk: Walk, act: WalkAct): Walk {
  const { base } = services.families
  const step = stepOf(walk, base, seenBy(walk, work))
  const chosen = interaction.isStringSelectMenu() ? interaction.values[0] : undefined
  switch (act.is) {
    case 'say':
      return step.is === 'look' ? seeing(walk, step.feature, act.option) : walk
    case 'choose':
      return step.is === 'look' && chosen !== undefined ? seeing(walk, step.feature, chosen) : walk
    case 'unsure':
      return step.is === 'look' ? seeing(walk, step.feature, null) : walk
    case 'lift':
    case 'leave':
      return { ...walk, lifts: act.is === 'lift' }
    case 'back':
      return stepBack(walk, base)
    case 'send':
      return walk
  }
}

/** Rights were asked for; the family is read as it stands now. The walk is one person's own, so its answer holds up nobody. */
async function send(services: Services, interaction: Clicked, say: Say, server: string, walk: Walk): Promise<Later> {
  const work = await workingOn(services, server, walk.family)
  const settings = walk.vouches ? await moderating(services, interaction) : undefined
  const known = Object.entries(looksOf(walk)).every(([one, option]) =>
    featuresOf(services.families.base)
      .get(one)
      ?.answer.options.some(each => each.id === option),
  )
  if (!work || !known || !(settings || work.inForce))
    return () => replyPrivately(interaction, told(say, say('families.walk.gone')))
  const reference = referenceOf(walk, weekOf(services.now()), settings !== undefined)
  if (!settings) {
    const said = await offerReference(services, say, server, work, reference)
    return () => updateOrReply(interaction, told(say, said))
  }
  const turn = { services, interaction, say, settings, work }
  const { note, page } = await addReference(turn, reference)
  return async () => updateOrReply(interaction, await pageOf(turn, note, page))
}
