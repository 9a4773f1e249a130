// The life of a check: one event in, the next state and its screen out, or a refusal that changes nothing.
import { type Answers, option, type QuestionId, sameAnswer } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { dayOf } from '../engine/day-of.ts'
import { accusing, accusingBeside, misfit } from './answer-fits.ts'
import { type Check, expiryFrom, type Phase } from './check.ts'
import type { CheckEvent, Start } from './events.ts'
import type { PersonId } from './ids.ts'
import { takeIn } from './known/known-facts.ts'
import { followed, whatFollows, workedOutOf } from './known/known-figures.ts'
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
  const { known: facts = {}, mode, ...begun } = event
  const known: Answers = program.questions.has('how-many')
    ? { 'how-many': option(event.cells > 1 ? 'several' : 'one') }
    : {}
  const check: Check = {
    ...begun,
    mode: mode ?? 'quick',
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
  return mode === undefined
    ? settle(program, withFacts(program, check, facts), { is: 'beginning' }, 0)
    : know(program, check, facts, 0)
}

/** Takes one event at `now`. The revision grows by one; a refusal leaves the check as it is. */
export function step(program: Program, check: Check, event: CheckEvent, now: number): Stepping {
  if (check.phase.is === 'closed') return refuse({ code: 'closed' })
  if (now >= check.expiresAt) return refuse({ code: 'expired' })
  if (!allowed[check.phase.is].includes(event.is))
    return refuse({ code: 'not-now', event: event.is, phase: check.phase.is })
  const touched = { ...check, expiresAt: expiryFrom(now) }
  switch (event.is) {
    case 'begin':
      return moveOn(program, { ...touched, mode: event.mode })
    case 'equip':
      return settle(program, { ...touched, tools: event.tools }, { is: 'beginning' })
    case 'change':
      return change(program, touched, event.question)
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
  beginning: ['begin', 'equip', 'know', 'pause', 'close'],
  asking: ['answer', 'change', 'know', 'back', 'pause', 'finish', 'close'],
  'second-look': ['answer', 'change', 'know', 'back', 'pause', 'close'],
  consent: ['consent', 'change', 'know', 'back', 'pause', 'finish', 'close'],
  paused: ['resume', 'know', 'close'],
  done: ['know', 'change', 'back', 'go-on', 'leave-nothing', 'close'],
  closed: [],
}

function answer(program: Program, check: Check, { question: id, answer: given, by, together }: AnswerEvent): Stepping {
  const { phase } = check
  if (phase.is !== 'asking' && phase.is !== 'second-look')
    return refuse({ code: 'not-now', event: 'answer', phase: phase.is })
  if (phase.question !== id) return refuse({ code: 'another-question', question: phase.question })
  const refusal = misfit(program, id, given)
  if (refusal) return refuse(refusal)
  const before = phase.is === 'second-look' ? phase.answer : check.answers[id]
  const stale = before === undefined || sameAnswer(before, given) ? [] : workedOutOf(program, id)
  const kept = without(check, stale)
  const answers = { ...kept.answers, [id]: given }
  // Whoever measures again reads another figure; it confirms the first if it accuses as well.
  const confirms =
    phase.is === 'second-look' &&
    (sameAnswer(phase.answer, given) || (given.kind === 'reading' && accusing(program, answers).includes(id)))
  const trail = kept.trail.includes(id) ? kept.trail : [...kept.trail, id]
  const answered = notPending(sure({ ...kept, answers, trail }, id, confirms), id)
  const beside = together && confirms && by === undefined ? accusingBeside(program, check) : []
  return moveOn(program, saidBy(beside.reduce(stillSo, answered), id, by))
}

/** The check with an answer that was set aside taken for what it was, and looked at twice. */
function stillSo(check: Check, id: QuestionId): Check {
  const given = check.pending?.[id] ?? check.answers[id]
  if (given === undefined) return check
  const trail = check.trail.includes(id) ? check.trail : [...check.trail, id]
  return notPending(sure({ ...check, answers: { ...check.answers, [id]: given }, trail }, id, true), id)
}

/** The check with nothing pending about this question any more. */
function notPending(check: Check, id: QuestionId): Check {
  const { pending: all = {}, ...rest } = check
  const { [id]: _asked, ...pending } = all
  return Object.keys(pending).length > 0 ? { ...rest, pending } : rest
}

/** The check as if these questions had never been answered. */
function without(check: Check, ids: readonly QuestionId[]): Check {
  const answers = Object.fromEntries(Object.entries(check.answers).filter(([id]) => !ids.includes(id)))
  const kept: Check = { ...check, answers, trail: check.trail.filter(id => !ids.includes(id)) }
  return ids.reduce((before, id) => notPending(sure(before, id, false), id), kept)
}

/** Takes in what follows from the figures given so far: nobody is asked for what can be worked out. */
function withWorkedOut(program: Program, check: Check): Check {
  const found = whatFollows(program, check)
  const answers = { ...check.answers, ...found }
  return { ...check, answers, trail: [...check.trail, ...Object.keys(found)] }
}

/** Remembers that an answer was looked at twice, or no longer was. */
function sure(check: Check, id: QuestionId, confirmed: boolean): Check {
  const { confirmed: before = [], ...rest } = check
  const others = before.filter(other => other !== id)
  const now = confirmed ? [...others, id] : others
  return now.length > 0 ? { ...rest, confirmed: now } : rest
}

/** Remembers that a moderator gave this answer, or that the holder now gave it themselves. */
function saidBy(check: Check, id: QuestionId, by: PersonId | undefined): Check {
  const { saidBy: before = {}, ...rest } = check
  const { [id]: _before, ...others } = before
  const said = by === undefined ? others : { ...others, [id]: by }
  return Object.keys(said).length === 0 ? rest : { ...rest, saidBy: said }
}

/** Takes in what is known already, and goes on; what accuses waits to be asked about. */
function know(program: Program, check: Check, facts: Answers, by = 1): Stepping {
  const knowing = withFacts(program, check, facts)
  return check.phase.is === 'beginning' && by > 0
    ? settle(program, knowing, check.phase, by)
    : moveOn(program, knowing, by)
}

function withFacts(program: Program, check: Check, facts: Answers): Check {
  const { answers, taken } = takeIn(program, check.answers, facts)
  return setAside(program, { ...check, answers, trail: [...check.trail, ...taken] })
}

/** Asks an answered question again; from a question that is being changed, another one can be chosen. */
function change(program: Program, check: Check, question: QuestionId): Stepping {
  const given = check.trail.includes(question) || check.pending?.[question] !== undefined
  if (!given || !program.questions.has(question)) return refuse({ code: 'nothing-to-change', question })
  return settle(program, check, { is: 'asking', question, changing: true })
}

/** Takes back the last answer and asks it again; from a second look or a consent, the last step that counted. */
function back(program: Program, check: Check): Stepping {
  const { phase } = check
  if (phase.is === 'second-look')
    return settle(program, notPending(check, phase.question), { is: 'asking', question: phase.question })
  // What was being changed stays as it was answered.
  if (phase.is === 'asking' && phase.changing) return moveOn(program, check)
  const last = check.trail.findLast(id => !followed(program, check.answers, id))
  if (last === undefined) return refuse({ code: 'nothing-to-go-back-to' })
  // What was declined after that answer is offered again.
  const consents = Object.fromEntries(Object.entries(check.consents).filter(([, given]) => given))
  const before = without({ ...check, consents }, [last, ...workedOutOf(program, last)])
  return settle(program, before, { is: 'asking', question: last })
}

/** Asks what comes next: what the answers so far leave open, those that accuse a second time before they count. */
export function moveOn(program: Program, check: Check, by = 1): Stepping {
  const kept = setAside(program, withWorkedOut(program, check))
  const next = nextOf(program, kept)
  return settle(program, kept, phaseOf(next), by, next)
}

/**
 * Takes out of a check's answers what accuses and was given once only, to be asked about again: the figure first, since a slip of
 * the hand is likeliest there, otherwise the latest; then what else would accuse without it.
 */
function setAside(program: Program, check: Check): Check {
  let kept = check
  for (;;) {
    const accusers = accusing(program, kept.answers)
    const once = kept.trail.filter(id => accusers.includes(id) && !check.confirmed?.includes(id))
    const question = once.find(id => kept.answers[id]?.kind === 'reading') ?? once.at(-1)
    const answer = question === undefined ? undefined : kept.answers[question]
    if (question === undefined || answer === undefined) return kept
    const { [question]: _aside, ...answers } = kept.answers
    const trail = kept.trail.filter(id => id !== question)
    kept = { ...kept, answers, trail, pending: { ...kept.pending, [question]: answer } }
  }
}

/** The phase in which a check waits for what comes next. */
export function phaseOf(next: Next): Phase {
  if (next.is === 'ask') return { is: 'asking', question: next.question }
  if (next.is === 'confirm') return { is: 'second-look', question: next.question, answer: next.answer }
  return next.is === 'consent' ? { is: 'consent', to: next.to } : { is: 'done' }
}

function settle(program: Program, check: Check, phase: Phase, by = 1, next?: Next): Stepping {
  const moved = { ...check, phase, revision: check.revision + by }
  return { ok: true, check: moved, screen: screenOf(program, moved, next) }
}

const refuse = (refusal: CheckRefusal): Stepping => ({ ok: false, refusal })
