// A verdict shown in the channel where its person presses: first to them alone, then, by their own press, to everybody there.
import { createHash } from 'node:crypto'
import type { VerdictScreen } from '../../../check/screen.ts'
import { screenOf } from '../../../check/screen.ts'
import type { IdOf } from '../../../custom-ids/id-kind.ts'
import { shareIds } from '../../../custom-ids/share-id.ts'
import type { Program } from '../../../engine/compile.ts'
import { inLanguage } from '../../../engine/in-language.ts'
import { sayIn } from '../../../words/say.ts'
import { onClick } from '../../interaction/click-handler.ts'
import type { Refusal } from '../../interaction/refusal.ts'
import { type Clicked, defer, editReply, refuse, replyPrivately } from '../../interaction/reply.ts'
import { mayWriteHere, moderating, serverOf } from '../../interaction/rights.ts'
import { message, small, text } from '../../message/parts.ts'
import { sayInPublic } from '../../posts/say-in-public.ts'
import type { Services } from '../../services.ts'
import { loadCheck } from '../load-check.ts'
import { showBeforehand, showShared } from './show-share.ts'

export const shareClick = onClick(shareIds, press)

async function press(services: Services, interaction: Clicked, act: IdOf<typeof shareIds>): Promise<void> {
  const say = sayIn(interaction.locale)
  if (act.is === 'remove') return remove(services, interaction, act.check)
  const found = await finished(services, interaction, act.check)
  if ('refusal' in found) return refuse(interaction, say, found.refusal)
  const { channelId } = interaction
  if (!mayWriteHere(interaction) || channelId === null) return refuse(interaction, say, { code: 'may-not-post-here' })
  const inPublic = await sayInPublic(services, serverOf(interaction), interaction.guildLocale)
  const program = inLanguage(found.judging, inPublic.locale)
  if (act.is === 'see') return replyPrivately(interaction, showBeforehand(say, inPublic, program, found.screen))
  const tooMuch = await services.fairUse.admitPost(interaction.user.id, channelId, services.now())
  if (tooMuch) return refuse(interaction, say, tooMuch)
  await defer(interaction)
  const { check } = found.screen
  const shown = showShared(inPublic, program, found.screen, interaction.user.id)
  const { is } = await services.posts.post(channelId, shown, nonceOf(channelId, check.id, String(check.revision)))
  await editReply(interaction, message([text(say(`ask.posting.${is}`)), small(say('caution.line'))]))
}

type Finished = { readonly judging: Program; readonly screen: VerdictScreen } | { readonly refusal: Refusal }

/** The verdict of the person's own check, or why there is none to show. */
async function finished(services: Services, interaction: Clicked, id: string): Promise<Finished> {
  const found = await loadCheck(services, sayIn(interaction.locale), id)
  if (!found) return { refusal: { code: 'gone' } }
  const { check, judging } = found
  if (check.holder !== interaction.user.id) return { refusal: { code: 'not-yours' } }
  const screen = screenOf(judging, check)
  if (screen.kind === 'closed') return { refusal: { code: 'closed' } }
  if (screen.kind !== 'verdict') return { refusal: { code: 'not-now', event: 'share', phase: check.phase.is } }
  return { judging, screen }
}

/** Taken away by whoever holds the check, or a moderator of the server; once the check is gone, by moderators alone. */
async function remove(services: Services, interaction: Clicked, id: string): Promise<void> {
  const say = sayIn(interaction.locale)
  const { message: posted, channelId } = interaction
  const stored = await services.checks.load(id)
  const own = stored?.check.holder === interaction.user.id
  if (!posted || channelId === null || !(own || (await moderating(services, interaction))))
    return refuse(interaction, say, { code: stored ? 'not-yours' : 'gone' })
  const done = await services.posts.remove({ channel: channelId, message: posted.id })
  const key = done === 'forbidden' ? 'ask.posting.forbidden' : 'share.removed'
  await replyPrivately(interaction, message([text(say(key)), small(say('caution.line'))]))
}

/** Discord takes 25 characters; the same verdict is posted once in a channel, however often it is pressed within minutes. */
const nonceOf = (...parts: readonly string[]): string =>
  createHash('sha256').update(parts.join(' ')).digest('base64url').slice(0, 24)
