// Stores one decision about a finding and carries it out: what the buttons of one finding and of several at once share.
import { publicLanguage, type ServerSettings } from '../../server/settings.ts'
import { type Deciding, decide } from '../../trends/findings/decide.ts'
import { type Finding, isPending, type PostPlace } from '../../trends/findings/finding.ts'
import { sayIn } from '../../words/say.ts'
import type { Services } from '../services.ts'
import { type CarriedOut, carryOut } from './carry-out.ts'
import { viewFinding } from './view-finding.ts'

export type Settled = {
  readonly finding: Finding
  /** `late`: somebody else decided first, and nothing was changed. */
  readonly came: 'in-time' | 'late'
  readonly carried: CarriedOut
}

export async function settleFinding(services: Services, finding: Finding, event: Deciding): Promise<Settled> {
  const { findings } = services.trends
  const next = decide(finding, event, services.now())
  const saved = next !== undefined && (await findings.save(next)) === 'saved'
  if (!saved) return { finding: (await findings.load(finding.id)) ?? finding, came: 'late', carried: 'done' }
  if (!isPending(next)) return { finding: next, came: 'in-time', carried: 'done' }
  const carried = await carryOut(services, next)
  return { finding: (await findings.load(finding.id)) ?? next, came: 'in-time', carried }
}

/**
 * Brings the post in the moderators' channel up to date after somebody has been answered. `shown`: the message they pressed, where that
 * is the post itself and says it already. What cannot be done now the weekly job does.
 */
export async function freshenPost(
  services: Services,
  settings: ServerSettings,
  finding: Finding,
  shown: PostPlace | null,
): Promise<void> {
  const { findings } = services.trends
  const save = async (event: Deciding) => {
    const next = decide(finding, event, services.now())
    if (next) await findings.save(next)
  }
  if (shown && (!finding.post || finding.post.message === shown.message)) return save({ is: 'shown', post: shown })
  if (!finding.stale || !finding.post) return
  try {
    const message = await viewFinding(services, sayIn(publicLanguage(settings)), finding)
    const redrawn = await services.posts.redraw(finding.post, message)
    if (redrawn === 'done' || redrawn === 'gone')
      await save(redrawn === 'gone' ? { is: 'post-gone' } : { is: 'shown', post: null })
  } catch (error) {
    services.log.warn({ err: error }, 'the post of a finding could not be brought up to date yet')
  }
}
