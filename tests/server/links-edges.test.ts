// The edges of what a link and its title may hold: each mention whole, each part of an address by itself, and the settings a file names.
import { describe, expect, test } from 'vitest'
import { changeSettings } from '../../src/server/change.ts'
import { changeLinks } from '../../src/server/change-links.ts'
import { mentionIn } from '../../src/server/link-habits.ts'
import { longestAddress, longestTitle, readAddress, readTitle } from '../../src/server/links.ts'
import { type ServerSettings, unsettled } from '../../src/server/settings.ts'
import { takeIn } from '../../src/server/take-in.ts'

describe('a mention', () => {
  test.each([
    ['<@123>', '<@123>'],
    ['see <@!123> now', '<@!123>'],
    ['<@&123>', '<@&123>'],
    ['<#123>', '<#123>'],
    ['</check start:123>', '</check'],
    ['<id:guide>', '<id:guide>'],
    ['<t:1700000000:R>', '<t:1700000000:R>'],
    ['<:cell:123>', '<:cell:123>'],
    ['<a:long_name:123>', '<a:long_name:123>'],
    ['<@123 and more', '<@123'],
    ['<@', '<@'],
    ['@everyone', '@everyone'],
    ['hey @here!', '@here'],
    ['(@ab)', '@ab'],
    ['ask @a_b.c9', '@a_b.c9'],
    ['@Größe', '@Größe'],
  ])('in “%s” is %s', (title, mention) => {
    expect(mentionIn(title)).toBe(mention)
  })
  test.each([
    'a@bc',
    '9@bc',
    'ñ@bc',
    '@a',
    '@ ab',
    '3 < 4',
    '< @',
    '<b:cell',
    '<a cell>',
    '<::1>',
    '<a:-:1>',
    'cells',
    '',
  ])('is none in “%s”', title => {
    expect(mentionIn(title)).toBeUndefined()
  })
})

describe('an address', () => {
  const refused = (typed: string) => {
    const read = readAddress(typed)
    return read.ok ? 'ok' : read.refusal
  }
  const long = (length: number) => `https://shop.example/${'x'.repeat(length - 'https://shop.example/'.length)}`
  test.each<[string, unknown]>([
    ['', { code: 'link-empty' }],
    ['  ', { code: 'link-empty' }],
    [long(longestAddress), 'ok'],
    [long(longestAddress + 1), { code: 'link-too-long', length: 201, most: 200 }],
    ['shop.example', { code: 'link-no-scheme' }],
    ['//shop.example', { code: 'link-no-scheme' }],
    ['1https://shop.example', { code: 'link-no-scheme' }],
    ['HTTPS://shop.example', 'ok'],
    ['http://shop.example', { code: 'link-not-https', scheme: 'http' }],
    ['X-a.b+1:shop', { code: 'link-not-https', scheme: 'x-a.b+1' }],
    ['https:shop.example', { code: 'link-unreadable' }],
    ['https:///shop.example', { code: 'link-unreadable' }],
    ['https://?a', { code: 'link-unreadable' }],
    ['https://#a', { code: 'link-unreadable' }],
    ['see https://shop.example', { code: 'link-no-scheme' }],
    ['https://me@shop.example', { code: 'link-credentials' }],
    ['https://shop.example/a@b', 'ok'],
    ['https://shop.example?a@b', 'ok'],
    ['https://shöp.example', { code: 'link-look-alike', host: 'shöp.example' }],
    ['https://SHÖP.example:8', { code: 'link-look-alike', host: 'shöp.example' }],
    ['https://xn--shp-sna.example', { code: 'link-look-alike', host: 'xn--shp-sna.example' }],
    ['https://a.xn--shp-sna.example', { code: 'link-look-alike', host: 'a.xn--shp-sna.example' }],
    ['https://axn--b.example', 'ok'],
    ['https://sh%6fp.example', { code: 'link-look-alike', host: 'shop.example' }],
    ['https://shop.example/a b', { code: 'link-characters', character: 'U+0020' }],
    ['https://shop.example/ä', { code: 'link-characters', character: 'ä' }],
    ['https://shop.example/\u200b', { code: 'link-characters', character: 'U+200B' }],
    ['https://shop.example/a|b', { code: 'link-characters', character: '|' }],
    ['https://shop.example/[a]', { code: 'link-characters', character: '[' }],
    ['https://shop.example/a]', { code: 'link-characters', character: ']' }],
    ['https://shop.example/%4', { code: 'link-characters', character: '%' }],
    ['https://shop.example/%4g', { code: 'link-characters', character: '%' }],
    ['https://shop.example/%4G%aF', { code: 'link-characters', character: '%' }],
    ['https://shop.example/%aF', 'ok'],
    ['https://[::1]/', { code: 'link-bare-ip', host: '[::1]' }],
    ['https://10.0.0.1/', { code: 'link-bare-ip', host: '10.0.0.1' }],
    ['https://10.0.0.1.example/', 'ok'],
    ['https://localhost/', { code: 'link-internal', host: 'localhost' }],
    ['https://shop/', { code: 'link-internal', host: 'shop' }],
    ['https://shop.local/', { code: 'link-internal', host: 'shop.local' }],
    ['https://shop.lan./', { code: 'link-internal', host: 'shop.lan.' }],
    ['https://local.example/', 'ok'],
    ['https://shop.example./', { code: 'link-host', host: 'shop.example.' }],
    ['https://-shop.example/', { code: 'link-host', host: '-shop.example' }],
    ['https://sh_op.example/', { code: 'link-host', host: 'sh_op.example' }],
    ['https://shop.example:8443/', { code: 'link-port', port: '8443' }],
    ['https://shop.example:443/', 'ok'],
    ['https://shop.example:/', 'ok'],
    ['https://shop.example/?to=https://other.example', { code: 'link-leads-on' }],
    ['https://shop.example/?to=https%3A%2F%2Fother.example', { code: 'link-leads-on' }],
    ['https://shop.example/?to=https%253A%252F%252Fother.example', { code: 'link-leads-on' }],
    ['https://shop.example/?to=www.other.example', { code: 'link-leads-on' }],
    ['https://shop.example/#data:x', { code: 'link-leads-on' }],
    ['https://shop.example/?x=ftp:y', { code: 'link-leads-on' }],
    ['https://shop.example/?x=JavaScript:y', { code: 'link-leads-on' }],
    ['https://shop.example/a//b', { code: 'link-leads-on' }],
    ['https://shop.example/a%5Cb', { code: 'link-leads-on' }],
    ['https://shop.example/?x=update:y', 'ok'],
    ['https://shop.example/?x=awww.y', 'ok'],
  ])('%s: %j', (typed, refusal) => {
    expect(refused(typed)).toEqual(refusal)
  })
})

