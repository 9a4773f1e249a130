// A real discord.js bot answers commands through the stand-in: options, autocomplete, deferring, files, private replies.
import {
  AttachmentBuilder,
  ContainerBuilder,
  type Interaction,
  MediaGalleryBuilder,
  MessageFlags,
  TextDisplayBuilder,
} from 'discord.js'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { pictures, text } from '../../src/practice/seen.ts'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const commands = [
  {
    name: 'echo',
    description: 'Says it again',
    options: [
      { type: 3, name: 'words', description: 'What to say', required: true, autocomplete: true, max_length: 50 },
      { type: 4, name: 'times', description: 'How often', min_value: 1, max_value: 3 },
      { type: 6, name: 'to', description: 'To whom' },
      { type: 11, name: 'file', description: 'A file', file_types: ['csv'] },
    ],
  },
  {
    name: 'late',
    description: 'Takes its time',
    options: [{ type: 1, name: 'picture', description: 'With a picture' }],
  },
  { name: 'secret', description: 'For one', default_member_permissions: '32' },
]

async function handler(interaction: Interaction): Promise<unknown> {
  if (interaction.isAutocomplete()) {
    const typed = interaction.options.getFocused()
    return await interaction.respond(
      ['aa', 'ab', 'b'].filter(one => one.startsWith(typed)).map(name => ({ name, value: name })),
    )
  }
  if (!interaction.isChatInputCommand()) return
  if (interaction.commandName === 'echo') {
    const file = interaction.options.getAttachment('file')
    const read = file === null ? '' : ` ${await (await fetch(file.url)).text()}`
    const to = interaction.options.getUser('to')
    const words = interaction.options.getString('words', true).repeat(interaction.options.getInteger('times') ?? 1)
    const sent = await interaction.reply({ content: `${words}${to ? ` ${to}` : ''}${read}`, withResponse: true })
    return sent.resource?.message?.id
  }
  if (interaction.commandName === 'late') {
    await interaction.deferReply()
    const file = new AttachmentBuilder(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'), { name: 'a.svg' })
    return await interaction.editReply({
      flags: MessageFlags.IsComponentsV2,
      files: [file],
      components: [
        new ContainerBuilder()
          .addTextDisplayComponents(new TextDisplayBuilder().setContent('# Done'))
          .addMediaGalleryComponents(
            new MediaGalleryBuilder().addItems({
              media: { url: 'attachment://a.svg' },
              description: 'An empty picture',
            }),
          ),
      ],
    })
  }
  return await interaction.reply({ content: 'psst', flags: MessageFlags.Ephemeral })
}

let standIn: StandIn
let bot: TinyBot
beforeAll(async () => {
  standIn = await openStandIn({ scenario: hobbyServer })
  bot = await startTinyBot(standIn, commands, handler)
  await standIn.ready()
})
afterAll(async () => {
  expect(bot.errors).toEqual([])
  expect(standIn.complaints).toEqual([])
  await bot.stop()
  await standIn.close()
})

test('a command with options of several kinds is answered', async () => {
  const file = { name: 'log.csv', bytes: new TextEncoder().encode('t,v') }
  const reply = await standIn.as('Wren').run('echo', { words: 'hi', times: 2, to: ids.ilse, file })
  expect(reply).toMatchObject({ kind: 'message', private: false, message: { content: `hihi <@${ids.ilse}> t,v` } })
  expect(reply.kind === 'message' && reply.message.pinged.people).toEqual([ids.ilse])
})

test('autocomplete gives choices for what is typed', async () => {
  const choices = await standIn.as('Wren').suggest('echo', { name: 'words', value: 'a' })
  expect(choices.map(one => one.value)).toEqual(['aa', 'ab'])
})

test('a deferred answer becomes a message with a served picture', async () => {
  const reply = await standIn.as('Wren').run('late picture')
  if (reply.kind !== 'message') throw new Error(`got ${reply.kind}`)
  expect(reply.deferred).toBe(true)
  expect(text(reply.message)).toBe('# Done')
  const [picture] = pictures(reply.message)
  expect(picture?.alt).toBe('An empty picture')
  const served = await fetch(picture?.url ?? '')
  expect([served.status, served.headers.get('content-type')]).toEqual([200, 'image/svg+xml'])
})

test('a private reply is seen by one person only', async () => {
  await standIn.as('Tomas').run('secret')
  const says = (name: string) =>
    standIn
      .as(name)
      .sees()
      .some(one => one.content === 'psst')
  expect([says('Tomas'), says('Wren')]).toEqual([true, false])
})

test('a command is offered only where its default permissions allow it', async () => {
  const names = (who: string) =>
    standIn
      .as(who)
      .commands()
      .map(one => one.path)
  expect(names('Tomas')).toContain('secret')
  expect(names('Wren')).not.toContain('secret')
  await expect(standIn.as('Wren').run('secret')).rejects.toThrow('not offered')
  expect(await standIn.as('Wren').run('secret', {}, { anyway: true })).toMatchObject({ kind: 'message', private: true })
})

test('what a client would not send is refused before it reaches the bot', async () => {
  const wren = standIn.as('Wren')
  await expect(wren.run('echo')).rejects.toThrow('needs the option "words"')
  await expect(wren.run('echo', { words: 'x', times: 9 })).rejects.toThrow('from 1 to 3')
  await expect(wren.run('echo', { words: 'x', file: { name: 'a.exe', bytes: new Uint8Array() } })).rejects.toThrow(
    'kinds of file',
  )
})
