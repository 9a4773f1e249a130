// Whatever JSON arrives, the stand-in answers as Discord would and never falls over itself.
import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'
import { startTinyBot } from './tiny-bot.ts'

let standIn: StandIn
beforeAll(async () => {
  standIn = await openStandIn({ scenario: hobbyServer, patience: { deferred: 1 } })
})
afterAll(() => standIn.close())

/** Bodies that are nearly right: known keys with any values, some of them nested components. */
const part: fc.Arbitrary<unknown> = fc.letrec(tie => ({
  part: fc.oneof(
    { depthSize: 'small' },
    fc.jsonValue({ maxDepth: 1 }),
    fc.record(
      {
        type: fc.constantFrom(1, 2, 3, 9, 10, 12, 13, 17, 18, 21, 'x', null),
        custom_id: fc.oneof(fc.string(), fc.jsonValue({ maxDepth: 1 })),
        label: fc.jsonValue({ maxDepth: 1 }),
        content: fc.jsonValue({ maxDepth: 1 }),
        options: fc.jsonValue({ maxDepth: 3 }),
        items: fc.jsonValue({ maxDepth: 3 }),
        media: fc.jsonValue({ maxDepth: 1 }),
        emoji: fc.jsonValue({ maxDepth: 1 }),
        components: fc.oneof(fc.array(tie('part'), { maxLength: 3 }), fc.jsonValue({ maxDepth: 1 })),
        component: tie('part'),
        accessory: tie('part'),
      },
      { requiredKeys: [] },
    ),
  ),
})).part
const body = fc.record(
  {
    content: fc.jsonValue({ maxDepth: 1 }),
    embeds: fc.jsonValue({ maxDepth: 3 }),
    components: fc.oneof(fc.array(part, { maxLength: 4 }), fc.jsonValue({ maxDepth: 1 })),
    attachments: fc.jsonValue({ maxDepth: 2 }),
    allowed_mentions: fc.jsonValue({ maxDepth: 2 }),
    flags: fc.oneof(fc.constantFrom(0, 1 << 15, 64), fc.jsonValue({ maxDepth: 1 })),
    nonce: fc.jsonValue({ maxDepth: 1 }),
    message_reference: fc.jsonValue({ maxDepth: 1 }),
    name: fc.jsonValue({ maxDepth: 1 }),
    options: fc.jsonValue({ maxDepth: 3 }),
    message: fc.jsonValue({ maxDepth: 2 }),
  },
  { requiredKeys: [] },
)

async function send(method: string, path: string, sent: unknown): Promise<number> {
  const headers = { authorization: `Bot ${standIn.botToken}`, 'content-type': 'application/json' }
  const response = await fetch(`${standIn.apiUrl}/v10${path}`, { method, headers, body: JSON.stringify(sent) })
  await response.arrayBuffer()
  return response.status
}

test.each([
  ['POST', `/channels/${ids.bench}/messages`],
  ['POST', `/channels/${ids.bench}/threads`],
  ['POST', `/channels/${ids.posts}/threads`],
  ['PUT', `/applications/${ids.application}/commands`],
  ['POST', `/applications/${ids.application}/commands`],
  ['POST', '/users/@me/channels'],
])('%s %s', async (method, path) => {
  await fc.assert(
    fc.asyncProperty(body, async sent => {
      expect(await send(method, path, method === 'PUT' ? [sent] : sent)).toBeLessThan(500)
    }),
    { numRuns: 60 },
  )
})

test('answers to an interaction, and edits of them', async () => {
  let next: unknown = null
  const statuses: number[] = []
  const bot = await startTinyBot(standIn, [{ name: 'go', description: 'x' }], async interaction => {
    const callback = `/interactions/${interaction.id}/${interaction.token}/callback`
    statuses.push(await send('POST', callback, next))
    await send('POST', callback, { type: 4, data: { content: 'fallback' } })
    const data = (next as { data: unknown }).data
    statuses.push(await send('PATCH', `/webhooks/${ids.application}/${interaction.token}/messages/@original`, data))
    statuses.push(await send('POST', `/webhooks/${ids.application}/${interaction.token}`, data))
  })
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(4, 5, 6, 7, 8, 9, 'x', null), body, async (type, data) => {
      next = { type, data }
      statuses.length = 0
      await standIn.as('Wren').run('go')
      await bot.settled()
      expect(statuses).toHaveLength(3)
      expect(Math.max(...statuses)).toBeLessThan(500)
    }),
    { numRuns: 60 },
  )
  await bot.stop()
})
