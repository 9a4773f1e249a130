// Whoever is refused, or only looks, holds up nobody: Discord may take as long as it likes to hear their answers.
import { afterEach, beforeEach, expect, test } from 'vitest'
import { seedFamilies } from '../../src/bin/practice-room/demo-families.ts'
import { encodeFamily } from '../../src/custom-ids/family-id.ts'
import { linksIds } from '../../src/custom-ids/links-id.ts'
import { encodeTrends } from '../../src/custom-ids/trends-id.ts'
import { weekOf } from '../../src/trends/week.ts'
import {
  idOf,
  inServer,
  member,
  type OpenedBot,
  openSmallBot,
  startCheck,
  straight,
  textOf,
} from '../gateway/open-bot.ts'
import { type Asked, channelId, serverId } from '../gateway/small-gateway.ts'

let bot: OpenedBot
beforeEach(async () => {
  bot = await openSmallBot()
})
/** What lets go of held answers, whatever has become of the test. */
let release = () => {}
afterEach(async () => {
  release()
  await bot.close()
})

const stranger = (i: number) => inServer(member(`9000000000000010${10 + i}`))
const owner = inServer()
const manager = inServer(member('900000000000009999', String((1n << 5n) | 2048n)))

/** Answers whose words match are held back until they are let go. */
function holdBack(words: RegExp): { readonly held: () => number; letGo(): void } {
  const gate = Promise.withResolvers<void>()
  let held = 0
  bot.discord.before = ({ path, body }: Asked) => {
    if (!path.endsWith('/callback') || !words.test(JSON.stringify(body))) return undefined
    held++
    return gate.promise
  }
  release = () => gate.resolve()
  return { held: () => held, letGo: release }
}

test('twelve strangers press on a check: its holder goes on while none of them has been answered yet', async () => {
  const first = await bot.command(owner, 'check', startCheck)
  const unsure = idOf(first, '.unsure')
  const { held, letGo } = holdBack(/Only the person who has this check/)
  const strangers = Array.from({ length: 12 }, (_, i) => bot.press(stranger(i), unsure))
  const next = await bot.press(owner, unsure)
  expect(textOf(next)).not.toBe(textOf(first))
  expect(held()).toBeGreaterThan(0)
  letGo()
  for (const answer of await Promise.all(strangers))
    expect(textOf(answer)).toMatch(/Only the person who has this check/)
})

test('strangers look at and try to take a check that is offered: whoever may take it is not held up', async () => {
  const started = await bot.command(inServer(), 'check', [
    { name: 'start', type: 1, options: [...straight, { name: 'anyone', type: 5, value: true }] },
  ])
  const check = idOf(started, '.withdraw').split('.')[1]
  const { letGo } = holdBack(/not offered any more|no part in this check|hands? it over/i)
  const taken = bot.press(stranger(0), `ch1.${check}.take`)
  const late = Array.from({ length: 8 }, (_, i) => bot.press(stranger(i + 1), `ch1.${check}.take`))
  const looking = Array.from({ length: 4 }, (_, i) => bot.press(stranger(i + 1), `ch1.${check}.progress`))
  expect(textOf(await taken)).not.toBe('')
  const screen = await bot.press(stranger(0), `ch1.${check}.go-on`)
  expect(textOf(await bot.press(stranger(0), idOf(screen, '.unsure')))).not.toBe('')
  letGo()
  await Promise.all([...late, ...looking])
})

test('members without the right press in the set-up: whoever manages the server is not held up', async () => {
  const overview = await bot.command(manager, 'setup')
  const begin = idOf(overview, '.begin')
  const { held, letGo } = holdBack(/Only people who may manage this server/)
  const strangers = Array.from({ length: 12 }, (_, i) => bot.press(stranger(i), begin))
  expect(textOf(await bot.press(manager, begin))).toMatch(/1 of \d/)
  expect(held()).toBeGreaterThan(0)
  letGo()
  await Promise.all(strangers)
})

/** The next answers, so many of them, are held back until they are let go. */
function holdNext(count: number): { readonly held: () => number } {
  const gate = Promise.withResolvers<void>()
  let held = 0
  bot.discord.before = ({ path }: Asked) => {
    if (!path.endsWith('/callback') || held >= count) return undefined
    held++
    return gate.promise
  }
  release = () => gate.resolve()
  return { held: () => held }
}

const anotherManager = inServer(member('900000000000009998', String((1n << 5n) | (1n << 13n) | 2048n)))
const moderator = inServer(member('900000000000009999', String((1n << 5n) | (1n << 13n) | 2048n)))

/** A model of the server in force, and what is pressed on it. */
async function model() {
  await seedFamilies(bot.services, serverId)
  const found = (await bot.services.families.store.heads(serverId)).find(one => one.state === 'in-force')
  if (!found) throw new Error('nothing in force')
  const { id: family, revision } = found
  return (act: Parameters<typeof encodeFamily>[0]['act'], seen = revision) =>
    encodeFamily({ family, revision: seen, act })
}

