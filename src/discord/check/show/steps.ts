// What to do now, for each verdict: the order to act first, and never anything that asks for hands on a cell one gets away from.
import { mustKeepOff } from '../../../check/next.ts'
import type { VerdictScreen } from '../../../check/screen.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Judgement } from '../../../engine/judge.ts'
import { type Urgency, urgencies } from '../../../ground/urgencies.ts'
import { isFailing, type Verdict } from '../../../ground/verdicts.ts'
import type { Key } from '../../../words/catalogue.ts'
import type { Say } from '../../../words/say.ts'

/** Every step, the most urgent first. */
export function stepsFor(program: Program, { check, judgement, explanation }: VerdictScreen, say: Say): string[] {
  const { verdict } = judgement
  if (verdict === 'danger') return dangers[urgencyOf(judgement)].map(key => say(key))
  const open = explanation.unchecked.filter(one => program.hazards.has(one.question))
  const unsure = open.filter(one => one.why === 'cant-tell').map(one => one.question)
  const near = open.filter(one => one.why === 'undecided').length
  const cautions = [
    ...(near > 0 ? [say('next.hazard-undecided', { count: near })] : []),
    ...(unsure.length > 0
      ? [say('next.hazard-unsure', { count: unsure.length, signs: sayQuestions(say, program, unsure) })]
      : []),
    ...(check.consents.touch === false && near + unsure.length === 0 ? [say('next.untouched')] : []),
  ]
  // Where something to get away from could not be told, nothing that needs hands is advised; what the cautions say is not said twice.
  const keys = mustKeepOff(program, check)
    ? untouched(verdict)
    : [
        ...(cautions.length > 0 && !isFailing(verdict) ? (['safety.turns'] as const) : []),
        ...(check.consents.touch && judgement.score === 0 && !isFailing(verdict) ? held : steps[verdict]).slice(
          Math.min(cautions.length, 1),
        ),
      ]
  return [...cautions, ...new Set(keys.map(key => sayStep(say, check, key)))]
}

/** The same on the result itself: how a cell is kept that something speaks against, with all its conditions, is left to the details. */
export function shownSteps(program: Program, screen: VerdictScreen, say: Say): string[] {
  const steps = stepsFor(program, screen, say)
  if (!isFailing(screen.judgement.verdict) || screen.judgement.verdict === 'danger') return steps
  const said = say('safety.quiet.keep')
  const short = steps.map(step => (step === said ? say('next.leave', { button: say('button.details') }) : step))
  return short.filter(step => step !== say('safety.quiet.wait'))
}

/** Where there is somebody to ask, the button that leads to them is named. */
const sayStep = (say: Say, check: VerdictScreen['check'], key: Key): string =>
  check.server !== null && (key === 'next.ask' || key === 'next.ask.untouched')
    ? say('next.helper', { ask: say(key), button: say('button.hands') })
    : say(key)

/** So many are named; more are counted. */
const mostNamed = 2

/** The questions themselves, as they were asked. */
export function sayQuestions(say: Say, program: Program, ids: readonly string[]): string {
  const asked = ids.flatMap(id => program.questions.get(id)?.ask ?? []).map(text => say('quoted', { text }))
  const more = asked.length - mostNamed
  const named = asked.slice(0, mostNamed).join(', ')
  return more > 0 ? `${named}, ${say('list.rest', { count: more })}` : named
}

/** The most urgent thing that a danger sign asks for. */
const urgencyOf = ({ findings }: Judgement): Urgency =>
  urgencies.find(act => findings.some(({ rule, carries }) => carries && rule.kind === 'hazard' && rule.act === act)) ??
  'isolate'

/**
 * Nothing may ask for hands on a cell that burns, leaks, swells or has vented. Letting go of it is part of the order to act, and of what
 * one wears comes right after it, then getting everybody out, then the numbers: nobody who holds it or breathes its smoke reads numbers first.
 */
const dangers: Record<Urgency, readonly Key[]> = {
  'get-away': [
    'safety.now',
    'safety.now.worn',
    'safety.now.far',
    'safety.now.call',
    'safety.now.carry',
    'safety.now.gone-quiet',
  ],
  leave: ['safety.cold.leave', 'safety.cold.wait', 'safety.cold.keep', 'safety.cold.call', 'safety.turns'],
  isolate: [
    'safety.quiet',
    'safety.quiet.wait',
    'safety.quiet.keep',
    'safety.quiet.hand-in',
    'safety.turns',
    'next.keep',
  ],
}

/** First aid, where the cell may have harmed somebody: what came out of it, or its heat. */
export const aidFor = ({ judgement }: VerdictScreen, say: Say): string[] =>
  judgement.verdict === 'danger' && urgencyOf(judgement) !== 'isolate'
    ? (['safety.aid', 'safety.aid.burn'] as const).map(key => say(key))
    : []

/**
 * What has failed a check is a sign on a quiet cell like any other, and is handled as one. What to do once it gets hot stands before
 * what has time: a result shows the first five, and two of them may be cautions.
 */
const failed: readonly Key[] = [
  'safety.quiet',
  'safety.quiet.wait',
  'safety.quiet.keep',
  'safety.turns',
  'safety.quiet.hand-in',
  'next.seller',
  'next.keep',
  'next.buy',
]

/** What nothing speaks against enough is kept by whoever is unsure of it. */
const kept: readonly Key[] = ['next.until-sure', 'safety.quiet.wait', 'next.handle', 'next.ask', 'next.buy']

/** The same by somebody who has just said, point by point, that it may be touched, while nothing speaks against it. */
const held: readonly Key[] = ['next.until-sure', 'next.handle.held', 'safety.turns', 'next.ask', 'next.buy']

const steps: Record<Exclude<Verdict, 'danger'>, readonly Key[]> = {
  'ruled-out': failed,
  doubtful: failed,
  open: kept,
  'nothing-found': kept,
}

/** The same for a cell that is left where it is. */
const untouched = (verdict: Exclude<Verdict, 'danger'>): readonly Key[] => [
  'safety.cold.leave',
  'safety.turns',
  ...(isFailing(verdict)
    ? (['safety.cold.call', 'next.seller', 'next.keep'] as const)
    : (['next.ask.untouched', 'safety.cold.call'] as const)),
  'next.buy',
]
