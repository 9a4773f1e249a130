// Shows the server's links: to everybody with their host first, to moderators with what they can do about them.

import {
  type APIModalInteractionResponseCallbackData,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
} from 'discord.js'
import { encodeLinks, type LinksAct } from '../../custom-ids/links-id.ts'
import { isUnreviewed } from '../../server/change-links.ts'
import { type BuyingLink, mostLinks, type ServerSettings } from '../../server/settings.ts'
import { sayDay } from '../../words/dates.ts'
import { bare, fenced, plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import { form, lineField } from '../message/form.ts'
import { cut, message, pressButton, rows, type ShownMessage, small, text } from '../message/parts.ts'

/** At its longest a page has to fit above the whole caution. */
const onPage = 4

export const pagesOf = (links: readonly BuyingLink[]): number => Math.max(1, Math.ceil(links.length / onPage))

/** One page of links, those that nobody has looked at for a year last; a page that is gone shows the last one. */
export function sayLinks(say: Say, links: readonly BuyingLink[] | undefined, wanted: number, now: number): string {
  if (!links) return say('links.nowhere')
  if (links.length === 0) return say('links.none')
  const pages = pagesOf(links)
  const page = Math.min(wanted, pages)
  const sorted = [false, true].flatMap(old => links.filter(link => isUnreviewed(link, now) === old))
  return [
    say('links.about'),
    ...sorted.slice((page - 1) * onPage, page * onPage).map(link => `\n${sayLink(say, link, now)}`),
    ...(pages > 1 ? [`\n-# ${say('links.page', { page, pages })}`] : []),
  ].join('\n')
}

/** The host, the title as text, the address as it is (nothing in it can end the brackets), and its dates. */
function sayLink(say: Say, link: BuyingLink, now: number): string {
  const dates = { added: sayDay(say, link.addedAt), reviewed: sayDay(say, link.reviewedAt) }
  const old = isUnreviewed(link, now)
  return [
    `**${plain(hostOf(link))}** · ${plain(link.title)}`,
    `<${link.url}>`,
    `-# ${say(old ? 'links.unreviewed' : 'links.dates', dates)}`,
  ].join('\n')
}

const hostOf = ({ url }: BuyingLink): string => (URL.canParse(url) ? new URL(url).hostname : '?')

/** All links in one menu, for moderators. */
export function showLinksToKeep(say: Say, { links }: ServerSettings, now: number, note?: string): ShownMessage {
  const old = links.filter(link => isUnreviewed(link, now)).length
  const lines = [
    `### ${say('links.manage.title')}`,
    say('links.manage.count', { count: links.length, most: mostLinks }),
    ...(old > 0 ? [say('links.manage.old', { count: old })] : []),
    say('links.manage.care'),
  ]
  return message([
    ...(note ? [text(note)] : []),
    text(lines.join('\n')),
    ...rows(links.length > 0 ? [menuOf(say, links, now)] : [], 1),
    ...rows([
      pressButton(encodeLinks({ is: 'add' }), say('links.add'), ButtonStyle.Primary),
      pressButton(encodeLinks({ is: 'history', page: 1 }), say('history.open')),
    ]),
    small(say('caution.line')),
  ])
}

function menuOf(say: Say, links: readonly BuyingLink[], now: number): APIStringSelectComponent {
  return {
    type: ComponentType.StringSelect,
    custom_id: encodeLinks({ is: 'choose' }),
    placeholder: cut(say('links.choose'), 150),
    options: links.map(link => {
      const reviewed = say(isUnreviewed(link, now) ? 'links.reviewed.old' : 'links.reviewed', {
        date: sayDay(say, link.reviewedAt),
      })
      return {
        value: link.id,
        label: cut(bare(link.title), 100),
        description: cut(`${hostOf(link)} · ${reviewed}`, 100),
      }
    }),
  }
}

/** One link with what can be done about it; `sure`: whether it is to be removed is asked. */
export function showLinkToKeep(
  say: Say,
  { revision }: ServerSettings,
  link: BuyingLink,
  now: number,
  { note, sure = false }: { readonly note?: string; readonly sure?: boolean } = {},
): ShownMessage {
  const on = { id: link.id, revision }
  const press = (act: LinksAct, words: string, style?: ButtonStyle.Primary | ButtonStyle.Danger) =>
    pressButton(encodeLinks(act), words, style)
  const deeds = sure
    ? [
        press({ is: 'removed', ...on }, say('links.remove.yes'), ButtonStyle.Danger),
        press({ is: 'link', id: link.id }, say('links.remove.no')),
      ]
    : [
        press({ is: 'still-good', ...on }, say('links.good'), ButtonStyle.Primary),
        press({ is: 'edit', ...on }, say('links.edit')),
        press({ is: 'remove', ...on }, say('links.remove')),
        press({ is: 'manage' }, say('links.back')),
      ]
  return message([
    ...(note ? [text(note)] : []),
    text(sayLink(say, link, now)),
    ...(sure ? [text(`**${say('links.remove.sure')}**`)] : []),
    ...rows(deeds),
    small(say('caution.line')),
  ])
}

/** Why nothing was changed, with what was typed and a way to type it again. */
export const showTyped = (say: Say, why: string, typed: TypedLink, draft: string): ShownMessage =>
  message([
    text(why),
    text(`${say('links.typed')}\n${fenced(cut(`${typed.url}\n${typed.title}`, 1500))}`),
    ...rows([
      pressButton(encodeLinks({ is: 'again', draft }), say('links.again'), ButtonStyle.Primary),
      pressButton(encodeLinks({ is: 'manage' }), say('links.back')),
    ]),
    small(say('caution.line')),
  ])

export type TypedLink = { readonly url: string; readonly title: string }

export const urlField = 'url'
export const titleField = 'title'

/** More may be typed than is taken, so that a sentence can say what is wrong with it. */
const mostTyped = 1000

export function linkForm(
  say: Say,
  act: Extract<LinksAct, { is: 'added' | 'edited' }>,
  filled: TypedLink,
): APIModalInteractionResponseCallbackData {
  const field = (id: string, words: 'url' | 'name', value: string) =>
    lineField(
      id,
      { label: say(`links.form.${words}`), hint: say(`links.form.${words}.hint`) },
      { most: mostTyped, required: true, value },
    )
  return form(encodeLinks(act), say(act.is === 'added' ? 'links.form.add' : 'links.form.edit'), [
    field(urlField, 'url', filled.url),
    field(titleField, 'name', filled.title),
  ])
}
