// The one door to a check: whether this person may do this, and what it then becomes.
import type { Program } from '../engine/compile.ts'
import { type Check, expiryFrom, type PersonId } from './check.ts'
import { type Actor, custodyOf } from './custody.ts'
import type { CheckEvent } from './events.ts'
import { type HandOverEvent, handOver, isHandOver } from './hand-over.ts'
import type { CheckRefusal } from './refusals.ts'
import { screenOf } from './screen.ts'
import { moveOn, type Stepping, step } from './step.ts'

/** Takes one event of this person at `now` (ms since 1970). The revision grows by one; a refusal leaves the check as it is. */
export function act(
  program: Program,
  check: Check,
  actor: Actor,
  event: CheckEvent | HandOverEvent,
  now: number,
): Stepping {
  if (isHandOver(event)) return hand(program, check, actor, event, now)
  const helps = actor.person !== check.holder
  const refusal = mayNot(check, actor, event)
  if (refusal) return { ok: false, refusal }
  const { plea } = custodyOf(check)
  if (!helps || event.is !== 'answer') return settled(check, step(program, check, event, now))
  // Whoever asked may have paused meanwhile: the question they asked about is answered all the same.
  const asking: Check =
    check.phase.is === 'paused' && plea ? { ...check, phase: { is: 'asking', question: plea.question } } : check
  const helper = { by: actor.person, at: now }
  return settled(check, step(program, asking, { ...event, by: actor.person }, now), helper)
}

/** Why this person may not do this; undefined if they may. */
function mayNot(check: Check, actor: Actor, event: CheckEvent): CheckRefusal | undefined {
  const { offer, plea } = custodyOf(check)
  if (actor.person === check.holder) return offer && event.is !== 'close' ? { code: 'offered' } : undefined
  const asked = event.is === 'answer' && plea?.question === event.question
  return actor.moderator && asked ? undefined : { code: 'not-yours' }
}

function hand(program: Program, check: Check, actor: Actor, event: HandOverEvent, now: number): Stepping {
  if (check.phase.is === 'closed') return { ok: false, refusal: { code: 'closed' } }
  if (now >= check.expiresAt) return { ok: false, refusal: { code: 'expired' } }
  const handed = handOver(check, event, actor, now)
  if (!handed.ok) return handed
  const touched = { ...handed.check, expiresAt: expiryFrom(now) }
  // What comes next depends on what the new holder has done before: nobody is led on by another's consent.
  if (touched.holder !== check.holder && check.phase.is !== 'done') return moveOn(program, touched)
  const next = { ...touched, revision: check.revision + 1 }
  return { ok: true, check: next, screen: screenOf(program, next) }
}

/** A question that was asked of a moderator and has its answer is asked no longer. */
function settled(before: Check, stepped: Stepping, helper?: Helper): Stepping {
  const { plea, ...custody } = custodyOf(before)
  if (!stepped.ok || !plea) return stepped
  const { check, screen } = stepped
  const answered = check.answers[plea.question] !== before.answers[plea.question]
  if (!answered && check.phase.is !== 'done' && check.phase.is !== 'closed') return stepped
  const history = helper ? [...custody.history, { ...helper, did: 'helped' as const }] : custody.history
  const next: Check = { ...check, custody: { ...custody, history } }
  return { ok: true, check: next, screen: { ...screen, check: next } }
}

type Helper = { readonly by: PersonId; readonly at: number }
