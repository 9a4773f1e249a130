// How a version comes into force, and how it is taken back: asked for, agreed to by a second moderator, retired.
import type { FactProblem } from './facts/fact-problems.ts'
import type { Facts } from './facts/facts-schema.ts'
import { type ServerFamily, type Version, waitAlone } from './family.ts'

export type ReviewRefusal =
  | { readonly code: 'nothing-to-review' | 'nothing-changed' | 'retired' | 'not-in-force' }
  /** Whoever asked for it cannot agree to it. */
  | { readonly code: 'own-review' }
  /** Another draft than the one that was looked at. */
  | { readonly code: 'changed-meanwhile' }
  | { readonly code: 'must-waits'; readonly until: number }
  | { readonly code: 'cannot-be-used'; readonly problems: readonly FactProblem[] }
  | { readonly code: 'no-such-version'; readonly number: number }

export type Reviewing =
  | { readonly ok: true; readonly family: ServerFamily; readonly version?: Version }
  | { readonly ok: false; readonly refusal: ReviewRefusal }

const refuse = (refusal: ReviewRefusal): Reviewing => ({ ok: false, refusal })

/** Who does it (`person`), by which interaction, when (ms since 1970) and why. */
export type Doing = {
  readonly person: string
  readonly interaction: string
  readonly now: number
  readonly why: string
}

/** What is to come into force: earned strengths, and its digest. */
export type Proposed = { readonly facts: Facts; readonly digest: string; readonly problems: readonly FactProblem[] }

export function askForReview(
  family: ServerFamily,
  proposed: Proposed,
  inForce: Version | undefined,
  doing: Doing,
): Reviewing {
  if (family.state === 'retired') return refuse({ code: 'retired' })
  if (!family.draft) return refuse({ code: 'nothing-to-review' })
  if (proposed.problems.length > 0) return refuse({ code: 'cannot-be-used', problems: proposed.problems })
  if (inForce?.digest === proposed.digest) return refuse({ code: 'nothing-changed' })
  const review = { by: doing.person, at: doing.now, why: doing.why, digest: proposed.digest }
  return {
    ok: true,
    family: { ...next(family, doing), state: family.head > 0 ? 'in-force' : 'in-review', review },
  }
}

/** Whether somebody may agree to what is in review: not to their own, unless there is nobody else to ask, or nobody has answered for a day. */
export const mayAgree = (
  { review }: ServerFamily,
  { person, now }: Pick<Doing, 'person' | 'now'>,
  alone: boolean,
): boolean => review !== null && (review.by !== person || alone || now >= review.at + waitAlone)

/**
 * Puts what is in review in force. `alone`: there is no second moderator, so whoever asked may press a second time; a must then waits
 * a day. `seen`: the digest that was shown to whoever agrees.
 */
export function agree(
  family: ServerFamily,
  proposed: Proposed,
  inForce: Version | undefined,
  doing: Doing,
  { alone, seen }: { readonly alone: boolean; readonly seen: string },
): Reviewing {
  const { review } = family
  if (family.state === 'retired') return refuse({ code: 'retired' })
  if (!review || !family.draft) return refuse({ code: 'nothing-to-review' })
  // Strengths move with reference cells: what was asked for is what comes into force, or nothing.
  if (!proposed.digest.startsWith(seen) || proposed.digest !== review.digest)
    return refuse({ code: 'changed-meanwhile' })
  if (proposed.problems.length > 0) return refuse({ code: 'cannot-be-used', problems: proposed.problems })
  const own = review.by === doing.person
  if (!mayAgree(family, doing, alone)) return refuse({ code: 'own-review' })
  if (own && hasNewMust(proposed.facts, inForce?.facts) && doing.now < review.at + waitAlone)
    return refuse({ code: 'must-waits', until: review.at + waitAlone })
  const version: Version = {
    ...{ family: family.id, number: family.head + 1, facts: proposed.facts, digest: proposed.digest },
    ...{ by: review.by, agreedBy: own ? null : doing.person, at: doing.now, why: review.why, undoes: null },
  }
  return { ok: true, family: inForceAfter(family, doing, version), version }
}

export function sendBack(family: ServerFamily, doing: Doing): Reviewing {
  if (!family.review) return refuse({ code: 'nothing-to-review' })
  return { ok: true, family: { ...next(family, doing), state: family.head > 0 ? family.state : 'draft', review: null } }
}

/** Taking back is the safe way: one press, a second moderator is told and not asked. */
export function goBack(family: ServerFamily, to: Version | undefined, number: number, doing: Doing): Reviewing {
  if (family.state === 'retired') return refuse({ code: 'retired' })
  if (!to) return refuse({ code: 'no-such-version', number })
  if (to.number === family.head) return refuse({ code: 'nothing-changed' })
  const version: Version = {
    ...{ family: family.id, number: family.head + 1, facts: to.facts, digest: to.digest },
    ...{ by: doing.person, agreedBy: null, at: doing.now, why: doing.why, undoes: to.number },
  }
  return { ok: true, family: inForceAfter(family, doing, version), version }
}

export function retire(family: ServerFamily, successor: string | null, doing: Doing): Reviewing {
  if (family.state === 'retired') return refuse({ code: 'retired' })
  if (family.head === 0) return refuse({ code: 'not-in-force' })
  const retired = { by: doing.person, at: doing.now, why: doing.why, successor }
  return { ok: true, family: { ...next(family, doing), state: 'retired', review: null, retired } }
}

const next = (family: ServerFamily, { interaction }: Doing): ServerFamily => ({
  ...family,
  revision: family.revision + 1,
  changedBy: interaction,
})

const inForceAfter = (family: ServerFamily, doing: Doing, version: Version): ServerFamily => ({
  ...next(family, doing),
  ...{ state: 'in-force', head: version.number, draft: null, review: null },
})

/** Whether something rules out now that did not before. */
export function hasNewMust(after: Facts, before: Facts | undefined): boolean {
  const musts = (facts: Facts | undefined) =>
    new Set(
      Object.entries(facts?.traits ?? {}).flatMap(([feature, { against }]) =>
        against.flatMap(one => (one.tells === 'must' ? one.options.map(option => `${feature}=${option}`) : [])),
      ),
    )
  const known = musts(before)
  return [...musts(after)].some(one => !known.has(one))
}