describe('a title', () => {
  const title = (typed: string, host = 'shop.example') => {
    const read = readTitle(typed, host)
    return read.ok ? read.title : read.refusal
  }
  const acute = '\u0301'
  test.each<[string, unknown]>([
    [' A\n\u2028 shop\t', 'A shop'],
    ['A\u0007shop', 'A shop'],
    ['A\u200bshop', 'Ashop'],
    ['ﬁne', 'fine'],
    ['\u200b \n', { code: 'title-empty' }],
    [`q${acute.repeat(5)}x`, `q${acute.repeat(2)}x`],
    ['x'.repeat(longestTitle), 'x'.repeat(longestTitle)],
    ['🔋'.repeat(longestTitle), '🔋'.repeat(longestTitle)],
    ['x'.repeat(longestTitle + 1), { code: 'title-too-long', length: 61, most: 60 }],
    ['ask @ada', { code: 'title-mentions', named: '@ada' }],
    ['shop.example', 'shop.example'],
    ['WWW.Shop.Example', 'WWW.Shop.Example'],
    ['at other.example', { code: 'title-names-host', named: 'other.example', host: 'shop.example' }],
    ['shop.example or a-b.c.de', { code: 'title-names-host', named: 'a-b.c.de', host: 'shop.example' }],
    ['other。example', { code: 'title-names-host', named: 'other。example', host: 'shop.example' }],
    ['Cells. Good ones', 'Cells. Good ones'],
    ['3.7 V and v1.2', '3.7 V and v1.2'],
    ['a.b', 'a.b'],
  ])('“%s”: %j', (typed, read) => {
    expect(title(typed)).toEqual(read)
  })
  test('may name the host with or without its www', () => {
    expect(title('shop.example', 'www.shop.example')).toBe('shop.example')
  })
})

const server: ServerSettings = { ...unsettled('120000000000000001'), outcomes: true }
const asked = { by: 'i9', discordLanguage: 'de' }

