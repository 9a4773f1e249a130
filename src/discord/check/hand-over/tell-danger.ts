// When a check that is in other hands finds danger, whoever started it is told: they may be the one beside the cell.
import type { Check } from '../../../check/check.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import type { Program } from '../../../engine/compile.ts'
import { judge } from '../../../engine/judge.ts'
import type { Say } from '../../../words/say.ts'
import type { Services } from '../../services.ts'
import { postWord } from './tell-others.ts'

export const isDanger = (program: Program, check: Check): boolean =>
  check.phase.is === 'done' && judge(program, check.answers).verdict === 'danger'

/** Tells them where the check was offered, or else in `channel`; nobody, where its holder started it. */
export async function tellDanger(
  services: Services,
  say: Say,
  program: Program,
  check: Check,
  channel: string | null,
): Promise<void> {
  const { starter } = custodyOf(check)
  if (starter === check.holder || !isDanger(program, check)) return
  const panel = (await services.notices.of(check.id)).find(one => one.kind === 'panel')
  const where = panel?.channel ?? channel
  if (where !== null) await postWord(services, say, check, { word: 'danger', who: starter, channel: where })
}
