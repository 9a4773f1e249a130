// The one door to a check: whether this person may do this, and what it then becomes.
import { type Answer, cantTell, sameAnswer } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { judge } from '../engine/judge.ts'
import { type Check, expiryFrom } from './check.ts'
import { type Actor, type HelpRequest, mayHelp } from './custody.ts'
import { custodyOf, isSecond } from './custody-of.ts'
import type { CheckEvent } from './events.ts'
import { canBeSaidFromAfar, isAlarm } from './from-afar.ts'
import { type HandOverEvent, handOver, isHandOver } from './hand-over.ts'
import type { PersonId } from './ids.ts'
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
  if (actor.person === check.holder) return goOn(program, check, event, now)
  return event.is === 'answer' ? help(program, check, actor, event, now) : refused({ code: 'not-yours' })
}

/** Its holder: unless it waits for somebody else, when only danger can be said, and that at once. */
function goOn(program: Program, check: Check, event: CheckEvent, now: number): Stepping {
  const { offer, closing: _moves, ...custody } = custodyOf(check)
  // Whoever goes on with it keeps it open.
  const going = check.custody?.closing ? { ...check, custody: { ...custody, ...(offer && { offer }) } } : check
  if (!offer) return settled(going, step(program, going, event, now))
  const alarm = event.is === 'answer' && isAlarm(program, check, event.question, event.answer)
  if (now < offer.until && event.is !== 'close' && !alarm) return refused({ code: 'offered' })
  return step(program, { ...check, custody }, event, now)
}

/** A moderator, at the one question they were asked. */
function help(program: Program, check: Check, actor: Actor, event: Answering, now: number): Stepping {
  const { helpRequest } = custodyOf(check)
  if (!mayHelp(actor) || helpRequest?.question !== event.question) return refused({ code: 'not-yours' })
  if (!canBeSaidFromAfar(program, check, event.question, event.answer)) return refused({ code: 'only-beside-it' })
  const second = isSecond(check, event.question)
  const alarm = isAlarm(program, check, event.question, event.answer)
  if (!alarm && isDangerous(program, check)) return refused({ code: 'danger-stands' })
  if (second && !alarm && check.saidBy?.[event.question] === actor.person) return refused({ code: 'second-helper' })
  // Whoever asked may have paused meanwhile, or come to a verdict: the question is answered all the same.
  const stands = check.phase.is === 'paused' || check.phase.is === 'done'
  const asking: Check = stands ? { ...check, phase: { is: 'asking', question: helpRequest.question } } : check
  const answer = second && !alarm && !agrees(check, event.answer) ? cantTell : event.answer
  const stepped = step(program, asking, { ...event, answer, by: actor.person }, now)
  return freedForSecond(settled(check, stepped, { by: actor.person, at: now }), helpRequest, actor.person, now)
}

/** Two who say different things have not told; a figure is never read twice alike. */
const agrees = ({ phase }: Check, answer: Answer): boolean =>
  answer.kind !== 'option' || (phase.is === 'second-look' && sameAnswer(phase.answer, answer))

/** Once the first of two has answered, the question waits for everybody else again; who had taken it on without answering keeps it. */
function freedForSecond(stepped: Stepping, asked: HelpRequest, by: PersonId, now: number): Stepping {
  const { question } = asked
  if (!stepped.ok || !isSecond(stepped.check, question)) return stepped
  const { check, screen } = stepped
  const custody = custodyOf(check)
  const { claimed, meant: _meant, ...open } = asked
  const helpRequest = claimed && claimed.by !== by ? asked : open
  const history = [...custody.history, { by, at: now, did: 'helped' as const, question }]
  const next: Check = { ...check, custody: { ...custody, helpRequest, history } }
  return { ok: true, check: next, screen: { ...screen, check: next } }
}

const isDangerous = (program: Program, check: Check): boolean => judge(program, check.answers).verdict === 'danger'

type Answering = Extract<CheckEvent, { is: 'answer' }>

function hand(program: Program, check: Check, actor: Actor, event: HandOverEvent, now: number): Stepping {
  if (check.phase.is === 'closed') return refused({ code: 'closed' })
  if (now >= check.expiresAt) return refused({ code: 'expired' })
  const handed = handOver(check, event, actor, now)
  if (!handed.ok) return handed
  if (event.is === 'reopen' && isDangerous(program, check)) return refused({ code: 'danger-stands' })
  // Whoever asks to close a check gives it no longer life.
  const expiresAt = event.is === 'ask-closing' ? check.expiresAt : expiryFrom(now)
  const touched = { ...handed.check, expiresAt }
  // What comes next depends on what the new holder has done before: nobody is led on by another's consent.
  const asks = check.phase.is !== 'done' && check.phase.is !== 'beginning'
  if (touched.holder !== check.holder && asks) return moveOn(program, touched)
  const next = { ...touched, revision: check.revision + 1 }
  return { ok: true, check: next, screen: screenOf(program, next) }
}

/** A question that was asked of a moderator is asked no longer once it is answered, or the check has gone on to another. */
function settled(before: Check, stepped: Stepping, helper?: Helper): Stepping {
  const { helpRequest } = custodyOf(before)
  if (!stepped.ok || !helpRequest) return stepped
  const { check, screen } = stepped
  const { phase } = check
  const still =
    phase.is === 'paused' ||
    (before.phase.is === 'done' && phase.is === 'done' && helper === undefined) ||
    ('question' in phase && phase.question === helpRequest.question)
  if (still) return stepped
  const { helpRequest: _over, ...custody } = custodyOf(check)
  const history = helper
    ? [...custody.history, { ...helper, did: 'helped' as const, question: helpRequest.question }]
    : custody.history
  const next: Check = { ...check, custody: { ...custody, history } }
  return { ok: true, check: next, screen: { ...screen, check: next } }
}

type Helper = { readonly by: PersonId; readonly at: number }

const refused = (refusal: CheckRefusal): Stepping => ({ ok: false, refusal })
