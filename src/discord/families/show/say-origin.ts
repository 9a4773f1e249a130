// What a moderator's page says of where its lines come from: the construction, what was set here, and what is not known.
import type { Pack } from '../../../engine/pack/pack.ts'
import type { Construction, Facts } from '../../../families/facts/facts-schema.ts'
import type { Begun } from '../../../families/not-known.ts'
import { originOf } from '../../../families/origin.ts'
import { type Marked, setMark } from '../../../words/family-facts-words.ts'
import { sayFeature, together } from '../../../words/family-words.ts'
import type { Say } from '../../../words/say.ts'
import type { WorkingOn } from '../working-on.ts'
import { fitting, leftOpen, letterOf, sayableIn } from './menus.ts'

export const begunOf = (
  constructions: readonly Construction[],
  { facts, inForce }: Pick<WorkingOn, 'facts' | 'inForce'>,
): Begun => ({
  construction: constructions.find(one => one.construction === facts.from?.construction),
  inForce: inForce?.facts,
})

export function sayOrigin(say: Say, base: Pack, constructions: readonly Construction[], work: WorkingOn): Marked {
  const { facts } = work
  const origin = originOf(facts, constructions)
  const unknown = sayableIn(base, facts, begunOf(constructions, work)).filter(one => one.notKnown)
  const features = together(
    say,
    unknown.map(one => sayFeature(say, base, one.feature)),
  )
  return {
    set: origin?.is === 'built' ? origin.set : new Set(),
    open: leftOpen(
      facts,
      unknown.map(one => one.feature),
    ),
    says: [
      ...(origin ? [sayWhence(say, constructions, facts, origin)] : []),
      ...(unknown.length > 0 ? [say('families.unknown.line', { features })] : []),
    ],
  }
}

type Origin = NonNullable<ReturnType<typeof originOf>>

function sayWhence(say: Say, constructions: readonly Construction[], facts: Facts, origin: Origin): string {
  if (origin.is === 'own') return say('families.origin.own')
  const at = fitting(constructions, facts).findIndex(one => one.construction === origin.construction)
  const letter = at < 0 ? 'none' : letterOf(at)
  return origin.set.size > 0
    ? say('families.origin.set', { mark: setMark, letter })
    : say('families.origin.built', { letter })
}
