// Shows how to buy safely, part by part: short enough for a phone, with buttons from each part to the others.
import { type APIMessageTopLevelComponent, type APIStringSelectComponent, ButtonStyle, ComponentType } from 'discord.js'
import { type BuyingPlace, buyingParts, encodeBuying, placeOf, regions } from '../../custom-ids/buying-id.ts'
import { encodeLinks } from '../../custom-ids/links-id.ts'
import type { BuyingLink } from '../../server/settings.ts'
import type { Key } from '../../words/catalogue.ts'
import type { Say } from '../../words/say.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../message/parts.ts'
import { pagesOf, sayLinks } from './show-links.ts'

/** What the server has to show, if it is shown on one. */
export type BuyingScene = {
  /** The server's links; undefined outside servers. */
  readonly links: readonly BuyingLink[] | undefined
  /** Milliseconds since 1970. */
  readonly now: number
}

export type MayBuying = { readonly moderates: boolean; readonly posts: boolean }

/** The part as one person sees it; `note` stands above. */
export function showBuying(
  say: Say,
  place: BuyingPlace,
  scene: BuyingScene,
  may: MayBuying,
  note?: string,
): ShownMessage {
  const tabs = buyingParts.map(part =>
    pressButton(
      encodeBuying({ is: 'view', place: placeOf(part) }),
      say(`buying.part.${part}`),
      part === place.part ? ButtonStyle.Primary : ButtonStyle.Secondary,
    ),
  )
  return message([
    ...(note ? [text(note)] : []),
    ...bodyOf(say, place, scene),
    ...(place.part === 'report' ? rows([regionMenu(say, place.region)], 1) : []),
    ...rows(turning(say, place, scene, may)),
    ...rows(tabs),
    ...rows(may.posts ? [pressButton(encodeBuying({ is: 'post', place }), say('buying.post'))] : []),
    small(`${say('buying.local')}\n${say('caution.line')}`),
  ])
}

/** The part as everybody in a channel sees it, with the whole caution below; `asker` is named and not pinged. */
export const showBuyingPublicly = (say: Say, place: BuyingPlace, scene: BuyingScene, asker: string): ShownMessage =>
  message([
    ...bodyOf(say, place, scene),
    text(`> ${say('caution.full')}`),
    ...rows([pressButton(encodeBuying({ is: 'open', place }), say('buying.post.open'))]),
    small(say('buying.post.by', { who: `<@${asker}>` })),
  ])

function bodyOf(say: Say, place: BuyingPlace, scene: BuyingScene): APIMessageTopLevelComponent[] {
  const title = (words: string, rest: string) => text(`### ${words}\n${rest}`)
  switch (place.part) {
    case 'buy':
      return [title(say('buying.buy.title'), `> ${say('buying.buy.authority')}`), text(say('buying.buy.text'))]
    case 'listing':
      return [title(say('buying.listing.title'), say('buying.listing.text'))]
    case 'links':
      return [title(say('links.title'), sayLinks(say, scene.links, place.page, scene.now))]
    case 'suspect':
      return place.later
        ? [title(say('buying.later.title'), sayQuiet(say, afterwards))]
        : [title(say('buying.suspect.title'), sayUrgent(say)), text(say('safety.quiet'))]
    case 'report':
      return [
        title(say('buying.report.title'), say('buying.report.text')),
        ...(place.region
          ? [
              text(`**${say(`region.${place.region}`)}**\n${say(`region.${place.region}.text`)}`),
              small(say('buying.law')),
            ]
          : []),
      ]
  }
}

/** The same words as everywhere: what to do while it happens, and once it is over. */
const sayUrgent = (say: Say): string =>
  [
    `${say('safety.now.ask')} **${say('safety.now')}**`,
    ...(
      [
        'safety.now.worn',
        'safety.now.far',
        'safety.now.call',
        'safety.now.carry',
        'safety.now.gone-quiet',
        'safety.aid',
      ] as const
    ).map(key => `- ${say(key)}`),
    '',
    `${say('safety.cold.sign')}:`,
    ...(['safety.cold', 'safety.cold.keep', 'safety.cold.call'] as const).map(key => `- ${say(key)}`),
  ].join('\n')

/** Whoever may have to get away reads on every screen what it is for: only a cell that is cold and quiet is handled. */
const sayQuiet = (say: Say, keys: readonly Key[]): string =>
  [`${say('safety.quiet.sign')}:`, ...keys.map((key, i) => `${i + 1}. ${say(key)}`)].join('\n')

const afterwards = [
  'safety.quiet',
  'safety.quiet.wait',
  'safety.quiet.keep',
  'safety.quiet.hand-in',
  'buying.suspect.where',
  'next.keep',
  'next.seller',
] as const

/** From one half of a suspect cell to the other; further pages of links, and the way to look after them for who may. */
function turning(say: Say, place: BuyingPlace, { links }: BuyingScene, { moderates }: MayBuying) {
  if (place.part === 'suspect') {
    const other = { part: 'suspect', later: !place.later } as const
    return [
      pressButton(encodeBuying({ is: 'turn', place: other }), say(place.later ? 'buying.sooner' : 'buying.later')),
    ]
  }
  if (place.part !== 'links' || !links) return []
  const to = (page: number, key: 'links.before' | 'links.after') =>
    page < 1 || page > pagesOf(links)
      ? []
      : [pressButton(encodeBuying({ is: 'turn', place: { part: 'links', page } }), say(key))]
  return [
    ...to(place.page - 1, 'links.before'),
    ...to(place.page + 1, 'links.after'),
    ...(moderates ? [pressButton(encodeLinks({ is: 'manage' }), say('links.manage'))] : []),
  ]
}

function regionMenu(say: Say, chosen: string | undefined): APIStringSelectComponent {
  return {
    type: ComponentType.StringSelect,
    custom_id: encodeBuying({ is: 'region' }),
    placeholder: cut(say('buying.report.choose'), 150),
    options: regions.map(region => ({
      value: region,
      label: cut(say(`region.${region}`), 100),
      default: region === chosen,
    })),
  }
}
