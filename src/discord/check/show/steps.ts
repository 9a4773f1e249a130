// What to do now, for each verdict: the order to act first, and never anything that asks for hands on a cell one gets away from.
import type { VerdictScreen } from '../../../check/screen.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Judgement } from '../../../engine/judge.ts'
import type { Verdict } from '../../../ground/verdicts.ts'
import type { Key } from '../../../words/catalogue.ts'
import type { Say } from '../../../words/say.ts'

/** Every step, the most urgent first. */
export function stepsFor(program: Program, { judgement, explanation }: VerdictScreen, say: Say): string[] {
  const { verdict } = judgement
  if (mustLeave(judgement)) return leaving.map(key => say(key))
  const open = explanation.unchecked.filter(one => program.hazards.has(one.question))
  const unsure = open.filter(one => one.why === 'cant-tell').length
  const near = open.filter(one => one.why === 'undecided').length
  const decided = verdict === 'danger'
  return [
    ...(near > 0 && !decided ? [say('next.hazard-undecided', { count: near })] : []),
    ...(unsure > 0 && !decided ? [say('next.hazard-unsure', { count: unsure })] : []),
    ...steps[verdict].map(key => say(key)),
  ]
}

/** Whether the cell is one to get away from. */
export const mustLeave = ({ findings }: Judgement): boolean =>
  findings.some(({ rule, carries }) => carries && rule.kind === 'hazard' && rule.act === 'get-away')

/** From a cell that smokes, leaks or swells one goes away: nothing may ask for hands on it. Whom to call comes right after. */
const leaving: readonly Key[] = [
  'safety.now',
  'safety.now.call',
  'safety.now.far',
  'safety.now.carry',
  'safety.now.gone-quiet',
]

const steps: Record<Verdict, readonly Key[]> = {
  danger: ['safety.quiet', 'safety.quiet.keep', 'safety.quiet.hand-in', 'safety.turns', 'next.keep'],
  'ruled-out': ['next.not-use', 'next.seller', 'next.dispose', 'next.keep', 'next.no-post', 'next.buy'],
  doubtful: ['next.not-use', 'next.seller', 'next.keep', 'next.no-post', 'next.buy'],
  open: ['next.until-sure', 'next.handle', 'next.ask', 'next.buy'],
  'nothing-found': ['next.until-sure', 'next.handle', 'next.ask', 'next.buy'],
}
