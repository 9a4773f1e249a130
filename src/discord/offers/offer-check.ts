// Offers a check under a new forum post: only in forums and under tags that the server has named, once, and quietly.
import { setTimeout as wait } from 'node:timers/promises'
import { type AnyThreadChannel, DiscordAPIError, RESTJSONErrorCodes } from 'discord.js'
import { publicLanguage } from '../../server/settings.ts'
import { sayIn } from '../../words/say.ts'
import type { Posting } from '../posts/post.ts'
import type { Services } from '../services.ts'
import { showOffer } from './show-offer.ts'

/** Before the person's own first message is there, Discord lets nobody else write: how long it is then waited, in ms. */
const waits = [500, 1500, 4000] as const

/**
 * `newly`: whether the post has just been made, and not only been shown to the bot. Never throws: nobody waits for an offer, and one
 * that could not be posted is not tried again later, so that nobody ever gets two.
 */
export async function offerCheck(services: Services, thread: AnyThreadChannel, newly: boolean): Promise<void> {
  // What the bot has posted itself needs no offer.
  if (!newly || thread.ownerId === thread.client.user.id) return
  try {
    const settings = await services.servers.load(thread.guildId)
    const offered = settings.forumOffers.find(one => one.forum === thread.parentId)
    if (!offered?.tags.some(tag => thread.appliedTags.includes(tag))) return
    // Where posts come faster than people write them, there are posts without an offer.
    if (await services.fairUse.admitPost(thread.ownerId ?? thread.id, offered.forum, services.now())) return
    if (!(await services.offers.claim(thread.guildId, thread.id, services.now()))) return
    const say = sayIn(publicLanguage(settings, thread.guild.preferredLocale))
    const posting = await post(thread, () =>
      services.posts.post(thread.id, showOffer(say), `o${thread.id}`, undefined, 'quiet'),
    )
    if (posting.is !== 'posted')
      services.log.info({ server: thread.guildId, posting: posting.is }, 'no offer was posted')
  } catch (error) {
    services.log.warn({ err: error, server: thread.guildId }, 'an offer could not be posted')
  }
}

async function post(thread: AnyThreadChannel, posting: () => Promise<Posting>): Promise<Posting> {
  for (const ms of waits) {
    // A message would open an archived post again.
    if (thread.archived || thread.locked) return { is: 'forbidden' }
    try {
      return await posting()
    } catch (error) {
      if (!tooEarly(error)) throw error
      await wait(ms, undefined, { ref: false })
    }
  }
  return posting()
}

/** 40058: “Cannot message this thread until after the post author has sent an initial message” (Discord's reference, JSON error codes). */
const tooEarly = (error: unknown): boolean =>
  error instanceof DiscordAPIError && error.code === RESTJSONErrorCodes.CannotSendAMessageInAForumChannel
