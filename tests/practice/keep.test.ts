// After a restart the room is as it was: what was said, in threads and privately, its files, who left, and who reads what.
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Interaction } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { buttons, pictures } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hearNews } from './hear-news.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

let folder: string
let standIn: StandIn
let bot: TinyBot
let count = 0
const card = () => ({
  content: `pressed ${count} times`,
  embeds: [{ title: 'A drawing', image: { url: 'attachment://dot.png' } }],
  components: [{ type: 1, components: [{ type: 2, style: 1, custom_id: 'again', label: 'Again' }] }],
})
async function answer(interaction: Interaction): Promise<void> {
  if (interaction.isButton()) {
    count += 1
    await interaction.update({ content: `pressed ${count} times` })
  }
  if (!interaction.isChatInputCommand()) return
  if (interaction.commandName === 'slow') {
    await interaction.deferReply()
    return
  }
  const files = [{ attachment: Buffer.from('not really a picture'), name: 'dot.png' }]
  const flags = interaction.commandName === 'mine' ? 64 : 0
  await interaction.reply({ ...card(), files, flags } as never)
}
const commands = ['ours', 'mine', 'slow'].map(name => ({ name, description: 'x' }))
async function open(scenario = hobbyServer): Promise<'kept' | 'new' | 'unreadable'> {
  standIn = await openStandIn({ scenario, patience: { deferred: 1 } })
  const found = await standIn.keepIn(folder)
  bot = await startTinyBot(standIn, commands, answer)
  return found
}
const restart = async (scenario = hobbyServer) => {
  await bot.stop()
  await standIn.close()
  return open(scenario)
}
beforeEach(async () => {
  count = 0
  folder = await mkdtemp(join(tmpdir(), 'kept-room-'))
  expect(await open()).toBe('new')
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
  await rm(folder, { recursive: true, force: true })
})

test('messages, private ones too, are there again, and their old buttons still work', async () => {
  standIn.say('Ilse', ids.bench, 'hello')
  await standIn.as('Wren').run('ours')
  await standIn.as('Wren').run('mine')
  const before = standIn.as('Wren').sees()
  expect(before.map(one => one.private)).toEqual([false, false, true])
  expect(await restart()).toBe('kept')
  const after = standIn.as('Wren').sees()
  expect(after.map(one => [one.id, one.content, one.private, one.at])).toEqual(
    before.map(one => [one.id, one.content, one.private, one.at]),
  )
  expect(standIn.as('Ilse').sees()).toHaveLength(2)
  for (const [at, times] of [
    [1, 1],
    [2, 2],
  ] as const) {
    const [button] = buttons(after[at] as (typeof after)[number])
    const reply = await standIn.as('Wren').click(after[at]?.id ?? '', button?.customId ?? '')
    expect(reply.kind === 'updated' && reply.message.content).toBe(`pressed ${times} times`)
  }
})

test('pictures are there again under links that work, on whatever port', async () => {
  await standIn.as('Wren').run('ours')
  await restart()
  const [message] = standIn.messages(ids.bench)
  const links = message ? pictures(message).map(one => one.url) : []
  expect(links.length).toBeGreaterThan(0)
  for (const link of links) {
    expect(new URL(link).origin).toBe(new URL(standIn.pageUrl).origin)
    expect(await (await fetch(link)).text()).toBe('not really a picture')
  }
})

test('files of what was deleted do not stay behind', async () => {
  const posted = await standIn.as('Wren').run('mine')
  await restart()
  expect(await readdir(join(folder, 'files'))).toHaveLength(1)
  standIn.as('Wren').dismiss(posted.kind === 'message' ? posted.message.id : '')
  await restart()
  expect(await readdir(join(folder, 'files'))).toEqual([])
})

test('posts, direct conversations and the tags of a forum keep their ids', async () => {
  const post = standIn.as('Wren').post(ids.posts, { title: 'Is it real?', text: 'Look.', tags: ['open'] })
  standIn.say('Ilse', 'direct', 'psst')
  const direct = standIn.directId('Ilse')
  const tagsOf = async () => {
    const forum = await bot.client.channels.fetch(ids.posts, { force: true })
    return forum?.isThreadOnly() ? forum.availableTags.map(one => one.id) : []
  }
  const tags = await tagsOf()
  await restart()
  expect(standIn.messages(post).map(one => one.content)).toEqual(['Look.'])
  expect([standIn.directId('Ilse'), standIn.messages(direct).length]).toEqual([direct, 1])
  expect(await tagsOf()).toEqual(tags)
})

test('who has left stays away, and who has come back is there', async () => {
  standIn.leave('Ilse')
  await restart()
  expect(standIn.as('Ilse').commands({ channel: ids.bench })).toEqual([])
  standIn.join('Ilse')
  await restart()
  expect(standIn.as('Ilse').commands({ channel: ids.bench })).toHaveLength(3)
  // Roles that went with leaving do not come back.
  const guild = await bot.client.guilds.fetch(ids.server)
  expect((await guild.members.fetch(ids.ilse)).roles.cache.has(ids.helper)).toBe(false)
})

test('a page that was open before what was kept is read again gets it without asking', async () => {
  standIn.say('Ilse', ids.bench, 'hello')
  await bot.stop()
  await standIn.close()
  standIn = await openStandIn({ scenario: hobbyServer })
  const empty = Promise.withResolvers<void>()
  const heard = hearNews(standIn, { you: ids.wren, place: ids.bench }, news => {
    if (news.kind !== 'view') return false
    if (news.messages.length === 0) empty.resolve()
    return news.messages.length > 0
  })
  await empty.promise
  await standIn.keepIn(folder)
  expect((await heard).at(-1)).toMatchObject({ kind: 'view', messages: [{ content: 'hello' }] })
  bot = await startTinyBot(standIn, commands, answer)
})

test('what still waited for the bot waits no longer', async () => {
  expect((await standIn.as('Wren').run('slow')).kind).toBe('deferred')
  expect(standIn.messages(ids.bench)).toHaveLength(1)
  await restart()
  expect(standIn.messages(ids.bench)).toEqual([])
})

test('who was invented since then is where the scenario says', async () => {
  const people = hobbyServer.people.filter(one => one.id !== ids.tomas)
  await restart({ ...hobbyServer, people })
  await restart()
  expect(standIn.as('Tomas').commands({ channel: ids.bench })).toHaveLength(3)
})

test('what cannot be read is put aside and not lost', async () => {
  standIn.say('Ilse', ids.bench, 'hello')
  await bot.stop()
  await standIn.close()
  await writeFile(join(folder, 'room.json'), '{"version":99}')
  expect(await open()).toBe('unreadable')
  expect(standIn.messages(ids.bench)).toEqual([])
  expect(await readFile(join(folder, 'room-unreadable.json'), 'utf8')).toBe('{"version":99}')
})
