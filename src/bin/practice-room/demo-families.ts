// The models that the practice room's moderators have described: two in force, one in review, one retired; all invented.

import type { Services } from '../../discord/services.ts'
import { factsFrom } from '../../families/construction.ts'
import { editDraft } from '../../families/edit.ts'
import type { Construction, Facts, Identity } from '../../families/facts/facts-schema.ts'
import type { ServerFamily, Version } from '../../families/family.ts'
import { skeletonOf } from '../../families/names.ts'
import { propose } from '../../families/propose.ts'
import { weekOf } from '../../trends/week.ts'

/** The wardens who have described them. */
const [tomas, maret] = ['900000000000000403', '900000000000000405']
const day = 24 * 3600_000

type Demo = {
  readonly identity: Omit<Identity, 'alsoCalled' | 'chemistry' | 'kind'>
  readonly built: string
  readonly figures: Facts['figures']
  readonly state: ServerFamily['state']
  readonly fake?: boolean
}

const demos: readonly Demo[] = [
  {
    identity: { id: 'f-sandpiper', name: 'Sandpiper 25', maker: 'Larkmoor', format: '18650' },
    built: 'three-legs-button-disc',
    figures: { capacity: { typical: 2500, least: 2450 }, currents: [{ amps: 20, cutOff: 'none' }] },
    state: 'in-force',
    fake: true,
  },
  {
    identity: { id: 'f-curlew30', name: 'Curlew 30', maker: 'Larkmoor', format: '18650' },
    built: 'three-legs-lined-disc',
    figures: { capacity: { typical: 3000 } },
    state: 'in-force',
  },
  {
    identity: { id: 'f-dunlin40', name: 'Dunlin 40', maker: 'Larkmoor', format: '21700' },
    built: 'no-dimples-three-legs',
    figures: { capacity: { typical: 4000 } },
    state: 'in-review',
  },
  {
    identity: { id: 'f-plover20', name: 'Plover 20', maker: 'Ashgate', format: '18650' },
    built: 'two-dimples-four-legs',
    figures: { capacity: { typical: 2000 } },
    state: 'retired',
  },
]

/** Does nothing where the server has described something already. */
export async function seedFamilies(services: Services, server: string): Promise<void> {
  const { store, constructions } = services.families
  if ((await store.heads(server)).length > 0) return
  const now = services.now()
  for (const [i, demo] of demos.entries()) {
    const construction = constructions.find(one => one.construction === demo.built)
    if (construction) await seedOne(services, server, demo, construction, now - (60 - i * 7) * day)
  }
}

async function seedOne(
  services: Services,
  server: string,
  { identity, built: _built, figures, state, fake }: Demo,
  construction: Construction,
  at: number,
): Promise<void> {
  const { store, base, constructions, sha256 } = services.families
  const whole: Identity = { ...identity, alsoCalled: [], kind: 'bare', chemistry: 'nickel-or-cobalt' }
  const facts: Facts = { ...factsFrom(construction, whole), figures }
  const key = skeletonOf(`${identity.maker} ${identity.name}`)
  let family: ServerFamily = {
    ...{ id: identity.id, server, state: 'draft', revision: 0, head: 0, draft: facts, review: null, retired: null },
    ...{ changedBy: `seed-${identity.id}`, madeBy: tomas ?? '', madeAt: at },
  }
  await store.create(family, key)
  if (fake) {
    const look = { 'vent-disc': ['smooth'], legs: ['three'] }
    const edited = editDraft(
      family,
      facts,
      {
        is: 'fake',
        fake: {
          ...{ id: 'k1', title: 'Smooth disc under a good wrap', since: weekOf(at), look, copies: ['legs'] },
          ...{ says: 'The wrap and the legs are copied well; the disc is smooth.', state: 'seen' },
        },
      },
      `seed-${identity.id}-fake`,
    )
    if (edited.ok && (await store.save(edited.family, key)) === 'saved') family = edited.family
  }
  const proposed = propose(family.draft ?? facts, base, constructions, [], sha256)
  const why = 'Counted on cells from the maker.'
  if (state === 'in-review') {
    const review = { by: tomas ?? '', at, why, digest: proposed.digest }
    await store.save(
      { ...family, state, review, revision: family.revision + 1, changedBy: `seed-${identity.id}-asked` },
      key,
    )
    return
  }
  const version: Version = {
    ...{ family: identity.id, number: 1, facts: proposed.facts, digest: proposed.digest },
    ...{ by: tomas ?? '', agreedBy: maret ?? null, at, why, undoes: null },
  }
  const inForce: ServerFamily = {
    ...family,
    ...{ state: 'in-force', head: 1, draft: null, revision: family.revision + 1, changedBy: `seed-${identity.id}-1` },
  }
  await store.putInForce(inForce, key, version)
  if (state !== 'retired') return
  const retired = { by: maret ?? '', at: at + 30 * day, why: 'Not made any more.', successor: 'f-sandpiper' }
  await store.save(
    { ...inForce, state, retired, revision: inForce.revision + 1, changedBy: `seed-${identity.id}-retired` },
    key,
  )
}
