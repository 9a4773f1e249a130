// What is shown about buying: within Discord's limits at its longest, in every language, and ids that decode to themselves.
import { ComponentType } from 'discord.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { buyingParts, decodeBuying, encodeBuying, placeOf, regions } from '../../src/custom-ids/buying-id.ts'
import { decodeLinks, encodeLinks } from '../../src/custom-ids/links-id.ts'
import { showBuying, showBuyingPublicly } from '../../src/discord/buying/show-buying.ts'
import { pagesOf, showLinksToKeep, showLinkToKeep, showTyped } from '../../src/discord/buying/show-links.ts'
import { type ShownMessage, textBudget } from '../../src/discord/message/parts.ts'
import { longestAddress, longestTitle } from '../../src/server/links.ts'
import { mostLinks, unsettled } from '../../src/server/settings.ts'
import { languages, sayIn } from '../../src/words/say.ts'

const now = Date.UTC(2026, 10, 27)
/** As long as a link can be, and nobody has looked at it for a year. */
const longest = Array.from({ length: mostLinks }, (_, i) => ({
  id: `l${i}`,
  url: `https://${'a-'.repeat(30)}a.${'b-'.repeat(30)}b.example/`.padEnd(longestAddress, 'x'),
  title: '*'.repeat(longestTitle),
  addedAt: 0,
  reviewedAt: 0,
}))
const scene = { links: longest, now }
const all = { moderates: true, posts: true }
const places = [
  ...buyingParts.map(placeOf),
  ...regions.map(region => ({ part: 'report', region }) as const),
  { part: 'suspect', later: true } as const,
  { part: 'links', page: pagesOf(longest) } as const,
  { part: 'links', page: 2 } as const,
  { part: 'links', page: 99 } as const,
]

const countOf = (parts: readonly object[]): number =>
  parts.reduce((sum, part) => sum + 1 + ('components' in part ? countOf(part.components as object[]) : 0), 0)
const wordsOf = ({ components }: ShownMessage): string =>
  components.flatMap(part => (part.type === ComponentType.TextDisplay ? [part.content] : [])).join('')
function holdsToLimits(message: ShownMessage): void {
  expect(wordsOf(message).length).toBeLessThanOrEqual(textBudget)
  expect(countOf(message.components)).toBeLessThanOrEqual(40)
  const ids = JSON.stringify(message.components).match(/"custom_id":"[^"]+"/g) ?? []
  expect(new Set(ids).size).toBe(ids.length)
  for (const part of message.components)
    if (part.type === ComponentType.ActionRow) expect(part.components.length).toBeLessThanOrEqual(5)
}

describe.each(languages)('in %s', language => {
  const say = sayIn(language)
  test.each(places)('$part $page $region $later fits, and carries its caution', place => {
    const own = showBuying(say, place, scene, all, 'A note. '.repeat(20))
    holdsToLimits(own)
    expect(wordsOf(own)).toContain(say('caution.line'))
    const shown = showBuyingPublicly(say, place, scene, '9'.repeat(20))
    holdsToLimits(shown)
    expect(wordsOf(shown)).toContain(say('caution.full'))
  })

  test('what moderators see fits', () => {
    const settings = { ...unsettled('s'), links: longest }
    holdsToLimits(showLinksToKeep(say, settings, now, 'A note. '.repeat(20)))
    const [link] = longest
    if (link) holdsToLimits(showLinkToKeep(say, settings, link, now, { note: 'x'.repeat(300) }))
    holdsToLimits(showTyped(say, 'x'.repeat(400), { url: '`'.repeat(1000), title: '`'.repeat(1000) }, 'draft'))
  })

  test('a page shows its parts short enough for a phone', () => {
    const parts = (['buy', 'listing', 'suspect', 'report'] as const).map(placeOf)
    for (const place of [...parts, { part: 'suspect', later: true } as const])
      expect(wordsOf(showBuying(say, place, { ...scene, links: [] }, all)).length).toBeLessThan(2850)
  })
})

test('no part softens the authority’s words', () => {
  for (const language of languages)
    expect(sayIn(language)('buying.buy.authority')).toMatch(/Consumer Product Safety Commission.*2021.*18650/)
})

test('ids decode to what they were made of, fit, and nothing else decodes', () => {
  const acts = places.flatMap(place =>
    place.part === 'links' && place.page > 99
      ? []
      : (['open', 'view', 'turn', 'post'] as const).map(is => ({ is, place })),
  )
  for (const act of acts) expect(decodeBuying(encodeBuying(act))).toEqual(act)
  const on = { id: '1a2b3c4d5e6f7', revision: 1_000_000 }
  for (const act of [
    { is: 'manage' },
    { is: 'add' },
    { is: 'choose' },
    { is: 'added', opening: '0123abcd' },
    { is: 'edited', ...on, opening: '0123abcd' },
    { is: 'link', id: on.id },
    { is: 'still-good', ...on },
    { is: 'edit', ...on },
    { is: 'remove', ...on },
    { is: 'removed', ...on },
    { is: 'again', draft: '0123456789abcdef0123' },
  ] as const) {
    expect(decodeLinks(encodeLinks(act))).toEqual(act)
    expect(encodeLinks(act).length).toBeLessThanOrEqual(100)
  }
  for (const id of ['cb1', 'cb1.view', 'cb1.view.links', 'cb1.view.links.0', 'cb1.view.report.xx', 'cb1.post.buy.1'])
    expect(decodeBuying(id)).toBeUndefined()
  fc.assert(
    fc.property(fc.string(), tail => {
      for (const id of [`clk1.${tail}`, `cb1.${tail}`]) {
        const [links, buying] = [decodeLinks(id), decodeBuying(id)]
        if (links) expect(encodeLinks(links)).toBe(id)
        if (buying) expect(encodeBuying(buying)).toBe(id)
      }
    }),
  )
})
