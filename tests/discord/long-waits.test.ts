// Which of Discord's limits are waited out: short ones, and those that nobody waits for.
import { expect, test } from 'vitest'
import { isLongWait } from '../../src/discord/gateway/long-waits.ts'

test.each([
  ['an answer to a click, a second', '/interactions/:id/:token/callback', 1_000, false],
  ['an answer to a click, longer than Discord takes one', '/interactions/:id/:token/callback', 3_000, true],
  ['what has to be known of a server first', '/guilds/:id/channels', 3_000, true],
  ['a later answer, some seconds', '/webhooks/:id/:token/messages/:id', 5_000, false],
  ['a later answer, a minute', '/webhooks/:id/:token/messages/:id', 60_000, true],
  ['a message to a channel, its usual five seconds', '/channels/:id/messages', 5_000, false],
  ['a message to a channel, ten minutes', '/channels/:id/messages', 600_000, true],
  ['the commands, until Discord takes them', '/applications/:id/commands', 3_600_000, false],
])('%s', (_what, route, timeToReset, long) => {
  expect(isLongWait({ route, timeToReset })).toBe(long)
})
