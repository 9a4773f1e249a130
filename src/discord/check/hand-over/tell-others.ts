// After a change: what channels show of a check says how it stands now, and its holder is told where they asked.
//
// The change is stored by then. A channel that is gone or closed to the bot costs a line in the log, never the change.
import type { Check } from '../../../check/check.ts'
import { custodyOf } from '../../../check/custody-of.ts'
import type { CheckId, PersonId } from '../../../check/ids.ts'
import type { Notice, NoticeKind } from '../../../check/notice-store.ts'
import type { Program } from '../../../engine/compile.ts'
import { inLanguage } from '../../../engine/in-language.ts'
import { sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import type { ShownMessage } from '../../message/parts.ts'
import type { Changing } from '../../posts/post.ts'
import type { Services } from '../../services.ts'
import { showHelpRequestOver } from './show/help-request.ts'
import { type PanelNote, showPanel, showWord } from './show/panel.ts'

const whatOf = async (services: Services, say: Say, check: Check): Promise<string> =>
  sayWhat(say, await services.families.familyOf(check.server, check.family))

/** In the language of `say`; undefined where its pack is gone. */
async function programOf(services: Services, say: Say, check: Check): Promise<Program | undefined> {
  const program = await services.families.programOf(check)
  return program && inLanguage(program, say.locale)
}

/** Redraws what there is of a check in channels; what is over is taken away. */
export async function tellOthers(services: Services, say: Say, check: Check): Promise<void> {
  const over = check.phase.is === 'closed'
  for (const notice of await services.notices.of(check.id)) {
    if (notice.kind === 'panel') {
      const done = await redraw(services, notice, showPanel(say, await whatOf(services, say, check), check))
      if (done === 'gone' || (over && done === 'done')) await services.notices.drop(notice)
    } else if (notice.kind === 'help-request' && isSettled(check)) {
      // Its photographs go with it. What Discord does not take now, the sweep takes away later.
      const done = await redraw(
        services,
        notice,
        showHelpRequestOver(say, check, await programOf(services, say, check)),
      )
      if (done === 'done' || done === 'gone') await services.notices.drop(notice)
    } else if (notice.kind === 'note' && (over || keptOpen(check))) await takeAway(services, notice)
  }
}

/** Whether its holder has just answered the question whether it can be closed. */
const keptOpen = (check: Check): boolean => custodyOf(check).history.at(-1)?.did === 'kept-open'

/** Whether moderators are asked nothing about it any more. */
export const isSettled = (check: Check): boolean =>
  check.phase.is === 'closed' || custodyOf(check).helpRequest === undefined

/** Shows the check where it is offered; false where the bot may not post. */
export async function postPanel(services: Services, say: Say, check: Check, channel: string): Promise<boolean> {
  const taker = custodyOf(check).offer?.to
  const ping = taker?.to === 'person' ? taker.person : undefined
  return (
    (await put(services, check, 'panel', channel, showPanel(say, await whatOf(services, say, check), check), ping)) !==
    undefined
  )
}

/** Tells somebody a word about the check, in this channel: its holder to go on, or another what they must know; false where the bot may not post. */
export async function postWord(
  services: Services,
  say: Say,
  check: Check,
  { word, who, channel }: { readonly word: PanelNote; readonly who: PersonId; readonly channel: string },
): Promise<boolean> {
  const shown = showWord(say, await whatOf(services, say, check), check, word, who)
  return (await put(services, check, who === check.holder ? 'note' : 'alarm', channel, shown, who)) !== undefined
}

/** Posts a notice in the place of the one of its kind that stood before. Trouble on the way counts as "not posted". */
export async function put(
  services: Services,
  check: Check,
  kind: NoticeKind,
  channel: string,
  shown: ShownMessage,
  ping?: string,
): Promise<Notice | undefined> {
  const nonce = `${kind.slice(0, 2)}${check.id}${check.revision.toString(36)}`
  const posting = await services.posts.post(channel, shown, nonce, ping).catch(error => {
    services.log.warn({ err: error, kind }, 'a notice could not be posted')
    return { is: 'gone' } as const
  })
  if (posting.is !== 'posted') return undefined
  const notice = { check: check.id, kind, ...posting.place, until: check.expiresAt }
  try {
    const before = await services.notices.put(notice)
    if (before) await services.posts.remove(before)
    return notice
  } catch (error) {
    // What nobody would take away later is taken away now.
    services.log.warn({ err: error, kind }, 'a notice could not be kept')
    if (kind === 'help-request') await services.posts.remove(posting.place).catch(() => undefined)
    return kind === 'help-request' ? undefined : notice
  }
}

/** Takes away every message that shows a check, with its photographs. */
export async function takeAllAway(services: Services, check: CheckId): Promise<void> {
  for (const notice of await services.notices.of(check)) await takeAway(services, notice)
}

/** Takes a notice away with everything in it. One that cannot be reached is tried again by a later sweep; one that is gone is forgotten. */
export async function takeAway(services: Pick<Services, 'posts' | 'notices' | 'log'>, notice: Notice): Promise<void> {
  try {
    // One that was never posted stands nowhere.
    if (notice.message === '' || (await services.posts.remove(notice)) !== 'forbidden')
      await services.notices.drop(notice)
    else await services.notices.put({ ...notice, until: notice.until + tryAgain })
  } catch (error) {
    services.log.warn({ err: error, kind: notice.kind }, 'a notice could not be taken away yet')
  }
}

/** How much later a message is taken away that the bot may not reach now, in ms. */
const tryAgain = 24 * 3600_000

async function redraw(services: Services, notice: Notice, shown: ShownMessage): Promise<Changing | 'trouble'> {
  try {
    return await services.posts.redraw(notice, shown)
  } catch (error) {
    services.log.warn({ err: error, kind: notice.kind }, 'a notice could not be redrawn')
    return 'trouble'
  }
}
