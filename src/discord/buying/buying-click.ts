// The buttons of buying safely: another part, a region, and a part shown to everybody where the person may write.
import type { BaseInteraction } from 'discord.js'
import {
  type BuyingAct,
  type BuyingPlace,
  buyingIds,
  buyingParts,
  isRegion,
  regions,
} from '../../custom-ids/buying-id.ts'
import type { Key } from '../../words/catalogue.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { type Clicked, defer, editReply, refuse, replyPrivately, updateOrReply } from '../interaction/reply.ts'
import { mayWriteHere, moderating, serverOf } from '../interaction/rights.ts'
import type { ShownMessage } from '../message/parts.ts'
import type { Posting } from '../posts/post.ts'
import { sayInPublic } from '../posts/say-in-public.ts'
import type { Services } from '../services.ts'
import { showBuying, showBuyingPublicly } from './show-buying.ts'

export const buyingClick = onClick(buyingIds, press)

async function press(services: Services, interaction: Clicked, act: BuyingAct): Promise<void> {
  const say = sayIn(interaction.locale)
  if (act.is === 'region') {
    const [chosen] = interaction.isStringSelectMenu() ? interaction.values : []
    const region = isRegion(chosen) ? chosen : undefined
    return updateOrReply(interaction, await viewBuying(services, interaction, say, { part: 'report', region }))
  }
  if (act.is === 'post') return post(services, interaction, say, act.place)
  const shown = await viewBuying(services, interaction, say, act.place)
  await (act.is === 'open' ? replyPrivately(interaction, shown) : updateOrReply(interaction, shown))
}

/** A part as the person sees it where they are. */
export async function viewBuying(
  services: Services,
  interaction: BaseInteraction,
  say: Say,
  place: BuyingPlace,
  note?: string,
): Promise<ShownMessage> {
  const server = serverOf(interaction)
  const own = await moderating(services, interaction)
  const settings = own ?? (server === null ? undefined : await services.servers.load(server))
  const may = { moderates: own !== undefined, posts: mayWriteHere(interaction) }
  return showBuying(say, place, { links: settings?.links, now: services.now() }, may, note)
}

async function post(services: Services, interaction: Clicked, say: Say, place: BuyingPlace): Promise<void> {
  const { channelId, user } = interaction
  const server = serverOf(interaction)
  if (!mayWriteHere(interaction) || server === null || channelId === null)
    return refuse(interaction, say, { code: 'may-not-post-here' })
  const tooMuch = await services.fairUse.admitPost(user.id, channelId, services.now())
  if (tooMuch) return refuse(interaction, say, tooMuch)
  await defer(interaction)
  const { links } = await services.servers.load(server)
  const inPublic = await sayInPublic(services, server, interaction.guildLocale)
  const shown = showBuyingPublicly(inPublic, place, { links, now: services.now() }, user.id)
  const posting = await services.posts.post(channelId, shown, nonceOf(place, channelId))
  const note = say(notes[posting.is])
  await editReply(interaction, await viewBuying(services, interaction, say, place, note))
}

const notes = {
  posted: 'buying.posted',
  forbidden: 'buying.post.forbidden',
  gone: 'buying.post.forbidden',
  blocked: 'buying.post.blocked',
} satisfies Record<Posting['is'], Key>

/** The same for one part of a channel: however many press within some minutes, it stands there once. At most 25 characters. */
function nonceOf(place: BuyingPlace, channel: string): string {
  return `b${buyingParts.indexOf(place.part)}${detailOf(place)}.${channel}`
}

/** At most two characters. */
function detailOf(place: BuyingPlace): number {
  if (place.part === 'links') return place.page
  if (place.part === 'suspect') return place.later ? 1 : 0
  return place.part === 'report' && place.region ? regions.indexOf(place.region) + 1 : 0
}
