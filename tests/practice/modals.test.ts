// A modal makes the whole round with every kind of input, opened from a command and from a button.
import {
  type APIModalInteractionResponseCallbackData,
  type Interaction,
  MessageFlags,
  type ModalSubmitInteraction,
} from 'discord.js'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { text } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import type { WireForm } from '../../src/practice/wire.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const label = (words: string, component: object) => ({ type: 18, label: words, component })
const options = ['red', 'blue', 'green'].map(value => ({ label: value, value }))

const firstForm = {
  custom_id: 'first',
  title: 'First form',
  components: [
    label('Words', { type: 4, custom_id: 'words', style: 1, min_length: 2, max_length: 9 }),
    label('Colour', { type: 3, custom_id: 'colour', options, max_values: 2 }),
    label('Wrap', { type: 21, custom_id: 'wrap', options }),
    label('Marks', { type: 22, custom_id: 'marks', options, required: false }),
    label('Sure', { type: 23, custom_id: 'sure', default: true }),
  ],
}
const secondForm = {
  custom_id: 'second',
  title: 'Second form',
  components: [
    { type: 10, content: 'Pick some things' },
    label('Who', { type: 5, custom_id: 'who' }),
    label('Role', { type: 6, custom_id: 'role', required: false }),
    label('Where', { type: 8, custom_id: 'where' }),
    label('Log', { type: 19, custom_id: 'log', file_types: ['csv'] }),
  ],
}

function readFirst({ fields }: ModalSubmitInteraction): string {
  return JSON.stringify([
    fields.getTextInputValue('words'),
    fields.getStringSelectValues('colour'),
    fields.getRadioGroup('wrap'),
    fields.getCheckboxGroup('marks'),
    fields.getCheckbox('sure'),
  ])
}

async function readSecond({ fields }: ModalSubmitInteraction): Promise<string> {
  const file = fields.getUploadedFiles('log', true).first()
  return JSON.stringify([
    fields.getSelectedUsers('who')?.map(user => user.id),
    fields.getSelectedRoles('role')?.map(role => role?.id) ?? null,
    fields.getSelectedChannels('where')?.map(channel => channel.id),
    file?.name,
    await (await fetch(file?.url ?? '')).text(),
  ])
}

async function handler(interaction: Interaction): Promise<unknown> {
  if (interaction.isChatInputCommand()) {
    if (interaction.commandName === 'form')
      return await interaction.showModal(firstForm as APIModalInteractionResponseCallbackData)
    const row = { type: 1, components: [{ type: 2, style: 1, label: 'Fill in', custom_id: 'fill' }] }
    return await interaction.reply({ content: 'Ready?', components: [row], flags: MessageFlags.Ephemeral })
  }
  if (interaction.isButton()) return await interaction.showModal(secondForm as APIModalInteractionResponseCallbackData)
  if (!interaction.isModalSubmit()) return
  if (interaction.customId === 'first') return await interaction.reply(readFirst(interaction))
  const content = await readSecond(interaction)
  return interaction.isFromMessage() ? await interaction.update({ content, components: [] }) : undefined
}

let standIn: StandIn
let bot: TinyBot
beforeAll(async () => {
  standIn = await openStandIn({ scenario: hobbyServer })
  bot = await startTinyBot(
    standIn,
    [
      { name: 'form', description: 'A form' },
      { name: 'card', description: 'A card' },
    ],
    handler,
  )
})
afterAll(async () => {
  expect(bot.errors).toEqual([])
  expect(standIn.complaints).toEqual([])
  await bot.stop()
  await standIn.close()
})

async function openFirst(): Promise<WireForm> {
  const reply = await standIn.as('Wren').run('form')
  if (reply.kind !== 'modal') throw new Error(`got ${reply.kind}`)
  return reply.modal
}

test('a form opened by a command brings back every kind of value', async () => {
  const modal = await openFirst()
  expect(modal.fields.map(field => field.kind)).toEqual(['text', 'choice', 'radio', 'checks', 'check'])
  const reply = await standIn
    .as('Wren')
    .submit(modal, { words: 'hello', colour: ['red', 'blue'], wrap: 'green', marks: ['red'] })
  expect(reply.kind === 'message' && JSON.parse(text(reply.message))).toEqual([
    'hello',
    ['red', 'blue'],
    'green',
    ['red'],
    true,
  ])
})

test('fields left open that need not be filled arrive empty', async () => {
  const reply = await standIn
    .as('Wren')
    .submit(await openFirst(), { words: 'hi', colour: ['red'], wrap: 'red', sure: false })
  expect(reply.kind === 'message' && JSON.parse(text(reply.message))).toEqual(['hi', ['red'], 'red', [], false])
})

test('a client holds back a form that is not filled in properly', async () => {
  const modal = await openFirst()
  const submit = (fields: Record<string, string | string[]>) =>
    standIn.as('Wren').submit(modal, { words: 'hello', colour: ['red'], wrap: 'red', ...fields })
  await expect(submit({ words: 'x' })).rejects.toThrow('2 to 9 characters')
  await expect(submit({ words: '' })).rejects.toThrow('must be filled in')
  await expect(submit({ colour: ['red', 'blue', 'green'] })).rejects.toThrow('1 to 2 values')
  await expect(submit({ wrap: 'pink' })).rejects.toThrow('no choice "pink"')
  await expect(standIn.as('Ilse').submit(modal, {})).rejects.toThrow('not open for this person')
})

test('a form opened from a private message updates that message', async () => {
  const ilse = standIn.as('Ilse')
  const card = await ilse.run('card')
  if (card.kind !== 'message') throw new Error(`got ${card.kind}`)
  const form = await ilse.click(card.message, 'fill')
  if (form.kind !== 'modal') throw new Error(`got ${form.kind}`)
  const log = [{ name: 'run.csv', bytes: new TextEncoder().encode('s,V') }]
  const reply = await ilse.submit(form.modal, { who: [ids.tomas], where: [ids.bench], log })
  expect(reply).toMatchObject({ kind: 'updated', message: { id: card.message.id, private: true, components: [] } })
  expect(reply.kind === 'updated' && JSON.parse(text(reply.message))).toEqual([
    [ids.tomas],
    null,
    [ids.bench],
    'run.csv',
    's,V',
  ])
})
