// The client: deaf for two seconds at most where a server never comes, and nothing in memory that nobody reads.
import { PermissionFlagsBits } from 'discord.js'
import { expect, test } from 'vitest'
import { invitationOf, invitedWith } from '../../src/discord/gateway/invitation.ts'
import { openClient } from '../../src/discord/gateway/open-client.ts'
import { ordinaryServer, serverIds } from './ordinary-server.ts'
import { applicationId, botToken, openSmallGateway, personId, serverId } from './small-gateway.ts'

test('a server that never comes is waited for no longer than two seconds', async () => {
  const discord = await openSmallGateway()
  discord.servers = [
    { id: serverId, coming: true },
    { id: '900000000000000777', coming: false },
  ]
  const client = openClient(botToken, discord.api)
  expect(client.options.waitGuildTimeout).toBe(2_000)
  const ready = new Promise<void>(resolve => client.once('clientReady', () => resolve()))
  await client.login(botToken)
  await ready
  expect([...client.guilds.cache.keys()].sort()).toEqual([serverId, '900000000000000777'])
  await client.destroy()
  await discord.close()
})

test('of people, only the bot itself is kept; channels and roles, which rights are read from, are', async () => {
  const discord = await openSmallGateway()
  const client = openClient(botToken, discord.api)
  const ready = new Promise<void>(resolve => client.once('clientReady', () => resolve()))
  await client.login(botToken)
  await ready
  for (let i = 0; i < 200; i++) {
    const user = { id: String(BigInt(personId) + BigInt(i)), username: `p${i}`, discriminator: '0', avatar: null }
    discord.send('GUILD_MEMBER_ADD', { guild_id: serverId, user, roles: [], joined_at: '2026-01-01T00:00:00Z' })
  }
  const heard = new Promise<void>(resolve => client.once('roleCreate', () => resolve()))
  discord.send('GUILD_ROLE_CREATE', {
    guild_id: serverId,
    role: { id: '900000000000000800', name: 'r', permissions: '0' },
  })
  await heard
  const guild = client.guilds.cache.get(serverId)
  expect([...client.users.cache.keys()]).toEqual([applicationId])
  expect([...(guild?.members.cache.keys() ?? [])]).toEqual([applicationId])
  expect(guild?.channels.cache.size).toBe(1)
  expect(guild?.roles.cache.size).toBe(2)
  await client.destroy()
  await discord.close()
})

test('of ordinary servers nothing is kept that nobody reads, and what is empty is one for all channels', async () => {
  const discord = await openSmallGateway()
  discord.serverAs = ordinaryServer
  discord.servers = serverIds(20).map(id => ({ id, coming: true }))
  const client = openClient(botToken, discord.api)
  const ready = new Promise<void>(resolve => client.once('clientReady', () => resolve()))
  await client.login(botToken)
  await ready
  expect(client.guilds.cache.size).toBe(20)
  const messages = new Set<unknown>()
  for (const guild of client.guilds.cache.values()) {
    expect(guild.channels.cache.size).toBe(60)
    expect(guild.roles.cache.size).toBe(31)
    for (const { cache } of [guild.emojis, guild.stickers, guild.bans, guild.invites, guild.presences])
      expect(cache.size).toBe(0)
    for (const channel of guild.channels.cache.values()) if ('messages' in channel) messages.add(channel.messages.cache)
  }
  expect(messages.size).toBe(1)
  await client.destroy()
  await discord.close()
})

test('the invitation asks for what the posts need and for nothing else', () => {
  const url = new URL(invitationOf(applicationId))
  const wanted = [...invitedWith].sort()
  expect(wanted).toEqual(['AttachFiles', 'ReadMessageHistory', 'SendMessages', 'SendMessagesInThreads', 'ViewChannel'])
  const bits = wanted.reduce((sum, name) => sum | PermissionFlagsBits[name], 0n)
  expect(BigInt(url.searchParams.get('permissions') ?? '')).toBe(bits)
  expect(url.searchParams.get('scope')).toBe('bot applications.commands')
})
