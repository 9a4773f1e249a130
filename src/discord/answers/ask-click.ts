// Clicks on answers: another question out of a menu, and an answer posted where everybody sees it, once.
import { createHash } from 'node:crypto'
import type { Entry } from '../../answers/entry.ts'
import { type AskAct, askIds, type ReplyTo } from '../../custom-ids/ask-id.ts'
import { sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, defer, editReply, refuse, updateOrReply } from '../interaction/reply.ts'
import { mayWriteHere, serverOf } from '../interaction/rights.ts'
import { sayInPublic } from '../posts/say-in-public.ts'
import type { Services } from '../services.ts'
import { relatedTo } from './find-answer.ts'
import { showAnswer, showPublicAnswer } from './show-answer.ts'

export const askClick = onClick(askIds, click)

async function click(services: Services, interaction: Clicked, act: AskAct): Promise<void> {
  const say = sayIn(interaction.locale)
  const book = await services.answers()
  const [chosen = ''] = interaction.isStringSelectMenu() ? interaction.values : []
  const entry = book.entry(act.is === 'choose' ? chosen : act.entry)
  if (!entry) return refuse(interaction, say, { code: 'no-entry' })
  const near = relatedTo(book, entry)
  if (act.is === 'post') return post(services, interaction, entry, near, act.to)
  const shown = showAnswer(say, { entry, near, to: act.to, mayPost: mayWriteHere(interaction) })
  // Whoever picks a question under an answer that everybody sees gets the next one alone.
  await updateOrReply(interaction, shown)
}

async function post(
  services: Services,
  interaction: Clicked,
  entry: Entry,
  near: readonly Entry[],
  to: ReplyTo,
): Promise<void> {
  const say = sayIn(interaction.locale)
  const { channelId } = interaction
  if (!mayWriteHere(interaction) || channelId === null) return refuse(interaction, say, { code: 'may-not-post-here' })
  const tooMuch = await services.fairUse.admitPost(interaction.user.id, channelId, services.now())
  if (tooMuch) return refuse(interaction, say, tooMuch)
  await defer(interaction)
  const inPublic = await sayInPublic(services, serverOf(interaction), interaction.guildLocale)
  const shown = showPublicAnswer(inPublic, entry, near, interaction.user.id)
  // Two who answer the same message with the same entry post it once.
  const nonce = nonceOf(to ?? interaction.message?.id ?? interaction.id, entry.id)
  const { is } = await services.posts.reply(channelId, to, shown, nonce)
  const answer = { entry, near, note: say(`ask.posting.${is}`) }
  // Without the message it was a reply to, it can still be posted by itself.
  const left = is === 'no-message' ? { to: null, mayPost: true } : { to, mayPost: is !== 'posted' }
  await editReply(interaction, showAnswer(say, { ...answer, ...left }))
}

/** Discord takes 25 characters. */
const nonceOf = (...parts: readonly string[]): string =>
  createHash('sha256').update(parts.join(' ')).digest('base64url').slice(0, 24)
