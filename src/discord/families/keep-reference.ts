// Good cells as references of a family: taken in, offered, accepted or taken out, and what the draft learns from them.
import { editDraft } from '../../families/edit.ts'
import type { Trait } from '../../families/facts/facts-schema.ts'
import { limits } from '../../families/family.ts'
import { featuresOf } from '../../families/features.ts'
import { independent, type Reference } from '../../families/strength/references.ts'
import type { Say } from '../../words/say.ts'
import type { Services } from '../services.ts'
import type { Changed } from './change-family.ts'
import { type FamilyTurn, saveFamily } from './family-turn.ts'
import type { WorkingOn } from './working-on.ts'

/** Good cells that make a strong sign of what they show. */
const forStrong = 3
/** Cells of one model that one member may have waiting. */
const mostOffered = 3

/** A moderator's reference cell: whoever sends it vouches for it. */
export async function addReference(turn: FamilyTurn, reference: Reference): Promise<Changed> {
  const { services, say, settings, work } = turn
  const { store } = services.families
  const kept = await store.keepReference(settings.server, work.family.id, reference, limits.references)
  if (kept === 'too-many')
    return { note: say('families.refused.too-many-references', { most: limits.references }), page: 'references' }
  await learn(turn, reference.looks)
  const all = (await store.references(settings.server, work.family.id)).filter(one => one.state === 'accepted')
  const more = Math.max(0, forStrong - independent(all))
  return { note: say('families.reference.taken', { count: Object.keys(reference.looks).length, more }), page: 'page' }
}

/** Why a member's cell is not taken as an offer: so many wait already. */
export function offeredEnough(say: Say, { references }: WorkingOn, person: string, id?: string): string | undefined {
  const waiting = references.filter(one => one.state === 'offered' && one.by === person && one.id !== id)
  return waiting.length >= mostOffered ? say('families.refused.offered-enough', { most: mostOffered }) : undefined
}

/** A member's cell: it counts nothing until a moderator has accepted it. */
export async function offerReference(
  { families }: Pick<Services, 'families'>,
  say: Say,
  server: string,
  work: WorkingOn,
  reference: Reference,
): Promise<string> {
  const enough = offeredEnough(say, work, reference.by, reference.id)
  if (enough !== undefined) return enough
  // Sent again after somebody has accepted it, it stays accepted.
  if (work.references.some(one => one.id === reference.id)) return say('families.reference.thanks')
  const kept = await families.store.keepReference(server, work.family.id, reference, limits.references)
  return kept === 'kept'
    ? say('families.reference.thanks')
    : say('families.refused.too-many-references', { most: limits.references })
}

export async function changeReference(turn: FamilyTurn, id: string, state: 'accepted' | 'withdrawn'): Promise<Changed> {
  const { services, interaction, say, settings, work } = turn
  const found = work.references.find(one => one.id === id)
  if (!found) return { note: say('families.refused.gone'), page: 'references' }
  await services.families.store.keepReference(
    settings.server,
    work.family.id,
    { ...found, state, acceptedBy: interaction.user.id },
    limits.references,
  )
  if (state === 'accepted') await learn(turn, found.looks)
  return { note: say('families.saved'), page: 'references' }
}

/**
 * Of features nobody has said anything of, a good cell says how they are made. What it contradicts, and what is said to tell nothing, is
 * not learnt silently.
 */
async function learn(turn: FamilyTurn, looks: Readonly<Record<string, string>>): Promise<void> {
  const { services, interaction, work } = turn
  const { base } = services.families
  let { family, facts } = work
  const silent = ({ made, remarks }: Trait) => made.length === 0 && remarks.length === 0
  const unknown = Object.entries(looks).filter(([id]) =>
    silent(facts.traits[id] ?? { made: [], against: [], remarks: [] }),
  )
  if (unknown.length === 0) return
  for (const [feature, option] of unknown) {
    const all =
      featuresOf(base)
        .get(feature)
        ?.answer.options.map(one => one.id) ?? []
    for (const edit of [
      { is: 'made' as const, feature, options: [option], all },
      { is: 'tells' as const, feature, tells: 'strong' as const, all },
    ]) {
      const edited = editDraft({ ...family, revision: work.family.revision }, facts, edit, interaction.id)
      if (!edited.ok) continue
      family = edited.family
      facts = edited.family.draft ?? facts
    }
  }
  await saveFamily(turn, family)
}