type FamilyAct = Parameters<typeof encodeFamily>[0]['act']
test.each<[string, FamilyAct]>([
  ['look at a model', { is: 'see' }],
  ['read its sheet', { is: 'sheet' }],
  ['begin a check of it', { is: 'check' }],
  ['offer a good cell of it', { is: 'reference-offered', opening: 'abcd' }],
  ['press what only moderators may', { is: 'history' }],
])('members %s: a moderator changes it while none of them has been answered yet', async (_, act) => {
  const on = await model()
  const { held } = holdNext(3)
  const members = [0, 1, 2].map(i => bot.press(stranger(i), on(act)))
  await expect.poll(held).toBe(3)
  expect(textOf(await bot.press(moderator, on({ is: 'not-known', feature: 'legs' })))).not.toBe('')
  release()
  for (const answer of await Promise.all(members)) expect(textOf(answer)).not.toBe('')
})

test.each<[string, FamilyAct, number | undefined]>([
  ['looks back', { is: 'history' }, undefined],
  ['opens a form', { is: 'figures' }, undefined],
  ['presses what is not so any more', { is: 'not-known', feature: 'legs' }, 9999],
])('a moderator %s: another one changes the model meanwhile', async (_, act, seen) => {
  const on = await model()
  const { held } = holdNext(1)
  const first = bot.press(anotherManager, on(act, seen))
  await expect.poll(held).toBe(1)
  expect(textOf(await bot.press(moderator, on({ is: 'not-known', feature: 'legs' })))).not.toBe('')
  release()
  await first
})

test.each<[string, typeof owner]>([
  ['a member who may not', owner],
  ['a moderator who only looks', anotherManager],
])('%s presses among the links: a moderator is not held up', async (_, who) => {
  const { held } = holdNext(2)
  const first = [0, 1].map(() => bot.press(who, linksIds.write({ is: 'manage' })))
  await expect.poll(held).toBe(2)
  expect(textOf(await bot.press(moderator, linksIds.write({ is: 'manage' })))).not.toBe('')
  release()
  await Promise.all(first)
})

test.each<[string, typeof owner, 'see' | 'dismiss']>([
  ['a member who may not', owner, 'dismiss'],
  ['a moderator who only looks', anotherManager, 'see'],
  ['a moderator who opens a form', anotherManager, 'dismiss'],
])('%s presses on a finding: a moderator is not held up', async (_, who, does) => {
  const { findings } = bot.services.trends
  const week = weekOf(bot.services.now())
  const rise = { family: 'brindlewick-rook', rule: null, week, standsOut: false }
  const found = { key: 'rook', family: rise.family, week, parts: [{ is: 'rise' as const, rise }] }
  await findings.add(serverId, [found], bot.services.newId)
  const [finding] = await findings.due(serverId, week)
  if (!finding) throw new Error('no finding')
  const on = (act: 'see' | 'dismiss') =>
    act === 'see'
      ? encodeTrends({ is: 'finding', id: finding.id, does: 'see' })
      : encodeTrends({ is: 'finding', id: finding.id, does: 'dismiss' })
  const { held } = holdNext(2)
  const first = [0, 1].map(() => bot.press(who, on(does)))
  await expect.poll(held).toBe(2)
  expect(textOf(await bot.press(moderator, on('see')))).not.toBe('')
  release()
  await Promise.all(first)
})

test('what the bot posts for somebody, they may post themselves', async () => {
  const muted = inServer(member('900000000000008888', '0'))
  const refused = await bot.command(muted, 'check', [
    { name: 'start', type: 1, options: [...straight, { name: 'anyone', type: 5, value: true }] },
  ])
  expect(textOf(refused)).toMatch(/You may not write in this channel yourself/)
  const own = await bot.command(muted, 'check', startCheck)
  const check = idOf(own, '.unsure').split('.')[1]
  const form = await bot.press(muted, `ch1.${check}.offer`)
  const sent = (form['data'] as { custom_id: string }).custom_id
  expect(textOf(await bot.send(muted, sent, { taker: [], why: 'Everybody look here' }))).toMatch(
    /You may not write in this channel yourself/,
  )
  expect(bot.discord.asked.filter(one => one.path === `/channels/${channelId}/messages`)).toEqual([])
})

test.each([
  ['a letter', 'clt1.change.9f86d081884c7d659a2f.de', /./],
  ['the weeks', 'cs1.0.ask-weeks', /from an older version|not know|Use the buttons/],
  ['a link', 'clk1.add', /./],
])('a form that no screen sends (%s) is answered in words', async (_, id) => {
  expect(textOf(await bot.send(manager, id, {}))).toMatch(/\w/)
})
