// Whoever is refused, or only looks, holds up nobody: Discord may take as long as it likes to hear their answers.
import { afterEach, beforeEach, expect, test } from 'vitest'
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
import { type Asked, channelId } from '../gateway/small-gateway.ts'

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
  const { held, letGo } = holdBack(/Only the person who holds this check/)
  const strangers = Array.from({ length: 12 }, (_, i) => bot.press(stranger(i), unsure))
  const next = await bot.press(owner, unsure)
  expect(textOf(next)).not.toBe(textOf(first))
  expect(held()).toBeGreaterThan(0)
  letGo()
  for (const answer of await Promise.all(strangers))
    expect(textOf(answer)).toMatch(/Only the person who holds this check/)
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
