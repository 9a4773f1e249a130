// Posting: what is sent, and what each of Discord's refusals means. Codes: Discord's documentation, "JSON Error Codes".
import { REST } from 'discord.js'
import nock from 'nock'
import { afterEach, expect, test } from 'vitest'
import { message, text } from '../../src/discord/message/parts.ts'
import { postsOver, type Replying } from '../../src/discord/posts/post.ts'

const posts = postsOver(new REST({ retries: 0 }).setToken('none'))
const shown = message([text('hello')])
const channel = '900000000000000301'
const answering = () => nock('https://discord.com').post(`/api/v10/channels/${channel}/messages`, body => sent(body))
let bodies: Record<string, unknown>[] = []
const sent = (body: Record<string, unknown>) => bodies.push(body) > 0
afterEach(() => {
  bodies = []
  nock.cleanAll()
})

test('a reply names its message, pings nobody, makes no sound and carries its nonce', async () => {
  answering().reply(200, { id: '1' })
  expect(await posts.reply(channel, '900000000000000777', shown, 'once')).toEqual({
    is: 'posted',
    place: { channel, message: '1' },
  })
  expect(bodies[0]).toMatchObject({
    message_reference: { message_id: '900000000000000777' },
    allowed_mentions: { parse: [], replied_user: false },
    nonce: 'once',
    enforce_nonce: true,
    flags: (1 << 15) | (1 << 12),
  })
})

test.each<[number, number, Replying['is'], object?]>([
  [403, 50001, 'forbidden'],
  [403, 50013, 'forbidden'],
  [400, 50008, 'forbidden'],
  [400, 160002, 'forbidden'],
  [404, 10003, 'gone'],
  [404, 10008, 'no-message'],
  // As Discord words it when the message of a reply has been deleted; the shape of its errors is from memory.
  [
    400,
    50035,
    'no-message',
    { message_reference: { _errors: [{ code: 'MESSAGE_REFERENCE_UNKNOWN_MESSAGE', message: 'Unknown message' }] } },
  ],
  [400, 50083, 'archived'],
  [400, 160005, 'archived'],
])('%d with code %d: %s', async (status, code, is, errors) => {
  answering().reply(status, { code, message: 'no', ...(errors && { errors }) })
  expect(await posts.reply(channel, '900000000000000777', shown, 'once')).toEqual({ is })
})

test('a body that is wrong in any other way is a fault, not an answer', async () => {
  answering().reply(400, { code: 50035, message: 'no', errors: { components: { _errors: [] } } })
  await expect(posts.reply(channel, '900000000000000777', shown, 'once')).rejects.toThrow()
})

test('whoever answers nobody is told of an archived thread as forbidden, and of a message that is gone as gone', async () => {
  answering().reply(400, { code: 50083, message: 'no' })
  expect(await posts.post(channel, shown, 'once')).toEqual({ is: 'forbidden' })
  nock('https://discord.com')
    .delete(`/api/v10/channels/${channel}/messages/1`)
    .reply(404, { code: 10008, message: 'no' })
  expect(await posts.remove({ channel, message: '1' })).toBe('gone')
})
