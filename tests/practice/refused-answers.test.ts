// Bad interaction answers and bad command lists are refused and change nothing; good ones are taken.
// Sent by a real discord.js client, as raw bodies. Limits from Discord's documentation (Application Commands, Interactions).
import { DiscordAPIError, type Interaction, Routes } from 'discord.js'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const times = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => make(index))
const label = (component: object, words = 'Label') => ({ type: 18, label: words, component })
const input = (more: object = {}) => ({ type: 4, custom_id: 'words', style: 1, ...more })
const modal = (...components: object[]) => ({ type: 9, data: { custom_id: 'm', title: 'Title', components } })
const radio = (count: number) => ({
  type: 21,
  custom_id: 'r',
  options: times(count, index => ({ label: `${index}`, value: `${index}` })),
})
const choices = (list: object[]) => ({ type: 8, data: { choices: list } })
const command = (more: object) => ({ name: 'fine', description: 'Fine', ...more })
const option = (more: object) => ({ type: 3, name: 'word', description: 'A word', ...more })

/** What is wrong, and the raw callback body that answers a slash command. */
const badAnswers: readonly [string, object][] = [
  ['an empty message', { type: 4, data: { content: '' } }],
  ['content of 2001 characters', { type: 4, data: { content: 'x'.repeat(2001) } }],
  ['a deferred answer with the V2 flag', { type: 5, data: { flags: 1 << 15 } }],
  ['an update where there is no message', { type: 7, data: { content: 'x' } }],
  ['a silent acknowledgement where there is no message', { type: 6 }],
  ['choices for a command', choices([])],
  ['a ping answer', { type: 1 }],
  ['a type that does not exist', { type: 99 }],
  ['a modal with six labels', modal(...times(6, index => label(input({ custom_id: `w${index}` }))))],
  ['a modal without anything', modal()],
  ['a modal with an empty label', modal(label(input(), ' '))],
  ['a modal with a label of 46 characters', modal(label(input(), 'x'.repeat(46)))],
  ['a modal with one custom id twice', modal(label(input()), label(input()))],
  [
    'a modal with a title of 46 characters',
    { type: 9, data: { custom_id: 'm', title: 'x'.repeat(46), components: [label(input())] } },
  ],
  ['a modal with a bare text input in a row without a label', modal({ type: 1, components: [input()] })],
  ['a modal with a button', modal(label({ type: 2, style: 1, label: 'x', custom_id: 'b' }))],
  ['a text input whose value is longer than allowed', modal(label(input({ max_length: 3, value: 'long' })))],
  ['a text input with min above max', modal(label(input({ min_length: 5, max_length: 3 })))],
  ['a text input of 4001 characters at most', modal(label(input({ max_length: 4001 })))],
  ['a radio group of one', modal(label(radio(1)))],
  ['a radio group of eleven', modal(label(radio(11)))],
  [
    'a checkbox group that wants more than it has',
    modal(label({ type: 22, custom_id: 'c', max_values: 3, options: [{ label: 'a', value: 'a' }] })),
  ],
  ['a file upload of eleven files', modal(label({ type: 19, custom_id: 'f', max_values: 11 }))],
]

const goodAnswers: readonly [string, object][] = [
  ['a message', { type: 4, data: { content: 'x' } }],
  ['a private deferred answer', { type: 5, data: { flags: 64 } }],
  ['a modal of five labels', modal(...times(5, index => label(input({ custom_id: `w${index}` }))))],
  ['a modal with words and a radio group', modal({ type: 10, content: 'Words' }, label(radio(2)))],
  ['an old modal', modal({ type: 1, components: [input({ label: 'Old' })] })],
]

const badChoices: readonly [string, object][] = [
  ['26 choices', choices(times(26, index => ({ name: `${index}`, value: `${index}` })))],
  ['an empty name', choices([{ name: '', value: 'x' }])],
  ['a name of 101 characters', choices([{ name: 'x'.repeat(101), value: 'x' }])],
  ['a value of 101 characters', choices([{ name: 'x', value: 'x'.repeat(101) }])],
  ['a number for a text option', choices([{ name: 'x', value: 1 }])],
  ['a message for autocomplete', { type: 4, data: { content: 'x' } }],
]

const badCommands: readonly [string, object[]][] = [
  ['an upper-case name', [command({ name: 'Check' })]],
  ['a name with a space', [command({ name: 'check it' })]],
  ['a name of 33 characters', [command({ name: 'x'.repeat(33) })]],
  ['an upper-case localised name', [command({ name_localizations: { de: 'Prüfung' } })]],
  ['no description', [{ name: 'fine' }]],
  ['a description of 101 characters', [command({ description: 'x'.repeat(101) })]],
  ['two commands of one name', [command({}), command({})]],
  ['26 options', [command({ options: times(26, index => option({ name: `o${index}` })) })]],
  [
    '26 choices',
    [command({ options: [option({ choices: times(26, index => ({ name: `${index}`, value: `${index}` })) })] })],
  ],
  [
    'a required option after one that is not',
    [command({ options: [option({ name: 'a' }), option({ name: 'b', required: true })] })],
  ],
  ['two options of one name', [command({ options: [option({}), option({})] })]],
  ['a subcommand beside an option', [command({ options: [{ type: 1, name: 'sub', description: 's' }, option({})] })]],
  [
    'choices and autocomplete together',
    [command({ options: [option({ autocomplete: true, choices: [{ name: 'a', value: 'a' }] })] })],
  ],
  [
    'a text value for a number option',
    [command({ options: [option({ type: 4, choices: [{ name: 'a', value: 'a' }] })] })],
  ],
  [
    'more than 8000 characters of text',
    [
      command({
        options: times(25, index =>
          option({
            name: `o${index}`,
            choices: times(4, at => ({ name: `${at}${'x'.repeat(48)}`, value: `${at}${'y'.repeat(48)}` })),
          }),
        ),
      }),
    ],
  ],
  ['16 message commands', times(16, index => ({ type: 3, name: `Menu ${index}` }))],
  ['a message command with a description', [{ type: 3, name: 'Menu', description: 'x' }]],
  ['a person command with options', [{ type: 2, name: 'Menu', options: [option({})] }]],
]

