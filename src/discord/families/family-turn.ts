// What every click on a family is given: the moderator, their server, the family as it stands, and the ways to answer.
import type { ServerFamily, Version } from '../../families/family.ts'
import type { Saving } from '../../families/family-store.ts'
import { skeletonOf } from '../../families/names.ts'
import type { ServerSettings } from '../../server/settings.ts'
import type { Say } from '../../words/say.ts'
import type { Clicked } from '../interaction/reply.ts'
import type { Services } from '../services.ts'
import type { WorkingOn } from './working-on.ts'

export type FamilyTurn = {
  readonly services: Services
  readonly interaction: Clicked
  readonly say: Say
  readonly settings: ServerSettings
  readonly work: WorkingOn
}

/** Saves a family, with a version if it comes into force; what this process remembered of the server is read anew. */
export async function saveFamily(
  { services, settings, work }: FamilyTurn,
  family: ServerFamily,
  version?: Version,
): Promise<Saving> {
  const { store } = services.families
  const named = version?.facts ?? family.draft ?? work.inForce?.facts ?? work.facts
  const key = skeletonOf(`${named.identity.maker} ${named.identity.name}`)
  const saving = version ? await store.putInForce(family, key, version) : await store.save(family, key)
  services.families.renew(settings.server)
  if (saving === 'saved')
    services.log.info(
      { server: settings.server, family: family.id, revision: family.revision, version: version?.number },
      'a family was changed',
    )
  return saving
}
