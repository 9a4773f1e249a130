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
    const message = await put(services, withdrawal, shown, `x${finding.id}`)
    await save({ is: 'withdrawal-posted' })
    return message === undefined ? 'by-hand' : 'done'
  }
  if (warning?.posted !== false) return 'done'
  const edited = finding.decisions.some(one => one.did === 'edited' && one.undone === null)
  // Decided on again after a withdrawal it is another message.
  const nonce = `w${finding.id}${finding.decisions.length > 1 ? `.${finding.decisions.length}` : ''}`
  const message = await put(services, warning, showWarning(say, warning.text, edited), nonce)
  await save(message === undefined ? { is: 'warning-failed' } : { is: 'warning-posted', message })
  return message === undefined ? 'failed' : 'done'
}

/** The id of the message that says it now; undefined where it could not be. */
async function put(
  { posts }: Pick<Services, 'posts'>,
  { channel, message }: Warning,
  shown: ShownMessage,
  nonce: string,
): Promise<string | undefined> {
  if (message !== null) return (await posts.redraw({ channel, message }, shown)) === 'done' ? message : undefined
  const posting = await posts.post(channel, shown, nonce)
  return posting.is === 'posted' ? posting.place.message : undefined
}