const commands = [command({ name: 'go', options: [option({ autocomplete: true })] })]

let standIn: StandIn
let bot: TinyBot
let next: object
let error: unknown
beforeAll(async () => {
  standIn = await openStandIn({ scenario: hobbyServer, patience: { deferred: 5 } })
  bot = await startTinyBot(standIn, commands, async (interaction: Interaction) => {
    const path = Routes.interactionCallback(interaction.id, interaction.token)
    error = await bot.client.rest.post(path, { body: next, auth: false }).then(
      () => null,
      thrown => thrown,
    )
    // What was refused may still be answered properly.
    const fallback = interaction.isAutocomplete() ? choices([]) : { type: 4, data: { content: 'fallback' } }
    if (error !== null) await bot.client.rest.post(path, { body: fallback, auth: false })
  })
})
afterAll(async () => {
  expect(bot.errors).toEqual([])
  await bot.stop()
  await standIn.close()
})

describe('answers that are refused, and may be answered again', () => {
  test.each(badAnswers)('%s', async (_, body) => {
    next = body
    expect(await standIn.as('Wren').run('go')).toMatchObject({ kind: 'message', message: { content: 'fallback' } })
    expect(error).toBeInstanceOf(DiscordAPIError)
    expect(error).toMatchObject({ status: 400, code: 50035 })
  })
})

describe('answers that are taken', () => {
  test.each(goodAnswers)('%s', async (_, body) => {
    next = body
    const reply = await standIn.as('Wren').run('go')
    await bot.settled()
    expect(error).toBeNull()
    expect(reply.kind).not.toBe('silent')
  })
})

describe('choices that are refused', () => {
  test.each(badChoices)('%s', async (_, body) => {
    next = body
    expect(await standIn.as('Wren').suggest('go', { name: 'word', value: 'x' })).toEqual([])
    expect(error).toMatchObject({ status: 400, code: 50035 })
  })
})

describe('command lists that are refused as a whole', () => {
  test.each(badCommands)('%s', async (_, body) => {
    const path = Routes.applicationCommands(ids.application)
    await expect(bot.client.rest.put(path, { body })).rejects.toMatchObject({ status: 400, code: 50035 })
    expect(
      standIn
        .as('Tomas')
        .commands()
        .map(one => one.path),
    ).toEqual(['go'])
  })
})

test('a modal may not answer a modal', async () => {
  next = modal(label(input()))
  const reply = await standIn.as('Wren').run('go')
  if (reply.kind !== 'modal') throw new Error(`got ${reply.kind}`)
  expect(await standIn.as('Wren').submit(reply.modal, { words: 'x' })).toMatchObject({
    message: { content: 'fallback' },
  })
  expect(error).toMatchObject({ code: 50035 })
})

test('a second answer meets 40060, an unknown interaction 10062', async () => {
  next = { type: 4, data: { content: 'once' } }
  await standIn.as('Wren').run('go')
  const callback = (id: string, token: string) =>
    bot.client.rest.post(Routes.interactionCallback(id, token), { body: next, auth: false })
  await expect(callback('123', 'abc')).rejects.toMatchObject({ status: 404, code: 10062 })
  expect(standIn.complaints.at(-1)?.code).toBe(10062)
})

test('a good list replaces the old one and keeps the ids of commands that stay', async () => {
  const before = standIn.as('Wren').commands()[0]?.id
  await bot.client.rest.put(Routes.applicationCommands(ids.application), {
    body: [...commands, command({ name: 'new-one', default_member_permissions: '0' })],
  })
  expect(
    standIn
      .as('Wren')
      .commands()
      .map(one => [one.path, one.id]),
  ).toEqual([['go', before]])
})

test('checking can be put off: a bad body is taken and noted', async () => {
  const lenient = await openStandIn({ scenario: hobbyServer, validate: 'deferred' })
  const body = { content: 'x', contents: 'y' }
  const headers = { authorization: `Bot ${lenient.botToken}`, 'content-type': 'application/json' }
  const sent = await fetch(`${lenient.apiUrl}/v10/channels/${ids.bench}/messages`, {
    method: 'POST',
    headers,
    body: JSON.stringify(body),
  })
  expect(sent.status).toBe(200)
  await expect.poll(() => lenient.complaints.map(one => one.issues[0]?.code)).toEqual(['PRACTICE_UNKNOWN_KEY'])
  await lenient.close()
})
