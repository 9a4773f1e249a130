// What would come into force of a draft: its features at the strength they have earned, and what stands in its way.
import type { Pack } from '../engine/pack/pack.ts'
import { derive } from './derive/derive.ts'
import { factsDigest, type Sha256 } from './derive/facts-digest.ts'
import type { FactProblem } from './facts/fact-problems.ts'
import type { Construction, Facts } from './facts/facts-schema.ts'
import { settleFacts } from './facts/settle-facts.ts'
import type { Proposed } from './review.ts'
import { unearnedMusts, withEarned } from './strength/earned.ts'
import { massOfReferences, type Reference } from './strength/references.ts'

/** `known`: the shipped constructions; a draft that names another one is as one that names none. */
export function propose(
  draft: Facts,
  base: Pack,
  known: readonly Construction[],
  references: readonly Reference[],
  sha256: Sha256,
): Proposed {
  const construction = known.find(one => one.construction === draft.from?.construction)
  const mass = massOfReferences(references)
  const weighed: Facts =
    mass && draft.figures.mass?.from !== 'sheet'
      ? { ...draft, figures: { ...draft.figures, mass: { ...mass, from: 'references' } } }
      : draft
  const facts = settleFacts(withEarned(weighed, construction, references))
  const derived = derive(facts, base)
  const problems: FactProblem[] = [
    ...(derived.ok ? [] : derived.problems),
    ...unearnedMusts(facts, base, construction, references),
  ]
  return { facts, digest: factsDigest(facts, sha256), problems }
}
