// The buttons of buying safely: another part, a region, and a part shown to everybody where the person may write.
import type { BaseInteraction } from 'discord.js'
import { type Clicked, fill, refuse, replyPrivately, takeTime, turnPrivately } from '../answer.ts'
import { type BuyingAct, type BuyingPlace, buyingParts, decodeBuying, isRegion, regions } from '../buying-id.ts'
import type { Desk } from '../desk.ts'
import { mayWriteHere, moderating, serverOf } from '../rights.ts'
import { sayInPublic } from '../say-in-public.ts'
import { showBuying, showBuyingPublicly } from '../show/buying.ts'
import type { ShownMessage } from '../show/parts.ts'
import { type Say, sayIn } from '../words/say.ts'
import type { ClickHandler } from './manifest.ts'

export const buyingClick: ClickHandler = (desk, interaction) => {
  const act = decodeBuying(interaction.customId)
  return act && press(desk, interaction, act)
}

async function press(desk: Desk, interaction: Clicked, act: BuyingAct): Promise<void> {
  const say = sayIn(interaction.locale)
  if (act.is === 'region') {
    const [chosen] = interaction.isStringSelectMenu() ? interaction.values : []
    const region = isRegion(chosen) ? chosen : undefined
    return turnPrivately(interaction, await viewBuying(desk, interaction, say, { part: 'report', region }))
  }
  if (act.is === 'post') return post(desk, interaction, say, act.place)
  const shown = await viewBuying(desk, interaction, say, act.place)
  await (act.is === 'open' ? replyPrivately(interaction, shown) : turnPrivately(interaction, shown))
}

/** A part as the person sees it where they are. */
export async function viewBuying(
  desk: Desk,
  interaction: BaseInteraction,
  say: Say,
  place: BuyingPlace,
  note?: string,
): Promise<ShownMessage> {
  const server = serverOf(interaction)
  const own = await moderating(desk, interaction)
  const settings = own ?? (server === null ? undefined : await desk.servers.load(server))
  const may = { moderates: own !== undefined, posts: mayWriteHere(interaction) }
  return showBuying(say, place, { links: settings?.links, now: desk.now() }, may, note)
}

async function post(desk: Desk, interaction: Clicked, say: Say, place: BuyingPlace): Promise<void> {
  const { channelId, user } = interaction
  const server = serverOf(interaction)
  if (!mayWriteHere(interaction) || server === null || channelId === null)
    return refuse(interaction, say, { code: 'may-not-post-here' })
  const tooMuch = desk.fairUse.admitPost(user.id, channelId, desk.now())
  if (tooMuch) return refuse(interaction, say, tooMuch)
  await takeTime(interaction)
  const { links } = await desk.servers.load(server)
  const inPublic = await sayInPublic(desk, server, interaction.guildLocale)
  const shown = showBuyingPublicly(inPublic, place, { links, now: desk.now() }, user.id)
  const posting = await desk.posts.post(channelId, shown, nonceOf(place, channelId))
  const note = say(posting.is === 'posted' ? 'buying.posted' : 'buying.post.forbidden')
  await fill(interaction, await viewBuying(desk, interaction, say, place, note))
}

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
