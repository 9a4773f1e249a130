// What a person sees of a check, as data: the Discord room turns it into a message.
import type { Answer, Answers, QuestionId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { type Explanation, explain } from '../engine/explain.ts'
import { type Judgement, judge, placesOf, verdictAt } from '../engine/judge.ts'
import type { Question } from '../engine/pack/pack.ts'
import { type Failing, isFailing } from '../ground/verdicts.ts'
import { accusing, accusingBeside } from './answer-fits.ts'
import type { Check, Consent } from './check.ts'
import type { Offer } from './custody.ts'
import { custodyOf, isSecond } from './custody-of.ts'
import { canBeSaidFromAfar } from './from-afar.ts'
import type { Left } from './left.ts'
import { type Next, nextOf } from './next.ts'
import { type Stage, stageOf } from './stage.ts'

export type Screen =
  | {
      readonly kind: 'question'
      readonly check: Check
      readonly question: Question
      /** The answer that is being asked about a second time. */
      readonly again: Answer | undefined
      /** The figure without which that answer would not count against the cell. */
      readonly togetherWith?: QuestionId
      /** What was chosen that accuses together with the figure asked about again: each is looked at once more with it. */
      readonly beside?: readonly QuestionId[]
      /** It is shown to a moderator, who answers in the holder's place. */
      readonly helping?: true
      /** A helper has answered, and another one is wanted to. */
      readonly second?: true
      /** Options that only somebody beside the cell can choose. */
      readonly closed?: readonly string[]
      /** It was answered before, and stays so until another answer is given. */
      readonly changing?: true
      readonly stage: Stage
      /** What the answers so far amount to already, where it is at least doubtful: only worse can still come out. */
      readonly decided?: Failing
      /** The last two answers, and no more, were "can't tell": somebody else may be able to. */
      readonly stuck?: true
      /** How many answers are in, and how many more questions could still matter at most. */
      readonly answered: number
      readonly left: Left
    }
  /** How thorough it is to be, which family and which tools: all answered already, until the person says otherwise. */
  | { readonly kind: 'beginning'; readonly check: Check }
  /** It waits for somebody to take it. */
  | { readonly kind: 'offered'; readonly check: Check; readonly offer: Offer }
  | { readonly kind: 'consent'; readonly check: Check; readonly to: Consent }
  | { readonly kind: 'paused'; readonly check: Check }
  | {
      readonly kind: 'verdict'
      readonly check: Check
      readonly judgement: Judgement
      readonly explanation: Explanation
      /** Whether going on in full could still change the verdict. */
      readonly more: boolean
    }
  | { readonly kind: 'closed'; readonly check: Check }
export type VerdictScreen = Extract<Screen, { kind: 'verdict' }>

/** The screen a check is on; `known` is what comes next, where that has been worked out already. */
export function screenOf(program: Program, check: Check, known?: Next): Screen {
  const { phase } = check
  const offer = check.custody?.offer
  // A verdict is never hidden behind an offer.
  if (offer && phase.is !== 'closed' && phase.is !== 'done') return { kind: 'offered', check, offer }
  switch (phase.is) {
    case 'beginning':
      return { kind: 'beginning', check }
    case 'asking':
    case 'second-look': {
      const question = program.questions.get(phase.question)
      if (!question) throw new RangeError(`the program has no question ${phase.question}`)
      const next = known ?? nextOf(program, check)
      return {
        kind: 'question',
        check,
        question,
        again: phase.is === 'second-look' ? phase.answer : undefined,
        ...(phase.is === 'second-look' && withFigure(program, check, phase.question, phase.answer)),
        ...(phase.is === 'second-look' && withChosen(program, check)),
        ...(phase.is === 'asking' && phase.changing && { changing: true as const }),
        stage: stageOf(program, question),
        ...decidedBy(program, check.answers),
        ...(isStuck(check) && { stuck: true as const }),
        answered: check.trail.length,
        left: next.is === 'done' ? { all: 1 } : next.left,
      }
    }
    case 'consent':
      return { kind: 'consent', check, to: phase.to }
    case 'paused':
      return { kind: 'paused', check }
    case 'closed':
      return { kind: 'closed', check }
    case 'done': {
      const judgement = judge(program, check.answers)
      const explanation = explain(program, check.answers, judgement)
      const more = nextOf(program, { ...check, mode: 'full' }).is !== 'done'
      return { kind: 'verdict', check, judgement, explanation, more }
    }
  }
}

/** The verdict so far, where more answers can only make it worse. */
function decidedBy(program: Program, answers: Answers): { readonly decided?: Failing } {
  // What holds whatever is answered holds as it stands.
  if (!isFailing(judge(program, answers).verdict)) return {}
  const verdict = verdictAt(program, placesOf(program, answers))
  return isFailing(verdict) ? { decided: verdict } : {}
}

/** Whether just the last two questions could not be told: once for each run of them. */
function isStuck({ trail, answers }: Check): boolean {
  const [before, ...last] = [undefined, ...trail].slice(-3)
  const untold = (id: QuestionId | undefined) => id !== undefined && answers[id]?.kind === 'cant-tell'
  return last.length === 2 && last.every(untold) && !untold(before)
}

/** The figure that a chosen answer accuses together with; none where the answer is a figure itself, or accuses alone. */
function withFigure(program: Program, { answers, pending }: Check, id: QuestionId, answer: Answer) {
  const all = { ...pending, ...answers, [id]: answer }
  const figure = answer.kind === 'option' && accusing(program, all).find(one => all[one]?.kind === 'reading')
  return figure ? { togetherWith: figure } : {}
}

function withChosen(program: Program, check: Check) {
  const beside = accusingBeside(program, check)
  return beside.length > 0 ? { beside } : {}
}

/** The question a moderator was asked about; undefined if nothing is asked any more. */
export function helpingScreen(program: Program, check: Check): Extract<Screen, { kind: 'question' }> | undefined {
  const { helpRequest } = custodyOf(check)
  const question = helpRequest && program.questions.get(helpRequest.question)
  if (!question || check.phase.is === 'closed') return undefined
  // The second of two helpers is not told what the first has said.
  const second = isSecond(check, question.id)
  const again =
    check.phase.is === 'second-look' && check.phase.question === question.id && !second ? check.phase.answer : undefined
  const options = question.answer.kind === 'options' ? question.answer.options : []
  const closed = options
    .filter(one => !canBeSaidFromAfar(program, check, question.id, { kind: 'option', option: one.id }))
    .map(one => one.id)
  const stage = stageOf(program, question)
  return {
    kind: 'question',
    check,
    question,
    again,
    helping: true,
    ...(second && { second: true as const }),
    closed,
    stage,
    answered: check.trail.length,
    left: { all: 1 },
  }
}
