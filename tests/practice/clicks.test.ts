// Buttons, menus and message commands: updates, follow-ups, stale messages, and what a second answer meets.
import { type Interaction, MessageFlags } from 'discord.js'
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest'
import { buttons, menus, type SeenMessage, text } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const row = (...components: object[]) => ({ type: 1, components })
const button = (customId: string, more: object = {}) => ({
  type: 2,
  style: 2,
  label: customId,
  custom_id: customId,
  ...more,
})
const cardParts = [
  row(button('count'), button('later'), button('also'), button('off', { disabled: true }), button('noted')),
  row({
    type: 3,
    custom_id: 'pick',
    options: ['a', 'b'].map(value => ({ label: value, value })),
    min_values: 0,
    max_values: 2,
  }),
  row({ type: 5, custom_id: 'person' }),
]

let count = 0
async function handler(interaction: Interaction): Promise<unknown> {
  if (interaction.isChatInputCommand()) return await interaction.reply({ content: 'card', components: cardParts })
  if (interaction.isMessageContextMenuCommand()) {
    const content = `about: ${interaction.targetMessage.content} by ${interaction.targetMessage.author.displayName}`
    return await interaction.reply({ content, flags: MessageFlags.Ephemeral })
  }
  if (interaction.isUserContextMenuCommand())
    return await interaction.reply(`${interaction.targetUser.displayName} ${interaction.targetMember ? 'is here' : ''}`)
  if (interaction.isStringSelectMenu())
    return await interaction.update({ content: `picked ${interaction.values.join('+')}` })
  if (interaction.isUserSelectMenu())
    return await interaction.update({ content: `person ${interaction.users.first()?.id}` })
  if (!interaction.isButton()) return
  if (interaction.customId === 'count') {
    count += 1
    return await interaction.update({ content: `count ${count}`, components: [row(button('next'))] })
  }
  await interaction.deferUpdate()
  if (interaction.customId === 'later') return await interaction.editReply({ content: 'later it is' })
  if (interaction.customId === 'also')
    return await interaction.followUp({ content: 'also this', flags: MessageFlags.Ephemeral })
}

let standIn: StandIn
let bot: TinyBot
beforeAll(async () => {
  standIn = await openStandIn({ scenario: hobbyServer, patience: { acknowledged: 60_000 } })
  bot = await startTinyBot(
    standIn,
    [
      { name: 'card', description: 'A card' },
      { name: 'About this', type: 3 },
      { name: 'Who', type: 2 },
    ],
    handler,
  )
})
afterEach(() => expect(bot.errors).toEqual([]))
afterAll(async () => {
  expect(standIn.complaints).toEqual([])
  await bot.stop()
  await standIn.close()
})

async function card(): Promise<SeenMessage> {
  const reply = await standIn.as('Wren').run('card')
  if (reply.kind !== 'message') throw new Error(`got ${reply.kind}`)
  return reply.message
}

test('a message shows its buttons and menus', async () => {
  const message = await card()
  expect(buttons(message).map(one => [one.customId, one.disabled])).toContainEqual(['off', true])
  expect(menus(message).map(one => [one.kind, one.max])).toEqual([
    ['text', 2],
    ['person', 1],
  ])
})

test('a button updates its message for everyone', async () => {
  const message = await card()
  expect(await standIn.as('Ilse').click(message, 'count')).toMatchObject({
    kind: 'updated',
    message: { id: message.id },
  })
  expect(standIn.message(message.id)?.content).toMatch(/^count \d/)
})

test('a button that is no longer there can be pressed only by someone who still sees the old card', async () => {
  const message = await card()
  await standIn.as('Wren').click(message, 'count')
  await expect(standIn.as('Wren').click(message, 'count')).rejects.toThrow('has no "count"')
  expect(await standIn.as('Wren').click(message, 'count', { stale: true })).toMatchObject({ kind: 'updated' })
})

test('acknowledging first, then editing or following up', async () => {
  const wren = standIn.as('Wren')
  const message = await card()
  expect(await wren.click(message, 'later')).toMatchObject({
    kind: 'updated',
    deferred: true,
    message: { content: 'later it is' },
  })
  expect(await wren.click(message, 'also')).toMatchObject({
    kind: 'message',
    private: true,
    message: { content: 'also this' },
  })
  await expect(wren.click(message, 'off')).rejects.toThrow('switched off')
})

test('acknowledging and doing nothing more', async () => {
  // Nothing is waited for, so it is not waited for long.
  const brief = await openStandIn({ scenario: hobbyServer, patience: { acknowledged: 1 } })
  const other = await startTinyBot(brief, [{ name: 'card', description: 'A card' }], handler)
  const reply = await brief.as('Wren').run('card')
  if (reply.kind !== 'message') throw new Error(`got ${reply.kind}`)
  expect(await brief.as('Wren').click(reply.message, 'noted')).toEqual({ kind: 'acknowledged' })
  await other.stop()
  await brief.close()
})

test('menus hand over values and people', async () => {
  const message = await card()
  expect(await standIn.as('Wren').choose(message, 'pick', ['a', 'b'])).toMatchObject({
    message: { content: 'picked a+b' },
  })
  expect(await standIn.as('Wren').choose(message, 'pick', [])).toMatchObject({ message: { content: 'picked ' } })
  expect(await standIn.as('Wren').choose(message, 'person', [ids.tomas])).toMatchObject({
    message: { content: `person ${ids.tomas}` },
  })
  await expect(standIn.as('Wren').choose(message, 'pick', ['z'])).rejects.toThrow('has no "z"')
})

test('a message command carries the message, its words and its author', async () => {
  const said = standIn.say('Wren', ids.bench, 'is this cell any good?')
  const reply = await standIn.as('Ilse').useOnMessage('About this', said)
  expect(reply.kind === 'message' && [reply.private, text(reply.message)]).toEqual([
    true,
    'about: is this cell any good? by Wren',
  ])
  expect(
    standIn
      .as('Wren')
      .sees()
      .some(one => one.content.startsWith('about:')),
  ).toBe(false)
})

test('a person command carries the person and the member', async () => {
  expect(await standIn.as('Ilse').useOnPerson('Who', ids.wren)).toMatchObject({ message: { content: 'Wren is here' } })
})

test('a command in the direct conversation works without a server', async () => {
  const reply = await standIn.as('Wren').run('card', {}, { channel: 'direct' })
  expect(reply).toMatchObject({ kind: 'message', message: { channelId: standIn.directId('Wren') } })
  expect(standIn.as('Ilse').sees(standIn.directId('Wren'))).toEqual([])
})
