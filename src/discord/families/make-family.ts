// A new family of a server, as a draft.
import type { Interaction } from 'discord.js'
import type { Facts } from '../../families/facts/facts-schema.ts'
import type { ServerFamily } from '../../families/family.ts'
import { skeletonOf } from '../../families/names.ts'
import { sayIn } from '../../words/say.ts'
import type { Services } from '../services.ts'

export const newFamilyId = (newId: () => string): string => `f-${newId().slice(0, 8)}`

/** A new draft; what stands in its way is said. */
export async function makeFamily(
  services: Services,
  interaction: Pick<Interaction, 'id' | 'user' | 'locale'>,
  server: string,
  facts: Facts,
): Promise<{ readonly id: string } | { readonly note: string }> {
  const say = sayIn(interaction.locale)
  const { identity } = facts
  const family: ServerFamily = {
    ...{ id: identity.id, server, state: 'draft', revision: 0, head: 0 },
    ...{ draft: facts, review: null, retired: null },
    ...{ changedBy: interaction.id, madeBy: interaction.user.id, madeAt: services.now() },
  }
  const done = await services.families.store.create(family, skeletonOf(`${identity.maker} ${identity.name}`))
  services.families.renew(server)
  if (done === 'saved') return { id: identity.id }
  return {
    note:
      done === 'name-taken'
        ? say('families.refused.name-taken')
        : say(`families.refused.${done}`, { most: done === 'too-many-drafts' ? 50 : 300 }),
  }
}
