// Three seconds for the first answer, fifteen minutes for a token, a day for a link: by a clock moved by hand.
import { type ChatInputCommandInteraction, type Interaction, MessageFlags } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const commands = ['quick', 'late', 'private', 'defer'].map(name => ({ name, description: 'A command' }))
const second = 1000
const minute = 60 * second

let time: number
let held: ChatInputCommandInteraction | null
async function handler(interaction: Interaction): Promise<unknown> {
  if (!interaction.isChatInputCommand()) return
  held = interaction
  if (interaction.commandName === 'late') {
    time += 3 * second
    return await interaction.reply('too late')
  }
  if (interaction.commandName === 'defer') return await interaction.deferReply()
  const flags = interaction.commandName === 'private' ? MessageFlags.Ephemeral : undefined
  return await interaction.reply({ content: 'in time', ...(flags ? { flags } : {}) })
}

let standIn: StandIn
let bot: TinyBot
beforeEach(async () => {
  time = Date.UTC(2030, 0, 1)
  standIn = await openStandIn({ scenario: hobbyServer, now: () => time, patience: { deferred: 20 } })
  bot = await startTinyBot(standIn, commands, handler)
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})

test('an answer after three seconds meets 10062, and the person hears nothing', async () => {
  expect(await standIn.as('Wren').run('late')).toMatchObject({ kind: 'silent', why: 'no answer within 3 s' })
  await expect.poll(() => bot.errors).toMatchObject([{ code: 10062, status: 404 }])
  expect(standIn.complaints.map(one => one.code)).toEqual([10062])
})

test('a token edits for fifteen minutes and then meets 50027', async () => {
  await standIn.as('Wren').run('quick')
  await bot.settled()
  time += 15 * minute - 1
  await held?.editReply('still fine')
  time += 1
  await expect(held?.editReply('too old')).rejects.toMatchObject({ code: 50027, status: 401 })
  await expect(held?.followUp('too old')).rejects.toMatchObject({ code: 50027 })
})

test('a private reply cannot be reached with the bot token once its own token is dead', async () => {
  const reply = await standIn.as('Wren').run('private')
  if (reply.kind !== 'message') throw new Error(`got ${reply.kind}`)
  const { id, channelId } = reply.message
  const edit = bot.client.rest.patch(`/channels/${channelId}/messages/${id}`, { body: { content: 'x' } })
  await expect(edit).rejects.toMatchObject({ code: 10008 })
  expect(standIn.message(id)?.content).toBe('in time')
})

test('a deferred answer keeps its promise when the edit comes, and gives up when the token dies', async () => {
  const waiting = await standIn.as('Wren').run('defer')
  await bot.settled()
  if (waiting.kind !== 'deferred') throw new Error(`got ${waiting.kind}`)
  expect(waiting.message.loading).toBe(true)
  await held?.editReply('here at last')
  expect(await waiting.final).toMatchObject({ content: 'here at last', loading: false })
  const forgotten = await standIn.as('Wren').run('defer')
  await bot.settled()
  if (forgotten.kind !== 'deferred') throw new Error(`got ${forgotten.kind}`)
  time += 15 * minute
  expect(await forgotten.final).toBeNull()
})

test('the first follow-up after a deferred answer becomes that answer', async () => {
  const waiting = await standIn.as('Wren').run('defer')
  await bot.settled()
  if (waiting.kind !== 'deferred') throw new Error(`got ${waiting.kind}`)
  await held?.followUp('as the answer')
  expect(standIn.message(waiting.message.id)).toMatchObject({ content: 'as the answer', loading: false })
})

test('a link to a file ends after a day', async () => {
  await standIn.as('Wren').run('quick')
  await bot.settled()
  await held?.followUp({ files: [{ attachment: Buffer.from('a,b'), name: 'a.csv' }] })
  const url = standIn.as('Wren').sees().at(-1)?.attachments[0]?.url ?? ''
  expect((await fetch(url)).status).toBe(200)
  time += 25 * 60 * minute
  expect((await fetch(url)).status).toBe(404)
})
