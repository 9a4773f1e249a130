// Faults of Discord's REST that need no gateway, driven by nock: late, twice, limited, broken, shut; the person's step stays stored.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ButtonInteraction, ChatInputCommandInteraction, Client, type Interaction } from 'discord.js'
import nock from 'nock'
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest'
import { readConfig } from '../../src/bin/config.ts'
import { type OpenedServices, openServices } from '../../src/bin/open-services.ts'
import { encodeClick } from '../../src/custom-ids/check-id.ts'
import { openLog } from '../../src/discord/gateway/logger.ts'
import { route } from '../../src/discord/router.ts'
import { noPosts } from '../flows/no-posts.ts'

const user = { id: '900000000000000401', username: 'wren', discriminator: '0', avatar: null, global_name: 'Wren' }
const token = 'aW50ZXJhY3Rpb246c2VjcmV0OnNlY3JldA'
const common = {
  application_id: '900000000000000001',
  token,
  version: 1,
  user,
  locale: 'en-GB',
  entitlements: [],
  app_permissions: '0',
  channel_id: '900000000000000301',
  channel: { id: '900000000000000301', type: 1 },
  authorizing_integration_owners: {},
  context: 1,
  attachment_size_limit: 10_485_760,
}
let client: Client
let opened: OpenedServices
let data: string
const log: string[] = []
let count = 0

beforeAll(async () => {
  data = await mkdtemp(join(tmpdir(), 'cellwary-rest-'))
  const read = readConfig({ CELLWARY_DATA: data })
  if (!read.ok) throw new Error(read.sentences.join())
  opened = await openServices(read.config, openLog('debug', { write: line => void log.push(line) }), noPosts)
  client = new Client({ intents: [], rest: { retries: 1 } })
})
afterEach(() => {
  expect(nock.pendingMocks()).toEqual([])
  nock.cleanAll()
})
afterAll(async () => {
  await opened.close()
  await rm(data, { recursive: true, force: true })
})

const discord = () => nock('https://discord.com').post(/^\/api\/v10\/interactions\/\d+\/[^/]+\/callback/)
const nextId = () => String(910000000000000000n + BigInt(++count))

/** discord.js builds interactions itself from what the gateway says; its constructors are private by type only. */
const made = (kind: unknown, raw: object): Interaction =>
  new (kind as new (c: Client, r: object) => Interaction)(client, raw)

/** Starts a check through a command that Discord takes, and returns its id. */
async function begin(): Promise<string> {
  discord().reply(204)
  const id = nextId()
  const raw = {
    ...common,
    id,
    type: 2,
    data: {
      id: '1',
      name: 'check',
      type: 1,
      options: [{ name: 'start', type: 1, options: [{ name: 'depth', type: 3, value: 'full' }] }],
    },
  }
  await route(opened.services, made(ChatInputCommandInteraction, raw))
  const open = await opened.services.checks.heldBy(user.id, Date.now())
  return open[0]?.id ?? ''
}

async function click(check: string, revision: number, interaction = nextId()): Promise<void> {
  const custom_id = encodeClick({ check, revision, act: { is: 'unsure' } })
  const message = {
    id: nextId(),
    channel_id: common.channel_id,
    author: user,
    content: '',
    timestamp: '2026-11-25T00:00:00Z',
    edited_timestamp: null,
    tts: false,
    mention_everyone: false,
    mentions: [],
    mention_roles: [],
    attachments: [],
    embeds: [],
    pinned: false,
    type: 0,
    components: [],
  }
  const raw = { ...common, id: interaction, type: 3, message, data: { component_type: 2, custom_id } }
  await route(opened.services, made(ButtonInteraction, raw))
}
const revisionOf = async (check: string) => (await opened.services.checks.load(check))?.check.revision
const close = async (check: string) => {
  const found = (await opened.services.checks.load(check))?.check
  if (found)
    await opened.services.checks.save(
      { ...found, phase: { is: 'closed' }, revision: found.revision + 1 },
      found.revision,
      nextId(),
    )
}

test.each([
  ['10062, too late', 404, 10062],
  ['40060, answered already', 400, 40060],
  ['50027, token no longer valid', 401, 50027],
])('%s: the step is stored, nobody is told of a failure, the next click goes on', async (_, status, code) => {
  const check = await begin()
  discord().reply(status, { code, message: 'x' })
  await click(check, 0)
  expect(await revisionOf(check)).toBe(1)
  expect(log.at(-1)).toMatch(/too late or twice/)
  discord().reply(204)
  await click(check, 1)
  expect(await revisionOf(check)).toBe(2)
  await close(check)
})

test('10062 of an answer in time is Discord’s doing; of a late one the log says how late, as a warning', async () => {
  const check = await begin()
  const idOf = (at: number) => String(BigInt(at - 1_420_070_400_000) << 22n)
  for (const [revision, ago, level] of [
    [0, 100, 20],
    [1, 4000, 40],
  ] as const) {
    discord().reply(404, { code: 10062, message: 'Unknown interaction' })
    await click(check, revision, idOf(Date.now() - ago))
    const line = JSON.parse(log.at(-1) ?? '{}')
    expect(line).toMatchObject({ level, msg: 'answered too late or twice' })
    expect(line.after).toBeGreaterThanOrEqual(ago)
  }
  await close(check)
})

test('what was being said to whom is in no log, though the request with it failed', async () => {
  const check = await begin()
  const before = log.length
  discord().reply(400, { code: 50035, message: 'Invalid Form Body', errors: { data: { _errors: [{ code: 'X' }] } } })
  discord().reply(204)
  await click(check, 0)
  const lines = log.slice(before).join('\n')
  expect(lines).toContain('Invalid Form Body')
  expect(lines).not.toContain(user.id)
  expect(lines).not.toContain('do not use or charge the cell')
  expect(lines).not.toContain('components')
  await close(check)
})

test('429, then taken: waits as told and answers once', async () => {
  const check = await begin()
  discord().reply(
    429,
    { message: 'slow down', retry_after: 0.01, global: false },
    { 'retry-after': '0.01', 'x-ratelimit-scope': 'user' },
  )
  discord().reply(204)
  await click(check, 0)
  expect(await revisionOf(check)).toBe(1)
  await close(check)
})

test('502, then taken: tried again, counted once', async () => {
  const check = await begin()
  discord().reply(502)
  discord().reply(204)
  await click(check, 0)
  expect(await revisionOf(check)).toBe(1)
  await close(check)
})

test('503 for good: the step is stored, the failure is in the log with a reference, and the person is told if they can be', async () => {
  const check = await begin()
  discord().times(2).reply(503)
  let told = ''
  nock('https://discord.com')
    .post(/callback/, body => {
      told = JSON.stringify(body)
      return true
    })
    .reply(204)
  await click(check, 0)
  expect(told).toMatch(/\/check resume shows where you are.*reference: [0-9a-f]{8}/)
  expect(await revisionOf(check)).toBe(1)
  expect(log.at(-1)).toMatch(/"reference":"[0-9a-f]{8}"/)
  await close(check)
})

test('50007, direct messages shut: logged, not thrown, and no token in the log', async () => {
  const check = await begin()
  discord().times(2).reply(403, { code: 50007, message: 'Cannot send messages to this user' })
  await click(check, 0)
  expect(await revisionOf(check)).toBe(1)
  expect(log.join('')).not.toContain(token)
  await close(check)
})
