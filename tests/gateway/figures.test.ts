// Health and figures of a running process: what is ready, what is counted, and that nobody can be told from it.
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { openPrometheus } from '../../src/bin/figures/prometheus.ts'
import { type FiguresServer, serveFigures } from '../../src/bin/figures/serve-figures.ts'
import { type Running, startBot } from './bot-process.ts'
import { idOf, inServer, startCheck } from './open-bot.ts'
import { applicationId, channelId, openSmallGateway, personId, type SmallGateway, serverId } from './small-gateway.ts'

async function get(port: number, path: string, method = 'GET'): Promise<{ status: number; body: string }> {
  const { promise, resolve, reject } = Promise.withResolvers<{ status: number; body: string }>()
  request({ host: '127.0.0.1', port, path, method }, response =>
    text(response).then(body => resolve({ status: response.statusCode ?? 0, body })),
  )
    .on('error', reject)
    .end()
  return promise
}

describe('a running bot', () => {
  let discord: SmallGateway
  let bot: Running
  let data: string
  const port = 20_000 + (process.pid % 20_000)
  beforeAll(async () => {
    discord = await openSmallGateway()
    data = await mkdtemp(join(tmpdir(), 'cellwary-figures-'))
    bot = startBot(discord.api, data, { CELLWARY_FIGURES_PORT: String(port) })
    await bot.ready()
  })
  afterAll(async () => {
    bot.signal('SIGTERM')
    await bot.ended
    await discord.close()
    await rm(data, { recursive: true, force: true })
  })

  test('lives and is ready', async () => {
    expect(await get(port, '/healthz')).toEqual({ status: 200, body: 'alive\n' })
    expect(await get(port, '/readyz')).toEqual({ status: 200, body: 'ready\n' })
  })

  test('counts what it was asked by kind, and how long its answers took', async () => {
    const common = {
      locale: 'en-US',
      app_permissions: '0',
      entitlements: [],
      attachment_size_limit: 1,
      channel_id: channelId,
    }
    const answer = await discord.interact({
      ...inServer(),
      ...common,
      type: 2,
      data: { id: '900000000000000400', name: 'check', type: 1, options: startCheck },
    })
    const message = {
      id: '900000000000000500',
      channel_id: channelId,
      flags: 64,
      author: { id: applicationId, username: 'small', discriminator: '0' },
      content: '',
      timestamp: '2026-11-29T00:00:00Z',
      components: [],
      attachments: [],
      embeds: [],
      mentions: [],
      mention_roles: [],
    }
    for (const custom_id of [idOf(answer, '.unsure'), 'zz9.nothing.of.ours'])
      await discord.interact({ ...inServer(), ...common, type: 3, message, data: { custom_id, component_type: 2 } })
    const { body } = await get(port, '/metrics')
    expect(body).toMatch(/^cellwary_interactions_total\{kind="\/check",ended="fine"\} 1$/m)
    expect(body).toMatch(/^cellwary_interactions_total\{kind="cw1",ended="fine"\} 1$/m)
    expect(body).toMatch(/^cellwary_interactions_total\{kind="unknown",ended="fine"\} 1$/m)
    expect(body).toMatch(/^cellwary_answer_seconds_count 3$/m)
    expect(body).toMatch(/^cellwary_gateway_connected\{shard="0"\} 1$/m)
    expect(Number(/^cellwary_database_seconds_count (\d+)$/m.exec(body)?.[1])).toBeGreaterThan(5)
    expect(body).toMatch(/^cellwary_queue_length\{queue="in-order"\} 0$/m)
    expect(body).toMatch(/^cellwary_nodejs_eventloop_lag_seconds /m)
  })

  test('names nobody: no id of a person, a server, a channel or a check stands in it', async () => {
    const { body } = await get(port, '/metrics')
    for (const id of [personId, serverId, channelId]) expect(body).not.toContain(id)
    expect(body).not.toMatch(/(?<![.\d])\d{17,20}\b/)
  })

  test('is not ready while it is cut off from Discord, and lives', async () => {
    discord.closeWith = 4000
    discord.answers.set('GET /gateway/bot', { status: 503, body: {} })
    discord.refuseResume = true
    discord.drop(4000)
    await expect.poll(() => get(port, '/readyz').then(({ status }) => status)).toBe(503)
    expect((await get(port, '/readyz')).body).toBe('not ready: Discord (connection 0)\n')
    expect((await get(port, '/healthz')).status).toBe(200)
  })
})

describe('the server of figures', () => {
  let server: FiguresServer
  let database: 'there' | 'gone' = 'there'
  const prometheus = openPrometheus()
  beforeAll(async () => {
    server = await serveFigures('127.0.0.1', 0, {
      missing: async () => (database === 'gone' ? 'the database' : undefined),
      metrics: prometheus.text,
    })
  })
  afterAll(() => server.close())

  test('says what is missing', async () => {
    database = 'gone'
    expect(await get(server.port, '/readyz')).toEqual({ status: 503, body: 'not ready: the database\n' })
    database = 'there'
    expect((await get(server.port, '/readyz')).status).toBe(200)
  })

  test('is asked, and told nothing', async () => {
    expect((await get(server.port, '/metrics', 'POST')).status).toBe(405)
    expect((await get(server.port, '/elsewhere')).status).toBe(404)
  })

  test('a late answer, a refused post and a limit are counted', async () => {
    prometheus.figures.answered(0.02)
    prometheus.figures.answered(3.5)
    prometheus.figures.postRefused(403)
    prometheus.figures.rateLimited()
    const { body } = await get(server.port, '/metrics')
    expect(body).toMatch(/^cellwary_late_answers_total 1$/m)
    expect(body).toMatch(/^cellwary_posts_refused_total\{status="403"\} 1$/m)
    expect(body).toMatch(/^cellwary_rate_limits_total 1$/m)
  })
})

describe('what deploy/figures asks for is there', () => {
  const named = (source: string) => [...new Set(source.match(/\bcellwary_\w+/g) ?? [])]
  const folder = new URL('../../deploy/figures/', import.meta.url)

  test.each(['alerts.yaml', 'dashboard.json'])('%s', async file => {
    const source = await readFile(new URL(file, folder), 'utf8')
    const { body } = await openPrometheus().text()
    const known = named(body).flatMap(name => [name, `${name}_bucket`, `${name}_sum`, `${name}_count`])
    expect(named(source).length).toBeGreaterThan(4)
    expect(named(source).filter(name => !known.includes(name))).toEqual([])
  })

  test('every alert says what it means and what to do', async () => {
    const { groups } = parse(await readFile(new URL('alerts.yaml', folder), 'utf8'))
    const rules = groups.flatMap((group: { rules: object[] }) => group.rules)
    expect(rules.length).toBeGreaterThan(5)
    for (const rule of rules)
      expect(rule).toMatchObject({
        alert: expect.any(String),
        expr: expect.any(String),
        for: expect.stringMatching(/^\d+m$/),
        annotations: { summary: expect.any(String), description: expect.any(String) },
      })
  })
})
