// The life of a check: one event in, the next state and its screen out, or a refusal that changes nothing.
import { type Answers, option, type QuestionId, sameAnswer } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { dayOf } from '../engine/day-of.ts'
import { decides, misfit } from './answer-fits.ts'
import { type Check, expiryFrom, type Phase } from './check.ts'
import type { CheckEvent, Start } from './events.ts'
import type { PersonId } from './ids.ts'
import { takeIn } from './known-facts.ts'
import { type Next, nextOf } from './next.ts'
import type { CheckRefusal } from './refusals.ts'
import { type Screen, screenOf } from './screen.ts'

export type Stepping =
  | { readonly ok: true; readonly check: Check; readonly screen: Screen }
  | { readonly ok: false; readonly refusal: CheckRefusal }

/** The most cells one check can stand for. */
export const mostCells = 10_000

/** Opens a check at `now` (ms since 1970, UTC). */
export function start(program: Program, event: Start, now: number): Stepping {
  if (!Number.isInteger(event.cells) || event.cells < 1 || event.cells > mostCells)
    return refuse({ code: 'too-many-cells', cells: event.cells, most: mostCells })
  const { known: facts = {}, ...begun } = event
  const known: Answers = program.questions.has('how-many')
    ? { 'how-many': option(event.cells > 1 ? 'several' : 'one') }
    : {}
  const check: Check = {
    ...begun,
    revision: 0,
    packs: program.packs,
    day: dayOf(now),
    answers: { ...program.given, ...known },
    trail: [],
    consents: {},
    phase: { is: 'paused' },
    startedAt: now,
    expiresAt: expiryFrom(now),
  }
  return know(program, check, facts, 0)
}

/** Takes one event at `now`. The revision grows by one; a refusal leaves the check as it is. */
export function step(program: Program, check: Check, event: CheckEvent, now: number): Stepping {
  if (check.phase.is === 'closed') return refuse({ code: 'closed' })
  if (now >= check.expiresAt) return refuse({ code: 'expired' })
  if (!allowed[check.phase.is].includes(event.is))
    return refuse({ code: 'not-now', event: event.is, phase: check.phase.is })
  const touched = { ...check, expiresAt: expiryFrom(now) }
  switch (event.is) {
    case 'answer':
      return answer(program, touched, event)
    case 'consent':
      if (check.phase.is !== 'consent' || check.phase.to !== event.to) return refuse({ code: 'another-consent' })
      return moveOn(program, { ...touched, consents: { ...check.consents, [event.to]: event.given } })
    case 'know':
      return know(program, touched, event.answers)
    case 'back':
      return back(program, touched)
    case 'pause':
      return settle(program, touched, { is: 'paused' })
    case 'resume':
      return moveOn(program, touched)
    case 'finish':
      return settle(program, touched, { is: 'done' })
    case 'go-on':
      return moveOn(program, { ...touched, mode: 'full' })
    case 'leave-nothing':
      return settle(program, { ...touched, leaves: 'declined' }, { is: 'done' })
    case 'close':
      return settle(program, touched, { is: 'closed' })
  }
}

type AnswerEvent = Extract<CheckEvent, { is: 'answer' }>

const allowed: Readonly<Record<Phase['is'], readonly CheckEvent['is'][]>> = {
  asking: ['answer', 'know', 'back', 'pause', 'finish', 'close'],
  'second-look': ['answer', 'know', 'back', 'pause', 'close'],
  consent: ['consent', 'know', 'back', 'pause', 'finish', 'close'],
  paused: ['resume', 'know', 'close'],
  done: ['know', 'back', 'go-on', 'leave-nothing', 'close'],
  closed: [],
}

function answer(program: Program, check: Check, { question: id, answer: given, by }: AnswerEvent): Stepping {
  const { phase } = check
  if (phase.is !== 'asking' && phase.is !== 'second-look')
    return refuse({ code: 'not-now', event: 'answer', phase: phase.is })
  if (phase.question !== id) return refuse({ code: 'another-question', question: phase.question })
  const refusal = misfit(program, id, given)
  if (refusal) return refuse(refusal)
  const decisive = decides(program, check.answers, id, given)
  // Whoever measures again reads another figure; it confirms the first if it means the same.
  const confirmed =
    phase.is === 'second-look' && (sameAnswer(phase.answer, given) || (given.kind === 'reading' && decisive))
  if (!confirmed && decisive) return settle(program, check, { is: 'second-look', question: id, answer: given })
  const trail = [...check.trail.filter(other => other !== id), id]
  const answered = { ...check, answers: { ...check.answers, [id]: given }, trail }
  return moveOn(program, saidBy(saidTwice(answered, id, confirmed), id, by))
}

/** Remembers which answers were looked at twice; one that is given anew was not. */
function saidTwice(check: Check, id: QuestionId, confirmed: boolean): Check {
  const { twice: before = [], ...rest } = check
  const twice = [...before.filter(one => one !== id), ...(confirmed ? [id] : [])]
  return twice.length > 0 ? { ...rest, twice } : rest
}

/** Remembers that a moderator gave this answer, or that the holder now gave it themselves. */
function saidBy(check: Check, id: QuestionId, by: PersonId | undefined): Check {
  const { saidBy: before = {}, ...rest } = check
  const { [id]: _before, ...others } = before
  const said = by === undefined ? others : { ...others, [id]: by }
  return Object.keys(said).length === 0 ? rest : { ...rest, saidBy: said }
}

/** Takes in what is known already; a fact that alone would rule the cell out is looked at again before it counts. */
function know(program: Program, check: Check, facts: Answers, by = 1): Stepping {
  const { answers, taken, decisive } = takeIn(program, check.answers, facts)
  const knowing = { ...check, answers, trail: [...check.trail, ...taken] }
  return decisive ? settle(program, knowing, { is: 'second-look', ...decisive }, by) : moveOn(program, knowing, by)
}

/** Takes back the last answer and asks it again; from a second look or a consent, the last step that counted. */
function back(program: Program, check: Check): Stepping {
  if (check.phase.is === 'second-look') return settle(program, check, { is: 'asking', question: check.phase.question })
  const last = check.trail.at(-1)
  if (last === undefined) return refuse({ code: 'nothing-to-go-back-to' })
  const { [last]: _dropped, ...answers } = check.answers
  // What was declined after that answer is offered again.
  const consents = Object.fromEntries(Object.entries(check.consents).filter(([, given]) => given))
  return settle(
    program,
    { ...check, answers, consents, trail: check.trail.slice(0, -1) },
    { is: 'asking', question: last },
  )
}

/** Asks what comes next; into a check's phase goes what the answers so far leave open. */
export function moveOn(program: Program, check: Check, by = 1): Stepping {
  const next = nextOf(program, check)
  return settle(program, check, phaseOf(next), by, next)
}

/** The phase in which a check waits for what comes next. */
export function phaseOf(next: Next): Phase {
  if (next.is === 'ask') return { is: 'asking', question: next.question }
  return next.is === 'consent' ? { is: 'consent', to: next.to } : { is: 'done' }
}

function settle(program: Program, check: Check, phase: Phase, by = 1, next?: Next): Stepping {
  const moved = { ...check, phase, revision: check.revision + by }
  return { ok: true, check: moved, screen: screenOf(program, moved, next) }
}

const refuse = (refusal: CheckRefusal): Stepping => ({ ok: false, refusal })