test('each setting that a file names is taken or named as left out, with why', () => {
  const role = '120000000000000001'
  const fields = {
    ...{ moderatorRoles: [role], helperRoles: [role], reminders: { hours: 6, role }, keepWeeks: 5 },
    ...{
      outcomes: false,
      pooling: true,
      forumOffers: Array.from({ length: 6 }, (_, i) => ({ forum: `f${i}`, tags: ['t'] })),
    },
  }
  expect(takeIn(server, { fields, links: [] }, asked, 1, String).left).toEqual([
    { is: 'field', field: 'moderatorRoles', refusal: { code: 'everyone-as-moderator' } },
    { is: 'field', field: 'helperRoles', refusal: { code: 'everyone-as-helper' } },
    { is: 'field', field: 'reminders', refusal: { code: 'everyone-as-pinged' } },
    { is: 'field', field: 'pooling', refusal: { code: 'nothing-to-pool' } },
    { is: 'field', field: 'keepWeeks', refusal: { code: 'weeks-out-of-range', least: 26, most: 260 } },
    { is: 'field', field: 'forumOffers', refusal: { code: 'too-many-forums', most: 5 } },
  ])
  const link = { url: 'http://shop.example/', title: 'A shop' }
  expect(takeIn(server, { fields: {}, links: [link] }, asked, 1, String).left).toEqual([
    { is: 'link', ...link, refusal: { code: 'link-not-https', scheme: 'http' } },
  ])
  const fits = {
    ...{ language: 'es', reportsChannel: 'c1', reviewChannel: 'c2', moderatorRoles: ['r1'], helperRoles: ['r2'] },
    ...{ reminders: { hours: 6, role: 'r3' }, outcomes: true, pooling: true, keepWeeks: 52, weeklyNote: true },
    forumOffers: [{ forum: 'f', tags: ['t'] }],
  }
  expect(takeIn(server, { fields: fits, links: [] }, asked, 1, String)).toEqual({
    settings: { ...server, ...fits, revision: 1, changedBy: 'i9', discordLanguage: 'de' },
    left: [],
  })
  const none = takeIn({ ...server, ...fits }, { fields: { reminders: null }, links: [] }, asked, 1, String)
  expect(none).toMatchObject({ settings: { reminders: null }, left: [] })
})

test.each<[object, object]>([
  [{ is: 'reports-channel', channel: 'c' }, { reportsChannel: 'c' }],
  [{ is: 'review-channel', channel: null }, { reviewChannel: null }],
  [{ is: 'language', language: 'es' }, { language: 'es' }],
  [{ is: 'reminders', hours: 12 }, { reminders: { hours: 12, role: null } }],
  [{ is: 'reminders', hours: 7 }, { reminders: { hours: 1, role: null } }],
  [{ is: 'reminders', hours: null }, { reminders: null }],
  [
    { is: 'outcomes', on: false },
    { outcomes: false, pooling: false },
  ],
  [{ is: 'weekly-note', on: true }, { weeklyNote: true }],
  [{ is: 'pooling', on: true }, { pooling: true }],
  [{ is: 'keep-weeks', weeks: 26 }, { keepWeeks: 26 }],
  [{ is: 'keep-weeks', weeks: 260 }, { keepWeeks: 260 }],
  [{ is: 'moderator-roles', roles: ['a', 'a', 'b'] }, { moderatorRoles: ['a', 'b'] }],
  [{ is: 'offers-in', forum: 'f', tags: ['t', 't'] }, { forumOffers: [{ forum: 'f', tags: ['t'] }] }],
  [{ is: 'offers-in', forum: 'f', tags: [] }, { forumOffers: [] }],
])('%j changes %j and nothing else', (change, after) => {
  const before = { ...server, pooling: true }
  expect(changeSettings(before, change as never, asked)).toEqual({
    ok: true,
    settings: { ...before, ...after, revision: 1, changedBy: 'i9', discordLanguage: 'de' },
  })
})

test('a link that is added stands last, one that is edited where it stood, and one that is gone nowhere', () => {
  const link = (id: string, at = 1) => ({ id, url: `https://${id}.example/`, title: id, addedAt: at, reviewedAt: at })
  const before = { ...server, links: [link('a'), link('b')] }
  const changed = (change: object) => {
    const made = changeLinks(before, change as never, 9)
    return made.ok ? made : made.refusal
  }
  expect(changed({ is: 'add', id: 'c', url: 'https://c.example/?utm_source=x', title: 'c' })).toEqual({
    ok: true,
    settings: { ...before, revision: 1, links: [link('a'), link('b'), { ...link('c', 9), url: 'https://c.example/' }] },
    link: { ...link('c', 9), url: 'https://c.example/' },
    cleaned: ['utm_source'],
  })
  expect(changed({ is: 'edit', id: 'a', url: 'https://a.example/', title: 'A' })).toMatchObject({
    ...{ settings: { links: [{ ...link('a'), title: 'A' }, link('b')] }, cleaned: [] },
  })
  expect(changed({ is: 'edit', id: 'a', url: 'https://d.example/', title: 'A' })).toMatchObject({
    link: { addedAt: 9, reviewedAt: 9 },
  })
  expect(changed({ is: 'still-good', id: 'b' })).toMatchObject({
    ...{ settings: { links: [link('a'), { ...link('b'), reviewedAt: 9 }] }, cleaned: [] },
  })
  expect(changed({ is: 'remove', id: 'a' })).toMatchObject({ settings: { links: [link('b')] }, link: link('a') })
  for (const is of ['edit', 'still-good', 'remove'])
    expect(changed({ is, id: 'x', url: 'https://x.example/', title: 'x' })).toEqual({ code: 'no-link' })
  expect(changed({ is: 'add', id: 'c', url: 'https://www.a.example', title: 'c' })).toEqual({
    code: 'link-there',
    title: 'a',
  })
})
