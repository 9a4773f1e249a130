// The other server, where people bring the bot along: what an interaction from there carries, and what the bot cannot do there.
import { ApplicationIntegrationType, InteractionContextType } from 'discord.js'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot, type TinyBot } from './tiny-bot.ts'

const attic = { id: '900000000000000800', channel: '900000000000000801' }
const everywhere = { contexts: [0, 1, 2], integration_types: [0, 1] }
let standIn: StandIn
let bot: TinyBot
let heard: { guildId: string | null; owners: (string | null)[]; context: number | null; cached: boolean } | undefined
beforeEach(async () => {
  standIn = await openStandIn({
    scenario: {
      ...hobbyServer,
      elsewhere: {
        id: attic.id,
        name: 'Attic Radio',
        locale: 'de',
        channel: { id: attic.channel, name: 'chatter' },
        people: [ids.wren],
        managers: [],
      },
    },
  })
  const commands = [
    { type: 1, name: 'hello', description: 'x', ...everywhere },
    { type: 1, name: 'home', description: 'x', contexts: [0], integration_types: [0] },
  ]
  bot = await startTinyBot(standIn, commands as never, async interaction => {
    const { guildId, authorizingIntegrationOwners: owners, context } = interaction
    heard = { guildId, owners: [owners.guildId, owners.userId], context, cached: interaction.inCachedGuild() }
    if (interaction.isRepliable()) await interaction.reply({ content: 'hello' })
  })
})
afterEach(async () => {
  await bot.stop()
  await standIn.close()
})

test.each([
  ['on the server', ids.bench, ids.server, [ids.server, ids.wren], InteractionContextType.Guild, true],
  ['in direct messages', 'direct', null, ['0', ids.wren], InteractionContextType.BotDM, false],
  ['elsewhere', attic.channel, attic.id, [null, ids.wren], InteractionContextType.Guild, false],
] as const)('%s', async (_, channel, guildId, owners, context, cached) => {
  await standIn.as('Wren').run('hello', {}, { channel })
  expect(heard).toEqual({ guildId, owners, context, cached })
})

test('only commands that people may install for themselves are offered elsewhere, only to who is there', () => {
  const offered = (name: string) =>
    standIn
      .as(name)
      .commands({ channel: attic.channel })
      .map(one => one.path)
  expect(offered('Wren')).toEqual(['hello'])
  expect(offered('Ilse')).toEqual([])
  expect(ApplicationIntegrationType.UserInstall).toBe(1)
})

test('the bot is no member there: it does not know the server, sees no channel and cannot post', async () => {
  expect(bot.client.guilds.cache.has(attic.id)).toBe(false)
  await expect(
    bot.client.rest.post(`/channels/${attic.channel}/messages`, { body: { content: 'x' } }),
  ).rejects.toMatchObject({
    code: 50001,
  })
})
