// Carries out what was decided about a warning: posts it, changes it, or puts in its place that it is withdrawn.
import { publicLanguage } from '../../server/settings.ts'
import { type Deciding, decide } from '../../trends/findings/decide.ts'
import type { Finding, Warning } from '../../trends/findings/finding.ts'
import { sayIn } from '../../words/say.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Services } from '../services.ts'
import { showWarning, showWithdrawn } from './show/finding.ts'

export type CarriedOut =
  | 'done'
  /** The channel or message is gone, or the bot may not write there: nothing was decided. */
  | 'failed'
  /** A filter stopped the warning because of its words: nothing was decided. */
  | 'blocked'
  /** A warning is taken back, and its message cannot be changed any more. */
  | 'by-hand'

/** Cut off in between it is done again by the next look, under the same nonce. */
export async function carryOut(
  services: Pick<Services, 'trends' | 'servers' | 'posts' | 'now'>,
  finding: Finding,
): Promise<CarriedOut> {
  const { warning, withdrawal, server } = finding
  const say = sayIn(publicLanguage(await services.servers.load(server)))
  const save = async (event: Deciding) => {
    const next = decide(finding, event, services.now())
    if (next) await services.trends.findings.save(next)
  }
  if (withdrawal?.posted === false) {
    const shown = showWithdrawn(say, withdrawal.text, withdrawal.why)
    const put = await stand(services, withdrawal, shown, `x${finding.id}`)
    await save({ is: 'withdrawal-posted' })
    return 'message' in put ? 'done' : 'by-hand'
  }
  if (warning?.posted !== false) return 'done'
  const edited = finding.decisions.some(one => one.did === 'edited' && one.undone === null)
  // Decided on again after a withdrawal it is another message.
  const nonce = `w${finding.id}${finding.decisions.length > 1 ? `.${finding.decisions.length}` : ''}`
  const put = await stand(services, warning, showWarning(say, warning.text, edited), nonce)
  await save('message' in put ? { is: 'warning-posted', message: put.message } : { is: 'warning-failed' })
  return 'message' in put ? 'done' : put.failed
}

/** The id of the message that says it now, or why none does. */
async function stand(
  { posts }: Pick<Services, 'posts'>,
  { channel, message }: Warning,
  shown: ShownMessage,
  nonce: string,
): Promise<{ readonly message: string } | { readonly failed: 'failed' | 'blocked' }> {
  if (message !== null) {
    const redrawn = await posts.redraw({ channel, message }, shown)
    return redrawn === 'done' ? { message } : { failed: redrawn === 'blocked' ? 'blocked' : 'failed' }
  }
  const posting = await posts.post(channel, shown, nonce)
  if (posting.is === 'posted') return { message: posting.place.message }
  return { failed: posting.is === 'blocked' ? 'blocked' : 'failed' }
}
