// What to do now, for each verdict: the order to act first, and never anything that asks for hands on a cell one gets away from.
import type { VerdictScreen } from '../../../check/screen.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Judgement } from '../../../engine/judge.ts'
import { type Urgency, urgencies } from '../../../ground/urgencies.ts'
import type { Verdict } from '../../../ground/verdicts.ts'
import type { Key } from '../../../words/catalogue.ts'
import type { Say } from '../../../words/say.ts'

/** Every step, the most urgent first. */
export function stepsFor(program: Program, { judgement, explanation }: VerdictScreen, say: Say): string[] {
  const { verdict } = judgement
  if (verdict === 'danger') return dangers[urgencyOf(judgement)].map(key => say(key))
  const open = explanation.unchecked.filter(one => program.hazards.has(one.question))
  const unsure = open.filter(one => one.why === 'cant-tell').length
  const near = open.filter(one => one.why === 'undecided').length
  const cautions = [
    ...(near > 0 ? [say('next.hazard-undecided', { count: near })] : []),
    ...(unsure > 0 ? [say('next.hazard-unsure', { count: unsure })] : []),
  ]
  // These say all that the first step says, and more.
  return [...cautions, ...steps[verdict].slice(Math.min(cautions.length, 1)).map(key => say(key))]
}

/** The most urgent thing that a danger sign asks for. */
const urgencyOf = ({ findings }: Judgement): Urgency =>
  urgencies.find(act => findings.some(({ rule, carries }) => carries && rule.kind === 'hazard' && rule.act === act)) ??
  'isolate'

/** Nothing may ask for hands on a cell that burns, leaks, swells or has vented. Whom to call comes right after the order to act. */
const dangers: Record<Urgency, readonly Key[]> = {
  'get-away': ['safety.now', 'safety.now.call', 'safety.now.far', 'safety.now.carry', 'safety.now.gone-quiet'],
  leave: ['safety.cold.leave', 'safety.cold.wait', 'safety.cold.keep', 'safety.cold.call', 'safety.turns'],
  isolate: ['safety.quiet', 'safety.quiet.keep', 'safety.quiet.hand-in', 'safety.turns', 'next.keep'],
}

const steps: Record<Exclude<Verdict, 'danger'>, readonly Key[]> = {
  'ruled-out': ['next.not-use', 'next.seller', 'next.dispose', 'next.keep', 'next.no-post', 'next.buy'],
  doubtful: ['next.not-use', 'next.seller', 'next.keep', 'next.no-post', 'next.buy'],
  open: ['next.until-sure', 'next.handle', 'next.ask', 'next.buy'],
  'nothing-found': ['next.until-sure', 'next.handle', 'next.ask', 'next.buy'],
}
